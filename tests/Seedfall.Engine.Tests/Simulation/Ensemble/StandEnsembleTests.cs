using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Ensemble;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Plant;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Tests.Simulation.Ensemble;

public sealed class StandEnsembleTests
{
    private static readonly Place Where = new(41.6, -93.6, 280.0);

    private static readonly GerminationTraits Bluegrass = new(2.6, 22.0, 22.0, 35.0, 116.0, -1.0, 0.35, 120.0);

    private static readonly GerminationTraits Ryegrass = new(3.6, 20.0, 27.0, 40.0, 77.0, -1.2, 0.35, 100.0);

    private static readonly CandidateDays Dates = new(45, 120);

    private static readonly PlaceClimate Climate = PlaceClimate.FromHistory(Days(2000), Where);

    private static readonly PlaceSeasons Seasons = PlaceSeasons.From([.. Enumerable.Range(2000, 6).Select(Window)], Where, Climate, InputSet.Extremes, SoilHeatConstants.Shipped);

    [Fact]
    public void TheSameInputsGiveTheSameOutcomes()
    {
        var (a, b) = (Run(Ryegrass, Three), Run(Ryegrass, Three));
        for (var season = 0; season < Seasons.Seasons.Count; season++)
        {
            for (var date = 0; date < Dates.Count; date++)
            {
                Assert.Equal(a[season, date], b[season, date]);
            }
        }
    }

    [Fact]
    public void ASeasonComesOutTheSameWhicheverSeasonsRunBesideIt()
    {
        var together = Run(Ryegrass, Three);
        for (var season = 0; season < Seasons.Seasons.Count; season++)
        {
            var single = PlaceSeasons.From([Window(2000 + season)], Where, Climate, InputSet.Extremes, SoilHeatConstants.Shipped);
            var alone = Run(single, Ryegrass, Three);
            for (var date = 0; date < Dates.Count; date++)
            {
                Assert.Equal(alone[0, date], together[season, date]);
            }

            Assert.Equal(alone.DryHours[0], together.DryHours[season]);
        }
    }

    [Fact]
    public void TheHourLoopAllocatesNothing()
    {
        var simulation = new SeasonSimulation(new PatchConditions(), SoilHeatConstants.Shipped.Column, [Ryegrass, Bluegrass], 190);
        long Bytes(int days)
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            simulation.Run(Seasons.Groups[0], Climate, Three, 45, 20, days);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        // Code compiled in haste may box until the finished code replaces it; an hour loop that allocated would cost thrice the bytes every time.
        Assert.Contains(Enumerable.Range(0, 1000), _ => Bytes(60) == Bytes(180));
    }

    [Fact]
    public void SeedPutDownTooLateNeverStands()
    {
        var table = Run(Bluegrass, Three);
        Assert.Equal(0.0, table.Share(Dates.Count - 1));
        Assert.True(table.Share(40) > 0.8);
    }

    [Fact]
    public void TheSlowGrassClosesFirst() =>
        Assert.True(DateChoice.Of(Scores(Bluegrass))!.Value.Closes <= DateChoice.Of(Scores(Ryegrass))!.Value.Closes);

    [Fact]
    public void WateringNeverMakesTheSeedbedDrier()
    {
        var (rain, light) = (Run(Bluegrass, WateringRounds.RainOnly), Run(Bluegrass, Three));
        Assert.All(Enumerable.Range(0, Seasons.Seasons.Count), i => Assert.True(light.DryHours[i] <= rain.DryHours[i]));
        Assert.All(rain.IrrigationMm, mm => Assert.Equal(0.0, mm));
        Assert.All(light.IrrigationMm, mm => Assert.True(mm > 100.0));
    }

    [Fact]
    public void TheWindowHoldsItsBestDayAndHindsightIsNeverWorse()
    {
        var scores = DateScores.Of((Run(Bluegrass, WateringRounds.RainOnly), 1.0));
        var window = DateChoice.Of(scores)!.Value;
        Assert.InRange(window.Best, window.Opens, window.Closes);
        Assert.True(DateChoice.LeaveOneOutSuccess(scores, 0, Dates.Count - 1) <= DateChoice.HindsightSuccess(scores, 0, Dates.Count - 1));
    }

    [Fact]
    public void ImpossibleGroundIsRefusedByName()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => new SeasonSimulation(new PatchConditions { SeedDepthMm = 120.0 }, SoilHeatConstants.Shipped.Column, [Ryegrass], 200));
        Assert.Equal("SeedDepthMm", error.ParamName);
        (PatchConditions Ground, string Name)[] impossible =
        [
            (new PatchConditions { SeedDepthMm = -1.0 }, nameof(PatchConditions.SeedDepthMm)),
            (new PatchConditions { SeedDepthMm = double.NaN }, nameof(PatchConditions.SeedDepthMm)),
            (new PatchConditions { TurfShare = 1.2 }, nameof(PatchConditions.TurfShare)),
            (new PatchConditions { ShadeShare = -0.1 }, nameof(PatchConditions.ShadeShare)),
            (new PatchConditions { MulchCover = 3.0 }, nameof(PatchConditions.MulchCover)),
            (new PatchConditions { MulchKgM2 = 50.0 }, nameof(PatchConditions.MulchKgM2)),
            (new PatchConditions { SlopePercent = 400.0 }, nameof(PatchConditions.SlopePercent)),
        ];
        Assert.All(impossible, one => Assert.Equal(one.Name, Assert.Throws<ArgumentOutOfRangeException>(one.Ground.Sound).ParamName));
        Assert.Equal("DepthMm", Assert.Throws<ArgumentOutOfRangeException>(() => Run(Ryegrass, new WateringRounds([8], -2.0))).ParamName);
        Assert.Throws<ArgumentOutOfRangeException>(() => Run(Ryegrass, new WateringRounds([25], 1.0)));
    }

    [Fact]
    public void ALawnOfTwoPatchesStandsByTheirWeights()
    {
        var (good, dry) = (Run(Bluegrass, Three), Run(Bluegrass, WateringRounds.RainOnly));
        var lawn = DateScores.Of((good, 3.0), (dry, 1.0));
        for (var date = 0; date < Dates.Count; date++)
        {
            Assert.Equal((0.75 * good.Share(date)) + (0.25 * dry.Share(date)), lawn.Share(date), 12);
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => DateScores.Of((good, 0.0)));
    }

    private static DateScores Scores(GerminationTraits grass) => DateScores.Of((Run(grass, Three), 1.0));

    private static WateringRounds Three => new([8, 12, 16], 1.5);

    private static StandTable Run(GerminationTraits grass, WateringRounds watering) => Run(Seasons, grass, watering);

    private static StandTable Run(PlaceSeasons seasons, GerminationTraits grass, WateringRounds watering) => StandEnsemble.Run(
        seasons, new PatchConditions { Texture = SoilTexture.Loam, TurfShare = 0.4 }, [new SownGrass(grass, 15000.0)], watering, Dates, new StandRule());

    private static SeasonWindow Window(int year)
    {
        var history = new WeatherHistory(Where, "invented", Days(year), [], []);
        var (first, last) = (new DateOnly(year, 6, 1), new DateOnly(year, 12, 10));
        return SeasonWindow.Cut(history, year, first, first, last, Climate, Where.LatitudeDeg);
    }

    /// <summary>An invented year.</summary>
    private static WeatherDay[] Days(int year)
    {
        var random = new SplitMix64((ulong)year);
        var departure = 0.0;
        return [.. Enumerable.Range(0, 365).Select(i =>
        {
            var date = new DateOnly(year, 1, 1).AddDays(i);
            departure = (0.7 * departure) + (2.0 * random.NextNormal());
            var mean = 10.0 - (14.0 * Math.Cos(2.0 * Math.PI * (i - 15) / 365.25)) + departure;
            var rain = random.NextDouble() < 0.3 ? 12.0 * random.NextDouble() : 0.0;
            return new WeatherDay(date, mean + 5.5, mean - 5.5, rain);
        })];
    }
}
