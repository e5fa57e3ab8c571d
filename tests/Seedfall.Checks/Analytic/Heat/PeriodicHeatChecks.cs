using System.Numerics;
using Seedfall.Engine.Soil;

namespace Seedfall.Checks.Analytic.Heat;

/// <summary>Daily and annual waves against exact solutions (computed from the closed forms, not outside evidence).</summary>
public sealed class PeriodicHeatChecks
{
    private const double Day = 86400.0;
    private const double Year = 365.25 * Day;
    private const double Capacity = 2.4e6;

    [Theory]
    [InlineData(3e-7, 0.57668, 2.1026)]
    [InlineData(5e-7, 0.65286, 1.6287)]
    [InlineData(7e-7, 0.69742, 1.3765)]
    public void ADailyWaveAtFiveCentimeters(double diffusivity, double amplitude, double lagHours)
    {
        var damping = ThermalProperties.DampingDepthM(diffusivity * Capacity, Capacity, Day);
        Assert.Equal(amplitude, Math.Exp(-0.05 / damping), 1e-4);
        Assert.Equal(lagHours, 0.05 / damping / (2.0 * Math.PI) * 24.0, 1e-3);

        var response = LayeredColumn.Standard(diffusivity * Capacity, Capacity).Respond(null, 0.05, Day, 24, 30, 0.5);
        Assert.InRange(response.Magnitude, 0.98 * amplitude, 1.02 * amplitude);
        Assert.Equal(lagHours, PeriodicSolution.LagHours(response, Day), 0.06);
    }

    [Fact]
    public void DampingDepthsAndSurfaceFlux()
    {
        Assert.Equal(0.11726, ThermalProperties.DampingDepthM(5e-7 * Capacity, Capacity, Day), 1e-5);
        var annual = ThermalProperties.DampingDepthM(5e-7 * Capacity, Capacity, Year);
        Assert.Equal(2.2411, annual, 1e-4);
        Assert.Equal(0.64005, Math.Exp(-1.0 / annual), 1e-4);
        Assert.Equal(25.94, 1.0 / annual / (2.0 * Math.PI) * 365.25, 0.01);
        Assert.Equal(14.4720, Math.Sqrt(2.0 * Math.PI / Day * 1.2 * 2.4e6), 1e-3);
    }

    [Theory]
    [InlineData(5.0, 1.0, 0.17788, 3.888)]
    [InlineData(5.0, 5.0, 0.38930, 12.156)]
    [InlineData(5.0, 365.25, 0.87924, 165.663)]
    [InlineData(8.0, 1.0, 0.24980, 3.582)]
    [InlineData(8.0, 5.0, 0.49399, 10.307)]
    [InlineData(8.0, 365.25, 0.91479, 118.533)]
    public void AWaveThroughASurfaceConductance(double conductance, double days, double amplitude, double lagHours)
    {
        var exact = PeriodicSolution.Robin(conductance, 1.2, Capacity, 0.05, days * Day);
        Assert.Equal(amplitude, exact.Magnitude, 1e-5);
        Assert.Equal(lagHours, PeriodicSolution.LagHours(exact, days * Day), 1e-3);
    }

    [Theory]
    [InlineData(5.0, 1)]
    [InlineData(5.0, 5)]
    [InlineData(8.0, 1)]
    [InlineData(8.0, 5)]
    public void HourlyStepsFollowTheExactWave(double conductance, int days)
    {
        var exact = PeriodicSolution.Robin(conductance, 1.2, Capacity, 0.05, days * Day);
        var crankNicolson = LayeredColumn.Standard(1.2, Capacity).Respond(conductance, 0.05, days * Day, 24 * days, 40, 0.5);
        var backwardEuler = LayeredColumn.Standard(1.2, Capacity).Respond(conductance, 0.05, days * Day, 24 * days, 40, 1.0);
        Assert.InRange(crankNicolson.Magnitude / exact.Magnitude, 0.99, 1.01);
        Assert.InRange(backwardEuler.Magnitude / exact.Magnitude, 0.97, 1.01);
        Assert.Equal(PeriodicSolution.LagHours(exact, days * Day), PeriodicSolution.LagHours(backwardEuler, days * Day), 0.3);
    }

    [Theory]
    [InlineData(0.02, 0.30916, 2.3360)]
    [InlineData(0.05, 0.23937, 3.3132)]
    [InlineData(0.07, 0.20184, 3.9646)]
    [InlineData(0.12, 0.13177, 5.5933)]
    public void ADailyWaveThroughThatchIntoSoil(double depthM, double amplitude, double lagHours)
    {
        var exact = PeriodicSolution.TwoLayers((0.12, 0.8e6, 0.02), (1.2, 2.4e6), depthM, Day);
        Assert.Equal(amplitude, exact.Magnitude, 1e-5);
        Assert.Equal(lagHours, PeriodicSolution.LagHours(exact, Day), 1e-3);

        double[] thickness = [.. Enumerable.Repeat(0.00025, 160), .. Enumerable.Repeat(0.004, 250)];
        var column = new LayeredColumn(thickness, [.. thickness.Select((_, i) => i < 80 ? 0.12 : 1.2)], [.. thickness.Select((_, i) => i < 80 ? 0.8e6 : 2.4e6)]);
        var response = column.Respond(null, depthM, Day, 288, 20, 0.5);
        Assert.InRange(response.Magnitude / amplitude, 0.99, 1.01);
        Assert.Equal(lagHours, PeriodicSolution.LagHours(response, Day), 0.05);
    }

    [Theory]
    [InlineData(4.29, 0.082)]
    [InlineData(2.0, 0.661)]
    public void AClosedBottomDisturbsTheAnnualWaveBy(double bottomM, double degrees)
    {
        var open = PeriodicSolution.Robin(4.0, 1.2, Capacity, 0.05, Year);
        var closed = PeriodicSolution.RobinOverClosedBottom(4.0, 1.2, Capacity, 0.05, bottomM, Year);
        Assert.Equal(degrees, 11.0 * (closed - open).Magnitude, 0.02);
    }

    [Fact]
    public void HalvingTheStepHalvesTheErrorOfBackwardEulerAndQuartersThatOfCrankNicolson()
    {
        double[] thickness = [.. Enumerable.Repeat(0.004, 300)];
        LayeredColumn Column() => new(thickness, [.. thickness.Select(_ => 1.2)], [.. thickness.Select(_ => Capacity)]);
        Complex Run(int steps, double theta) => Column().Respond(5.0, 0.05, Day, steps, 12, theta);
        double Order(double theta)
        {
            // Errors against a far finer step on the same layers, so that only the step counts.
            var fine = Run(24 * 64, 0.5);
            return Math.Log2((Run(24, theta) - fine).Magnitude / (Run(48, theta) - fine).Magnitude);
        }

        Assert.Equal(1.0, Order(1.0), 0.1);
        Assert.Equal(2.0, Order(0.5), 0.1);
    }
}
