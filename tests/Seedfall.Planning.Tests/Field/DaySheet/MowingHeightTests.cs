using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Field;

namespace Seedfall.Planning.Tests.Field;

public sealed class MowingHeightTests
{
    /// <summary>One-third rule: West Virginia University Extension. 2 7/8 in for "just under 3 in": common practice, no source read.</summary>
    [Theory]
    [InlineData(2.75, CutRule.Leave, null, null)]
    [InlineData(3.5, CutRule.Kept, null, 2.875)]
    [InlineData(4.25, CutRule.Kept, null, 2.875)]
    [InlineData(4.5, CutRule.Exception, 3.0, 2.875)]
    [InlineData(5.5, CutRule.Exception, 3.6667, 2.875)]
    [InlineData(6.5, CutRule.TooTall, 4.3333, 3.25)]
    public void Just_under_three_inches_and_a_third_as_the_rule(double standsIn, CutRule rule, double? firstIn, double? cutIn)
    {
        var cut = MowingHeight.SeedDown(Depth.FromInches(standsIn));
        Assert.Equal(rule, cut.Rule);
        Assert.Equal(firstIn, cut.First is { } f ? Math.Round(new Depth(f.Value).Inches, 4) : null);
        Assert.Equal(cutIn, cut.Cut is { } c ? Math.Round(new Depth(c.Value).Inches, 4) : null);
    }

    [Fact]
    public void An_exception_says_that_it_is_one_and_why()
    {
        var sentence = MowingHeight.SeedDown(Depth.FromInches(4.75)).Sentence;
        Assert.Contains("Today is an exception", sentence, StringComparison.Ordinal);
        Assert.Contains("39 % of the leaf", sentence, StringComparison.Ordinal);
        Assert.Contains("Seed needs light", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("exception", MowingHeight.SeedDown(Depth.FromInches(4.0)).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void No_mowing_takes_more_than_half_and_none_more_than_a_third_unsaid() => Gen.Double[0.1, 24.0].Sample(inches =>
    {
        var cut = MowingHeight.SeedDown(Depth.FromInches(inches));
        var left = cut.Cut is { } c ? new Depth(c.Value).Inches / inches : 1.0;
        Assert.True(left >= 0.5 - 1e-9);
        Assert.True(left >= (2.0 / 3.0) - 1e-9 || cut.Rule is CutRule.Exception or CutRule.TooTall);
        Assert.True(cut.First is null || cut.First.Value / 25.4 / inches >= (2.0 / 3.0) - 1e-9);
        Assert.True(cut.Cut is null || cut.Cut.Value >= MowingHeight.JustUnderThree.Millimeters - 1e-9);
    });

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(25.0)]
    public void A_height_no_grass_stands_at_is_refused(double inches) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MowingHeight.SeedDown(Depth.FromInches(inches)));
}
