using CsCheck;
using Seedfall.Engine.Simulation.Seedbed;
using Seedfall.Engine.Soil;

namespace Seedfall.Checks.Analytic.Water;

public sealed class SeedbedTests
{
    [Fact]
    public void DrainageIsExactAndStepsCompose()
    {
        // Closed form, computed, not outside evidence: loam of Saxton and Rawls 2006, 12 mm layer.
        var one = UnitGradientDrainage.Remaining(0.9, 5.351, 15.48, 1.0, 0.4595, 12.0);
        var half = UnitGradientDrainage.Remaining(0.9, 5.351, 15.48, 0.5, 0.4595, 12.0);
        Assert.Equal(0.748734, one, 6);
        Assert.Equal(one, UnitGradientDrainage.Remaining(half, 5.351, 15.48, 0.5, 0.4595, 12.0), 1e-12);
        Assert.InRange(UnitGradientDrainage.Remaining(0.9, 5.351, 15.48, 1e12, 0.4595, 12.0), 0.0, 0.1);
    }

    [Theory]
    [InlineData(SoilTexture.SandyLoam, 9.22, 17.04)]
    [InlineData(SoilTexture.Loam, 10.54, 20.05)]
    [InlineData(SoilTexture.ClayLoam, 11.2, 21.5)]
    [InlineData(SoilTexture.SiltLoam, 10.8, 22.3)]
    public void TenDaysOfDryingAgreeWithTheTrialScheme(SoilTexture texture, double threeDaysMm, double tenDaysMm)
    {
        // Computed by an earlier trial of the same scheme, not outside evidence; the outside bounds follow below.
        var drying = DryingSeedbed.CumulativeEvaporationMm(SeedbedSoil.For(texture), 10);
        Assert.InRange(drying[2], threeDaysMm - 0.2, threeDaysMm + 0.2);
        Assert.InRange(drying[9], tenDaysMm - 0.2, tenDaysMm + 0.2);
    }

    [Theory]
    [InlineData(SoilTexture.SandyLoam)]
    [InlineData(SoilTexture.Loam)]
    [InlineData(SoilTexture.SiltLoam)]
    [InlineData(SoilTexture.ClayLoam)]
    public void TenDaysOfDryingStayWithinRitchiesSoils(SoilTexture texture)
    {
        // Ritchie 1972, Water Resour. Res. 8:1204 (coefficients from memory, common practice): ten days at 4.5 to 5 mm/d
        // take 15.9 mm (Plainfield sand) to 26 mm (Adelanto clay loam).
        var drying = DryingSeedbed.CumulativeEvaporationMm(SeedbedSoil.For(texture), 10);
        Assert.InRange(drying[9], 15.0, 26.0);
    }

    [Theory]
    [InlineData(SoilTexture.LoamySand)]
    [InlineData(SoilTexture.SandyLoam)]
    [InlineData(SoilTexture.Loam)]
    [InlineData(SoilTexture.SiltLoam)]
    [InlineData(SoilTexture.ClayLoam)]
    [InlineData(SoilTexture.Clay)]
    public void ThreeLightRoundsNeverLeaveMoreDryHoursThanOneHeavy(SoilTexture texture)
    {
        // Light and frequent: 0.51 cm daily beat 1.02 cm every second day, CSSA 2014 abstract (read); the count itself is model output.
        var soil = SeedbedSoil.For(texture);
        Assert.True(DryingSeedbed.DryTopHours(soil, 8, 12, 16) <= DryingSeedbed.DryTopHours(soil, 7));
    }

    [Fact]
    public void EveryHourKeepsItsWater()
    {
        var soils = Gen.Enum<SoilTexture>();
        var hours = Gen.Select(Gen.Double[0, 40], Gen.Double[0, 10], Gen.Double[0, 1.2], Gen.Double[0, 0.6], Gen.Double[0, 300]).Array[1, 96];
        Gen.Select(soils, hours, Gen.Double[0.02, 0.6], Gen.Double[0, 8], Gen.Double[0, 1], Gen.Double[0.05, 0.44]).Sample((texture, storm, store, pond, mulch, start) =>
        {
            var soil = SeedbedSoil.For(texture);
            var state = new SeedbedState(Math.Min(start, 0.99 * soil.Hydraulics.Saturation));
            var surface = new SeedbedSurface(store, pond, mulch);
            foreach (var (rain, irrigation, demand, transpiration, roots) in storm)
            {
                var before = state.TotalMm;
                var flux = SeedbedWater.Step(soil, state, surface, new SeedbedHour(rain, irrigation, demand, transpiration, roots));
                var residual = before + rain + irrigation - flux.EvaporationMm - flux.TranspirationMm - flux.RunoffMm - flux.DrainageMm - state.TotalMm;
                Assert.InRange(residual, -1e-9, 1e-9);
                Assert.All(state.WaterContent, w => Assert.InRange(w, 0.0, soil.Hydraulics.Saturation * (1.0 + 1e-12)));
            }
        });
    }
}
