using System.Runtime.Intrinsics;
using CsCheck;
using Seedfall.Engine.Simulation.Seedbed;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;

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
    [InlineData(SoilTexture.SandyClayLoam)]
    [InlineData(SoilTexture.Loam)]
    [InlineData(SoilTexture.SiltLoam)]
    [InlineData(SoilTexture.Silt)]
    [InlineData(SoilTexture.ClayLoam)]
    [InlineData(SoilTexture.SiltyClayLoam)]
    [InlineData(SoilTexture.SandyClay)]
    [InlineData(SoilTexture.SiltyClay)]
    [InlineData(SoilTexture.Clay)]
    public void TenDaysOfDryingStayWithinRitchiesSoils(SoilTexture texture)
    {
        // Ritchie 1972, Water Resour. Res. 8:1204 (coefficients from memory, common practice): ten days at 4.5 to 5 mm/d
        // take 15.9 mm (Plainfield sand) to 26 mm (Adelanto clay loam).
        var drying = DryingSeedbed.CumulativeEvaporationMm(SeedbedSoil.For(texture), 10);
        Assert.InRange(drying[9], 15.8, 26.0);
    }

    [Theory]
    // FAO-56 table 19, total evaporable water of 0.10 m (from memory, common practice). Ritchie's Plainfield sand lost 15.9 mm:
    // the two disagree on sands, and the scheme holds the lower.
    [InlineData(SoilTexture.Sand, 6.0, 12.0)]
    [InlineData(SoilTexture.LoamySand, 9.0, 14.0)]
    public void SandsDryAsFarAsTheirEvaporableWater(SoilTexture texture, double leastMm, double mostMm) =>
        Assert.InRange(DryingSeedbed.CumulativeEvaporationMm(SeedbedSoil.For(texture), 10)[9], leastMm, mostMm);

    [Theory]
    [InlineData(SoilTexture.Sand)]
    [InlineData(SoilTexture.LoamySand)]
    [InlineData(SoilTexture.SandyLoam)]
    [InlineData(SoilTexture.SandyClayLoam)]
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
    public void EveryHourKeepsItsWaterInEveryLane()
    {
        var hour = Gen.Select(Gen.Double[0, 40], Gen.Double[0, 10], Gen.Double[0, 1.2], Gen.Double[0, 0.6]);
        var hours = Gen.Select(hour, hour, hour, hour, Gen.Double[0, 300]).Array[1, 96];
        Gen.Select(Gen.Enum<SoilTexture>(), hours, Gen.Double[0.02, 0.6], Gen.Double[0, 8], Gen.Double[0, 1], Gen.Double[0.05, 0.44]).Sample((texture, storm, store, pond, mulch, start) =>
        {
            var soil = SeedbedSoil.For(texture);
            var state = new SeedbedState(Math.Min(start, 0.99 * soil.Hydraulics.Saturation));
            var surface = new SeedbedSurface(store, pond, mulch);
            foreach (var (a, b, c, d, roots) in storm)
            {
                var now = new SeedbedHour(
                    Vector256.Create(a.Item1, b.Item1, c.Item1, d.Item1),
                    Vector256.Create(a.Item2, b.Item2, c.Item2, d.Item2),
                    Vector256.Create(a.Item3, b.Item3, c.Item3, d.Item3),
                    Vector256.Create(a.Item4, b.Item4, c.Item4, d.Item4),
                    roots);
                var before = state.TotalMm;
                var flux = SeedbedWater.Step(soil, state, surface, now);
                var residual = before + now.RainMm + now.IrrigationMm - flux.EvaporationMm - flux.TranspirationMm - flux.RunoffMm - flux.DrainageMm - state.TotalMm;
                Assert.True(Vector256.LessThanAll(Vector256.Abs(residual), Vector256.Create(1e-9)), $"{residual} mm");
                Assert.All(state.WaterContent, w => Assert.True(
                    Vector256.GreaterThanAll(w, Vector256<double>.Zero) && Vector256.LessThanAll(w, Vector256.Create(soil.Hydraulics.Saturation * (1.0 + 1e-12))), $"{w}"));
            }
        });
    }

    [Fact]
    public void AnySoilKeepsItsWaterThroughAnyStorm()
    {
        // Conservation for random soils, not the twelve typical ones: 1e-9 of what the hour held and moved. The seed once found a top
        // layer so little above air-dry that its evaporation was lost in rounding.
        var soils = Gen.Select(Gen.Double[0.02, 0.90], Gen.Double[0.02, 0.55], Gen.Double[0.0, 0.06], Gen.Double[0.05, 4.0], Gen.Double[0.2, 1.0]);
        var hours = Gen.Select(Gen.Double[0, 60], Gen.Double[0, 10], Gen.Double[0, 1.2], Gen.Double[0, 0.6]).Array[1, 72];
        Gen.Select(soils, hours, Gen.Double[0.1, 1.0], Gen.Double[0, 8]).Sample((ground, storm, wet, pond) =>
        {
            var sand = Math.Min(ground.Item1, 1.0 - ground.Item2);
            var hydraulics = SaxtonRawls.Of(Fraction.Of(sand), Fraction.Of(ground.Item2), Fraction.Of(ground.Item3));
            var soil = new SeedbedSoil(hydraulics, ground.Item4, 120.0, ground.Item5);
            var state = new SeedbedState(wet * hydraulics.Saturation);
            foreach (var (rain, irrigation, demand, roots) in storm)
            {
                var now = new SeedbedHour(
                    Vector256.Create(rain, 0.0, 0.2 * rain, 1.0), Vector256.Create(irrigation), Vector256.Create(demand, 1.2, 0.0, demand), Vector256.Create(roots), 150.0);
                var before = state.TotalMm;
                var flux = SeedbedWater.Step(soil, state, new SeedbedSurface(0.4, pond, 0.3), now);
                var residual = before + now.RainMm + now.IrrigationMm - flux.EvaporationMm - flux.TranspirationMm - flux.RunoffMm - flux.DrainageMm - state.TotalMm;
                Assert.True(Vector256.LessThanAll(Vector256.Abs(residual), 1e-9 * Vector256.Min(Vector256.Create(1.0), before + Vector256.Create(0.1))), $"{residual} mm");
            }
        }, seed: "ed6Cfc0wOCX4");
    }

    [Fact]
    public void ALaneIsTheSameAloneAsBesideOthers()
    {
        var hours = Gen.Select(Gen.Double[0, 30], Gen.Double[0, 1.2], Gen.Double[0, 0.6]).Array[24, 72];
        Gen.Select(Gen.Enum<SoilTexture>(), hours).Sample((texture, storm) =>
        {
            var soil = SeedbedSoil.For(texture);
            var (beside, alone) = (new SeedbedState(0.2), new SeedbedState(0.2));
            var surface = new SeedbedSurface(0.4, 2.0, 0.3);
            foreach (var (rain, demand, roots) in storm)
            {
                SeedbedWater.Step(soil, beside, surface, new SeedbedHour(Vector256.Create(rain, 0.0, 20.0, 1.0), Vector256<double>.Zero, Vector256.Create(demand, 1.0, 0.0, 0.3), Vector256.Create(roots), 150.0));
                SeedbedWater.Step(soil, alone, surface, new SeedbedHour(Vector256.Create(rain), Vector256<double>.Zero, Vector256.Create(demand), Vector256.Create(roots), 150.0));
                Assert.All(beside.WaterContent.Zip(alone.WaterContent), pair => Assert.Equal(pair.Second.GetElement(0), pair.First.GetElement(0)));
            }
        });
    }
}
