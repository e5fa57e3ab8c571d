using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Tests.Plan;

/// <summary>What is written after seed-down moves the dates of what follows and marks what is done.</summary>
public sealed class FollowUpTests
{
    private static readonly WeatherHistory Weather = InventedWeather.Years(2011, 2023, InventedWeather.North);

    private static readonly Lawn Known = Lawns.Known(InventedWeather.North);

    private static readonly DateOnly Down = new(2023, 8, 28);

    private static readonly LogEntry Seeded = new LogEntry.SeededDown { Id = Id(1), At = At(Down) };

    [Fact]
    public void The_second_feed_is_fifteen_days_after_the_day_seed_really_went_down()
    {
        var late = new LogEntry.SeededDown { Id = Id(1), At = At(Down.AddDays(4)) };
        Assert.Equal(Down.AddDays(15), Task(Plan(Seeded), "feed.starter-2").Date);
        Assert.Equal(Down.AddDays(19), Task(Plan(late), "feed.starter-2").Date);
        Assert.Contains("first green", Task(Plan(Seeded), "feed.starter-2").Conditions[0], StringComparison.Ordinal);
        Assert.Contains("8 days after seed-down", Task(Plan(Seeded, new LogEntry.FirstGreen { Id = Id(2), At = At(Down.AddDays(8)) }), "feed.starter-2").Steps[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_mowing_comes_from_growth_and_later_in_a_colder_autumn()
    {
        var warm = Plan(Seeded);
        var cold = RecoveryPlanner.Plan(Known, Choices, Weather with { Days = [.. Weather.Days.Select(d => d with { TmaxC = d.TmaxC - 3.0, TminC = d.TminC - 3.0 })] }, Tables.Trade, FieldLog.Of([Seeded]));
        Assert.Equal(Figure(warm, "timing.first-mow").AsDate(), Task(warm, "mow.first").Date);
        Assert.True(Task(cold, "mow.first").Date > Task(warm, "mow.first").Date);
        Assert.Equal(Sureness.Assumed, Figure(warm, "timing.first-mow").Working.Sureness);
        Assert.True(Figure(warm, "timing.first-mow").Value < Figure(warm, "timing.stand").Value);
    }

    [Fact]
    public void A_mowing_noted_settles_the_first_and_moves_the_second()
    {
        var reckoned = Figure(Plan(Seeded), "timing.first-mow").AsDate();
        var plan = Plan(Seeded, Mowed(3, reckoned.AddDays(4)));
        var (first, second) = (Figure(plan, "timing.first-mow"), Figure(plan, "timing.stand"));
        Assert.Equal((reckoned.AddDays(4), Sureness.Measured), (first.AsDate(), first.Working.Sureness));
        Assert.True(second.AsDate() > reckoned.AddDays(4));
        Assert.Equal((Id(3), reckoned.AddDays(4)), (Task(plan, "mow.first").Done!.EntryId, Task(plan, "mow.first").Done!.Day));
    }

    [Fact]
    public void Seedlings_are_not_sprayed_before_the_second_mowing_nor_before_four_weeks_from_emergence()
    {
        // Purdue Extension: two mowings on most labels. Four weeks after emergence: mesotrione after emergence, from memory.
        var reckoned = Figure(Plan(Seeded), "timing.first-mow").AsDate();
        foreach (var gap in new[] { 3, 30 })
        {
            var plan = Plan(Seeded, Mowed(3, reckoned), Mowed(4, reckoned.AddDays(gap)));
            var (from, up) = (Figure(plan, "timing.seedlings-sprayed").AsDate(), Figure(plan, "timing.emergence").AsDate());
            Assert.Equal(new[] { reckoned.AddDays(gap), up.AddDays(28) }.Max(), from);
            Assert.Equal(from, Task(plan, "look.weeds").Date);
            Assert.Contains("2 mowings of the new grass are noted.", Task(plan, "look.weeds").Steps);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(4)]
    public void Seedlings_are_not_sprayed_before_the_mowings_the_label_counts(int asked)
    {
        var lawn = Known with { PreEmergent = Known.PreEmergent! with { MowingsBeforeSeedlings = asked } };
        var first = Figure(Plan(Seeded), "timing.first-mow").AsDate();
        IReadOnlyList<LogEntry> log = [Seeded, .. Enumerable.Range(0, asked).Select(n => Mowed(3 + n, first.AddDays(12 * n)))];
        var plan = RecoveryPlanner.Plan(lawn, Choices, Weather, Tables.Trade, FieldLog.Of(log));
        var (from, up) = (Figure(plan, "timing.seedlings-sprayed"), Figure(plan, "timing.emergence").AsDate());
        Assert.Equal(new[] { asked == 0 ? up : first.AddDays(12 * (asked - 1)), up.AddDays(28) }.Max(), from.AsDate());
        Assert.Equal(asked, from.Working.Inputs.Single(i => i.Symbol == "N").Value);
        Assert.Contains("label, as entered", from.Working.Source, StringComparison.Ordinal);
        Assert.Contains(Task(plan, "look.weeds").Steps, s => s.Contains($"after {asked} mowing", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Assumptions, a => a.Id == "assumed.label.mowings");
    }

    [Fact]
    public void More_mowings_asked_for_make_the_day_no_earlier_and_blank_is_the_usual_two_told_as_assumed()
    {
        double? Day(int? asked) => RecoveryPlanner.Plan(Known with { PreEmergent = Known.PreEmergent! with { MowingsBeforeSeedlings = asked } }, Choices, Weather, Tables.Trade, FieldLog.Of([Seeded]))
            .Timing.Figures.FirstOrDefault(f => f.Id == "timing.seedlings-sprayed")?.Value;
        var days = Enumerable.Range(0, 7).Select(n => Day(n) ?? double.MaxValue).ToList();
        Assert.Equal(days.Order(), days);
        Assert.True(days[4] > days[2]);
        Assert.Equal(days[2], Day(null));
        Assert.Contains(Plan(Seeded).Assumptions, a => a.Id == "assumed.label.mowings" && a.Statement.Contains("the 2 that most labels ask for", StringComparison.Ordinal));
    }

    [Fact]
    public void A_mowing_before_the_seedlings_are_up_counts_for_none_of_theirs()
    {
        var plan = Plan(Seeded, Mowed(3, Down), Mowed(4, Down.AddDays(3)));
        Assert.Equal(Figure(Plan(Seeded), "timing.first-mow").Value, Figure(plan, "timing.first-mow").Value);
        Assert.Equal(Id(3), Task(plan, "mow.seed-down").Done!.EntryId);
        Assert.Null(Task(plan, "mow.first").Done);
    }

    [Fact]
    public void A_feeding_marks_the_task_it_lies_nearest_to()
    {
        var plan = Plan(Seeded, Fed(3, Down), Fed(4, Down.AddDays(18)));
        Assert.Equal((Id(3), Id(4)), (Task(plan, "feed.starter-1").Done!.EntryId, Task(plan, "feed.starter-2").Done!.EntryId));
        Assert.Null(Task(plan, "feed.late-fall").Done);
        Assert.NotNull(Task(plan, "seed.down").Done);
        Assert.Null(Task(Plan(Seeded, Fed(3, Down.AddDays(-6))), "feed.starter-1").Done);
    }

    [Fact]
    public void A_corrected_record_marks_the_task_by_what_stands_and_a_struck_one_not_at_all()
    {
        var again = Fed(5, Down) with { What = Fed(5, Down).What with { Replaces = Id(3), Why = "weighed again" } };
        Assert.Equal(Id(5), Task(Plan(Seeded, Fed(3, Down), again), "feed.starter-1").Done!.EntryId);
        Assert.Null(Task(Plan(Seeded, Fed(3, Down), new LogEntry.Struck(Id(3), "wrong lawn") { Id = Id(9), At = At(Down) }), "feed.starter-1").Done);
    }

    [Fact]
    public void Work_put_on_patch_by_patch_is_done_when_every_patch_has_it()
    {
        var lawn = Known with { Patches = [Known.Patches[0], Known.Patches[0] with { Id = "side", Name = "Side" }] };
        RecoveryPlan With(params LogEntry[] entries) => RecoveryPlanner.Plan(lawn, Choices, Weather, Tables.Trade, FieldLog.Of([Seeded, .. entries]));
        var half = Task(With(Fed(3, Down) with { PatchId = "front" }), "feed.starter-1");
        Assert.Null(half.Done);
        Assert.Contains("Still to do: Side", half.Steps[^1], StringComparison.Ordinal);
        Assert.NotNull(Task(With(Fed(3, Down) with { PatchId = "front" }, Fed(4, Down.AddDays(1)) with { PatchId = "side" }), "feed.starter-1").Done);
    }

    [Fact]
    public void What_is_done_is_not_what_comes_next()
    {
        var open = RecoveryPlanner.Plan(Known, Choices with { Today = Down.AddDays(15) }, Weather, Tables.Trade, FieldLog.Of([Seeded]));
        var done = RecoveryPlanner.Plan(Known, Choices with { Today = Down.AddDays(15) }, Weather, Tables.Trade, FieldLog.Of([Seeded, new LogEntry.FirstGreen { Id = Id(2), At = At(Down.AddDays(8)) }]));
        Assert.Null(Task(open, "look.emergence").Done);
        Assert.Equal(Id(2), Task(done, "look.emergence").Done!.EntryId);
        Assert.NotEqual("look.emergence", done.Next.TaskId);
    }

    [Fact]
    public void Nitrogen_in_the_record_counts_against_the_years_limit()
    {
        var tables = Tables.Trade with { RulePacks = [.. Tables.Trade.RulePacks.Select(p => p.Id == "general" ? p with { Nitrogen = p.Nitrogen with { MaxPerYear = 3.0 } } : p)] };
        double Pounds(params LogEntry[] log) =>
            new MassPerArea(RecoveryPlanner.Plan(Known, Choices, Weather, tables, FieldLog.Of([Seeded, .. log])).Feed!.NitrogenThisSeason.Value).PoundsPerThousandSquareFeet;
        Assert.Equal(2.5, Pounds(), 9);
        Assert.Equal(2.0, Pounds(Fed(3, new DateOnly(2023, 5, 1))), 9);
        Assert.Equal(2.5, Pounds(Fed(3, Down)), 9);
    }

    [Fact]
    public void The_order_of_arrival_changes_nothing()
    {
        LogEntry[] entries = [Seeded, Fed(3, Down), Fed(4, Down.AddDays(15)), Mowed(5, Down.AddDays(35)), Mowed(6, Down.AddDays(42)), new LogEntry.FirstGreen { Id = Id(7), At = At(Down.AddDays(9)) }];
        var expected = Plan(entries).Tasks.Select(t => (t.Id, t.Date, t.Done?.EntryId)).ToList();
        Gen.Int[0, 1000].Sample(
            seed =>
            {
                LogEntry[] mixed = [.. entries, entries[seed % entries.Length]];
                new Random(seed).Shuffle(mixed);
                Assert.Equal(expected, Plan(mixed).Tasks.Select(t => (t.Id, t.Date, t.Done?.EntryId)));
            },
            iter: 5, threads: 1);
    }

    private static Choices Choices => new() { Season = 2023, SeedDown = Down };

    private static RecoveryPlan Plan(params LogEntry[] log) => RecoveryPlanner.Plan(Known, Choices, Weather, Tables.Trade, FieldLog.Of(log));

    private static PlanTask Task(RecoveryPlan plan, string id) => plan.Tasks.Single(t => t.Id == id);

    private static Figure Figure(RecoveryPlan plan, string id) => plan.Timing.Figures.Single(f => f.Id == id);

    private static LogEntry.Mowed Mowed(int id, DateOnly day) => new() { Id = Id(id), At = At(day), To = Depth.FromInches(3.0) };

    /// <summary>Two pounds of nitrogen on 2,000 sq ft.</summary>
    private static LogEntry.Applied Fed(int id, DateOnly day) => new(new Application
    {
        Kind = ApplicationKind.Fertilizer,
        Product = "balanced 12-12-12 starter",
        Amount = new(Mass.FromPounds(16.67), null),
        Area = Area.FromSquareFeet(2000.0),
        Actives = [new("nitrogen", Mass.FromPounds(2.0))],
    })
    { Id = Id(id), At = At(day) };

    private static DateTimeOffset At(DateOnly day) => new(day.ToDateTime(new TimeOnly(15, 0)), TimeSpan.FromHours(-5));

    private static Guid Id(int n) => new(n, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
}
