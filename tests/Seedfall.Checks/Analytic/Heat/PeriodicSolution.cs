using System.Numerics;

namespace Seedfall.Checks.Analytic.Heat;

/// <summary>
/// Exact steady periodic heat conduction (Carslaw and Jaeger 1959, from memory): complex response of soil temperature to an outer
/// temperature e^(i w t). Amplitude is its magnitude; the lag follows from its phase.
/// </summary>
internal static class PeriodicSolution
{
    /// <summary>Behind a surface conductance, half-space: h / (h + k g) e^(-g z), g = sqrt(i w / a).</summary>
    internal static Complex Robin(double conductanceWm2K, double conductivityWmK, double capacityJm3K, double depthM, double periodS)
    {
        var g = Wave(conductivityWmK / capacityJm3K, periodS);
        return conductanceWm2K / (conductanceWm2K + (conductivityWmK * g)) * Complex.Exp(-g * depthM);
    }

    /// <summary>The same for a slab closed at the bottom: cosh(g (L - z)) / (cosh(g L) + k g / h sinh(g L)).</summary>
    internal static Complex RobinOverClosedBottom(double conductanceWm2K, double conductivityWmK, double capacityJm3K, double depthM, double bottomM, double periodS)
    {
        var g = Wave(conductivityWmK / capacityJm3K, periodS);
        return Complex.Cosh(g * (bottomM - depthM)) / (Complex.Cosh(g * bottomM) + (conductivityWmK * g / conductanceWm2K * Complex.Sinh(g * bottomM)));
    }

    /// <summary>Below a surface temperature, a layer on a half-space.</summary>
    internal static Complex TwoLayers((double Conductivity, double Capacity, double Thickness) top, (double Conductivity, double Capacity) below, double depthM, double periodS)
    {
        var g1 = Wave(top.Conductivity / top.Capacity, periodS);
        var g2 = Wave(below.Conductivity / below.Capacity, periodS);
        var (e1, e2) = (top.Conductivity * g1, below.Conductivity * g2);
        var r = (e1 - e2) / (e1 + e2);
        var down = 1.0 / (1.0 + (r * Complex.Exp(-2.0 * g1 * top.Thickness)));
        Complex Top(double z) => (down * Complex.Exp(-g1 * z)) + ((1.0 - down) * Complex.Exp(g1 * z));
        return depthM <= top.Thickness ? Top(depthM) : Top(top.Thickness) * Complex.Exp(-g2 * (depthM - top.Thickness));
    }

    internal static double LagHours(Complex response, double periodS) => -response.Phase / (2.0 * Math.PI) * periodS / 3600.0;

    private static Complex Wave(double diffusivityM2s, double periodS) => Complex.Sqrt(new Complex(0.0, 2.0 * Math.PI / periodS) / diffusivityM2s);
}
