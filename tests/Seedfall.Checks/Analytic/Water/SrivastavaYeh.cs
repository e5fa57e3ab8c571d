namespace Seedfall.Checks.Analytic.Water;

/// <summary>
/// Infiltration toward a water table where K = Ks e^(a h): transient between two steady fluxes. Srivastava and Yeh 1991, Water
/// Resour. Res. 27:753 (series from memory; its values at 0, 10, 20 and 40 h are printed in public benchmark notes).
/// </summary>
internal sealed record SrivastavaYeh(double AlphaPerCm, double SaturatedCmH, double LengthCm, double Saturated, double Residual, double FluxBefore, double FluxAfter)
{
    private const int Terms = 200;

    /// <summary>Pressure head, cm, at a height above the water table and a time; fluxes as shares of the saturated conductivity.</summary>
    internal double HeadCm(double heightCm, double hours)
    {
        var (z, length) = (AlphaPerCm * heightCm, AlphaPerCm * LengthCm);
        var time = AlphaPerCm * SaturatedCmH * hours / (Saturated - Residual);
        var sum = 0.0;
        for (var n = 1; n <= Terms; n++)
        {
            var root = Root(n, length);
            sum += Math.Sin(root * z) * Math.Sin(root * length) * Math.Exp(-root * root * time) / (1.0 + (0.5 * length) + (2.0 * root * root * length));
        }

        var relative = FluxAfter - ((FluxAfter - 1.0) * Math.Exp(-z))
            - (4.0 * (FluxAfter - FluxBefore) * Math.Exp(0.5 * (length - z)) * Math.Exp(-0.25 * time) * sum);
        return Math.Log(relative) / AlphaPerCm;
    }

    /// <summary>Head of the steady state with the flux before, cm.</summary>
    internal double SteadyHeadCm(double heightCm, double flux) => Math.Log(flux + ((1.0 - flux) * Math.Exp(-AlphaPerCm * heightCm))) / AlphaPerCm;

    /// <summary>The n-th root of tan(x L) + 2 x = 0, which lies between (n - 1/2) pi / L and n pi / L.</summary>
    private static double Root(int n, double length)
    {
        var (low, high) = (((n - 0.5) * Math.PI / length) + 1e-12, n * Math.PI / length);
        for (var i = 0; i < 100; i++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = Math.Tan(middle * length) + (2.0 * middle) < 0.0 ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }
}
