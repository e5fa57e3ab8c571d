using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Tests.Timing;
using Seedfall.Planning.Tests.Water;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Tests.Judgment;

public sealed class LawnVerdictTests
{
    private static readonly Choices Autumn = new() { Season = 2023 };

    [Fact]
    public void AHalfLivingLawnIsRecovered()
    {
        var verdict = Judge(patch => patch);

        Assert.Equal(VerdictKind.Recover, verdict.Kind);
        Assert.Equal("verdict.front.cover", verdict.Reasons[0].Id);
        Assert.Contains(verdict.Reasons[0].Figure!.Working.Inputs, i => i.Symbol == "L");
    }

    [Theory]
    [InlineData(0.49, VerdictKind.StartOver)]
    [InlineData(0.50, VerdictKind.Recover)]
    public void LessThanHalfAliveStartsOver(double living, VerdictKind expected) =>
        Assert.Equal(expected, Judge(patch => patch with { LivingCover = Fraction.Of(living) }).Kind);

    [Theory]
    [InlineData(0.51, VerdictKind.StartOver)]
    [InlineData(0.50, VerdictKind.Recover)]
    public void MoreThanHalfWeedsStartsOver(double weeds, VerdictKind expected) =>
        Assert.Equal(expected, Judge(patch => patch with { WeedCover = Fraction.Of(weeds) }).Kind);

    [Theory]
    [InlineData(0.76, VerdictKind.CureFirst)]
    [InlineData(0.75, VerdictKind.Recover)]
    [InlineData(0.20, VerdictKind.Recover)]
    public void ThickThatchGoesFirst(double inches, VerdictKind expected) =>
        Assert.Equal(expected, Judge(patch => patch with { Thatch = Depth.FromInches(inches) }).Kind);

    [Theory]
    [InlineData(DamageCause.Grubs, false)]
    [InlineData(DamageCause.OtherInsects, false)]
    [InlineData(DamageCause.Disease, false)]
    [InlineData(DamageCause.Wear, false)]
    [InlineData(DamageCause.Drought, true)]
    [InlineData(DamageCause.DogSpots, true)]
    [InlineData(DamageCause.Unknown, true)]
    public void AnUncuredCauseIsCuredFirstUnlessTheSeasonMendsIt(DamageCause cause, bool recovers)
    {
        Assert.Equal(recovers ? VerdictKind.Recover : VerdictKind.CureFirst, Judge(patch => patch with { Cause = cause }).Kind);
        Assert.Equal(VerdictKind.Recover, Judge(patch => patch with { Cause = cause, CauseCured = true }).Kind);
    }

    [Theory]
    [InlineData(4.0, false, VerdictKind.Recover)]
    [InlineData(7.0, false, VerdictKind.CureFirst)]
    [InlineData(7.0, true, VerdictKind.Recover)]
    public void CountedGrubsDecide(double count, bool cured, VerdictKind expected) =>
        Assert.Equal(expected, Judge(patch => patch with { Cause = DamageCause.Grubs, GrubsPerSquareFoot = count, CauseCured = cured }).Kind);

    [Theory]
    [InlineData(2.0, VerdictKind.CureFirst)]
    [InlineData(3.5, VerdictKind.Recover)]
    public void DeepShadeIsCuredFirst(double hours, VerdictKind expected)
    {
        var verdict = Judge(patch => patch with { Cause = DamageCause.Shade, SunHours = hours });

        Assert.Equal(expected, verdict.Kind);
        Assert.Contains(verdict.Reasons, r => r.Id == "verdict.front.shade" && r.Figure is not null);
    }

    [Fact]
    public void ShadeThatNobodyMeasuredIsCuredFirst() =>
        Assert.Equal(VerdictKind.CureFirst, Judge(patch => patch with { Cause = DamageCause.Shade, SunHours = null }).Kind);

    [Fact]
    public void DormantTurfWaits()
    {
        var verdict = Judge(patch => patch with { Dormant = true, LivingCover = Fraction.Of(0.2) }, Autumn with { Today = new DateOnly(2023, 8, 1) });

        Assert.Equal(VerdictKind.Wait, verdict.Kind);
        Assert.Equal(new DateOnly(2023, 8, 15), verdict.WaitUntil);
        Assert.NotNull(verdict.WaitFor);
    }

    [Fact]
    public void TooLateWaitsForTheOtherWindow()
    {
        var choices = Autumn with { Today = new DateOnly(2023, 11, 1) };
        var timing = Invented.Time(Invented.Weather, choices).Value!;
        var verdict = Judge(patch => patch, choices);

        Assert.Equal(VerdictKind.Wait, verdict.Kind);
        Assert.Equal(timing.OtherWindow!.Opens, verdict.WaitUntil);
        Assert.Equal(timing.OtherWindowName, verdict.WaitFor);
    }

    [Fact]
    public void ADayChosenTooLateIsRefusedWithItsChance()
    {
        var verdict = Judge(patch => patch, Autumn with { SeedDown = new DateOnly(2023, 10, 25) });

        Assert.Equal(VerdictKind.Wait, verdict.Kind);
        Assert.Equal("verdict.unlikely", verdict.Reasons[0].Id);
        Assert.True(verdict.Reasons[0].Figure!.Value < 0.3);
    }

    [Fact]
    public void ASprayHoldsTheSeedUntilItsDay()
    {
        var best = WaterLawn.Timing.SeedDown!.Value;
        var verdict = Judge(patch => patch, earliest: best.AddDays(2));

        Assert.Equal(VerdictKind.Wait, verdict.Kind);
        Assert.Equal(best.AddDays(2), verdict.WaitUntil);
        Assert.Equal("verdict.interval", verdict.Reasons[0].Id);
    }

    [Fact]
    public void ASprayThatHoldsPastAutumnWaitsForTheOtherWindow()
    {
        var verdict = Judge(patch => patch, earliest: new DateOnly(2023, 11, 10));

        Assert.Equal(VerdictKind.Wait, verdict.Kind);
        Assert.True(verdict.WaitUntil >= new DateOnly(2023, 11, 10));
    }

    [Fact]
    public void ASprayWhoseDayIsPastHoldsNothing() =>
        Assert.Equal(VerdictKind.Recover, Judge(patch => patch, earliest: new DateOnly(2023, 7, 1)).Kind);

    [Fact]
    public void AMeasuredTapThatIsTooWeakIsMendedFirst()
    {
        var lawn = WaterLawn.Lawn(WaterLawn.Supply(2.0, WaterLawn.HoseSet(20)), 24000.0);
        var verdict = Judge(lawn, Autumn);

        Assert.Equal(VerdictKind.CureFirst, verdict.Kind);
        Assert.Equal("verdict.water", verdict.Reasons[0].Id);
        Assert.NotNull(verdict.Reasons[0].Figure);
    }

    [Fact]
    public void AnAssumedTapThatIsTooWeakIsOnlySaid()
    {
        var lawn = WaterLawn.Lawn(null, 60000.0);
        var water = WaterLawn.Prove(lawn).Value!;
        var verdict = Judge(lawn, Autumn);

        Assert.Equal(ProofResult.Refused, water.Result);
        Assert.Equal(VerdictKind.Recover, verdict.Kind);
        Assert.Contains(verdict.Reasons, r => r.Id == "verdict.water");
    }

    [Fact]
    public void ASickPatchHoldsTheWholeLawnAndIsNamed()
    {
        var lawn = Invented.Lawn(null, Invented.Patch(), Invented.Patch(500.0, "side") with { Cause = DamageCause.Disease });
        var verdict = Judge(lawn, Autumn);

        Assert.Equal(VerdictKind.CureFirst, verdict.Kind);
        Assert.Contains("side", verdict.Sentence, StringComparison.Ordinal);
        Assert.Equal([VerdictKind.Recover, VerdictKind.CureFirst], verdict.Patches.Select(p => p.Kind));
        Assert.Equal("verdict.side.cause", verdict.Reasons[0].Id);
    }

    [Fact]
    public void ASmallDeadPatchDoesNotStartTheWholeLawnOver()
    {
        var lawn = Invented.Lawn(null, Invented.Patch(), Invented.Patch(500.0, "side") with { LivingCover = Fraction.Of(0.05) });
        var verdict = Judge(lawn, Autumn);

        Assert.Equal(VerdictKind.Recover, verdict.Kind);
        Assert.Equal(VerdictKind.StartOver, verdict.Patches[1].Kind);
    }

    [Fact]
    public void ReasonsAndFiguresHaveTheirOwnIds()
    {
        var lawn = Invented.Lawn(null, Invented.Patch() with { Thatch = Depth.FromInches(1), GrubsPerSquareFoot = 9, WeedCover = Fraction.Of(0.6), SunHours = 2, LivingCover = Fraction.Of(0.1) }, Invented.Patch(800, "back") with { Thatch = Depth.FromInches(0.6), GrubsPerSquareFoot = 2, WeedCover = Fraction.Of(0.1), SunHours = 3.2 });
        var verdict = Judge(lawn, Autumn with { SeedDown = new DateOnly(2023, 10, 25) });

        Assert.Equal(verdict.Reasons.Count, verdict.Reasons.Select(r => r.Id).Distinct().Count());
        string[] figures = [.. verdict.Reasons.Select(r => r.Figure?.Id).OfType<string>()];
        Assert.Equal(figures.Length, figures.Distinct().Count());
    }

    [Fact]
    public void WhatWasNotLookedAtIsOneAssumptionAPatch()
    {
        var open = Invented.Lawn();
        var known = Invented.Lawn(null, Invented.Patch() with { Thatch = Depth.Zero, GrubsPerSquareFoot = 0, WeedCover = Fraction.None, Dormant = false });

        Assert.Equal("assumed.front.walk-over", Assert.Single(LawnVerdict.Assumptions(open)).Id);
        Assert.Empty(LawnVerdict.Assumptions(known));
    }

    [Fact]
    public void APatchWithoutSummaryIsRefusedAtTheDoor()
    {
        var lawn = Invented.Lawn();
        Assert.Throws<ArgumentException>(() => LawnVerdict.Judge(lawn, Autumn, [], Invented.Time(Invented.Weather).Value!, null, null, Invented.Tables));
    }

    private static Verdict Judge(Func<Patch, Patch> change, Choices? choices = null, DateOnly? earliest = null) =>
        Judge(WaterLawn.Lawn(WaterLawn.Supply()) with { Patches = [change(Invented.Patch())] }, choices ?? Autumn, earliest);

    private static Verdict Judge(Lawn lawn, Choices choices, DateOnly? earliest = null)
    {
        var timing = choices == Autumn ? WaterLawn.Timing : Invented.Time(Invented.Weather, choices).Value!;
        return LawnVerdict.Judge(lawn, choices, Invented.Summaries(lawn), timing, WaterLawn.Prove(lawn, timing: timing).Value, earliest, Invented.Tables);
    }
}
