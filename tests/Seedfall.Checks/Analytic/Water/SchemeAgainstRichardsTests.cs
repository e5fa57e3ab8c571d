using System.Runtime.Intrinsics;
using Seedfall.Engine.Simulation.Seedbed;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Soil.Water;

namespace Seedfall.Checks.Analytic.Water;

/// <summary>
/// The seedbed's six layers against the mixed-form solver on 120 cells from 1 mm, same hydraulics, no calibration of diffusion.
/// A check of the numerics: both leave out vapor, heating and crusts.
/// </summary>
public sealed class SchemeAgainstRichardsTests
{
    private static readonly double[] CellsCm = [.. Enumerable.Range(0, 120).Select(i => i < 40 ? 0.1 : i < 80 ? 0.2 : 0.45)];

    [Theory]
    [InlineData(SoilTexture.SandyLoam)]
    [InlineData(SoilTexture.Loam)]
    [InlineData(SoilTexture.SiltLoam)]
    [InlineData(SoilTexture.ClayLoam)]
    public void TwoDaysAfterRainTheWaterLiesWhereTheSolverPutsIt(SoilTexture texture)
    {
        var run = Run(texture, 2, hour => hour < 2 ? 8.0 : 0.0, _ => 0.0);
        Assert.All(SeedbedDepthsMm, depth => Assert.InRange(run.SchemeMm(depth) / run.SolverMm(depth), 0.95, 1.05));
        Assert.InRange(run.SchemeDrainedMm - run.SolverDrainedMm, -0.6, 0.6);
    }

    [Theory]
    [InlineData(SoilTexture.SandyLoam)]
    [InlineData(SoilTexture.Loam)]
    [InlineData(SoilTexture.SiltLoam)]
    [InlineData(SoilTexture.ClayLoam)]
    public void FiveDaysOfThreeLightRoundsEvaporateAlike(SoilTexture texture)
    {
        var run = Run(texture, 5, hour => hour % 24 is 8 or 12 or 16 ? 1.5 : 0.0, DryingSeedbed.DemandMm);
        Assert.InRange(run.SchemeEvaporatedMm / run.SolverEvaporatedMm, 0.90, 1.10);
        Assert.All(SeedbedDepthsMm, depth => Assert.InRange(run.SchemeMm(depth) / run.SolverMm(depth), 0.95, 1.05));
    }

    private static readonly double[] SeedbedDepthsMm = [3.0, 8.0, 20.0, 60.0, 150.0, 300.0];

    private static Comparison Run(SoilTexture texture, int days, Func<int, double> rainMm, Func<int, double> demandMm)
    {
        var hydraulics = TextureTable.For(texture).Hydraulics;
        var curves = PowerCurves.Of(hydraulics);
        var soil = new SeedbedSoil(hydraulics, 1.0, 100.0);
        var run = new Comparison(
            new SeedbedState(hydraulics.FieldCapacity),
            new RichardsColumn(curves, CellsCm, Enumerable.Repeat(curves.HeadCm(hydraulics.FieldCapacity), CellsCm.Length).ToArray()));
        for (var hour = 0; hour < 24 * days; hour++)
        {
            run.Step(soil, rainMm(hour), demandMm(hour % 24));
        }

        return run;
    }

    private sealed class Comparison(SeedbedState state, RichardsColumn column)
    {
        private const int StepsAnHour = 60;

        internal double SchemeEvaporatedMm { get; private set; }

        internal double SolverEvaporatedMm { get; private set; }

        internal double SchemeDrainedMm { get; private set; }

        internal double SolverDrainedMm { get; private set; }

        internal void Step(SeedbedSoil soil, double rainMm, double demandMm)
        {
            var flux = SeedbedWater.Step(soil, state, DryingSeedbed.Bare, DryingSeedbed.Hour(rainMm, 0.0, demandMm));
            SchemeEvaporatedMm += flux.EvaporationMm.GetElement(0);
            SchemeDrainedMm += flux.DrainageMm.GetElement(0);

            // The same surface resistance, from the solver's own top 3 mm.
            var resistance = Math.Max(10.0, 10.0 * Math.Exp(5.34 * (1.0 - (SolverMm(3.0) / 3.0 / soil.EvaporationOnset))));
            var evaporated = demandMm * 70.0 / (60.0 + resistance);
            for (var step = 0; step < StepsAnHour; step++)
            {
                SolverDrainedMm += 10.0 * column.Step(1.0 / StepsAnHour, new EndCondition(ColumnEnd.Flux, 0.1 * (rainMm - evaporated)), new EndCondition(ColumnEnd.FreeDrainage)).OutCm;
            }

            SolverEvaporatedMm += evaporated;
        }

        internal double SchemeMm(double depthMm)
        {
            var (sum, top) = (0.0, 0.0);
            for (var i = 0; i < SeedbedSoil.Layers && top < depthMm; i++)
            {
                sum += SeedbedSoil.ThicknessMm[i] * state.WaterContent[i].GetElement(0);
                top += SeedbedSoil.ThicknessMm[i];
            }

            return sum;
        }

        internal double SolverMm(double depthMm)
        {
            var (sum, top) = (0.0, 0.0);
            for (var i = 0; i < CellsCm.Length && top < depthMm - 1e-9; i++)
            {
                sum += 10.0 * CellsCm[i] * column.WaterContent(i) * Math.Clamp((depthMm - top) / (10.0 * CellsCm[i]), 0.0, 1.0);
                top += 10.0 * CellsCm[i];
            }

            return sum;
        }
    }
}
