using BenchmarkDotNet.Attributes;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Weather;
using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Demo;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Bench.Simulation;

/// <summary>One morning's watering of one patch two weeks after seed-down, two finger tests written. One thread.</summary>
[ShortRunJob]
[MemoryDiagnoser]
public class WaterBench
{
    private static readonly DateOnly Down = new(DemoTown.Season - 1, 8, 25);

    private readonly WeatherHistory _weather = DemoTown.Weather;
    private readonly PatchConditions _ground = new() { Texture = SoilTexture.Loam, TurfShare = 0.3, SeedDepthMm = 4.0, MulchKgM2 = 0.34, MulchCover = 0.5 };
    private readonly DailyPlace _place;
    private readonly DailyScene _scene;

    public WaterBench()
    {
        _place = Place();
        var today = Down.AddDays(14);
        LogEntry[] log = [new LogEntry.FingerTest(FingerFelt.TooDry) { Id = Guid.NewGuid(), At = At(6) }, new LogEntry.FingerTest(FingerFelt.Right) { Id = Guid.NewGuid(), At = At(11) }];
        _scene = new DailyScene(
            _place,
            "front",
            _ground,
            [new DailySet("front", 12.7, 1.25, 200.0)],
            WateringScenes.RoundHours,
            WateringScenes.Textbook.Millimeters,
            SpeciesTraits.Germination(Trade.Tables.For(GrassSpecies.TallFescue)),
            Down,
            today,
            _weather with { Days = [.. _weather.Days.Where(d => d.Date < today)] },
            FieldLog.Of(log));
    }

    /// <summary>Past seasons.</summary>
    internal int Seasons => _place.PastSeasons;

    [Benchmark(Baseline = true)]
    public DailyPlace Place() => DailyPlace.Of(_weather, DemoTown.Lawns[0].Place, Down);

    [Benchmark]
    public DailyPlan Today() => DailyWatering.Today(_scene);

    private static DateTimeOffset At(int day) => new(Down.AddDays(day).ToDateTime(new TimeOnly(14, 0)), TimeSpan.FromHours(-5));
}
