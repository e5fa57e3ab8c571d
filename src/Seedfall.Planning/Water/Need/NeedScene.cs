using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Water;

/// <summary>What the need of water depends on: the ground, the dates and the sky of past seasons. Neither taps nor sprinklers.</summary>
/// <param name="Beds">Patches with ground.</param>
/// <param name="Phases">Phases with what the air takes in each.</param>
/// <param name="Texture">Soil texture.</param>
/// <param name="MulchFactor">Covered over bare evaporation of the seedbed, for the rule of thumb.</param>
/// <param name="Past">Past seasons' sky from <paramref name="PastFrom"/> on; none where too few are known.</param>
/// <param name="PastFrom">First day of that sky, in the season's own year.</param>
internal sealed record NeedScene(
    IReadOnlyList<PatchBed> Beds,
    IReadOnlyList<(Phase Phase, Demand Demand)> Phases,
    SoilTexture Texture,
    double MulchFactor,
    PastSkies Past,
    DateOnly PastFrom)
{
    /// <summary>Seasons below which the rules of thumb serve.</summary>
    internal const int LeastSeasons = 5;

    /// <summary>Longest stretch of the last phase looked at, days.</summary>
    private const int MostDeepDays = 28;

    /// <summary>Ceiling on seedbed rounds a day.</summary>
    internal int MostRounds { get; init; } = 4;

    /// <summary>Seedbed watering chosen instead of worked out.</summary>
    internal SeedbedChoice Chosen { get; init; } = SeedbedChoice.None;

    /// <summary>The same ground seeded on another day; null where that was not asked to be known.</summary>
    internal Func<DateOnly, NeedScene>? Later { get; init; }

    /// <summary>True where past seasons carry the need; else rules of thumb do.</summary>
    internal bool Simulated => Past.Count >= LeastSeasons;

    /// <summary>The phases, the air's demand in each and the sky of past seasons over them.</summary>
    internal static NeedScene Of(IReadOnlyList<PatchBed> beds, IReadOnlyList<Phase> phases, WeatherHistory weather, Place place, SoilTexture texture, double mulchFactor)
    {
        var (from, to) = (phases[0].From.AddDays(-1), phases[^1].From.AddDays(MostDeepDays));
        return new NeedScene(beds, [.. phases.Select(phase => (phase, Demand.Of(weather, place, phase)))], texture, mulchFactor, Skies(weather, place, from, to), from);
    }

    private static PastSkies Skies(WeatherHistory weather, Place place, DateOnly from, DateOnly to)
    {
        var spans = weather.Years.Where(year => year < from.Year)
            .Select(year => from.AddYears(year - from.Year))
            .Select(first => weather.Span(first, first.AddDays(to.DayNumber - from.DayNumber)))
            .OfType<IReadOnlyList<WeatherDay>>().ToList();
        if (spans.Count < LeastSeasons)
        {
            return PastSkies.None;
        }

        var climate = PlaceClimate.FromHistory(weather.Days, place);
        return new PastSkies([.. spans.Select(days => BedWeather.Of(days, place, climate, SoilHeatConstants.Shipped))]);
    }
}
