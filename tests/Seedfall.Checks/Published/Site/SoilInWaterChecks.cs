using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Checks.Published.Site;

/// <summary>Settling, units of soil reports, hardiness zones and the feel key against printed values.</summary>
public sealed class SoilInWaterChecks
{
    // Viscosity of water, mPa s, CRC Handbook of Chemistry and Physics (IAPWS), from memory: common practice, no source read.
    [Theory]
    [InlineData(0, 1.792)]
    [InlineData(10, 1.306)]
    [InlineData(20, 1.002)]
    [InlineData(25, 0.890)]
    [InlineData(30, 0.797)]
    public void ViscosityOfWater(double waterC, double expected) =>
        Assert.Equal(expected, StokesSettling.ViscosityPaS(Temperature.FromCelsius(waterC)) * 1e3, 0.002);

    // Density of water, kg/m3, from the same tables and memory.
    [Theory]
    [InlineData(4, 999.97)]
    [InlineData(10, 999.70)]
    [InlineData(20, 998.21)]
    [InlineData(30, 995.65)]
    public void DensityOfWater(double waterC, double expected) =>
        Assert.Equal(expected, StokesSettling.WaterKgM3(Temperature.FromCelsius(waterC)), 0.05);

    // Pipette analysis draws the clay (below 0.002 mm) at 10 cm depth after 7 h 44 min at 20 degC, and 0.02 mm after 4 min 38 s
    // (ISO 11277 and methods of soil analysis, from memory: common practice, no source read).
    [Theory]
    [InlineData(2e-6, 27840)]
    [InlineData(20e-6, 278)]
    public void PipetteTimes(double diameterM, double expectedS) =>
        Assert.Equal(expectedS, StokesSettling.Seconds(diameterM, Length.FromCentimeters(10), Temperature.FromCelsius(20)), expectedS * 0.003);

    // What all guides tell for a quart jar: the sand after about a minute (Montana State, Clemson, Colorado State extension guides).
    [Fact]
    public void SandIsDownInAboutAMinute() =>
        Assert.InRange(StokesSettling.Seconds(StokesSettling.FinestSandM, Length.FromCentimeters(14), Temperature.FromCelsius(20)), 45, 75);

    // Phosphorus in phosphate 0.4364 and potassium in potash 0.8301 (printed on fertilizer conversion tables); 50 to 75 lb/acre is 25 to 37.5 ppm.
    [Fact]
    public void UnitsOfASoilReport()
    {
        Assert.Equal(0.4364, SoilTestUnits.PhosphorusFromPhosphate(1), 1e-4);
        Assert.Equal(0.8301, SoilTestUnits.PotassiumFromPotash(1), 1e-4);
        Assert.Equal(37.5, SoilTestUnits.PpmFromPoundsPerAcre(75));
    }

    // The legend of the plant hardiness map of the U.S. Department of Agriculture: 1a -60 to -55 degF, 5a -20 to -15, 6b -5 to 0,
    // 7b 5 to 10, 13b 65 to 70; a zone begins at its own lower limit.
    [Theory]
    [InlineData(-60, "1a")]
    [InlineData(-17, "5a")]
    [InlineData(-5, "6b")]
    [InlineData(-0.1, "6b")]
    [InlineData(0, "7a")]
    [InlineData(7, "7b")]
    [InlineData(69, "13b")]
    public void HardinessZones(double meanF, string zone) => Assert.Equal(zone, HardinessZone.Of(Temperature.FromFahrenheit(meanF)).Name);

    // Thien 1979, J. Agron. Educ. 8:54-55, the twelve ends of the key less silt.
    [Theory]
    [InlineData(false, RibbonLength.None, WetFeel.Neither, SoilTexture.Sand)]
    [InlineData(true, RibbonLength.None, WetFeel.Neither, SoilTexture.LoamySand)]
    [InlineData(true, RibbonLength.Short, WetFeel.Gritty, SoilTexture.SandyLoam)]
    [InlineData(true, RibbonLength.Short, WetFeel.Smooth, SoilTexture.SiltLoam)]
    [InlineData(true, RibbonLength.Short, WetFeel.Neither, SoilTexture.Loam)]
    [InlineData(true, RibbonLength.Medium, WetFeel.Gritty, SoilTexture.SandyClayLoam)]
    [InlineData(true, RibbonLength.Medium, WetFeel.Smooth, SoilTexture.SiltyClayLoam)]
    [InlineData(true, RibbonLength.Medium, WetFeel.Neither, SoilTexture.ClayLoam)]
    [InlineData(true, RibbonLength.Long, WetFeel.Gritty, SoilTexture.SandyClay)]
    [InlineData(true, RibbonLength.Long, WetFeel.Smooth, SoilTexture.SiltyClay)]
    [InlineData(true, RibbonLength.Long, WetFeel.Neither, SoilTexture.Clay)]
    public void FeelKeyOfThien(bool ball, RibbonLength ribbon, WetFeel feel, SoilTexture expected) => Assert.Equal(expected, FeelKey.ClassOf(ball, ribbon, feel));

    // A home report printed by Michigan State University's lawn and garden soil test (2017): phosphorus 13 ppm and potassium 87 ppm
    // called below optimum, pH 7.7 without lime. The laboratory's extract then was Bray P-1 (from memory). The two schools part on
    // the potassium: it is above the sustainable minimum and below no older line for loam.
    [Fact]
    public void AHomeLawnReport()
    {
        var read = SoilReadings.Of(new SoilFacts { Ph = 7.7, Extract = SoilExtract.Bray1, PhosphorusPpm = 13, PotassiumPpm = 87, MagnesiumPpm = 183, CalciumPpm = 3681, CationExchange = 20.2, OrganicMatter = Fraction.FromPercent(6.4) });
        Assert.Equal(
            [SoilLevel.High, SoilLevel.Low, SoilLevel.Optimum, SoilLevel.High, SoilLevel.High, SoilLevel.High, SoilLevel.High],
            read.Select(r => r.Level));
        Assert.Contains("no lime", read[0].Sentence, StringComparison.Ordinal);
    }
}
