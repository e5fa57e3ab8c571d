using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Records;
using Seedfall.Planning.Tests.Plan;
using Sheet = Seedfall.Planning.Field.DaySheet;

namespace Seedfall.Planning.Tests.Field;

public sealed class DaySheetTests
{
    private static readonly WeatherHistory Weather = InventedWeather.Years(2011, 2023, InventedWeather.North);

    private static readonly Lawn Known = Lawns.Known(InventedWeather.North) with
    {
        TankPartners = [new TankPartner { Name = "wetting agent", Formulation = FormulationClass.Surfactant, Rate = VolumePerArea.FromFluidOuncesPerThousandSquareFeet(6.0), WithPreEmergent = true }],
        AppliedForHire = true,
    };

    private static readonly RecoveryPlan Plan = RecoveryPlanner.Plan(Known, new Choices { Season = 2023 }, Weather, Tables.Trade);

    private static readonly DateOnly Down = Plan.Timing.SeedDown!.Value;

    [Fact]
    public void Seed_down_day_stands_in_the_order_of_work()
    {
        string[] ids = ["begin", "mow.seed-down", "seed.weigh", "seed.first-half", "seed.second-half", "seed.thin", "feed.starter-1", "spray.pre-emergent.jar", "spray.pre-emergent.mix", "spray.pre-emergent", "cover.thin", "water.first", "close"];
        Assert.Equal(ids, Of(Down).Steps.Select(s => s.Id));
        Assert.StartsWith("Seed-down day: 13 steps", Of(Down).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_quantities_are_the_plans_own()
    {
        var steps = Of(Down).Steps.ToDictionary(s => s.Id);
        Assert.Equal(Plan.Seed!.TotalBulk, steps["seed.weigh"].Big[0]);
        Assert.Equal(Plan.Seed.HalfPass, steps["seed.first-half"].Big[0]);
        Assert.Equal(steps["seed.first-half"].Big[0], steps["seed.second-half"].Big[0]);

        // The halves and the thin-spot part together are the whole.
        var extra = steps["seed.thin"].Big[0].Value;
        Assert.Equal(Plan.Seed.TotalBulk.Value, (2.0 * Plan.Seed.HalfPass.Value) + extra, 9);
        var starter = Plan.Feed!.Feedings.Single(f => f.Id == "starter-1");
        Assert.Equal(starter.Product.Value, 2.0 * steps["feed.starter-1"].Big[1].Value, 9);
        Assert.Equal(Plan.Spray!.Trips[0].CarrierTotal, steps["spray.pre-emergent.mix"].Big[0]);
        Assert.Equal(15.0, Assert.Single(steps["spray.pre-emergent.jar"].Timers).Minutes.Value); // Utah State University Extension: jar test, stand 15 min.
    }

    [Fact]
    public void What_is_written_at_the_end_is_filled_in_and_could_stand()
    {
        foreach (var record in Of(Down).Steps.SelectMany(s => s.Records).Where(r => r.Entry is not LogEntry.Note))
        {
            Assert.Empty(LogRules.Problems(Known, Stamped(record.Entry)));
        }

        var sprayed = Records<LogEntry.Applied>(Down).Single(e => e.What.Kind == ApplicationKind.Pesticide).What;

        // The plan's own amount, measured off by what a syringe shows: never above 5 fl oz/acre on the lawn's ground. 0.479 kg/L (4 lb/gal) of mesotrione in it.
        Assert.Equal(Plan.Spray!.Trips[0].Products[0].Total.Value, sprayed.Amount.Volume!.Value.Liters, 12);
        Assert.InRange(sprayed.Amount.Volume!.Value.FluidOunces, 0.98 * 5.0 * Area.FromSquareMeters(Plan.TotalArea.Value).Acres, 5.0 * Area.FromSquareMeters(Plan.TotalArea.Value).Acres);
        Assert.Equal(0.479 * sprayed.Amount.Volume!.Value.Liters, Assert.Single(sprayed.Actives).Amount.Kilograms, 12);
        Assert.Equal(Plan.TotalArea.Value, sprayed.Area.SquareMeters);
        var fed = Records<LogEntry.Applied>(Down).Single(e => e.What.Kind == ApplicationKind.Fertilizer).What;
        Assert.Contains(fed.Actives, a => a.Name == "nitrogen" && Math.Abs(a.Amount.Kilograms - (0.12 * fed.Amount.Mass!.Value.Kilograms)) < 1e-9);
    }

    [Fact]
    public void Spraying_and_feeding_carry_their_cautions_and_clothing()
    {
        var sheet = Of(Down);
        foreach (var step in sheet.Steps.Where(s => s.Kind == TaskKind.Spray))
        {
            Assert.Contains(Cautions.LabelId, step.CautionIds);
            Assert.Contains(step.Wear, w => w.Contains("label", StringComparison.Ordinal));
            Assert.NotEmpty(step.Troubles);
        }

        var spraying = sheet.Steps.Single(s => s.Id == "spray.pre-emergent");
        Assert.Contains(Cautions.HireId, spraying.CautionIds);
        Assert.Contains(spraying.Troubles, t => t.If == "The wind rises" && t.Then.Contains("5 mph", StringComparison.Ordinal));
        Assert.All(sheet.Steps.Where(s => s.Kind == TaskKind.Feed), s => Assert.Contains(Cautions.FertilizerId, s.CautionIds));
        Assert.All(sheet.Steps.SelectMany(s => s.CautionIds), id => Assert.Contains(sheet.Cautions, c => c.Id == id));
        string[] asked = ["Rain begins", "The bag runs out", "The wind rises"];
        Assert.All(sheet.Steps.Where(s => s.Id is "seed.first-half" or "seed.second-half" or "feed.starter-1"), s => Assert.Equal(asked, s.Troubles.Select(t => t.If)));
    }

    [Fact]
    public void The_evenings_before_ask_for_soft_soil_and_water()
    {
        foreach (var day in new[] { -3, -2, -1 })
        {
            var steps = Of(Down.AddDays(day)).Steps;
            var check = steps.Single(s => s.Id == "soak.check");
            Assert.Contains(check.Lines, l => l.Contains("screwdriver", StringComparison.Ordinal));
            Assert.Contains(check.Records, r => r.Entry is LogEntry.FingerTest);
            var water = steps.Single(s => s.Id == "water.soak");
            Assert.True(water.Start > check.Start);
            Assert.Equal(Plan.Water.Phases.Single(p => p.PhaseId == "soak").Runs[0].MinutesPerRound.Value, water.Timers.Where(t => !t.Id.EndsWith(".soak", StringComparison.Ordinal)).Sum(t => t.Minutes.Value) * Plan.Water.Phases.Single(p => p.PhaseId == "soak").Runs[0].Cycles, 6);
        }

        Assert.DoesNotContain(Of(Down.AddDays(-4)).Steps, s => s.Id == "water.soak");
    }

    [Fact]
    public void The_days_after_bring_their_rounds_the_feeding_and_the_first_mowing()
    {
        var rounds = Plan.Water.Phases.Single(p => p.PhaseId == "seedbed").Starts;
        var day9 = Of(Down.AddDays(9)).Steps;
        Assert.Equal(rounds.Select(r => (TimeOnly?)r), day9.Where(s => s.Id.Contains(".round-", StringComparison.Ordinal)).Select(s => s.Start));
        Assert.Contains(day9, s => s.Records.Any(r => r.Entry is LogEntry.FingerTest));
        Assert.Contains(Of(Down.AddDays(15)).Steps, s => s.Id == "feed.starter-2");
        var mow = Of(Plan.Tasks.Single(t => t.Id == "mow.first").Date).Steps.Single(s => s.Id == "mow.first");
        Assert.Equal(3.0, ((LogEntry.Mowed)mow.Records[0].Entry).To!.Value.Inches, 9); // West Virginia University Extension: first mowing from 4 in down to 3 in.
        Assert.Contains(Of(Down.AddDays(21)).Steps, s => s.PhotoPatches.Count > 0);
    }

    [Fact]
    public void What_the_log_shows_done_leaves_the_sheet_and_what_is_late_says_so()
    {
        var feedDay = Down.AddDays(15);
        Assert.Null(Of(feedDay).Steps.Single(s => s.Id == "feed.starter-2").DueBy);
        Assert.Equal(feedDay.AddDays(2), Of(feedDay.AddDays(4)).Steps.Single(s => s.Id == "feed.starter-2").DueBy);
        var done = Stamped(Records<LogEntry.Applied>(Down).First(e => e.What.Kind == ApplicationKind.Fertilizer)) with { At = At(feedDay) };
        Assert.Contains(With(feedDay, done).Steps, s => s.Id == "feed.starter-2");
        Assert.DoesNotContain(With(feedDay.AddDays(1), done).Steps, s => s.Id == "feed.starter-2");
    }

    [Fact]
    public void Done_is_what_the_plan_has_done()
    {
        // The starter a day early is the plan's own: seed-down day does not ask for it again, nor for what was sprayed the evening before.
        var entries = Records<LogEntry.Applied>(Down).Where(e => e.What.Kind is ApplicationKind.Fertilizer or ApplicationKind.Pesticide).Select(e => Stamped(e) with { At = At(Down.AddDays(-1)) }).ToArray();
        var plan = PlanOf(Known with { PreEmergent = Known.PreEmergent! with { MaximumPerYear = VolumePerArea.FromFluidOuncesPerAcre(20) } }, entries);
        var steps = Sheet.Of(Known, plan, FieldLog.Of(entries), Down).Steps;
        Assert.NotNull(plan.Tasks.Single(t => t.Id == "feed.starter-1").Done);
        Assert.NotNull(plan.Tasks.Single(t => t.Id == "spray.pre-emergent").Done);
        Assert.DoesNotContain(steps, s => s.Id is "feed.starter-1" or "spray.pre-emergent" or "spray.pre-emergent.mix");

        // A feeding of weeks before is no feeding of the plan's, however the sheet looks at it.
        Assert.Contains(With(Down, entries[0] with { At = At(Down.AddDays(-20)) }).Steps, s => s.Id == "feed.starter-1");
    }

    [Fact]
    public void Thin_spots_are_judged_once_every_patch_is()
    {
        var day = Down.AddDays(21);
        var seen = Stamped(new LogEntry.CoverSeen(Fraction.FromPercent(70), CoverJudged.ByEye) { Id = Guid.Empty, At = default, PatchId = "front" }) with { At = At(day) };
        Assert.Contains(Of(day.AddDays(1)).Steps, s => s.Id == "look.thin");
        Assert.Contains(With(day, seen).Steps, s => s.Id == "look.thin");
        Assert.DoesNotContain(With(day.AddDays(1), seen).Steps, s => s.Id == "look.thin");
    }

    [Fact]
    public void A_record_written_here_is_the_one_the_record_book_would_write()
    {
        foreach (var task in Plan.Tasks.Where(t => t.Kind is TaskKind.Seed or TaskKind.Feed or TaskKind.Spray))
        {
            var written = Of(task.Date).Steps.SelectMany(s => s.Records).Where(r => r.Id.StartsWith($"{task.Id}.applied", StringComparison.Ordinal)).Select(r => ((LogEntry.Applied)r.Entry).What).ToList();
            Assert.NotEmpty(written);
            Assert.Equal(PlannedApplications.For(Known, Plan, task.Id), written, Same);
        }
    }

    [Fact]
    public void Any_day_gives_a_sound_sheet() => Gen.Int[-60, 120].Sample(
        days =>
        {
            var (sheet, again) = (Of(Down.AddDays(days)), Of(Down.AddDays(days)));
            Assert.Equal(sheet.Steps.Select(s => s.Id), again.Steps.Select(s => s.Id));
            Assert.Distinct(sheet.Steps.Select(s => s.Id));
            Assert.Distinct(sheet.Steps.SelectMany(s => s.Records).Select(r => r.Id));
            Assert.Distinct(sheet.Steps.SelectMany(s => s.Timers).Select(t => t.Id));
            Assert.Distinct(sheet.Steps.SelectMany(s => s.Checks).Select(c => c.Id));
            Assert.All(sheet.Steps, s => Assert.NotEmpty(s.Records));
            Assert.All(sheet.Steps.SelectMany(s => s.Timers), t => Assert.True(t.Minutes.Value > 0.0));
            Assert.All(sheet.Steps.SelectMany(s => s.Big).Concat(sheet.Steps.SelectMany(s => s.Timers).Select(t => t.Minutes)), f => Assert.True(f.Working.Source.Length > 0 && f.Working.Formula.Length > 0, f.Id));
            Assert.True(days == 0 || sheet.Steps.Zip(sheet.Steps.Skip(1)).All(p => p.First.Start is null || p.Second.Start is null || p.First.Start <= p.Second.Start));
        },
        iter: 200);

    [Fact]
    public void Bare_facts_give_a_sheet_too()
    {
        var lawn = Lawns.Bare(InventedWeather.North);
        var plan = RecoveryPlanner.Plan(lawn, new Choices { Season = 2023 }, Weather, Tables.Trade);
        var sheet = Sheet.Of(lawn, plan, FieldLog.Empty, plan.Timing.SeedDown!.Value);
        Assert.Equal("begin", sheet.Steps[0].Id);
        Assert.All(sheet.Steps.SelectMany(s => s.Records).Where(r => r.Entry is not LogEntry.Note), r => Assert.Empty(LogRules.Problems(lawn, Stamped(r.Entry))));
    }

    private static bool Same(Application a, Application b) => a with { Actives = [] } == b with { Actives = [] } && a.Actives.SequenceEqual(b.Actives);

    private static RecoveryPlan PlanOf(Lawn lawn, params LogEntry[] log) => RecoveryPlanner.Plan(lawn, new Choices { Season = 2023, SeedDown = Down }, Weather, Tables.Trade, FieldLog.Of(log));

    private static Sheet With(DateOnly date, params LogEntry[] log) => Sheet.Of(Known, PlanOf(Known, log), FieldLog.Of(log), date);

    private static Sheet Of(DateOnly date) => Sheet.Of(Known, Plan, FieldLog.Empty, date);

    private static IEnumerable<T> Records<T>(DateOnly date) => Of(date).Steps.SelectMany(s => s.Records).Select(r => r.Entry).OfType<T>();

    private static LogEntry Stamped(LogEntry entry) => entry with { Id = Guid.NewGuid(), At = At(Down) };

    private static DateTimeOffset At(DateOnly day) => new(day.ToDateTime(new TimeOnly(12, 0)), TimeSpan.FromHours(-5));
}
