using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Planning.Water;

namespace Seedfall.Checks.Published.Water;

/// <summary>What the ground takes and holds, and runs split to suit it.</summary>
public sealed class IntakeAndCycleChecks
{
    // USDA table of maximum precipitation rates as quoted in irrigation texts: common practice, no source read.
    [Theory]
    [InlineData(SoilTexture.Sand, 0, 2.00, 2.00)]
    [InlineData(SoilTexture.LoamySand, 6, 2.00, 1.50)]
    [InlineData(SoilTexture.SandyLoam, 10, 1.00, 0.60)]
    [InlineData(SoilTexture.SiltLoam, 0, 1.00, 0.50)]
    [InlineData(SoilTexture.SiltLoam, 15, 0.40, 0.20)]
    [InlineData(SoilTexture.ClayLoam, 5, 0.20, 0.15)]
    [InlineData(SoilTexture.Clay, 13, 0.10, 0.06)]
    public void IntakeTable(SoilTexture texture, double slopePercent, double covered, double bare)
    {
        Assert.Equal(covered, SoilIntake.Covered(texture, slopePercent).InchesPerHour, 1e-9);
        Assert.Equal(bare, SoilIntake.Bare(texture, slopePercent).InchesPerHour, 1e-9);
    }

    // UC Davis / UC Managed Drought, available water in inches per foot; the value used lies in the printed range.
    [Theory]
    [InlineData(SoilTexture.Sand, 0.75, 1.25)]
    [InlineData(SoilTexture.LoamySand, 0.75, 1.25)]
    [InlineData(SoilTexture.SandyLoam, 1.25, 1.75)]
    [InlineData(SoilTexture.Loam, 1.50, 2.30)]
    [InlineData(SoilTexture.SiltLoam, 1.50, 2.30)]
    [InlineData(SoilTexture.ClayLoam, 1.75, 2.50)]
    [InlineData(SoilTexture.SiltyClay, 1.60, 2.50)]
    [InlineData(SoilTexture.Clay, 1.60, 2.50)]
    public void AvailableWaterLiesInThePrintedRange(SoilTexture texture, double low, double high) =>
        Assert.InRange(AvailableWater.In(texture, Depth.FromInches(12.0)).Inches, low, high);

    // Arithmetic on the allowable surface accumulation: S 0.10 in, PR 1.7, I 0.2 in/h give 4.0 min. Not outside evidence.
    [Fact]
    public void LongestRun() => Assert.Equal(
        4.0, CycleSoak.LongestRunMinutes(PrecipitationRate.FromInchesPerHour(1.7), PrecipitationRate.FromInchesPerHour(0.2), Depth.FromInches(0.1))!.Value, 0.02);

    // Texas A&M Water University: two or three short cycles. 0.25 in at 1.7 in/h is 8.8 min, three cycles of about 3 min.
    [Fact]
    public void ThreeShortCycles()
    {
        var minutes = 60.0 * 0.25 / 1.7;
        Assert.Equal(8.8, minutes, 0.05);
        Assert.Equal(3, CycleSoak.Cycles(minutes, 4.0));
        Assert.InRange(CycleSoak.SoakMinutes, 30.0, 60.0);
    }

    // One city's rule, read: 0.10 in/h on clay, spray runs of at most 6 minutes.
    [Fact]
    public void SprayOnClayRunsNoLongerThanTheCitysRule()
    {
        var longest = CycleSoak.LongestRunMinutes(PrecipitationRate.FromInchesPerHour(1.7), SoilIntake.Bare(SoilTexture.Clay, 8.0), CycleSoak.SurfaceStorage(8.0))!.Value;
        Assert.InRange(SoilIntake.Bare(SoilTexture.Clay, 8.0).InchesPerHour, 0.09, 0.11);
        Assert.InRange(longest, 4.0, 6.0);
    }

    // Arithmetic: what the soil takes as it comes needs no cycles.
    [Fact]
    public void SlowSprinklersNeedNoCycles()
    {
        Assert.Null(CycleSoak.LongestRunMinutes(PrecipitationRate.FromInchesPerHour(0.3), PrecipitationRate.FromInchesPerHour(0.5), Depth.FromInches(0.1)));
        Assert.Equal(1, CycleSoak.Cycles(500.0, null));
    }
}
