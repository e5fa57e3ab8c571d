using Seedfall.Engine.Soil;

namespace Seedfall.Checks.Published.Soil;

/// <summary>Saxton and Rawls 2006, Soil Sci. Soc. Am. J. 70:1569, table 3 (2.5 percent organic matter); the printed values are from memory (common practice, no source read).</summary>
public sealed class SaxtonRawlsChecks
{
    [Theory]
    [InlineData(SoilTexture.Sand, 5, 10, 46, 108.1, 1.43)]
    [InlineData(SoilTexture.LoamySand, 5, 12, 46, 96.7, 1.43)]
    [InlineData(SoilTexture.SandyLoam, 8, 18, 45, 50.3, 1.46)]
    [InlineData(SoilTexture.Loam, 14, 28, 46, 15.5, 1.43)]
    [InlineData(SoilTexture.SiltLoam, 11, 31, 48, 16.1, 1.38)]
    [InlineData(SoilTexture.Silt, 6, 30, 48, 22.0, 1.38)]
    [InlineData(SoilTexture.SandyClayLoam, 17, 27, 43, 11.3, 1.50)]
    [InlineData(SoilTexture.ClayLoam, 22, 36, 48, 4.3, 1.39)]
    [InlineData(SoilTexture.SiltyClayLoam, 22, 38, 51, 5.7, 1.30)]
    [InlineData(SoilTexture.SiltyClay, 27, 41, 52, 3.7, 1.26)]
    [InlineData(SoilTexture.SandyClay, 25, 36, 44, 1.4, 1.47)]
    [InlineData(SoilTexture.Clay, 30, 42, 50, 1.1, 1.33)]
    public void TableOfTypicalTextures(SoilTexture texture, double wiltingPct, double fieldPct, double saturationPct, double conductivityMmH, double densityMgM3)
    {
        var soil = TextureTable.For(texture).Hydraulics;
        Assert.Equal(wiltingPct, 100 * soil.WiltingPoint, 0.5);
        Assert.Equal(fieldPct, 100 * soil.FieldCapacity, 0.5);
        Assert.Equal(saturationPct, 100 * soil.Saturation, 0.5);
        Assert.Equal(conductivityMmH, soil.SaturatedConductivityMmH, 0.05);
        Assert.Equal(densityMgM3, soil.BulkDensityMgM3, 0.005);
    }

    // Computed from the equations, not outside evidence.
    [Fact]
    public void LoamUnrounded()
    {
        var loam = TextureTable.For(SoilTexture.Loam).Hydraulics;
        Assert.Equal(0.1370, loam.WiltingPoint, 5e-5);
        Assert.Equal(0.2796, loam.FieldCapacity, 5e-5);
        Assert.Equal(0.4595, loam.Saturation, 5e-5);
        Assert.Equal(15.48, loam.SaturatedConductivityMmH, 5e-3);
        Assert.Equal(5.351, loam.RetentionB, 5e-4);
        Assert.Equal(33.0, loam.SuctionKPa(loam.FieldCapacity), 1e-9);
        Assert.Equal(1500.0, loam.SuctionKPa(loam.WiltingPoint), 1e-6);
        Assert.Equal(loam.SaturatedConductivityMmH, loam.ConductivityMmH(loam.Saturation), 1e-9);
    }
}
