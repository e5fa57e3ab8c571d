using Seedfall.Engine.Numerics;
using Seedfall.Engine.Soil;

namespace Seedfall.Checks.Analytic.Heat;

/// <summary>Steps and constant flux against exact solutions (Carslaw and Jaeger 1959, from memory); diffusivity 5e-7 m2/s.</summary>
public sealed class TransientHeatChecks
{
    private const double Diffusivity = 5e-7;
    private const double StepS = 30.0;

    [Theory]
    [InlineData(0.0, 1, 4.78731)]
    [InlineData(0.05, 6, 7.39860)]
    [InlineData(0.0, 24, 23.45292)]
    public void ConstantFluxOf100IntoConductivity1(double depthM, int hours, double expectedK)
    {
        var (root, x) = Scaled(depthM, hours);
        Assert.Equal(expectedK, (200.0 * root / Math.Sqrt(Math.PI) * Math.Exp(-x * x)) - (100.0 * depthM * Erfc(x)), 1e-4);
    }

    [Theory]
    [InlineData(0.0, 6, 0.394230)]
    [InlineData(0.05, 6, 0.258779)]
    [InlineData(0.05, 24, 0.482864)]
    public void StepOfTheOuterTemperatureThroughAConductanceOf5(double depthM, int hours, double expected)
    {
        var (root, x) = Scaled(depthM, hours);
        Assert.Equal(expected, Erfc(x) - (Math.Exp((5.0 * depthM) + (25.0 * root * root)) * Erfc(x + (5.0 * root))), 1e-5);

        double[] thickness = [.. Enumerable.Repeat(0.0025, 800)];
        double[] storage = [.. thickness.Select(dz => dz / Diffusivity)];
        var (conductance, temperature, work) = (new double[800], new double[800], new double[HeatConduction.WorkLength(800)]);
        HeatConduction.Conductances(thickness, [.. thickness.Select(_ => 1.0)], conductance);
        var outer = HeatConduction.OuterConductanceWm2K(5.0, 0.0025, 1.0);
        for (var step = 0; step < hours * 120; step++)
        {
            HeatConduction.Step(temperature, storage, conductance, 1.0, outer, 0.0, StepS, 0.5, work);
        }

        var atSurface = temperature[0] + (outer * (1.0 - temperature[0]) * 0.00125);
        Assert.Equal(expected, depthM == 0.0 ? atSurface : HeatConduction.AtDepthC(temperature, thickness, depthM), 1e-3);
    }

    private static (double RootM, double X) Scaled(double depthM, int hours)
    {
        var root = Math.Sqrt(Diffusivity * hours * 3600.0);
        return (root, depthM / (2.0 * root));
    }

    private static double Erfc(double x) => 2.0 * NormalDistribution.Cumulative(-x * Math.Sqrt(2.0));
}
