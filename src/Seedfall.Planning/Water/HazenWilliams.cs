using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water;

/// <summary>What a hose costs in pressure.</summary>
public static class HazenWilliams
{
    /// <summary>Roughness coefficient of a smooth hose.</summary>
    public const double SmoothHose = 140.0;

    internal const double FlowExponent = 1.852;

    private const double DiameterExponent = 4.8704;

    /// <summary>
    /// Pressure lost along a hose: psi per ft = 4.52 Q^1.852 / (C^1.852 d^4.8704), Q in gpm, d in inches. Hazen and Williams.
    /// Printed hose charts show 7 to 13 % more: a bucket and a watch at the hose's end are better.
    /// </summary>
    public static Pressure Loss(FlowRate flow, Length hose, Length bore, double roughness = SmoothHose)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(flow.LitersPerMinute, nameof(flow));
        ArgumentOutOfRangeException.ThrowIfNegative(hose.Meters, nameof(hose));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(bore.Meters, nameof(bore));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(roughness);
        var psiPerFoot = 4.52 * Math.Pow(flow.GallonsPerMinute / roughness, FlowExponent) / Math.Pow(bore.Inches, DiameterExponent);
        return Pressure.FromPoundsPerSquareInch(psiPerFoot * hose.Feet);
    }

    /// <summary>Flow at which the hose uses up the whole of a pressure: an upper bound of what it can carry.</summary>
    public static FlowRate FlowFor(Pressure lost, Length hose, Length bore, double roughness = SmoothHose)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(lost.Kilopascals, nameof(lost));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(hose.Meters, nameof(hose));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(bore.Meters, nameof(bore));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(roughness);
        var psiPerFoot = lost.PoundsPerSquareInch / hose.Feet;
        var gpm = roughness * Math.Pow(psiPerFoot * Math.Pow(bore.Inches, DiameterExponent) / 4.52, 1.0 / FlowExponent);
        return FlowRate.FromGallonsPerMinute(gpm);
    }

    /// <summary>
    /// Flow of a round nozzle: gpm = 29.84 c d^2 sqrt(psi), d in inches. Common practice, no source read.
    /// </summary>
    /// <param name="pressure">Pressure at the nozzle.</param>
    /// <param name="bore">Diameter of the opening.</param>
    /// <param name="discharge">Discharge coefficient, about 0.98 for a smooth nozzle.</param>
    public static FlowRate NozzleFlow(Pressure pressure, Length bore, double discharge = 0.98)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(pressure.Kilopascals, nameof(pressure));
        return FlowRate.FromGallonsPerMinute(29.84 * discharge * bore.Inches * bore.Inches * Math.Sqrt(pressure.PoundsPerSquareInch));
    }
}
