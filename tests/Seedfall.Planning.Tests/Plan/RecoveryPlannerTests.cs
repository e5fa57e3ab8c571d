using System.Text.Json;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Tests.Plan;

public sealed class RecoveryPlannerTests
{
    private static readonly WeatherHistory Weather = InventedWeather.Years(2004, 2023, InventedWeather.North);

    private static readonly WeatherHistory SouthernWeather = InventedWeather.Years(2004, 2023, InventedWeather.South);

    private static readonly Choices Season = new() { Season = 2023 };

    [Fact]
    public void AnOrdinaryLawnGetsTheWholePlan()
    {
        var plan = Plan(Lawns.Known(InventedWeather.North), Season);
        Assert.Equal(VerdictKind.Recover, plan.Verdict.Kind);
        Assert.NotNull(plan.Timing.SeedDown);
        Assert.NotNull(plan.Seed);
        Assert.NotNull(plan.Feed);
        Assert.NotNull(plan.Spray);
        Assert.Empty(plan.Walls);
        string[] ids = ["water.soak", "mow.seed-down", "seed.down", "feed.starter-1", "spray.pre-emergent", "water.first", "look.emergence", "feed.starter-2", "mow.first", "mow.last"];
        Assert.All(ids, id => Assert.Contains(plan.Tasks, t => t.Id == id));
    }

    [Fact]
    public void TheBareFactsAreEnoughAndEveryGapIsNamed()
    {
        var plan = Plan(Lawns.Bare(InventedWeather.North), Season);
        Assert.NotEmpty(plan.Tasks);
        Assert.Contains(plan.Assumptions, a => a.Id == "assumed.zone");
        Assert.Contains(plan.Assumptions, a => a.Id == "assumed.rules");
        Assert.True(plan.Assumptions.Count >= 8);
        Assert.All(plan.Assumptions, a => Assert.True(a.Statement.Length > 0 && a.Effect.Length > 0 && a.Replace.Length > 0));
    }

    [Fact]
    public void TheSameInputsGiveTheSameBytes()
    {
        var lawn = Lawns.Known(InventedWeather.North);
        Assert.Equal(Bytes(Plan(lawn, Season)), Bytes(Plan(lawn, Season)));
    }

    [Fact]
    public void EveryFigureHasOneMeaningAndAWorking()
    {
        var figures = FigureWalk.In(Plan(Lawns.Known(InventedWeather.North), Season)).ToList();
        Assert.True(figures.Count > 60);
        Assert.All(figures, f => Assert.True(f.Working.Source.Length > 0 && f.Working.Formula.Length > 0, f.Id));
        Assert.All(figures.GroupBy(f => f.Id), same => Assert.Single(same.Select(f => f.Value).Distinct()));
    }

    [Fact]
    public void TasksComeInOrderOnceEachWithTheirCautions()
    {
        var plan = Plan(Lawns.Known(InventedWeather.North), Season);
        Assert.Equal(plan.Tasks.Select(t => t.Date).Order(), plan.Tasks.Select(t => t.Date));
        Assert.Equal(plan.Tasks.Count, plan.Tasks.Select(t => t.Id).Distinct().Count());
        Assert.All(plan.Tasks, t => Assert.True(t.LastDate >= t.Date, t.Id));
        Assert.All(plan.Tasks.SelectMany(t => t.CautionIds), id => Assert.Contains(plan.Cautions, c => c.Id == id));
        var sprays = plan.Tasks.Where(t => t.Kind == TaskKind.Spray).ToList();
        Assert.NotEmpty(sprays);
        Assert.All(sprays, t => Assert.Contains(Cautions.LabelId, t.CautionIds));
    }

    [Fact]
    public void AnotherSeedDownDayMovesTheWork()
    {
        var lawn = Lawns.Known(InventedWeather.North);
        var (first, second) = (Plan(lawn, Season with { SeedDown = new DateOnly(2023, 8, 28) }), Plan(lawn, Season with { SeedDown = new DateOnly(2023, 9, 4) }));
        Assert.Equal(new DateOnly(2023, 8, 28), Day(first, "seed.down"));
        Assert.Equal(new DateOnly(2023, 9, 4), Day(second, "seed.down"));
        Assert.Equal(7, Day(second, "feed.starter-2").DayNumber - Day(first, "feed.starter-2").DayNumber);
    }

    [Fact]
    public void TheNextActionFollowsTheDay()
    {
        var lawn = Lawns.Known(InventedWeather.North);
        var seedDown = Plan(lawn, Season).Timing.SeedDown!.Value;
        var onTheDay = Plan(lawn, Season with { SeedDown = seedDown, Today = seedDown });
        Assert.Equal("mow.seed-down", onTheDay.Next.TaskId);
        Assert.Null(Plan(lawn, Season with { SeedDown = seedDown, Today = new DateOnly(2024, 5, 1) }).Next.TaskId);
    }

    [Fact]
    public void GrubsAreCuredBeforeSeedIsBought()
    {
        var lawn = Lawns.Known(InventedWeather.North);
        var grubs = lawn with { Patches = [lawn.Patches[0] with { Cause = DamageCause.Grubs, CauseCured = false, GrubsPerSquareFoot = 14 }] };
        var plan = Plan(grubs, Season);
        Assert.Equal(VerdictKind.CureFirst, plan.Verdict.Kind);
        Assert.Null(plan.Seed);
        Assert.Null(plan.Timing.SeedDown);
        Assert.DoesNotContain(plan.Tasks, t => t.Kind is TaskKind.Seed or TaskKind.Feed or TaskKind.Spray);
    }

    [Fact]
    public void ASprayStillWorkingHoldsSeedDown()
    {
        var lawn = Lawns.Known(InventedWeather.North) with
        {
            Sprayed = [new PastSpray { ActiveIngredient = "prodiamine", Date = new DateOnly(2023, 7, 1), LabelSeedingIntervalDays = 150 }],
        };
        var plan = Plan(lawn, Season with { SeedDown = new DateOnly(2023, 9, 4) });
        Assert.Equal(VerdictKind.Wait, plan.Verdict.Kind);
        Assert.True(plan.Verdict.WaitUntil >= new DateOnly(2023, 11, 28));
        Assert.NotEmpty(plan.Walls);
        Assert.Null(plan.Seed);
    }

    [Fact]
    public void AYearlyMaximumIsAWall()
    {
        var lawn = Lawns.Known(InventedWeather.North);
        var over = lawn with { PreEmergent = lawn.PreEmergent! with { AppliedThisYear = VolumePerArea.FromFluidOuncesPerAcre(13) } };
        var plan = Plan(over, Season);
        Assert.Null(plan.Spray);
        Assert.Contains(plan.Walls, w => w.Statement.Length > 0 && w.Instead.Length > 0);
        Assert.DoesNotContain(plan.Tasks, t => t.Kind == TaskKind.Spray);
    }

    [Fact]
    public void TheSouthSeedsInItsOwnAutumn()
    {
        var plan = Plan(Lawns.Known(InventedWeather.South), Season, SouthernWeather);
        Assert.InRange(plan.Timing.SeedDown!.Value, new DateOnly(2023, 2, 1), new DateOnly(2023, 5, 15));
        Assert.True(plan.Tasks.Max(t => t.Date) < new DateOnly(2023, 10, 1));
    }

    [Fact]
    public void AnUnsoundLawnIsTurnedAwayAtTheDoor()
    {
        var lawn = Lawns.Bare(InventedWeather.North);
        var twice = lawn with { Patches = [lawn.Patches[0], lawn.Patches[0]] };
        Assert.Throws<ArgumentException>(() => Plan(twice, Season));
    }

    private static RecoveryPlan Plan(Lawn lawn, Choices choices, WeatherHistory? weather = null) => RecoveryPlanner.Plan(lawn, choices, weather ?? Weather, Tables.Trade);

    private static DateOnly Day(RecoveryPlan plan, string task) => plan.Tasks.Single(t => t.Id == task).Date;

    private static string Bytes(RecoveryPlan plan) => JsonSerializer.Serialize(plan);
}
