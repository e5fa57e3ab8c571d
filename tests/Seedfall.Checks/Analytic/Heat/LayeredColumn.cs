using System.Numerics;
using Seedfall.Engine.Soil;

namespace Seedfall.Checks.Analytic.Heat;

/// <summary>A column of layers driven by a cosine, for comparison with exact periodic solutions.</summary>
internal sealed class LayeredColumn
{
    private readonly double[] _thicknessM;
    private readonly double[] _storage;
    private readonly double[] _conductance;
    private readonly double[] _temperature;
    private readonly double[] _work;
    private readonly double _topConductivity;

    internal LayeredColumn(double[] thicknessM, double[] conductivityWmK, double[] capacityJm3K)
    {
        _thicknessM = thicknessM;
        _storage = [.. thicknessM.Zip(capacityJm3K, (dz, c) => dz * c)];
        _conductance = new double[thicknessM.Length];
        _temperature = new double[thicknessM.Length];
        _work = new double[HeatConduction.WorkLength(thicknessM.Length)];
        _topConductivity = conductivityWmK[0];
        HeatConduction.Conductances(thicknessM, conductivityWmK, _conductance);
    }

    /// <summary>The product's own 14 layers of one soil.</summary>
    internal static LayeredColumn Standard(double conductivityWmK, double capacityJm3K)
    {
        var thickness = HeatConduction.StandardThicknessM.ToArray();
        return new LayeredColumn(thickness, [.. thickness.Select(_ => conductivityWmK)], [.. thickness.Select(_ => capacityJm3K)]);
    }

    /// <summary>
    /// First harmonic of the temperature at a depth in the last cycle, after <paramref name="cycles"/> of them, relative to a
    /// cosine of amplitude 1 (its middle of the step for backward Euler, as hourly weather gives it). Surface conductance null: the cosine is the surface temperature itself.
    /// </summary>
    internal Complex Respond(double? surfaceWm2K, double depthM, double periodS, int stepsPerCycle, int cycles, double theta)
    {
        var outer = surfaceWm2K is { } h
            ? HeatConduction.OuterConductanceWm2K(h, _thicknessM[0], _topConductivity)
            : HeatConduction.SurfaceConductanceWm2K(_thicknessM[0], _topConductivity);
        var sum = Complex.Zero;
        Array.Clear(_temperature);
        for (var step = 0; step < cycles * stepsPerCycle; step++)
        {
            var (start, end) = (2.0 * Math.PI * step / stepsPerCycle, 2.0 * Math.PI * (step + 1) / stepsPerCycle);
            var drive = theta == 1.0 ? Math.Cos(0.5 * (start + end)) : (theta * Math.Cos(end)) + ((1.0 - theta) * Math.Cos(start));
            HeatConduction.Step(_temperature, _storage, _conductance, drive, outer, 0.0, periodS / stepsPerCycle, theta, _work);
            if (step >= (cycles - 1) * stepsPerCycle)
            {
                var at = HeatConduction.AtDepthC(_temperature, _thicknessM, depthM);
                sum += 2.0 / stepsPerCycle * at * Complex.Exp(new Complex(0.0, -end));
            }
        }

        return sum;
    }
}
