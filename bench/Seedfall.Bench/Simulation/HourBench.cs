using BenchmarkDotNet.Attributes;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Ensemble;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Plant;

namespace Seedfall.Bench.Simulation;

/// <summary>
/// Time of one simulated hour of one season: four seasons of a patch with one grass and one date, so that nearly all is the hour
/// loop. Reported per hour and season; the allocation is that of the buffers, once per patch.
/// </summary>
[MinColumn]
[MemoryDiagnoser]
public class HourBench
{
    private const int SeasonDays = 202;
    internal const int Hours = 4 * 24 * 172;

    private PlaceSeasons? _seasons;

    /// <summary>Four seasons made ready.</summary>
    [GlobalSetup]
    public void Setup()
    {
        var weather = InventedWeather.Years(5);
        var climate = PlaceClimate.FromHistory(weather.Days, InventedWeather.Where);
        SeasonWindow Window(int year) => SeasonWindow.Cut(
            weather, year, new DateOnly(year, 5, 23), new DateOnly(year, 5, 23), new DateOnly(year, 5, 23).AddDays(SeasonDays - 1), climate, InventedWeather.Where.LatitudeDeg);
        _seasons = PlaceSeasons.From([.. weather.Years.Skip(1).Select(Window)], InventedWeather.Where, climate, InputSet.Extremes, SoilHeatConstants.Shipped);
    }

    /// <summary>172 days, the last of them the one candidate's; a hard frost that never comes would add the rest.</summary>
    [Benchmark(OperationsPerInvoke = Hours)]
    public StandTable OneHourOfOneSeason() => StandEnsemble.Run(
        _seasons!,
        new PatchConditions { TurfShare = 0.45 },
        [new SownGrass(new GerminationTraits(3.6, 20.0, 27.0, 40.0, 77.0, -1.2, 0.35, 100.0), 16000.0)],
        new WateringRounds([7, 11, 15], 1.9),
        new CandidateDays(171, 1),
        new StandRule(HardFrostC: 50.0));
}
