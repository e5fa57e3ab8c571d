using System.Numerics;
using CsCheck;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Soil;

namespace Seedfall.Engine.Tests.Soil;

/// <summary>The numerical column against exact solutions of the heat equation (Carslaw and Jaeger 1959, from memory) and against its own laws.</summary>
public sealed class HeatConductionTests
{
    private const double Diffusivity = 5e-7;
    private const double CapacityJm3K = 2.4e6;
    private const double ConductivityWmK = Diffusivity * CapacityJm3K;

    private sealed class Column
    {
        private readonly double[] _thickness;
        private readonly double[] _storage;
        private readonly double[] _conductance;
        private readonly double[] _work;
        private readonly double _conductivity;

        internal Column(double[] thickness, double startC, double conductivity = ConductivityWmK, double capacity = CapacityJm3K)
        {
            _thickness = thickness;
            _conductivity = conductivity;
            _storage = [.. thickness.Select(dz => dz * capacity)];
            _conductance = new double[thickness.Length];
            _work = new double[HeatConduction.WorkLength(thickness.Length)];
            Temperature = new double[thickness.Length];
            Array.Fill(Temperature, startC);
            HeatConduction.Conductances(thickness, [.. thickness.Select(_ => conductivity)], _conductance);
        }

        internal double[] Temperature { get; }

        internal double HeatJm2 => Temperature.Zip(_storage, (t, s) => t * s).Sum();

        internal double At(double depthM) => HeatConduction.AtDepthC(Temperature, _thickness, depthM);

        internal void Dirichlet(double surfaceC, double stepS, double theta) =>
            HeatConduction.Step(Temperature, _storage, _conductance, surfaceC, HeatConduction.SurfaceConductanceWm2K(_thickness[0], _conductivity), 0, stepS, theta, _work);

        internal void Robin(double outerC, double surfaceWm2K, double stepS, double theta) =>
            HeatConduction.Step(Temperature, _storage, _conductance, outerC, HeatConduction.OuterConductanceWm2K(surfaceWm2K, _thickness[0], _conductivity), 0, stepS, theta, _work);

        internal void Flux(double wm2, double stepS, double theta) =>
            HeatConduction.Step(Temperature, _storage, _conductance, 0, 0, wm2, stepS, theta, _work);
    }

    private static double Erfc(double x) => 2.0 * NormalDistribution.Cumulative(-x * Math.Sqrt(2.0));

    private static double[] Uniform(double dz, double depth) => [.. Enumerable.Repeat(dz, (int)Math.Round(depth / dz))];

    [Theory]
    [InlineData(1, 0.404657)] // erfc(z / (2 sqrt(k t))), z = 5 cm
    [InlineData(6, 0.733701)]
    [InlineData(24, 0.864929)]
    public void StepAtTheSurface(int hours, double expected)
    {
        Assert.Equal(expected, Erfc(0.05 / (2.0 * Math.Sqrt(Diffusivity * hours * 3600.0))), 1e-6);
        var column = new Column(Uniform(0.0025, 2.0), 0.0);
        for (var i = 0; i < hours * 120; i++)
        {
            column.Dirichlet(1.0, 30.0, i < 4 ? 1.0 : 0.5);
        }

        Assert.Equal(expected, column.At(0.05), 1e-3);
    }

    [Theory]
    [InlineData(0.05, 6, 7.39860)] // constant flux 100 W m-2, conductivity 1 W m-1 K-1
    [InlineData(0.00125, 24, 23.328)] // near the surface: 23.45292 at 0 less q z / conductivity
    public void ConstantFlux(double depthM, int hours, double expectedK)
    {
        var column = new Column(Uniform(0.0025, 2.0), 0.0, 1.0, 1.0 / Diffusivity);
        for (var i = 0; i < hours * 120; i++)
        {
            column.Flux(100.0, 30.0, 0.5);
        }

        Assert.Equal(expectedK, column.At(depthM), 0.01);
    }

    [Theory]
    [InlineData(0.05, 6, 0.258779)] // erfc(x) - exp(..) erfc(..) for a step of the outer temperature, h 5, conductivity 1
    [InlineData(0.05, 24, 0.482864)]
    public void StepThroughASurfaceConductance(double depthM, int hours, double expected)
    {
        var column = new Column(Uniform(0.0025, 2.0), 0.0, 1.0, 1.0 / Diffusivity);
        for (var i = 0; i < hours * 120; i++)
        {
            column.Robin(1.0, 5.0, 30.0, 0.5);
        }

        Assert.Equal(expected, column.At(depthM), 1e-3);
    }

    // Exact: T = Re{h / (h + k g) e^(-g z) e^(i w t)}, g = sqrt(i w / diffusivity). Amplitudes .17788 (1 d) and .38930 (5 d).
    [Theory]
    [InlineData(1, 0.5, 0.17788, 3.888, 0.01, 0.10)]
    [InlineData(1, 1.0, 0.17788, 3.888, 0.03, 0.20)]
    [InlineData(5, 0.5, 0.38930, 12.156, 0.01, 0.15)]
    [InlineData(5, 1.0, 0.38930, 12.156, 0.01, 0.30)]
    public void PeriodicThroughASurfaceConductance(int periodDays, double theta, double amplitude, double lagHours, double relative, double lagTolerance)
    {
        var g = Complex.Sqrt(new Complex(0, 2.0 * Math.PI / (periodDays * 86400.0)) / Diffusivity);
        var exact = 5.0 / (5.0 + (ConductivityWmK * g)) * Complex.Exp(-g * 0.05);
        Assert.Equal(amplitude, exact.Magnitude, 1e-5);
        Assert.Equal(lagHours, -exact.Phase / (2.0 * Math.PI) * periodDays * 24.0, 1e-3);

        var (real, imaginary) = Respond(HeatConduction.StandardThicknessM.ToArray(), periodDays * 24, theta);
        Assert.Equal(amplitude, Math.Sqrt((real * real) + (imaginary * imaginary)), relative * amplitude);
        Assert.Equal(lagHours, Math.Atan2(imaginary, real) / (2.0 * Math.PI) * periodDays * 24.0, lagTolerance);
    }

    /// <summary>First harmonic of the temperature at 5 cm under an hourly cosine, hours as samples at the end of the step.</summary>
    private static (double Real, double Imaginary) Respond(double[] thickness, int periodHours, double theta)
    {
        var column = new Column(thickness, 0.0);
        var (real, imaginary) = (0.0, 0.0);
        const int Cycles = 40;
        for (var hour = 0; hour < Cycles * periodHours; hour++)
        {
            var start = 2.0 * Math.PI * hour / periodHours;
            var end = 2.0 * Math.PI * (hour + 1) / periodHours;
            var outer = theta == 1.0 ? Math.Cos(0.5 * (start + end)) : 0.5 * (Math.Cos(start) + Math.Cos(end));
            column.Robin(outer, 5.0, 3600.0, theta);
            if (hour >= (Cycles - 1) * periodHours)
            {
                real += 2.0 / periodHours * column.At(0.05) * Math.Cos(end);
                imaginary += 2.0 / periodHours * column.At(0.05) * Math.Sin(end);
            }
        }

        return (real, imaginary);
    }

    [Fact]
    public void AClosedColumnKeepsItsHeatForAYear()
    {
        var column = new Column(HeatConduction.StandardThicknessM.ToArray(), 0.0);
        for (var i = 0; i < column.Temperature.Length; i++)
        {
            column.Temperature[i] = 5.0 + (17.0 * Math.Abs(Math.Sin(i)));
        }

        var before = column.HeatJm2;
        for (var hour = 0; hour < 8766; hour++)
        {
            column.Flux(0.0, 3600.0, 1.0);
        }

        Assert.Equal(1.0, column.HeatJm2 / before, 1e-10);
        Assert.True(column.Temperature.Max() - column.Temperature.Min() < 0.05 * 17.0);
    }

    [Fact]
    public void WhatGoesInIsStored() => Gen.Select(Gen.Double[-200.0, 200.0], Gen.Double[0.5, 1.0], Gen.Int[1, 200]).Sample((flux, theta, steps) =>
    {
        var column = new Column(HeatConduction.StandardThicknessM.ToArray(), 10.0);
        var before = column.HeatJm2;
        for (var i = 0; i < steps; i++)
        {
            column.Flux(flux, 3600.0, theta);
        }

        Assert.Equal(flux * 3600.0 * steps, column.HeatJm2 - before, 1e-10 * before);
    });

    [Fact]
    public void ImplicitTemperaturesStayBetweenStartAndSurface() =>
        Gen.Select(Gen.Double[-20.0, 40.0].Array[14], Gen.Double[-30.0, 50.0].Array[1, 30], Gen.Double[60.0, 864000.0]).Sample((start, surface, step) =>
        {
            var column = new Column(HeatConduction.StandardThicknessM.ToArray(), 0.0);
            start.CopyTo(column.Temperature, 0);
            var low = Math.Min(start.Min(), surface.Min()) - 1e-9;
            var high = Math.Max(start.Max(), surface.Max()) + 1e-9;
            foreach (var degrees in surface)
            {
                column.Dirichlet(degrees, step, 1.0);
                Assert.All(column.Temperature, t => Assert.InRange(t, low, high));
            }
        });

    [Fact]
    public void LayersInSeriesCarryTheSameFluxWhenSteady()
    {
        double[] thickness = [.. Uniform(0.01, 0.1), .. Uniform(0.01, 0.1)];
        double[] conductivity = [.. Enumerable.Repeat(0.2, 10), .. Enumerable.Repeat(1.2, 10)];
        double[] storage = [.. thickness.Select(dz => dz * 2e6)];
        storage[^1] = 1e15;
        var conductance = new double[20];
        HeatConduction.Conductances(thickness, conductivity, conductance);
        var temperature = new double[20];
        for (var i = 0; i < 3000; i++)
        {
            HeatConduction.Step(temperature, storage, conductance, 20.0, HeatConduction.SurfaceConductanceWm2K(0.01, 0.2), 0, 3600, 1, new double[100]);
        }

        // Exact: temperature difference over the sum of resistances, to the center of the last (fixed) layer.
        var flux = 20.0 / ((0.1 / 0.2) + (0.095 / 1.2));
        Assert.Equal(flux, (20.0 - temperature[0]) * 2.0 * 0.2 / 0.01, 1e-3);
        Assert.Equal(flux, (temperature[14] - temperature[15]) * conductance[14], 1e-3);
    }

    [Fact]
    public void UnequalSpansAreRefused() => Assert.Throws<ArgumentException>(() =>
        HeatConduction.Step(new double[3], new double[2], new double[3], 0, 0, 0, 3600, 1, new double[15]));
}
