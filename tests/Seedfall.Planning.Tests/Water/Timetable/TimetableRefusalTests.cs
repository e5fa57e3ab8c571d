using Seedfall.Engine.Units;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Tests.Water.Timetable;

public sealed class TimetableRefusalTests
{
    /// <summary>
    /// By hand: 4 sets of 30 min at the whole tap need 120 min one after another; 100 are allowed. Two at once need 2 x 10 L/min;
    /// 10 min more on each side make 120.
    /// </summary>
    [Fact]
    public void TooFewHoursIsRefusedWithWhatWouldBeEnough()
    {
        var proof = Impossible(SmallProblem.Of(Sets(4, 30, 10.0), [new(360, 460)], [new RoundPart(0, 1440, 400)]));
        Assert.Contains("1200 L", proof.Reason, StringComparison.Ordinal);
        Assert.Contains("1000 L", proof.Reason, StringComparison.Ordinal);
        var hours = proof.Limits.Single(l => l.Limit == TimetableLimit.Hours);
        Assert.Equal((10.0, 9.0), (hours.Enough.Value, hours.NotEnough!.Value));
        var flow = proof.Limits.Single(l => l.Limit == TimetableLimit.Flow);
        Assert.Equal((10.0, 9.9), (Math.Round(flow.Enough.Value, 6), Math.Round(flow.NotEnough!.Value, 6)));
        Assert.Single(proof.Unserved);
    }

    /// <summary>
    /// By hand: three sets of 6 L/min on 10 L/min can only follow one another. Two spans of 50 min hold one run of 30 min each, so the
    /// third finds none, though water (540 of 1,000 L) and minutes (90 of 100) are enough: only trying the starts shows it.
    /// </summary>
    [Fact]
    public void HoursCutInPiecesAreRefusedThoughTheirSumIsEnough()
    {
        var proof = Impossible(SmallProblem.Of(Sets(3, 30, 6.0), [new(360, 410), new(480, 530)], [new RoundPart(0, 1440, 400)]));
        Assert.Contains("solver", proof.Reason, StringComparison.Ordinal);
        var hours = proof.Limits.Single(l => l.Limit == TimetableLimit.Hours);
        Assert.Equal((5.0, 4.0), (hours.Enough.Value, hours.NotEnough!.Value));
        var flow = proof.Limits.Single(l => l.Limit == TimetableLimit.Flow);
        Assert.Equal((2.0, 1.9), (Math.Round(flow.Enough.Value, 6), Math.Round(flow.NotEnough!.Value, 6)));
        Assert.Single(proof.Unserved);
    }

    /// <summary>By hand: three rounds of two cycles are six starts; the timer has four, so two more are wanted.</summary>
    [Fact]
    public void TooFewStartsAreNamedAndCounted()
    {
        RoundPart[] rounds = [new(0, 599, 420), new(600, 839, 660), new(840, 1080, 900)];
        var problem = SmallProblem.Of([SmallProblem.Set(0, 5, 8.0, cycles: 2)], [new(0, 1440)], rounds) with { Timers = [new TimetableTimer("timer 1", 1, 4)] };
        var proof = Impossible(problem);
        var starts = Assert.Single(proof.Limits);
        Assert.Equal((TimetableLimit.TimerStarts, 2.0, 1.0), (starts.Limit, starts.Enough.Value, starts.NotEnough!.Value));
        Assert.Equal("patch 1", Assert.Single(Assert.Single(proof.Unserved).PatchIds));
    }

    /// <summary>By hand: hands from 7:00 to 8:00; four runs of 20 min, a minute's trip before each, need 84 min: 12 on each side.</summary>
    [Fact]
    public void TooFewHandsAreNamed()
    {
        var problem = SmallProblem.Of(Sets(4, 20, 10.0, byHand: true), [new(0, 1440)], [new RoundPart(0, 1440, 450)]) with { Hands = [new(420, 480)] };
        var proof = Impossible(problem);
        var hands = proof.Limits.Single(l => l.Limit == TimetableLimit.Hands);
        Assert.InRange(hands.Enough.Value, 11.0, 12.0);
        Assert.DoesNotContain(proof.Limits, l => l.Limit == TimetableLimit.Hours);
    }

    /// <summary>
    /// By hand: the well holds 200 L and gives back 1 L/min; two runs of 200 L have to start from 6:00 to 7:20. The first empties it at
    /// 6:00; the books fill it from 6:15 to 7:15: 60 minutes of 3.34 L/min make 200 L, 2.4 L/min more in steps of a tenth.
    /// </summary>
    [Fact]
    public void AWellThatComesBackTooSlowlyIsNamed()
    {
        var problem = SmallProblem.Of(Sets(2, 40, 5.0), [new(360, 480)], [new RoundPart(0, 1440, 400)]);
        problem = problem with { Taps = [problem.Taps[0] with { Well = new WellLimit(Volume.FromLiters(200.0), FlowRate.FromLitersPerMinute(1.0)) }] };
        var proof = Impossible(problem);
        var well = proof.Limits.Single(l => l.Limit == TimetableLimit.Well);
        Assert.Equal((2.4, 2.3), (Math.Round(well.Enough.Value, 6), Math.Round(well.NotEnough!.Value, 6)));
    }

    /// <summary>Two taps of 10 L/min serve what one cannot; on a shared main of 10 L/min they do not.</summary>
    [Fact]
    public void ASecondTapHelpsUnlessBothHangOnOnePipe()
    {
        var one = SmallProblem.Of(Sets(4, 30, 10.0), [new(360, 420)], [new RoundPart(0, 1440, 390)]);
        Assert.IsType<TimetableProof.Impossible>(TimetablePlanning.Prove(one));
        var two = one with { Taps = [one.Taps[0], new TimetableTap("side tap", FlowRate.FromLitersPerMinute(10.0))] };
        var found = Assert.IsType<TimetableProof.Found>(TimetablePlanning.Prove(two));
        Assert.Equal([2, 2], found.Runs.CountBy(run => run.Tap).Select(c => c.Value));
        Assert.IsType<TimetableProof.Impossible>(TimetablePlanning.Prove(two with { Main = FlowRate.FromLitersPerMinute(10.0) }));
    }

    /// <summary>A household that takes 4 of 10 L/min from 6:00 to 7:00 keeps a set of 8 L/min waiting until 7:00.</summary>
    [Fact]
    public void TheHouseholdComesFirst()
    {
        var problem = SmallProblem.Of(Sets(1, 30, 8.0), [new(360, 480)], [new RoundPart(0, 1440, 360)]);
        problem = problem with { Taps = [problem.Taps[0] with { Household = [new HouseholdUse(new MinuteSpan(360, 420), FlowRate.FromLitersPerMinute(4.0))] }] };
        Assert.Equal(420, Assert.Single(Assert.IsType<TimetableProof.Found>(TimetablePlanning.Prove(problem)).Runs).Start);
        var reserved = problem with { Taps = [problem.Taps[0] with { Reserved = FlowRate.FromLitersPerMinute(3.0) }] };
        Assert.Contains("more than any tap", Impossible(reserved).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatCannotBeMeantIsThrownOut()
    {
        var sound = SmallProblem.Of(Sets(2, 5, 5.0), [new(0, 60)], [new RoundPart(0, 60, 30)]);
        TimetableProblem[] absurd =
        [
            sound with { Sets = [] },
            sound with { Taps = [new TimetableTap("tap", FlowRate.Zero)] },
            sound with { Sets = [sound.Sets[0] with { Flow = FlowRate.FromLitersPerMinute(-1.0) }] },
            sound with { Sets = [sound.Sets[0] with { CycleMinutes = 0 }] },
            sound with { Sets = [sound.Sets[0] with { Taps = ["no such tap"] }] },
            sound with { Allowed = [new(30, 60), new(0, 31)] },
            sound with { Allowed = [new(0, 2000)] },
        ];
        Assert.All(absurd, problem => Assert.Throws<ArgumentException>(() => TimetablePlanning.Prove(problem)));
    }

    private static IEnumerable<TimetableSet> Sets(int count, int minutes, double drawLpm, bool byHand = false) =>
        Enumerable.Range(0, count).Select(k => SmallProblem.Set(k, minutes, drawLpm, byHand: byHand));

    private static TimetableProof.Impossible Impossible(TimetableProblem problem) => Assert.IsType<TimetableProof.Impossible>(TimetablePlanning.Prove(problem));
}
