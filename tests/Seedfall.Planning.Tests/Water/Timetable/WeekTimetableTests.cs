using CsCheck;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Planning.Tests.Timing;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Tests.Water.Timetable;

public sealed class WeekTimetableTests
{
    private static readonly Engine.Weather.WeatherHistory ShortWeather = InventedWeather.Years(2022, 2022);

    [Fact]
    public void EachDayIsProvedByItselfAndTheMissingDaysAreCounted()
    {
        var day = SmallProblem.Of([SmallProblem.Set(0, 20, 8.0), SmallProblem.Set(1, 20, 8.0)], [], [new RoundPart(0, 719, 420), new RoundPart(720, 1440, 900)]);
        IReadOnlyList<MinuteSpan> open = [new(300, 1200)];
        IReadOnlyList<MinuteSpan> morning = [new(300, 600)];
        var week = WeekTimetabling.Daily(day, [open, morning, open, morning, open, [], open]);
        Assert.False(week.Holds);
        Assert.Equal(3, week.Days.Count);
        Assert.Equal((TimetableLimit.Days, 3.0, 2.0), (week.MoreDays!.Limit, week.MoreDays.Enough.Value, week.MoreDays.NotEnough!.Value));
        Assert.Equal(WeekDays.Monday | WeekDays.Wednesday | WeekDays.Friday | WeekDays.Sunday, week.Days[0].Days);
        Assert.IsType<TimetableProof.Found>(week.Days[0].Proof);
        Assert.All(week.Days.Skip(1), kind => Assert.IsType<TimetableProof.Impossible>(kind.Proof));
    }

    [Fact]
    public void SeldomRoundsAreSpreadOverTheAllowedDaysWithDaysBetween()
    {
        // 3 sets of 90 min one at a time, twice a week, on Monday, Wednesday and Saturday from 5:00 to 9:00: two sets a day at most.
        var day = SmallProblem.Of(Enumerable.Range(0, 3).Select(k => SmallProblem.Set(k, 90, 8.0)), [], [new RoundPart(0, 1440, 0)]);
        IReadOnlyList<MinuteSpan> open = [new(300, 540)];
        var found = Assert.IsType<TimetableProof.Found>(WeekTimetabling.Seldom(day, [open, [], open, [], [], open, []], 2));
        Assert.Equal(6, found.Runs.Count);
        Assert.All(found.Runs.GroupBy(run => run.Set), set => Assert.True(set.Max(r => r.Start) - set.Min(r => r.End) >= 2 * 1440));
        Assert.All(found.Runs.GroupBy(run => run.Start / 1440), dayRuns => Assert.True(dayRuns.Count() <= 2));
        Assert.IsType<TimetableProof.Impossible>(WeekTimetabling.Seldom(day, [open, [], [], [], [], open, []], 2));
    }

    /// <summary>Three sets of 4 gpm on a tap of 12 run together; one after another the morning is too short.</summary>
    [Fact]
    public void SetsThatRunTogetherFitWhereOneAfterAnotherDoesNot()
    {
        var supply = WaterLawn.Supply(12.0, [.. Enumerable.Range(1, 3).Select(k => Fixed($"zone {k}", 4.0))]) with
        {
            Allowed = [.. new[] { 6, 9, 12, 15 }.Select(hour => WaterLawn.Window(WeekDays.All, hour, hour + 1))],
        };
        var lawn = WaterLawn.Lawn(supply, 10000.0, SoilTexture.Sand);
        var proved = WaterLawn.Prove(lawn, ShortWeather).Value!.Phases.Single(phase => phase.PhaseId == "seedbed");
        var setAfterSet = proved.Totals.Single(f => f.Id == "water.seedbed.round-minutes").Working.Inputs.Single(i => i.Symbol == "s").Value;
        Assert.True(setAfterSet > 60.0, $"{setAfterSet} min");
        var seedbed = proved.Timetables.Daily!;
        AssertHolds(seedbed);
        var runs = Assert.IsType<TimetableProof.Found>(Assert.Single(seedbed.Days).Proof).Runs;
        Assert.Contains(runs, run => runs.Any(other => other.Set != run.Set && other.Start < run.End && run.Start < other.End));
    }

    [Fact]
    public void WhereOneAfterAnotherFitsTheTimetableIsFoundToo() => Gen.Select(Gen.Double[4.0, 20.0], Gen.Int[1, 4], Gen.Int[0, 12], Gen.Int[2, 11], Gen.Double[1000.0, 9000.0]).Sample(
        (gpm, sets, from, hours, squareFeet) =>
        {
            var supply = WaterLawn.Supply(gpm, [.. Enumerable.Range(1, sets).Select(k => Fixed($"zone {k}", gpm))]) with { Allowed = [WaterLawn.Window(WeekDays.All, from, from + hours)] };
            var lawn = WaterLawn.Lawn(supply, squareFeet, SoilTexture.Sand);
            var proof = WaterLawn.Prove(lawn, ShortWeather).Value!;
            var simple = proof.Phases.Single(phase => phase.PhaseId == "seedbed");
            var tightest = simple.Totals.Single(figure => figure.Id == "water.seedbed.hours").Value;
            if (simple.Runs.All(run => run.Cycles == 1) && tightest >= simple.RoundsPerDay)
            {
                AssertHolds(simple.Timetables.Daily!);
            }
        },
        iter: 40);

    private static void AssertHolds(WeekTimetable week) => Assert.True(week.Holds, string.Join(' ', week.Days.Select(day => (day.Proof as TimetableProof.Impossible)?.Reason ?? (day.Proof as TimetableProof.NotProven)?.Reason)));

    private static SprinklerSet Fixed(string name, double gpm) => new() { Name = name, PatchIds = ["front"], Kind = SprinklerKind.Rotor, Flow = FlowRate.FromGallonsPerMinute(gpm) };
}
