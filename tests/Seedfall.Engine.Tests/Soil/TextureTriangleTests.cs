using CsCheck;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;

namespace Seedfall.Engine.Tests.Soil;

public sealed class TextureTriangleTests
{
    [Fact]
    public void EveryTypicalSoilIsOfItsClass() => Assert.All(TextureTable.All, row => Assert.Equal(row.Texture, TextureTriangle.ClassOf(row.Sand, row.Clay)));

    // Corners and printed limits of the triangle in USDA Handbook 18, chapter 3 (common practice, no source read).
    [Theory]
    [InlineData(100, 0, SoilTexture.Sand)]
    [InlineData(0, 100, SoilTexture.Clay)]
    [InlineData(0, 0, SoilTexture.Silt)]
    [InlineData(0, 40, SoilTexture.SiltyClay)]
    [InlineData(45, 40, SoilTexture.Clay)]
    [InlineData(46, 40, SoilTexture.SandyClay)]
    [InlineData(20, 27, SoilTexture.SiltyClayLoam)]
    [InlineData(21, 27, SoilTexture.ClayLoam)]
    [InlineData(52, 7, SoilTexture.Loam)]
    [InlineData(53, 7, SoilTexture.SandyLoam)]
    [InlineData(50, 0, SoilTexture.SiltLoam)]
    [InlineData(51, 0, SoilTexture.SandyLoam)]
    public void LimitsOfTheTriangle(double sandPct, double clayPct, SoilTexture expected) =>
        Assert.Equal(expected, TextureTriangle.ClassOf(Fraction.FromPercent(sandPct), Fraction.FromPercent(clayPct)));

    [Fact]
    public void EverySoilHasAClass() => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((a, b) =>
        Assert.True(Enum.IsDefined(TextureTriangle.ClassOf(Fraction.Of(Math.Min(a, b)), Fraction.Of(1 - Math.Max(a, b))))));

    [Fact]
    public void MoreThanTheWholeIsRefusedByName()
    {
        var (sand, clay, organic) = (Fraction.FromPercent(60), Fraction.FromPercent(50), Fraction.FromPercent(2));
        Action[] doors = [() => TextureTriangle.ClassOf(sand, clay), () => SaxtonRawls.Of(sand, clay, organic), () => _ = new SoilThermal(sand, clay, organic)];
        Assert.All(doors, door => Assert.Contains("together exceed 100 %", Assert.Throws<ArgumentOutOfRangeException>(door).Message, StringComparison.Ordinal));
    }

    [Fact]
    public void HydraulicsAreOrderedAndFiniteOverTheirRange() => Gen.Select(Gen.Double[0.0, 1.0], Gen.Double[0.02, 0.6], Gen.Double[0.5, 6.0]).Sample((sandShare, clay, organicPct) =>
    {
        var soil = SaxtonRawls.Of(Fraction.Of(sandShare * (1 - clay)), Fraction.Of(clay), Fraction.FromPercent(organicPct));
        Assert.True(soil.WiltingPoint > 0 && soil.WiltingPoint < soil.FieldCapacity && soil.FieldCapacity < soil.Saturation && soil.Saturation < 0.8, soil.ToString());
        Assert.InRange(soil.SaturatedConductivityMmH, 0.0, 400.0);
        Assert.True(double.IsFinite(soil.AirEntryKPa) && soil.AirEntryKPa >= 0.2);
    });

    /// <summary>A corner where the regressions cross: still in order, still a number.</summary>
    [Fact]
    public void WhereTheRegressionsCrossSomethingStillDrains()
    {
        var soil = SaxtonRawls.Of(Fraction.FromPercent(40), Fraction.FromPercent(60), Fraction.FromPercent(5.05));
        Assert.True(soil.FieldCapacity < soil.Saturation);
        Assert.InRange(soil.SaturatedConductivityMmH, 0.0, 0.01);
    }

    [Fact]
    public void TooMuchClayOrOrganicMatterIsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SaxtonRawls.Of(Fraction.FromPercent(10), Fraction.FromPercent(70), Fraction.FromPercent(2)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SaxtonRawls.Of(Fraction.FromPercent(10), Fraction.FromPercent(30), Fraction.FromPercent(9)));
    }
}
