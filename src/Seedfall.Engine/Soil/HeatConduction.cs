using Seedfall.Engine.Numerics;

namespace Seedfall.Engine.Soil;

/// <summary>
/// One-dimensional heat conduction in soil layers: finite volumes, implicit in time (theta 1 backward Euler, 0.5
/// Crank-Nicolson), no heat through the bottom. All spans hold one value per layer from the top down; nothing is allocated.
/// Thickness m, heat capacity J m-3 K-1, conductivity W m-1 K-1, conductance W m-2 K-1, temperature degC, time s.
/// </summary>
public static class HeatConduction
{
    /// <summary>Layers from the surface to 4.29 m, fine near the surface; zero heat through the bottom then costs under 0.1 degC at 5 cm over a year.</summary>
    public static ReadOnlySpan<double> StandardThicknessM =>
        [0.010, 0.015, 0.020, 0.020, 0.025, 0.040, 0.060, 0.10, 0.15, 0.25, 0.40, 0.70, 1.0, 1.5];

    /// <summary>Length of the work span <see cref="Step"/> needs for a number of layers.</summary>
    public static int WorkLength(int layers) => 5 * layers;

    /// <summary>Conductance between each layer's center and the next one's; the last entry is 0 (closed bottom).</summary>
    public static void Conductances(ReadOnlySpan<double> thicknessM, ReadOnlySpan<double> conductivityWmK, Span<double> conductanceWm2K)
    {
        var last = thicknessM.Length - 1;
        for (var i = 0; i < last; i++)
        {
            conductanceWm2K[i] = 2.0 / ((thicknessM[i] / conductivityWmK[i]) + (thicknessM[i + 1] / conductivityWmK[i + 1]));
        }

        conductanceWm2K[last] = 0.0;
    }

    /// <summary>Conductance from a fixed surface temperature to the center of the top layer: the Dirichlet condition for <see cref="Step"/>.</summary>
    public static double SurfaceConductanceWm2K(double topThicknessM, double topConductivityWmK) => 2.0 * topConductivityWmK / topThicknessM;

    /// <summary>Conductance from an outer temperature through a surface conductance to the center of the top layer: the Robin condition for <see cref="Step"/>.</summary>
    public static double OuterConductanceWm2K(double surfaceWm2K, double topThicknessM, double topConductivityWmK) =>
        1.0 / ((1.0 / surfaceWm2K) + (topThicknessM / (2.0 * topConductivityWmK)));

    /// <summary>
    /// Moves the temperatures one step on. The top layer receives conductance * (outer - its temperature) + source; give a
    /// Dirichlet or Robin conductance from above, or 0 for a closed or flux-driven top.
    /// </summary>
    /// <param name="temperatureC">In: at the start of the step. Out: at its end.</param>
    /// <param name="storageJm2K">Heat capacity times thickness.</param>
    /// <param name="conductanceWm2K">From <see cref="Conductances"/>.</param>
    /// <param name="outerC">Outer temperature, mean over the step.</param>
    /// <param name="outerWm2K">Conductance from outer temperature to the top layer's center.</param>
    /// <param name="sourceWm2">Heat put into the top layer directly, W m-2.</param>
    /// <param name="stepS">Length of the step, s.</param>
    /// <param name="theta">Weight of the end of the step, 0.5 to 1.</param>
    /// <param name="work">At least <see cref="WorkLength"/> long, overwritten.</param>
    public static void Step(
        Span<double> temperatureC,
        ReadOnlySpan<double> storageJm2K,
        ReadOnlySpan<double> conductanceWm2K,
        double outerC,
        double outerWm2K,
        double sourceWm2,
        double stepS,
        double theta,
        Span<double> work)
    {
        var n = temperatureC.Length;
        if (storageJm2K.Length != n || conductanceWm2K.Length != n || work.Length < WorkLength(n))
        {
            throw new ArgumentException("spans must hold one value per layer", nameof(storageJm2K));
        }

        var lower = work[..n];
        var diagonal = work.Slice(n, n);
        var upper = work.Slice(2 * n, n);
        var right = work.Slice(3 * n, n);
        var old = 1.0 - theta;
        var above = outerWm2K;
        var aboveC = outerC;
        for (var i = 0; i < n; i++)
        {
            var below = i < n - 1 ? conductanceWm2K[i] : 0.0;
            var belowC = i < n - 1 ? temperatureC[i + 1] : temperatureC[i];
            var inertia = storageJm2K[i] / stepS;
            lower[i] = i > 0 ? -theta * above : 0.0;
            upper[i] = -theta * below;
            diagonal[i] = inertia + (theta * (above + below));
            right[i] = (inertia * temperatureC[i]) + (old * ((above * (aboveC - temperatureC[i])) + (below * (belowC - temperatureC[i]))));
            above = below;
            aboveC = temperatureC[i];
        }

        right[0] += (theta * outerWm2K * outerC) + sourceWm2;
        Tridiagonal.Solve(lower, diagonal, upper, right, temperatureC, work.Slice(4 * n, n));
    }

    /// <summary>Temperature at a depth, linear between layer centers and constant beyond the outermost ones.</summary>
    public static double AtDepthC(ReadOnlySpan<double> temperatureC, ReadOnlySpan<double> thicknessM, double depthM)
    {
        var top = 0.0;
        var (aboveM, aboveC) = (double.NegativeInfinity, temperatureC[0]);
        for (var i = 0; i < temperatureC.Length; i++)
        {
            var centerM = top + (0.5 * thicknessM[i]);
            if (depthM <= centerM)
            {
                return double.IsNegativeInfinity(aboveM)
                    ? temperatureC[i]
                    : aboveC + ((temperatureC[i] - aboveC) * (depthM - aboveM) / (centerM - aboveM));
            }

            (aboveM, aboveC) = (centerM, temperatureC[i]);
            top += thicknessM[i];
        }

        return aboveC;
    }
}
