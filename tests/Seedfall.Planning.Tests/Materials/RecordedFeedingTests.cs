using System.Text.Json;
using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Records;
using Seedfall.Planning.Tests.Ground;
using Seedfall.Planning.Tests.Rules;

namespace Seedfall.Planning.Tests.Materials;

/// <summary>What was really fed stands in the place of what was planned, and the feedings to come keep to what it leaves.</summary>
public sealed class RecordedFeedingTests
{
    private static readonly string[] Steps = ["starter-1", "starter-2", "late-fall"];

    private static readonly Gen<Lawn> Lawns =
        from pack in Gen.OneOfConst([.. Tables.Shipped.RulePacks])
        from grass in Gen.Enum<GrassSpecies>()
        from slow in Gen.Double[0.2, 1]
        from asked in Gen.Double[0.5, 3.5]
        from rated in Gen.Bool
        from before in Gen.Double[0, 1.5]
        select Some.Lawn(Some.Patch("front", 5000, 0.5, grass), Some.Patch("side", 2000, 0.5, grass)) with
        {
            RulePack = pack.Id,
            NitrogenThisYear = MassPerArea.FromPoundsPerThousandSquareFeet(before),
            Starter = rated ? new FertilizerProduct { Name = "mine", Nitrogen = Fraction.Of(0.18), Phosphate = Fraction.Of(0), Potash = Fraction.Of(0), SlowNitrogen = Fraction.Of(slow), Rate = MassPerArea.FromPoundsPerThousandSquareFeet(asked) } : null,
        };

    private static readonly Gen<(int Days, double Pounds, string? Patch)[]> Fed =
        Gen.Select(Gen.Int[-60, 80], Gen.Double[0.05, 3], Gen.OneOfConst<string?>(null, "front", "side")).Array[0, 4];

    [Fact]
    public void The_years_nitrogen_never_stands_above_the_law_unless_the_record_alone_does() => Gen.Select(Lawns, Fed).Sample((lawn, fed) =>
    {
        if (Plan(lawn, fed) is not { Recorded: { } recorded } || Tables.Shipped.Pack(lawn.RulePack)!.Nitrogen.MaxPerYear is not { } most)
        {
            return;
        }

        var alone = RecordAlone(lawn, fed);
        Assert.True(Pounds(recorded.ThisYear) <= Math.Max(most, alone) + 1e-9, $"{Pounds(recorded.ThisYear)} of {most}, recorded {alone}");
    });

    [Fact]
    public void More_recorded_nitrogen_never_raises_what_is_still_planned() => Gen.Select(Lawns, Fed, Gen.Double[1, 3]).Sample((lawn, fed, factor) =>
    {
        fed = [.. fed.Select(f => f with { Patch = null })];
        var (less, more) = (Plan(lawn, fed), Plan(lawn, [.. fed.Select(f => f with { Pounds = f.Pounds * factor })]));
        if (more is not null)
        {
            Assert.NotNull(less);
            Assert.All(Steps, step => Assert.True(Left(more, step) <= Left(less, step) + 1e-9));
        }
    });

    [Fact]
    public void Fed_patch_by_patch_no_ground_gets_more_planned_than_with_less_in_the_record() => Gen.Select(Lawns, Fed, Gen.Double[1, 3]).Sample((lawn, fed, factor) =>
    {
        // A feeding that one patch's record forbids the whole lawn leaves room for the next on the others: single feedings may rise, a
        // ground's sum does not, but for less than the tenth of a pound that is not worth spreading.
        var (less, more) = (Plan(lawn, fed), Plan(lawn, [.. fed.Select(f => f with { Pounds = f.Pounds * factor })]));
        if (less is not null && more is not null)
        {
            Assert.All(lawn.Patches, patch => Assert.True(LeftOn(more, patch.Id, fed) < LeftOn(less, patch.Id, fed) + 0.1));
        }
    });

    [Fact]
    public void A_feeding_beside_the_plan_never_raises_what_is_still_planned() => Gen.Select(Lawns, Fed, Gen.Int[30, 45], Gen.Double[0.1, 3]).Sample((lawn, fed, day, pounds) =>
    {
        fed = [.. fed.Select(f => f with { Patch = null })];

        // Days 30 to 45 lie more than ten from day 15 and from the late feed on day 58: it counts for the year alone.
        var (less, more) = (Plan(lawn, fed), Plan(lawn, [.. fed, (day, pounds, null)]));
        if (less is not null && more is not null)
        {
            Assert.All(Steps, step => Assert.True(Left(more, step) <= Left(less, step) + 1e-9));
        }
    });

    [Fact]
    public void Without_a_feeding_in_the_log_the_feed_plan_is_byte_for_byte_as_before() => Lawns.Sample(lawn =>
    {
        LogEntry[] others = [new LogEntry.Mowed { Id = Id(1), At = At(3) }, new LogEntry.SeededDown { Id = Id(2), At = At(0) }, Entry(3, 0, 1.0, null) with { What = Entry(3, 0, 1.0, null).What with { Kind = ApplicationKind.Seed, Actives = [] } }];
        Assert.Equal(Bytes(Section(lawn, null)), Bytes(Section(lawn, FieldLog.Of(others))));
        Assert.Equal(Bytes(Section(lawn, null)), Bytes(Section(lawn, FieldLog.Of([Entry(4, 0, 1.0, null), new LogEntry.Struck(Id(4), "wrong lawn") { Id = Id(5), At = At(1) }]))));
    });

    [Fact]
    public void What_went_on_counts_in_the_place_of_what_was_planned_and_the_planned_stays_beside()
    {
        // New Jersey: 3.2 lb N a year (data/rules/us-nj.json, read second-hand). 0.9 planned, 1.8 put on, 0.5 and 0.9 to come.
        var plan = Plan(Some.Lawn() with { RulePack = "us-nj" }, [(0, 1.8, null)])!;
        Assert.Equal(2.3, Pounds(plan.Recorded!.PlannedThisSeason), 9);
        Assert.Equal(3.2, Pounds(plan.NitrogenThisSeason), 9);
        var first = plan.Recorded.Steps[0];
        Assert.Equal((0.9, 1.8, null, Sureness.Measured), (Math.Round(Pounds(first.Planned!), 9), Math.Round(Pounds(first.Applied!), 9), first.Left, first.Applied!.Working.Sureness));
        Assert.Contains("in the place of", first.Sentence, StringComparison.Ordinal);
        Assert.Equal((0.5, 0.9), (Math.Round(Left(plan, "starter-2"), 9), Math.Round(Left(plan, "late-fall"), 9)));

        var over = Plan(Some.Lawn() with { RulePack = "us-nj" }, [(0, 3.0, null)])!;
        Assert.Equal((0.2, 0.0), (Math.Round(Left(over, "starter-2"), 9), Left(over, "late-fall")));
        Assert.Contains(over.Advice, a => a.Id == "feed.late-fall.lowered" && a.Statement.Contains("New Jersey", StringComparison.Ordinal));
        Assert.Equal(0.9, Pounds(over.Recorded!.Steps[2].Planned!), 9);
        Assert.Contains(over.Feedings[1].NitrogenRate.Working.Inputs, input => input.Symbol == "R" && Math.Abs(input.Value - 3.0) < 1e-9);
    }

    [Fact]
    public void Less_than_planned_gives_the_following_feeds_the_room_back()
    {
        var lawn = Some.Lawn() with { RulePack = "us-nj", NitrogenThisYear = MassPerArea.FromPoundsPerThousandSquareFeet(1.2) };
        Assert.Equal(0.6, Pounds(Plan(lawn, [])!.Feedings.Single(f => f.Id == "late-fall").NitrogenRate), 9);
        Assert.Equal(0.9, Left(Plan(lawn, [(0, 0.5, null)])!, "late-fall"), 9);
    }

    [Fact]
    public void One_patch_done_leaves_the_rest_of_the_ground_to_feed()
    {
        var lawn = Some.Lawn(Some.Patch("front", 5000), Some.Patch("side", 2000));
        var plan = Plan(lawn, [(0, 1.4, "front")])!;
        var starter = plan.Feedings[0];
        Assert.Equal(1.0 * 2000.0 / 1000.0 / 0.2, new Mass(starter.Product.Value).Pounds, 9);
        Assert.Contains("side", plan.Recorded!.Steps[0].Sentence, StringComparison.Ordinal);
        Assert.Equal(1.4 + 0.5 + 1.0, Pounds(plan.NitrogenThisSeason), 9);
        Assert.Contains("front", plan.NitrogenThisSeason.Working.Note!, StringComparison.Ordinal);
    }

    [Fact]
    public void An_entered_rate_is_lowered_to_what_the_record_leaves_of_the_year()
    {
        var lawn = Some.Lawn() with { RulePack = "us-nj", Starter = new FertilizerProduct { Name = "mine", Nitrogen = Fraction.Of(0.18), Phosphate = Fraction.Of(0), Potash = Fraction.Of(0), SlowNitrogen = Fraction.Of(0.3), Rate = MassPerArea.FromPoundsPerThousandSquareFeet(5.0) } };
        var section = Section(lawn, FieldLog.Of([Entry(1, 0, 2.7, null)]));
        Assert.Empty(section.Walls);
        Assert.Equal(0.5, Left(section.Value!, "starter-2"), 9);
    }

    [Fact]
    public void Fertilizer_without_analysis_counts_as_planned_and_says_so_and_potash_alone_feeds_nothing()
    {
        Application Without(params AppliedActive[] actives) => Entry(1, 0, 1.0, null).What with { Actives = actives };
        var bare = Section(Some.Lawn(), FieldLog.Of([Entry(1, 0, 1.0, null) with { What = Without() }])).Value!;
        Assert.Equal(2.5, Pounds(bare.NitrogenThisSeason), 9);
        Assert.Contains("no analysis", bare.Recorded!.Steps[0].Sentence, StringComparison.Ordinal);
        Assert.Null(Section(Some.Lawn(), FieldLog.Of([Entry(1, 0, 1.0, null) with { What = Without(new AppliedActive("potash", Mass.FromPounds(3))) }])).Value!.Recorded);
    }

    [Fact]
    public void What_is_recorded_beyond_the_grasses_want_is_said_by_how_much()
    {
        // Kentucky bluegrass 3 to 4 lb N per 1,000 sq ft a year: Maine DACF.
        var plan = Plan(Some.Lawn(), [(0, 4.5, null)])!;
        Assert.Equal(["starter-1"], plan.Feedings.Select(f => f.Id));
        Assert.Contains("0.5 more than the 4", plan.Advice.Single(a => a.Id == "feed.recorded.grass").Statement, StringComparison.Ordinal);
    }

    private static double LeftOn(FeedPlan plan, string ground, (int Days, double Pounds, string? Patch)[] fed) =>
        Steps.Where(step => !fed.Where((f, i) => Entries(plan, step).Contains(Id(i + 1)) && (f.Patch is null || f.Patch == ground)).Any()).Sum(step => Left(plan, step));

    private static IReadOnlyList<Guid> Entries(FeedPlan plan, string step) => plan.Recorded?.Steps.Single(s => s.Id == step).EntryIds ?? [];

    private static double RecordAlone(Lawn lawn, (int Days, double Pounds, string? Patch)[] fed)
    {
        double On(string ground, bool own) => fed.Where(f => f.Days >= -1 == own && (f.Patch is null || f.Patch == ground)).Sum(f => f.Pounds);
        return lawn.Patches.Max(p => Math.Max(lawn.NitrogenThisYear!.Value.PoundsPerThousandSquareFeet, On(p.Id, false)) + On(p.Id, true));
    }

    private static double Left(FeedPlan plan, string step) => plan.Recorded is { } recorded
        ? recorded.Steps.Single(s => s.Id == step).Left is { } left ? Pounds(left) : 0.0
        : plan.Feedings.FirstOrDefault(f => f.Id == step) is { } feeding ? Pounds(feeding.NitrogenRate) : 0.0;

    private static double Pounds(Figure figure) => new MassPerArea(figure.Value).PoundsPerThousandSquareFeet;

    private static string Bytes(Section<FeedPlan> section) => JsonSerializer.Serialize(section);

    private static FeedPlan? Plan(Lawn lawn, (int Days, double Pounds, string? Patch)[] fed) =>
        Section(lawn, FieldLog.Of(fed.Select((f, i) => Entry(i + 1, f.Days, f.Pounds, f.Patch)))).Value;

    private static Section<FeedPlan> Section(Lawn lawn, FieldLog? log) =>
        FeedPlanning.Plan(lawn, Some.Choices, Tables.Shipped, Some.Summaries(lawn), Some.SeedDown, Some.LateFeed, log);

    /// <summary>So many pounds of nitrogen per 1,000 sq ft.</summary>
    private static LogEntry.Applied Entry(int id, int days, double pounds, string? patch) => new(new Application
    {
        Kind = ApplicationKind.Fertilizer,
        Product = "zero-phosphate 20-0-10 starter",
        Amount = new(Mass.FromPounds(pounds * 2.0 / 0.2), null),
        Area = Area.FromSquareFeet(2000.0),
        Actives = [new("nitrogen", Mass.FromPounds(pounds * 2.0))],
    })
    { Id = Id(id), At = At(days), PatchId = patch };

    private static DateTimeOffset At(int days) => new(Some.SeedDown.AddDays(days).ToDateTime(new TimeOnly(15, 0)), TimeSpan.FromHours(-5));

    private static Guid Id(int n) => new(n, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
}
