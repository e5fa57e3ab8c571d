using Seedfall.Engine.Units;
using Seedfall.Planning.Water;

namespace Seedfall.Checks.Published.Water;

/// <summary>Uniformity of catch cans.</summary>
public sealed class UniformityChecks
{
    private static readonly Depth[] Cans = [.. new[] { .30, .32, .25, .22, .28, .35, .31, .27, .24, .29, .33, .26, .30, .28, .21, .31 }.Select(Depth.FromInches)];

    // Sixteen invented cans in 15 minutes, worked by hand from the definitions (UC Davis CCUH for the low quarter): not outside evidence.
    [Fact]
    public void SixteenCans()
    {
        Assert.Equal(1.13, PrecipitationRateOf.Cans(new CatchCanTest(Cans, 15.0)).InchesPerHour, 1e-9);
        Assert.Equal(0.814, WaterUniformity.LowQuarter(Cans)!.Value, 0.0005);
        Assert.Equal(0.889, WaterUniformity.LowHalf(Cans)!.Value, 0.0005);
        Assert.Equal(0.889, WaterUniformity.Christiansen(Cans)!.Value, 0.0005);
        Assert.Equal(1.345, WaterUniformity.SchedulingCoefficient(Cans)!.Value, 0.0005);
        Assert.Equal(1.126, WaterUniformity.RunTimeMultiplier(Fraction.Of(WaterUniformity.LowQuarter(Cans)!.Value)), 0.001);
    }

    // RTM = 1 / (0.4 + 0.6 DU): common practice, no source read.
    [Theory]
    [InlineData(0.5, 1.43)]
    [InlineData(0.6, 1.316)]
    [InlineData(0.7, 1.22)]
    public void RunTimeMultiplier(double lowQuarter, double expected) =>
        Assert.Equal(expected, WaterUniformity.RunTimeMultiplier(Fraction.Of(lowQuarter)), 0.005);

    // The multiplier stands for 1 / DU of the low half, DU_lh = 0.386 + 0.614 DU_lq: common practice, no source read.
    [Theory]
    [InlineData(0.4)]
    [InlineData(0.6)]
    [InlineData(0.8)]
    [InlineData(1.0)]
    public void RunTimeMultiplierStandsForTheLowHalf(double lowQuarter) =>
        Assert.InRange(WaterUniformity.RunTimeMultiplier(Fraction.Of(lowQuarter)) * (0.386 + (0.614 * lowQuarter)), 0.985, 1.015);

    // Mecham 2010 (ASABE 35895): run times from 1/DU of the low quarter greatly over-water; the multiplier must be less.
    [Theory]
    [InlineData(0.5, 2.00)]
    [InlineData(0.6, 1.67)]
    [InlineData(0.7, 1.43)]
    public void LessThanOneOverDistributionUniformity(double lowQuarter, double over) =>
        Assert.True(WaterUniformity.RunTimeMultiplier(Fraction.Of(lowQuarter)) < over);

    // Arithmetic: equal cans are perfectly even; a dry can has no scheduling coefficient.
    [Fact]
    public void EdgesOfTheDefinitions()
    {
        Depth[] even = [Depth.FromInches(0.3), Depth.FromInches(0.3), Depth.FromInches(0.3)];
        Assert.Equal(1.0, WaterUniformity.LowQuarter(even)!.Value, 1e-12);
        Assert.Equal(1.0, WaterUniformity.Christiansen(even)!.Value, 1e-12);
        Assert.Null(WaterUniformity.SchedulingCoefficient([Depth.Zero, Depth.FromInches(1.0)]));
        Assert.Null(WaterUniformity.LowQuarter([Depth.Zero, Depth.Zero]));
        Assert.Throws<ArgumentException>(() => WaterUniformity.LowQuarter([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterUniformity.LowQuarter([Depth.FromInches(-0.1)]));
    }
}
