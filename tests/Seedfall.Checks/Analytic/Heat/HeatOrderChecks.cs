using System.Numerics;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Soil;

namespace Seedfall.Checks.Analytic.Heat;

/// <summary>
/// Order of convergence of the column on halved steps and thinner layers, for every exact solution it is held against (Carslaw and
/// Jaeger 1959, from memory). Order is a property of the scheme, not outside evidence.
/// </summary>
public sealed class HeatOrderChecks
{
    private const double Diffusivity = 5e-7;
    private const double Hours = 6.0;
    private const double DepthM = 0.05;

    /// <summary>What happens at the surface at hour 0; conductivity 1.</summary>
    public enum Start
    {
        /// <summary>The surface jumps by 1 degC.</summary>
        Surface,

        /// <summary>100 W m-2 set in.</summary>
        Flux,

        /// <summary>The outer temperature jumps by 1 degC behind a conductance of 5.</summary>
        Outer,
    }

    [Theory]
    [InlineData(Start.Surface)]
    [InlineData(Start.Flux)]
    [InlineData(Start.Outer)]
    public void HalvingTheStepHalvesTheErrorOfBackwardEulerAndQuartersThatOfCrankNicolson(Start start)
    {
        // Against a far finer step on the same layers, so that only the step counts.
        var fine = Run(start, 0.01, 10.0, 0.5);
        double Order(double theta, double stepS) => Math.Log2(Math.Abs(Run(start, 0.01, stepS, theta) - fine) / Math.Abs(Run(start, 0.01, 0.5 * stepS, theta) - fine));
        Assert.Equal(1.0, Order(1.0, 600.0), 0.1);
        Assert.Equal(2.0, Order(0.5, 900.0), 0.15);
    }

    [Theory]
    [InlineData(Start.Surface)]
    [InlineData(Start.Flux)]
    [InlineData(Start.Outer)]
    public void LayersAThirdAsThickLeaveANinthOfTheError(Start start)
    {
        // 5 cm is the center of a layer in both, so that no interpolation takes part.
        var exact = Exact(start);
        var (thick, thin) = (Run(start, 0.02, 15.0, 0.5) - exact, Run(start, 0.02 / 3.0, 15.0, 0.5) - exact);
        Assert.Equal(2.0, Math.Log(Math.Abs(thick / thin)) / Math.Log(3.0), 0.1);
    }

    [Fact]
    public void TheWaveThroughThatchConvergesAlike()
    {
        double[] thickness = [.. Enumerable.Repeat(0.002, 20), .. Enumerable.Repeat(0.008, 150)];
        LayeredColumn Column() => new(thickness, [.. thickness.Select((_, i) => i < 10 ? 0.12 : 1.2)], [.. thickness.Select((_, i) => i < 10 ? 0.8e6 : 2.4e6)]);
        Complex Response(int steps, double theta) => Column().Respond(null, DepthM, 86400.0, steps, 14, theta);
        var fine = Response(24 * 64, 0.5);
        double Order(double theta) => Math.Log2((Response(48, theta) - fine).Magnitude / (Response(96, theta) - fine).Magnitude);
        Assert.Equal(1.0, Order(1.0), 0.1);
        Assert.Equal(2.0, Order(0.5), 0.1);
    }

    [Theory]
    [InlineData(5.0, 0.87924, 165.663)]
    [InlineData(8.0, 0.91479, 118.533)]
    public void TheProductsLayersFollowTheAnnualWave(double conductance, double amplitude, double lagHours)
    {
        const double Year = 365.25 * 86400.0;
        var response = LayeredColumn.Standard(1.2, 2.4e6).Respond(conductance, DepthM, Year, 1461, 4, 1.0);
        Assert.InRange(response.Magnitude / amplitude, 0.985, 1.015);
        Assert.Equal(lagHours, PeriodicSolution.LagHours(response, Year), 12.0);
    }

    [Fact]
    public void SteadyBetweenTwoFixedTemperaturesTheProfileIsStraight()
    {
        // Exact: 30 - 20 z / 4.29 m. The lower one is held by a thin layer that hardly warms.
        double[] thickness = [.. HeatConduction.StandardThicknessM.ToArray(), 1e-9];
        double[] storage = [.. thickness.Select(dz => 2.4e6 * dz)];
        storage[^1] = 1e20;
        var (conductance, temperature, work) = (new double[15], Enumerable.Repeat(10.0, 15).ToArray(), new double[HeatConduction.WorkLength(15)]);
        HeatConduction.Conductances(thickness, [.. thickness.Select(_ => 1.2)], conductance);
        for (var step = 0; step < 400; step++)
        {
            HeatConduction.Step(temperature, storage, conductance, 30.0, HeatConduction.SurfaceConductanceWm2K(0.010, 1.2), 0.0, 30.0 * 86400.0, 1.0, work);
        }

        Assert.Equal(29.767, HeatConduction.AtDepthC(temperature, thickness, DepthM), 1e-3);
        var center = 0.0;
        for (var i = 0; i < 14; i++)
        {
            Assert.Equal(30.0 - (20.0 * (center + (0.5 * thickness[i])) / 4.29), temperature[i], 1e-4);
            center += thickness[i];
        }
    }

    /// <summary>Temperature at 5 cm after six hours in a deep column at 0 degC; two steps of four quarters by backward Euler smooth the jump first (Rannacher 1984).</summary>
    private static double Run(Start start, double layerM, double stepS, double theta)
    {
        double[] thickness = [.. Enumerable.Repeat(layerM, (int)Math.Round(1.6 / layerM))];
        double[] storage = [.. thickness.Select(dz => dz / Diffusivity)];
        var (conductance, temperature, work) = (new double[thickness.Length], new double[thickness.Length], new double[HeatConduction.WorkLength(thickness.Length)]);
        HeatConduction.Conductances(thickness, [.. thickness.Select(_ => 1.0)], conductance);
        var (outerC, outerWm2K, source) = start switch
        {
            Start.Surface => (1.0, HeatConduction.SurfaceConductanceWm2K(layerM, 1.0), 0.0),
            Start.Outer => (1.0, HeatConduction.OuterConductanceWm2K(5.0, layerM, 1.0), 0.0),
            _ => (0.0, 0.0, 100.0),
        };
        for (var step = 0; step < (int)Math.Round(Hours * 3600.0 / stepS); step++)
        {
            var parts = theta < 1.0 && step < 2 ? 4 : 1;
            for (var part = 0; part < parts; part++)
            {
                HeatConduction.Step(temperature, storage, conductance, outerC, outerWm2K, source, stepS / parts, parts > 1 ? 1.0 : theta, work);
            }
        }

        return HeatConduction.AtDepthC(temperature, thickness, DepthM);
    }

    private static double Exact(Start start)
    {
        var root = Math.Sqrt(Diffusivity * Hours * 3600.0);
        var x = DepthM / (2.0 * root);
        return start switch
        {
            Start.Surface => Erfc(x),
            Start.Outer => Erfc(x) - (Math.Exp((5.0 * DepthM) + (25.0 * root * root)) * Erfc(x + (5.0 * root))),
            _ => (200.0 * root / Math.Sqrt(Math.PI) * Math.Exp(-x * x)) - (100.0 * DepthM * Erfc(x)),
        };
    }

    private static double Erfc(double x) => 2.0 * NormalDistribution.Cumulative(-x * Math.Sqrt(2.0));
}
