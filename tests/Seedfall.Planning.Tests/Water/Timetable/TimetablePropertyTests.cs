using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Tests.Water.Timetable;

public sealed class TimetablePropertyTests
{
    /// <summary>A milliliter a minute for each of up to six sets and the household.</summary>
    private const double Rounding = 0.007;

    private static readonly RoundPart[] ThreeRounds = [new(0, 599, 420), new(600, 839, 660), new(840, 1200, 900)];

    private static readonly Gen<TimetableSet> AnySet = Gen.Select(Gen.Int[2, 25], Gen.Double[2.0, 30.0], Gen.Int[1, 3], Gen.Int[1, 3], Gen.Int[0, 4], Gen.Int[0, 3], (minutes, draw, cycles, positions, timer, tap) => new TimetableSet
    {
        Name = "",
        PatchIds = [],
        Flow = FlowRate.FromLitersPerMinute(draw),
        CycleMinutes = minutes,
        Cycles = cycles,
        Positions = timer == 2 ? 1 : positions,
        Timer = timer switch { 0 => null, 1 => "small", _ => "large" },
        Taps = timer == 0 && tap == 0 ? ["front"] : [],
    });

    private static readonly Gen<TimetableProblem> Any = Gen.Select(AnySet.Array[1, 6], Gen.Double[20.0, 60.0], Gen.Double[15.0, 50.0], Gen.Int[0, 8], Gen.Int[10, 23], Gen.Int[1, 3], Gen.Bool, (sets, front, back, from, to, rounds, well) => new TimetableProblem
    {
        Taps =
        [
            new TimetableTap("front", FlowRate.FromLitersPerMinute(front)) { Reserved = FlowRate.FromLitersPerMinute(2.0), Household = [new HouseholdUse(new MinuteSpan(390, 450), FlowRate.FromLitersPerMinute(8.0))] },
            new TimetableTap("back", FlowRate.FromLitersPerMinute(back)) { Well = well ? new WellLimit(Volume.FromLiters(2000.0), FlowRate.FromLitersPerMinute(6.0)) : null },
        ],
        Main = FlowRate.FromLitersPerMinute(70.0),
        Sets = [.. sets.Select((s, k) => s with { Name = $"set {k + 1}", PatchIds = [$"patch {k + 1}"] })],
        Timers = [new TimetableTimer("small", 2, 6), new TimetableTimer("large", 4, 12)],
        Rounds = ThreeRounds[..rounds],
        Allowed = [new MinuteSpan(from * 60, to * 60)],
        Hands = [new MinuteSpan(300, 1320)],
    });

    [Fact]
    public void ATimetableKeepsToEverything() => Any.Sample(Check, iter: 60);

    [Fact]
    public void TheSameProblemGivesTheSameBytes() => Any.Sample(
        problem => Assert.Equal(Written(TimetablePlanning.Prove(problem)), Written(TimetablePlanning.Prove(problem))),
        iter: 12);

    [Fact]
    public void MoreFlowNeverRefutesWhatWasPossible() => Any.Sample(
        problem =>
        {
            var more = problem with { Taps = [.. problem.Taps.Select(t => t with { Flow = t.Flow * 1.5 })], Main = problem.Main! * 1.5 };
            Assert.False(Decision.Of(problem, new WorkBudget(0.2), 0.2, wanted: false).Placement is not null && Decision.Of(more, new WorkBudget(0.2), 0.2, wanted: false).Refuted);
        },
        iter: 40);

    private static string Written(TimetableProof proof) => System.Text.Json.JsonSerializer.Serialize<object>(proof);

    private static void Check(TimetableProblem problem)
    {
        if (TimetablePlanning.Prove(problem) is not TimetableProof.Found found)
        {
            return;
        }

        var runs = found.Runs;
        foreach (var set in problem.Sets)
        {
            var mine = runs.Where(run => run.Set == set.Name).ToArray();
            Assert.Single(mine.Select(run => run.Tap).Distinct());
            foreach (var place in mine.GroupBy(run => (run.Round, run.Position)))
            {
                Assert.True(place.Sum(run => run.Minutes) >= set.CycleMinutes * set.Cycles);
                Assert.True(place.Sum(run => run.Minutes) < (set.CycleMinutes * set.Cycles) + place.Count());
                Assert.All(place.OrderBy(r => r.Cycle).Zip(place.OrderBy(r => r.Cycle).Skip(1)), pair => Assert.True(pair.Second.Start - pair.First.Start >= set.SoakMinutes));
            }

            Assert.Equal(problem.Rounds.Count * set.Positions, mine.Select(run => (run.Round, run.Position)).Distinct().Count());
            Assert.All(mine.OrderBy(r => r.Start).Zip(mine.OrderBy(r => r.Start).Skip(1)), pair => Assert.True(pair.Second.Start >= pair.First.End + (pair.Second.Trip ? problem.MinutesPerTrip : 0)));
            for (var position = 1; position <= set.Positions; position++)
            {
                for (var round = 1; round < problem.Rounds.Count; round++)
                {
                    var end = mine.Where(r => (r.Round, r.Position) == (round, position)).Max(r => r.End);
                    Assert.True(mine.Where(r => (r.Round, r.Position) == (round + 1, position)).Min(r => r.Start) >= end + problem.GapMinutes);
                }
            }

            if (set.Timer is null)
            {
                Assert.All(mine, run => Assert.True(run.Trip && problem.Hands.Any(h => h.From <= run.Start - problem.MinutesPerTrip && run.End <= h.To)));
            }
        }

        Assert.All(runs, run => Assert.Contains(problem.Allowed, a => a.From <= run.Start && run.End <= a.To));
        Assert.All(runs, run => Assert.InRange(run.Start, problem.Rounds[run.Round - 1].From, 1440));
        var trips = runs.Where(run => run.Trip).OrderBy(run => run.Start).ToArray();
        Assert.All(trips.Zip(trips.Skip(1)), pair => Assert.True(pair.Second.Start - pair.First.Start >= problem.MinutesPerTrip));
        Assert.True(found.Bound.Value <= found.MinutesAway.Value);
        CheckFlow(problem, runs);
        CheckTimers(problem, runs);
    }

    private static void CheckFlow(TimetableProblem problem, IReadOnlyList<TimetableRun> runs)
    {
        var draw = problem.Sets.ToDictionary(s => s.Name, s => s.Flow.LitersPerMinute);
        for (var m = 0; m < 1440; m++)
        {
            var all = 0.0;
            foreach (var tap in problem.Taps)
            {
                var house = tap.Household.Where(u => u.When.From <= m && m < u.When.To).Sum(u => u.Flow.LitersPerMinute);
                var drawn = runs.Where(run => run.Tap == tap.Name && run.Start <= m && m < run.End).Sum(run => draw[run.Set]);
                Assert.True(drawn <= 0.0 || drawn + house + tap.Reserved.LitersPerMinute <= tap.Flow.LitersPerMinute + Rounding);
                all += drawn + house;
            }

            Assert.True(all <= problem.Main!.Value.LitersPerMinute + Rounding);
        }

        foreach (var tap in problem.Taps.Where(t => t.Well is not null))
        {
            var (level, well) = (tap.Well!.Stored.Liters, tap.Well);
            for (var m = 0; m < 1440; m++)
            {
                level = Math.Min(well.Stored.Liters, level + well.Recovery.LitersPerMinute) - runs.Where(run => run.Tap == tap.Name && run.Start <= m && m < run.End).Sum(run => draw[run.Set]);
                Assert.True(level >= -Rounding * 1440.0);
            }
        }
    }

    private static void CheckTimers(TimetableProblem problem, IReadOnlyList<TimetableRun> runs)
    {
        var timerOf = problem.Sets.ToDictionary(s => s.Name, s => s.Timer);
        foreach (var timer in problem.Timers)
        {
            var mine = runs.Where(run => timerOf[run.Set] == timer.Name).OrderBy(run => run.Start).ToArray();
            Assert.All(mine.Zip(mine.Skip(1)), pair => Assert.True(pair.Second.Start >= pair.First.End));
            Assert.True(mine.Select(run => run.Program).Distinct().Count() <= timer.Programs);
            foreach (var program in mine.GroupBy(run => run.Program))
            {
                var sets = program.Select(run => run.Set).Distinct().ToArray();
                Assert.True(program.Count(run => run.Set == sets[0]) <= timer.StartsPerDay);
                Assert.Single(sets.Select(set => program.Count(run => run.Set == set)).Distinct());
                Assert.All(program.Where(run => run.Set != sets[^1]), run => Assert.Contains(program, next => next.Start == run.End));
            }
        }
    }
}
