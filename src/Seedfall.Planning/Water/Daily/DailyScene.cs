using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Plant;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Water.Supply;

namespace Seedfall.Planning.Water;

/// <summary>A sprinkler set as the day's minutes are reckoned.</summary>
/// <param name="Name">Its name.</param>
/// <param name="RateMmh">Rate on this tap, mm/h, above 0.</param>
/// <param name="RunTimeMultiplier">Longer run for uneven watering, at least 1.</param>
/// <param name="AreaM2">Ground of the patch it waters, m2.</param>
/// <param name="Positions">Places it is moved through in one round; 1 for fixed heads.</param>
public sealed record DailySet(string Name, double RateMmh, double RunTimeMultiplier, double AreaM2, int Positions = 1)
{
    /// <summary>The sets that water a patch, gaps filled as in the water proof.</summary>
    public static IReadOnlyList<DailySet> Of(Lawn lawn, IReadOnlyList<PatchSummary> patches, string patchId)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        var sets = SetResolving.Of(lawn, patches, TapFacts.Of(lawn.Water), lawn.Soil?.Texture ?? Engine.Soil.SoilTexture.Loam).Sets;
        var entered = lawn.Water?.Sets ?? [];
        var named = entered.Where(s => s.PatchIds.Contains(patchId)).Select(s => s.Name).ToHashSet();
        var mine = sets.Where(s => named.Count == 0 ? entered.All(e => e.Name != s.Name) : named.Contains(s.Name)).ToList();
        var areaM2 = patches.First(p => p.Id == patchId).Area.Value / Math.Max(1, mine.Count);
        return [.. mine.Select(s => new DailySet(s.Name, s.RateMmh, s.RunTimeMultiplier, areaM2, s.Positions))];
    }
}

/// <summary>The place's past made ready once, so that each day's update is quick.</summary>
/// <param name="Place">Where.</param>
/// <param name="Climate">Its usual year.</param>
/// <param name="FirstDay">First day of the season's sky: some weeks before seed-down.</param>
/// <param name="Expected">What is usual from that day on; null where no past season is whole.</param>
/// <param name="PastSeasons">Past seasons it rests on.</param>
public sealed record DailyPlace(Place Place, PlaceClimate Climate, DateOnly FirstDay, ExpectedSky? Expected, int PastSeasons)
{
    /// <summary>Days of weather before seed-down from which the ground's water is worked out.</summary>
    public const int DaysBefore = 30;

    private const int DaysAfter = 80;

    /// <summary>From the place's weather; only years before the season are taken as past.</summary>
    public static DailyPlace Of(WeatherHistory weather, Place place, DateOnly seedDown)
    {
        ArgumentNullException.ThrowIfNull(weather);
        var (at, first) = (weather.Station ?? place, seedDown.AddDays(-DaysBefore));
        var climate = PlaceClimate.FromHistory(weather.Days, at);
        var past = weather.Years.Where(year => year < seedDown.Year).Select(year => first.AddYears(year - seedDown.Year))
            .Select(from => weather.Span(from, from.AddDays(DaysBefore + DaysAfter - 1))).OfType<IReadOnlyList<WeatherDay>>()
            .Select(days => BedWeather.Of(days, at, climate, SoilHeatConstants.Shipped)).ToList();
        return new DailyPlace(at, climate, first, past.Count > 0 ? new ExpectedSky(past) : null, past.Count);
    }
}

/// <summary>Everything a day's watering is decided from.</summary>
/// <param name="Place">The place's past.</param>
/// <param name="PatchId">The patch.</param>
/// <param name="Ground">Its ground.</param>
/// <param name="Sets">Sets that water it; at least one.</param>
/// <param name="Starts">Hours in which rounds may fall, ascending; at least one.</param>
/// <param name="FixedMm">Depth of the fixed round it is compared with, given at every start, mm.</param>
/// <param name="Grass">The slowest grass sown.</param>
/// <param name="SeedDown">Day seed went down, before <paramref name="Today"/> or on it.</param>
/// <param name="Today">The day decided, at its first hour.</param>
/// <param name="Weather">Days from <see cref="DailyPlace.FirstDay"/> to yesterday, and forecast days from today on where there are any.</param>
/// <param name="Log">What was seen and done.</param>
/// <param name="PricePerThousandGallons">Price of water; null where not known.</param>
public sealed record DailyScene(
    DailyPlace Place,
    string PatchId,
    PatchConditions Ground,
    IReadOnlyList<DailySet> Sets,
    IReadOnlyList<int> Starts,
    double FixedMm,
    GerminationTraits Grass,
    DateOnly SeedDown,
    DateOnly Today,
    WeatherHistory Weather,
    FieldLog Log,
    decimal? PricePerThousandGallons = null)
{
    /// <summary>Price steps of the meter; where known they count before the one price.</summary>
    public MeterPrice? Meter { get; init; }

    /// <summary>The household's own use in a billing period.</summary>
    public Volume HouseholdPerPeriod { get; init; }

    /// <summary>Minute of each start where it is not the full hour.</summary>
    public IReadOnlyList<TimeOnly> Clock { get; init; } = [];
}
