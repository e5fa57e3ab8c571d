using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Validation.Watering;

/// <summary>The past autumns of a station, watered from the usual seed-down day on; each is left out of what its own plan knows.</summary>
public sealed class WateringStation
{
    /// <summary>Seasons tried at a station, the latest.</summary>
    public const int MostSeasons = 10;

    /// <summary>Days watered and counted: four weeks from seed-down.</summary>
    public const int Days = 28;

    private const int SpinUpDays = 45;
    private const int SpareDays = 3;
    private const int SoakEvenings = 3;
    private const int SoakHour = 19;
    private const double SoakMm = 5.0;

    private readonly PlaceSeasons _seasons;
    private readonly IReadOnlyList<BedWeather> _skies;

    private WateringStation(string name, PlaceSeasons seasons)
    {
        (Name, _seasons, _skies) = (name, seasons, [.. Enumerable.Range(0, seasons.Seasons.Count).Select(seasons.Hours)]);
    }

    public string Name { get; }

    /// <summary>Seasons that are tried.</summary>
    public int Seasons => Math.Min(MostSeasons, _skies.Count);

    /// <summary>The station, or null with a note where it cannot be scored.</summary>
    /// <param name="history">Its weather.</param>
    /// <param name="seedDown">The usual seed-down day of the latitude, of any year.</param>
    /// <param name="constants">Fitted numbers.</param>
    /// <param name="notes">Receives why not.</param>
    public static WateringStation? Of(WeatherHistory history, DateOnly seedDown, SoilHeatConstants constants, ICollection<string> notes)
    {
        if (history.Station is not { } place || history.Days.Count == 0)
        {
            notes.Add("not scored: the files give no position or no days");
            return null;
        }

        var climate = PlaceClimate.FromHistory(history.Days, place);
        var windows = history.Years.Select(year => Cut(history, year, seedDown, place, climate)).Where(w => w.SeasonDays == SpinUpDays + Days + SpareDays).ToList();
        if (windows.Count < 2)
        {
            notes.Add($"not scored: {windows.Count} autumns without holes, at least 2 are needed");
            return null;
        }

        return new WateringStation(history.StationName, PlaceSeasons.From(windows, place, climate, InputSets.Of(history.Days), constants));
    }

    /// <summary>Every season under every way of watering.</summary>
    public IReadOnlyList<IReadOnlyDictionary<string, WateringSeason>> Try(WateringScene scene, DailySettings settings)
    {
        var tried = WateringWays.All.ToDictionary(way => way, way => Enumerable.Range(0, _skies.Count).Select(season => Given(scene, settings, way, season)).ToList());
        var up = tried.ToDictionary(t => t.Key, t => WateredStand.Run(_seasons, scene.Ground, scene.Sown, [.. t.Value.Select(o => o.IrrigationMm)], SpinUpDays, SpinUpDays + Days));
        return [.. Enumerable.Range(_skies.Count - Seasons, Seasons).Select(season => (IReadOnlyDictionary<string, WateringSeason>)WateringWays.All.ToDictionary(way => way, way =>
        {
            var (water, seed) = (tried[way][season], up[way][season]);
            return new WateringSeason(water.DryHours, water.ShortHours, water.TooWetHours, water.WaterMm, water.RunoffMm, water.DrainageMm, seed.UpShare, seed.EmergenceDays);
        }))];
    }

    private WateringOutcome Given(WateringScene scene, DailySettings settings, string way, int season)
    {
        if (season < _skies.Count - Seasons)
        {
            return new WateringOutcome(0, 0, 0, 0.0, 0.0, 0.0, new double[24 * (SpinUpDays + Days)]);
        }

        var (sky, before) = (_skies[season], Soak());
        WateringPolicy policy = way switch
        {
            WateringWays.Daily => Daily(scene, settings, season, foreseen: 0),
            WateringWays.DailyForeseen => Daily(scene, settings, season, foreseen: 2),
            WateringWays.Textbook => WateringTrial.Fixed(new WateringRounds(scene.RoundHours, scene.TextbookMm)),
            WateringWays.OnceDaily => WateringTrial.Fixed(new WateringRounds([scene.RoundHours[0]], scene.RoundHours.Count * scene.TextbookMm)),
            WateringWays.Least => Least(scene, sky, before, scene.Wanted),
            _ => Least(scene, sky, before, new Hold(PatchConditions.DryMPa, false)),
        };
        return WateringTrial.Run(scene.Ground, sky, before, SpinUpDays, Days, scene.Wanted, policy);
    }

    private WateringPolicy Daily(WateringScene scene, DailySettings settings, int season, int foreseen)
    {
        var expected = new ExpectedSky([.. _skies.Where((_, other) => other != season)]);
        var limits = settings.Limits(scene.RoundHours, scene.WantedMPa, expected.RainChance);
        return (bed, day) => LeastWater.Day(bed, expected.Ahead(_skies[season], day, foreseen, settings.DaysAhead, settings.DemandMargin), day, limits);
    }

    private static WateringPolicy Least(WateringScene scene, BedWeather sky, double[] before, Hold hold)
    {
        var start = WateringTrial.Start(scene.Ground, sky, before, SpinUpDays);
        var given = LeastWater.Plan(start, sky, 24 * SpinUpDays, 24 * (SpinUpDays + Days), new RoundLimits(scene.RoundHours, hold));
        return (_, day) => given.AsSpan(24 * day, 24).ToArray();
    }

    /// <summary>Ground soaked on the three evenings before seed-down, 0.2 in each, whatever the watering after.</summary>
    private static double[] Soak()
    {
        var given = new double[24 * SpinUpDays];
        for (var evening = 1; evening <= SoakEvenings; evening++)
        {
            given[(24 * (SpinUpDays - evening)) + SoakHour] = SoakMm;
        }

        return given;
    }

    private static SeasonWindow Cut(WeatherHistory history, int year, DateOnly seedDown, Place place, PlaceClimate climate)
    {
        var down = new DateOnly(year, seedDown.Month, seedDown.Day);
        return SeasonWindow.Cut(history, year, down.AddDays(-SpinUpDays), down.AddDays(-SpinUpDays / 2), down.AddDays(Days + SpareDays - 1), climate, place.LatitudeDeg);
    }
}
