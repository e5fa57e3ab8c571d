using BenchmarkDotNet.Attributes;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Weather;
using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Demo;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Bench.Plan;

/// <summary>
/// The whole plan of the demo's ordinary lawn from 20 past seasons of daily weather, beside its largest part, the soil
/// temperature of the same days. One thread.
/// </summary>
[ShortRunJob]
[MemoryDiagnoser]
public class WholePlanBench
{
    private readonly Lawn _lawn = DemoTown.Lawns[0];
    private readonly Choices _choices = new() { Season = DemoTown.Season, Today = DemoTown.Today };
    private readonly WeatherHistory _weather = LastTwentySeasons(DemoTown.Weather);

    [Benchmark(Baseline = true)]
    public double SoilTemperatureOfTheSameDays() =>
        SoilTemperature.DailyMeanAt5Cm(_weather.Days, _lawn.Place, SoilTempSite.Reference).DailyMeanC[^1];

    [Benchmark]
    public RecoveryPlan WholePlan() => RecoveryPlanner.Plan(_lawn, _choices, _weather, Trade.Tables);

    private static WeatherHistory LastTwentySeasons(WeatherHistory all) => all with
    {
        Days = [.. all.Days.Where(d => d.Date.Year >= DemoTown.Season - 20)],
    };
}
