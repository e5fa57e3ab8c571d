using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Tests.Ground;
using Seedfall.Planning.Tests.Rules;

namespace Seedfall.Planning.Tests.Materials;

public sealed class FeedPlanningTests
{
    private static readonly Gen<Lawn> Lawns =
        from pack in Gen.OneOfConst([.. Tables.Shipped.RulePacks])
        from grass in Gen.Enum<GrassSpecies>()
        from slow in Gen.Double[0, 1]
        from entered in Gen.Bool
        from asked in Gen.Double[0.5, 12]
        from rated in Gen.Bool
        from applied in Gen.Double[0, 4]
        from work in Gen.Enum<SeedingWork>()
        select Some.Lawn(Some.Patch("front", 5000, 0.5, grass)) with
        {
            RulePack = pack.Id,
            Work = work,
            NitrogenThisYear = MassPerArea.FromPoundsPerThousandSquareFeet(applied),
            Starter = entered ? Grade("starter", 0.18, 0, 0.1) with { SlowNitrogen = Fraction.Of(slow), Rate = rated ? MassPerArea.FromPoundsPerThousandSquareFeet(asked) : null } : null,
        };

    [Fact]
    public void Nitrogen_never_stands_above_the_wall() => Gen.Select(Lawns, Gen.Int[0, 90]).Sample((lawn, later) =>
    {
        var plan = Section(lawn, Some.SeedDown.AddDays(later - 30), Some.LateFeed.AddDays(later)).Value;
        var rule = Tables.Shipped.Pack(lawn.RulePack)!.Nitrogen;
        foreach (var feeding in plan?.Feedings ?? [])
        {
            var slow = feeding.Id == "late-fall" || lawn.Starter is null ? 0.25 : lawn.Starter.SlowNitrogen!.Value.Value;
            var pounds = new MassPerArea(feeding.NitrogenRate.Value).PoundsPerThousandSquareFeet;
            Assert.True(pounds <= (NitrogenLimit.PerApplication(rule, slow).MaxPoundsPerM ?? double.MaxValue) + 1e-9);
        }

        var year = new MassPerArea(plan?.NitrogenThisSeason.Value ?? 0).PoundsPerThousandSquareFeet + lawn.NitrogenThisYear!.Value.PoundsPerThousandSquareFeet;
        Assert.True(plan is null || year <= Math.Max(rule.MaxPerYear ?? double.MaxValue, lawn.NitrogenThisYear!.Value.PoundsPerThousandSquareFeet) + 1e-9);
    });

    [Fact]
    public void No_feeding_falls_in_a_closed_season() => Gen.Select(Lawns, Gen.Int[0, 200]).Sample((lawn, later) =>
    {
        var blackout = Tables.Shipped.Pack(lawn.RulePack)!.FertilizerBlackout;
        foreach (var feeding in Section(lawn, Some.SeedDown.AddDays(later / 2), Some.LateFeed.AddDays(later)).Value?.Feedings ?? [])
        {
            Assert.False(blackout?.Covers(feeding.Date) ?? false);
        }
    });

    [Fact]
    public void The_plain_plan_feeds_three_times_with_zero_phosphate_by_default()
    {
        var section = Section(Some.Lawn());
        var plan = section.Value!;
        Assert.Equal(["starter-1", "starter-2", "late-fall"], plan.Feedings.Select(f => f.Id));
        Assert.Equal([Some.SeedDown, Some.SeedDown.AddDays(15), Some.LateFeed], plan.Feedings.Select(f => f.Date));
        Assert.All(plan.Feedings, f => Assert.Equal(0.0, f.PhosphateRate.Value));
        Assert.Equal(2.5, new MassPerArea(plan.NitrogenThisSeason.Value).PoundsPerThousandSquareFeet, 9);
        // 1 lb N at 20 % is 5 lb per 1,000 sq ft, on 7,500 sq ft.
        Assert.Equal(37.5, new Mass(plan.Feedings[0].Product.Value).Pounds, 9);
        Assert.Contains(section.Assumptions, a => a.Id == "assumed.feed.starter");
    }

    [Fact]
    public void Repair_gets_phosphate_where_the_rule_allows_it_and_not_where_the_soil_has_enough()
    {
        var repair = Some.Lawn() with { Work = SeedingWork.Repair, RulePack = "us-md" };
        Assert.True(Section(repair).Value!.Feedings[0].PhosphateRate.Value > 0);
        Assert.Equal(0.0, Section(repair with { Soil = new SoilFacts { PhosphorusPpm = 80 } }).Value!.Feedings[0].PhosphateRate.Value);
        Assert.Equal(0.0, Section(repair with { RulePack = "us-ny" }).Value!.Feedings[0].PhosphateRate.Value);
    }

    [Fact]
    public void A_default_above_a_limit_is_lowered_and_says_so()
    {
        var plan = Section(Some.Lawn() with { RulePack = "us-md" }).Value!;
        Assert.Equal(0.9, new MassPerArea(plan.Feedings[0].NitrogenRate.Value).PoundsPerThousandSquareFeet, 9);
        Assert.Contains(plan.Advice, a => a.Id == "feed.starter-1.lowered" && a.Statement.Contains("Maryland", StringComparison.Ordinal));
    }

    [Fact]
    public void Fine_fescue_is_not_fed_beyond_its_year()
    {
        var plan = Section(Some.Lawn(Some.Patch("front", 1000, 0.5, GrassSpecies.HardFescue))).Value!;
        Assert.Equal(2.0, new MassPerArea(plan.NitrogenThisSeason.Value).PoundsPerThousandSquareFeet, 9);
        Assert.Contains(plan.Advice, a => a.Id == "feed.late-fall.lowered");
    }

    [Theory]
    [InlineData("us-md", 0.10, null, "rules.nitrogen.slow.starter-1")]
    [InlineData("us-md", 0.30, 6.0, "rules.nitrogen.application.starter-1")]
    [InlineData("us-md-permissive", 0.0, 4.0, "rules.nitrogen.application.starter-1")]
    [InlineData("us-nj", 0.30, 5.0, "rules.nitrogen.year.starter-1")]
    public void An_entry_that_breaks_the_nitrogen_rule_is_a_wall(string pack, double slow, double? rate, string wall)
    {
        var lawn = Some.Lawn() with
        {
            RulePack = pack,
            NitrogenThisYear = MassPerArea.FromPoundsPerThousandSquareFeet(2.5),
            Starter = Grade("mine", 0.18, 0, 0) with { SlowNitrogen = Fraction.Of(slow), Rate = rate is { } r ? MassPerArea.FromPoundsPerThousandSquareFeet(r) : null },
        };
        var section = Section(lawn);
        Assert.Null(section.Value);
        var found = Assert.Single(section.Walls, w => w.Id == wall);
        Assert.NotEmpty(found.Instead);
    }

    [Fact]
    public void An_entry_within_the_limit_goes_on_as_entered()
    {
        var lawn = Some.Lawn() with { RulePack = "us-md-permissive", Starter = Grade("mine", 0.18, 0, 0) with { Rate = MassPerArea.FromPoundsPerThousandSquareFeet(3.88) } };
        Assert.Equal(3.88, new MassPerArea(Section(lawn).Value!.Feedings[0].ProductRate.Value).PoundsPerThousandSquareFeet, 9);
    }

    [Fact]
    public void Phosphate_entered_for_overseeding_in_New_York_is_a_wall_until_a_soil_test_lifts_it()
    {
        var lawn = Some.Lawn() with { RulePack = "us-ny", Work = SeedingWork.Overseed, Starter = Grade("18-24-12", 0.18, 0.24, 0.12) };
        Assert.Contains(Section(lawn).Walls, w => w.Id == "rules.phosphorus.starter-1");
        var tested = lawn with { Soil = new SoilFacts { PhosphorusPpm = 10, TestDate = new DateOnly(2025, 4, 1) } };
        Assert.NotNull(Section(tested).Value);
    }

    [Fact]
    public void A_late_feed_in_the_closed_season_moves_ahead_of_it()
    {
        var plan = Section(Some.Lawn() with { RulePack = "us-md" }, Some.SeedDown, new DateOnly(2025, 11, 25)).Value!;
        Assert.Equal(new DateOnly(2025, 11, 14), plan.Feedings.Single(f => f.Id == "late-fall").Date);
    }

    [Fact]
    public void Seeding_inside_the_closed_season_leaves_the_starter_out_with_its_wall()
    {
        var section = Section(Some.Lawn() with { RulePack = "us-ny" }, new DateOnly(2025, 12, 3), new DateOnly(2025, 11, 10));
        Assert.Contains(section.Walls, w => w.Id == "rules.blackout.starter-1");
        Assert.DoesNotContain(section.Value?.Feedings ?? [], f => f.Id.StartsWith("starter", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(5.2, "lime by")]
    [InlineData(6.6, "no lime")]
    [InlineData(7.8, "no lime")]
    public void Soil_ph_is_read(double ph, string says) =>
        Assert.Contains(says, Section(Some.Lawn() with { Soil = new SoilFacts { Ph = ph } }).Value!.Advice.Single(a => a.Id == "soil.ph").Statement, StringComparison.Ordinal);

    [Fact]
    public void An_unknown_rule_pack_throws() => Assert.Throws<ArgumentException>(() => Section(Some.Lawn() with { RulePack = "us-zz" }));

    private static Section<FeedPlan> Section(Lawn lawn, DateOnly? seedDown = null, DateOnly? lateFeed = null) =>
        FeedPlanning.Plan(lawn, Some.Choices, Tables.Shipped, Some.Summaries(lawn), seedDown ?? Some.SeedDown, lateFeed ?? Some.LateFeed);

    private static FertilizerProduct Grade(string name, double n, double p, double k) => new() { Name = name, Nitrogen = Fraction.Of(n), Phosphate = Fraction.Of(p), Potash = Fraction.Of(k) };
}
