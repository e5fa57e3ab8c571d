using CsCheck;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Tests.Rules;

public sealed class RuleLimitTests
{
    private static readonly DateOnly Day = new(2025, 9, 8);

    [Fact]
    public void Nitrogen_allowed_never_breaks_either_limit() => Gen.Select(Gen.Double[0, 1], Gen.OneOfConst([.. Tables.Shipped.RulePacks])).Sample((slow, pack) =>
    {
        var allowed = NitrogenLimit.PerApplication(pack.Nitrogen, slow);
        if (allowed is { Refused: false, MaxPoundsPerM: { } most })
        {
            Assert.True(most <= (pack.Nitrogen.MaxTotalPerApplication ?? double.MaxValue) + 1e-12);
            Assert.True(most * (1 - slow) <= (pack.Nitrogen.MaxSolublePerApplication ?? double.MaxValue) + 1e-12);
        }
    });

    [Fact]
    public void Slow_share_outside_0_to_1_throws()
    {
        var rule = Tables.Shipped.Pack("us-md")!.Nitrogen;
        Assert.Throws<ArgumentOutOfRangeException>(() => NitrogenLimit.PerApplication(rule, -0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => NitrogenLimit.PerApplication(rule, 1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => NitrogenLimit.PerApplication(rule, double.NaN));
    }

    [Fact]
    public void Fully_slow_nitrogen_meets_only_the_total_limit() =>
        Assert.Equal(0.9, NitrogenLimit.PerApplication(Tables.Shipped.Pack("us-md")!.Nitrogen, 1.0).MaxPoundsPerM);

    [Fact]
    public void A_pack_without_limits_allows_anything()
    {
        var allowed = NitrogenLimit.PerApplication(Tables.Shipped.Pack("general")!.Nitrogen, 0.0);
        Assert.False(allowed.Refused);
        Assert.Null(allowed.MaxPoundsPerM);
        Assert.Null(NitrogenLimit.LeftThisYear(Tables.Shipped.Pack("general")!.Nitrogen, 3.0));
    }

    [Fact]
    public void What_is_left_of_a_year_never_falls_below_zero()
    {
        var rule = Tables.Shipped.Pack("us-nj")!.Nitrogen;
        Assert.Equal(0.2, NitrogenLimit.LeftThisYear(rule, 3.0)!.Value, 12);
        Assert.Equal(0.0, NitrogenLimit.LeftThisYear(rule, 9.0));
    }

    [Fact]
    public void A_soil_test_lifts_the_rule_only_in_date_and_only_when_it_shows_need()
    {
        var rule = new PhosphorusRule(0.0067, false, false, false, 2.0, "test", Sureness.Published);
        Assert.True(Allowed(rule, new SoilFacts { PhosphorusPpm = 10, TestDate = Day.AddDays(-700) }));
        Assert.False(Allowed(rule, new SoilFacts { PhosphorusPpm = 10, TestDate = Day.AddDays(-800) }));
        Assert.False(Allowed(rule, new SoilFacts { PhosphorusPpm = 10, TestDate = Day.AddDays(1) }));
        Assert.False(Allowed(rule, new SoilFacts { PhosphorusPpm = 60, TestDate = Day.AddDays(-10) }));
        Assert.False(Allowed(rule, new SoilFacts { PhosphorusPpm = 10 }));
        Assert.False(Allowed(rule with { SoilTestYears = null }, new SoilFacts { PhosphorusPpm = 10, TestDate = Day }));
    }

    private static bool Allowed(PhosphorusRule rule, SoilFacts soil) => PhosphorusLimit.Judge(rule, 0.12, SeedingWork.Overseed, soil, Day).Allowed;
}
