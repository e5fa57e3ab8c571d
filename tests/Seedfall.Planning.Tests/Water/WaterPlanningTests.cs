using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Tests.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Tests.Water;

public sealed class WaterPlanningTests
{
    [Fact]
    public void AMeasuredTapWithoutLimitsHolds()
    {
        var section = WaterLawn.Prove(WaterLawn.Lawn(WaterLawn.Supply()));
        var proof = section.Value!;

        Assert.Equal(ProofResult.Holds, proof.Result);
        Assert.Empty(section.Assumptions);
        Assert.Null(proof.Shortfall);
        Assert.Empty(proof.Remedies);
        Assert.Equal(["soak", "seedbed", "seedlings", "weaning", "deep"], proof.Phases.Select(p => p.PhaseId));
    }

    [Fact]
    public void NothingKnownIsAnAssumedProofWithNamedAssumptions()
    {
        var section = WaterLawn.Prove(WaterLawn.Lawn(null, texture: null));

        Assert.Equal(ProofResult.Assumed, section.Value!.Result);
        Assert.Equal(["assumed.water.sets", "assumed.water.tap", "assumed.water.texture"], section.Assumptions.Select(a => a.Id).Where(id => !id.Contains("rate", StringComparison.Ordinal)).Order());
    }

    [Fact]
    public void TheTownsHoursRefuseThreeRoundsADay()
    {
        var days = WeekDays.Monday | WeekDays.Wednesday | WeekDays.Friday;
        var supply = WaterLawn.Supply() with { Allowed = [WaterLawn.Window(days, 5, 9), WaterLawn.Window(days, 18, 22)] };
        var proof = WaterLawn.Prove(WaterLawn.Lawn(supply)).Value!;

        Assert.Equal(ProofResult.Refused, proof.Result);
        Assert.True(proof.Shortfall!.Value > 0.0);
        Assert.InRange(proof.Remedies.Count, 3, 5);
        Assert.Equal("water.remedy.permit", proof.Remedies[0].Id);
        Assert.Contains("the water is enough", proof.Remedies[0].Sentence, StringComparison.Ordinal);
        Assert.All(proof.Remedies, r => Assert.NotNull(r.Effect));
        Assert.Contains(proof.Advice, a => a.Id == "water.permit");
    }

    [Fact]
    public void ThePermitLiftsTheTownsHours()
    {
        var supply = WaterLawn.Supply() with { Allowed = [WaterLawn.Window(WeekDays.Monday, 5, 9)], NewSeedPermit = true };

        Assert.Equal(ProofResult.Holds, WaterLawn.Prove(WaterLawn.Lawn(supply)).Value!.Result);
    }

    [Fact]
    public void RoundsBeforeBreakfastAloneDoNotKeepASeedbedWet()
    {
        var supply = WaterLawn.Supply(30.0, WaterLawn.HoseSet(1)) with { Allowed = [WaterLawn.Window(WeekDays.All, 4, 9)] };
        var proof = WaterLawn.Prove(WaterLawn.Lawn(supply, 2000.0)).Value!;

        Assert.Equal(ProofResult.Refused, proof.Result);
        Assert.Single(proof.Phases.First(p => p.PhaseId == "seedbed").Starts);
    }

    [Fact]
    public void TooLittleTapIsRefusedWithRemedies()
    {
        var proof = WaterLawn.Prove(WaterLawn.Lawn(WaterLawn.Supply(2.0, WaterLawn.HoseSet(20)), 24000.0)).Value!;

        Assert.Equal(ProofResult.Refused, proof.Result);
        Assert.InRange(proof.Remedies.Count, 3, 5);
        Assert.Equal(proof.Remedies.Count, proof.Remedies.Select(r => r.Id).Distinct().Count());
    }

    [Fact]
    public void WithoutLimitsRoundsSpreadThroughTheDayAndEndBeforeEvening()
    {
        var seedbed = WaterLawn.Prove(WaterLawn.Lawn(WaterLawn.Supply())).Value!.Phases.First(p => p.PhaseId == "seedbed");
        var minutes = (int)seedbed.Totals.First(f => f.Id == "water.seedbed.round-minutes").Value;

        Assert.True(seedbed.Starts.Count is >= 2 and <= 4);
        Assert.True(seedbed.Starts[^1].Add(TimeSpan.FromMinutes(minutes)) <= new TimeOnly(18, 0));
    }

    [Fact]
    public void AForcedEveningRoundIsSaid()
    {
        var supply = WaterLawn.Supply(30.0, WaterLawn.HoseSet(1)) with { Allowed = [WaterLawn.Window(WeekDays.All, 5, 9), WaterLawn.Window(WeekDays.All, 10, 11), WaterLawn.Window(WeekDays.All, 19, 22)] };
        var proof = WaterLawn.Prove(WaterLawn.Lawn(supply, 2000.0, SoilTexture.Loam)).Value!;

        Assert.Contains(proof.Advice, a => a.Id == "water.evening");
    }

    [Fact]
    public void ClayOnASlopeIsWateredInCycles()
    {
        var set = WaterLawn.HoseSet(1) with { Kind = SprinklerKind.FixedSpray, Rate = PrecipitationRate.FromInchesPerHour(1.7) };
        var lawn = WaterLawn.Lawn(WaterLawn.Supply(60.0, set), 2000.0, SoilTexture.Clay);
        lawn = lawn with { Patches = [lawn.Patches[0] with { SlopePercent = 12.0 }] };
        var deep = WaterLawn.Prove(lawn, InventedWeather.Years(2020, 2022)).Value!.Phases.First(p => p.PhaseId == "deep").Runs[0];

        Assert.True(deep.Cycles >= 4);
        Assert.True(deep.SoakMinutes!.Value >= 30.0);
        Assert.Equal(0.0, deep.MinutesPerRound.Value % deep.Cycles);
    }

    [Fact]
    public void ASetThatAsksForMoreThanTheTapIsScaledDown()
    {
        var set = WaterLawn.HoseSet(1) with { Rate = PrecipitationRate.FromInchesPerHour(1.7) };
        var proof = WaterLawn.Prove(WaterLawn.Lawn(WaterLawn.Supply(8.0, set))).Value!;

        // 96.25 * 8 gpm / 5,000 sq ft, by the definition of precipitation rate.
        Assert.Equal(96.25 * 8.0 / 5000.0, new PrecipitationRate(proof.Figures.First(f => f.Id == "water.set-1.rate").Value).InchesPerHour, 1e-9);
        Assert.Equal(8.0, new FlowRate(proof.Figures.First(f => f.Id == "water.set-1.draw").Value).GallonsPerMinute, 1e-9);
    }

    [Fact]
    public void CatchCansDecideRateAndUniformity()
    {
        Depth[] readings = [.. new[] { .30, .32, .25, .22, .28, .35, .31, .27, .24, .29, .33, .26, .30, .28, .21, .31 }.Select(Depth.FromInches)];
        var set = WaterLawn.HoseSet(1) with { Rate = null, Cans = new CatchCanTest(readings, 15.0) };
        var proof = WaterLawn.Prove(WaterLawn.Lawn(WaterLawn.Supply(60.0, set))).Value!;

        Assert.Equal(1.13, new PrecipitationRate(proof.Figures.First(f => f.Id == "water.set-1.rate").Value).InchesPerHour, 0.001);
        Assert.Equal(Sureness.Measured, proof.Figures.First(f => f.Id == "water.set-1.uniformity").Working.Sureness);
        Assert.Contains(proof.Advice, a => a.Id == "water.set-1.few-cans");
    }

    [Fact]
    public void ADryCanIsSaid()
    {
        var set = WaterLawn.HoseSet(1) with { Cans = new CatchCanTest([Depth.FromInches(0.2), Depth.FromInches(0.3), Depth.Zero, Depth.FromInches(0.3)], 15.0) };

        Assert.Contains(WaterLawn.Prove(WaterLawn.Lawn(WaterLawn.Supply(30.0, set))).Value!.Advice, a => a.Id == "water.set-1.dry-can");
    }

    [Fact]
    public void APatchNoSetReachesGetsAnAssumedSprinkler()
    {
        var lawn = WaterLawn.Lawn(WaterLawn.Supply()) with { Patches = [Invented.Patch(), Invented.Patch(2000.0, "back")] };
        var section = WaterLawn.Prove(lawn);

        Assert.Contains("No sprinkler reaches back", section.Assumptions.First(a => a.Id == "assumed.water.sets").Statement, StringComparison.Ordinal);
        Assert.Equal(ProofResult.Assumed, section.Value!.Result);
    }

    /// <summary>Straw over the seedbed cuts the water it needs of a day.</summary>
    [Fact]
    public void CoverCutsTheNeed()
    {
        var bare = WaterLawn.Lawn(WaterLawn.Supply());
        Assert.True(SeedbedMmPerDay(bare with { Cover = new CoverMaterial(CoverKind.StrawBlanket) }, Thin) < SeedbedMmPerDay(bare, Thin));
    }

    /// <summary>A shaded patch is not watered like one in full sun, and each set gets the need of its own patch.</summary>
    [Fact]
    public void EachPatchIsWateredForItself()
    {
        var lawn = WaterLawn.Lawn(WaterLawn.Supply(12.0, WaterLawn.HoseSet(1, "sun", "front"), WaterLawn.HoseSet(1, "shade", "back")), 2000.0) with
        {
            Patches = [Invented.Patch(2000.0) with { SunHours = 9.0 }, Invented.Patch(2000.0, "back") with { SunHours = 3.0 }],
        };
        var seedbed = WaterLawn.Prove(lawn).Value!.Phases.First(p => p.PhaseId == "seedbed");
        var (sun, shade) = (Need(seedbed, "front"), Need(seedbed, "back"));
        Assert.True(shade < sun, $"{shade} against {sun}");
        Assert.True(seedbed.Runs.First(r => r.SetName == "shade").MinutesPerRound.Value < seedbed.Runs.First(r => r.SetName == "sun").MinutesPerRound.Value);
    }

    /// <summary>Fewer than five past seasons: the rule of thumb, said.</summary>
    [Fact]
    public void FewSeasonsFallBackOnTheRule()
    {
        var section = WaterLawn.Prove(WaterLawn.Lawn(WaterLawn.Supply()), InventedWeather.Years(2020, 2022));
        Assert.Contains(section.Assumptions, a => a.Id == "assumed.water.seasons");
        Assert.DoesNotContain(section.Value!.Phases.SelectMany(p => p.Totals), f => f.Id.Contains(".need.", StringComparison.Ordinal));
    }

    [Fact]
    public void WithoutASeedDownDayTheProofIsStillMade()
    {
        var timing = Invented.Time(Invented.Weather, new Choices { Season = 2023, Today = new DateOnly(2023, 11, 10) }).Value!;
        Assert.Null(timing.SeedDown);

        Assert.Equal(ProofResult.Holds, WaterLawn.Prove(WaterLawn.Lawn(WaterLawn.Supply()), timing: timing).Value!.Result);
    }

    [Fact]
    public void WithoutPastWeatherTheDemandIsAssumed()
    {
        var weather = InventedWeather.None();
        var timing = Invented.Time(weather).Value!;

        Assert.Contains(WaterLawn.Prove(WaterLawn.Lawn(WaterLawn.Supply()), weather, timing).Assumptions, a => a.Id == "assumed.water.demand");
    }

    [Fact]
    public void FigureIdsAreUnique()
    {
        var days = WeekDays.Tuesday | WeekDays.Saturday;
        var supply = WaterLawn.Supply(6.0, WaterLawn.HoseSet(3), WaterLawn.HoseSet(2, "second")) with { Allowed = [WaterLawn.Window(days, 5, 9)] };
        var proof = WaterLawn.Prove(WaterLawn.Lawn(supply)).Value!;
        string[] ids =
        [
            .. proof.Figures.Select(f => f.Id),
            .. proof.Phases.SelectMany(p => p.Totals).Select(f => f.Id),
            .. proof.Phases.SelectMany(p => p.Runs).SelectMany(r => new[] { r.MinutesPerRound.Id, r.Depth.Id }),
            .. proof.Remedies.Select(r => r.Effect!.Id),
            proof.Shortfall!.Id, proof.SeasonVolume!.Id, proof.SeasonCost!.Id,
        ];

        Assert.Equal(ids.Length, ids.Distinct().Count());
    }

    [Fact]
    public void NoGroundIsRefusedAtTheDoor()
    {
        var lawn = WaterLawn.Lawn(null);
        Assert.Throws<ArgumentException>(() => WaterPlanning.Prove(lawn, [], WaterLawn.Timing, Invented.Weather, Invented.Tables));
    }

    private static Lawn Thin(Lawn lawn) => lawn with { Patches = [lawn.Patches[0] with { LivingCover = Fraction.Of(0.1) }] };

    private static double Need(PhaseWatering phase, string patch) => phase.Totals.First(f => f.Id == $"water.{phase.PhaseId}.need.{patch}").Value;

    private static double SeedbedMmPerDay(Lawn lawn, Func<Lawn, Lawn> change)
    {
        var seedbed = WaterLawn.Prove(change(lawn)).Value!.Phases.First(p => p.PhaseId == "seedbed");
        return seedbed.RoundsPerDay * Need(seedbed, "front");
    }
}
