using BenchmarkDotNet.Attributes;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Ensemble;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Plant;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Weather;

namespace Seedfall.Bench.Simulation;

/// <summary>
/// From parsed daily weather to the chance curve of one patch, three grasses, on one core: bars 60 ms for 25 seasons and 120
/// dates, 25 ms for each patch after the first. Scaling with seasons and dates by the parameters.
/// </summary>
[MinColumn]
[MemoryDiagnoser]
public class EnsembleBench
{
    private const int SpinUpDays = 45;

    private static readonly SownGrass[] Sown =
    [
        new(new GerminationTraits(2.6, 22.0, 25.0, 37.0, 116.0, -1.0, 0.35, 120.0), 5400.0),
        new(new GerminationTraits(3.6, 20.0, 27.0, 40.0, 77.0, -1.2, 0.35, 100.0), 5400.0),
        new(new GerminationTraits(3.5, 27.5, 27.5, 35.0, 76.0, -0.95, 0.30, 84.0), 5400.0),
    ];

    private static readonly PatchConditions Patch = new() { Texture = SoilTexture.Loam, TurfShare = 0.45, ShadeShare = 0.1, SeedDepthMm = 4.0, MulchCover = 0.5, MulchKgM2 = 0.34 };

    private static readonly WateringRounds Rounds = new([7, 11, 15], 1.9);

    private WeatherHistory _weather = InventedWeather.Years(1);
    private PlaceSeasons? _seasons;

    /// <summary>Past seasons.</summary>
    [Params(5, 25, 50)]
    public int Years { get; set; }

    /// <summary>Candidate dates.</summary>
    [Params(30, 120)]
    public int Dates { get; set; }

    /// <summary>Weather in memory, as after parsing.</summary>
    [GlobalSetup]
    public void Setup()
    {
        _weather = InventedWeather.Years(Years);
        _seasons = Prepare();
    }

    /// <summary>Everything from the days of the history on.</summary>
    [Benchmark(Baseline = true)]
    public StandTable FirstPatch() => Run(Prepare());

    /// <summary>The work of a place alone: hours, soil of reference ground, correction.</summary>
    [Benchmark]
    public PlaceSeasons Place() => Prepare();

    /// <summary>One patch more of the same place.</summary>
    [Benchmark]
    public StandTable NextPatch() => Run(_seasons!);

    internal StandTable Run(PlaceSeasons seasons) =>
        StandEnsemble.Run(seasons, Patch, Sown, Rounds, new CandidateDays(SpinUpDays, Dates), new StandRule());

    private PlaceSeasons Prepare()
    {
        var climate = PlaceClimate.FromHistory(_weather.Days, InventedWeather.Where);
        SeasonWindow Window(int year) => SeasonWindow.Cut(
            _weather, year, new DateOnly(year, 7, 7).AddDays(-SpinUpDays), new DateOnly(year, 7, 7), new DateOnly(year, 12, 10), climate, InventedWeather.Where.LatitudeDeg);
        return PlaceSeasons.From([.. _weather.Years.Select(Window)], InventedWeather.Where, climate, InputSet.Extremes, SoilHeatConstants.Shipped);
    }
}
