using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Numerics;

/// <summary>
/// Four doubles side by side. Only plain additions, multiplications, divisions and roots are used, each rounded once, so that
/// a lane holds the same bits whatever the other lanes and whatever the processor.
/// </summary>
internal static class LaneMath
{
    /// <summary>Lanes in a vector.</summary>
    internal const int Width = 4;

    private const double InverseLn2 = 1.4426950408889634;
    private const double Ln2High = 6.93147180369123816490e-01;
    private const double Ln2Low = 1.90821492927058770002e-10;
    private const double LargestExponent = 700.0;

    /// <summary>1.5 times 2^52: adding it rounds to a whole number and leaves that number in the low bits.</summary>
    internal const double Rounder = 6755399441055744.0;

    /// <summary>1 / k! from k = 12 down to 0; the series is cut where it falls below half a unit in the last place.</summary>
    private static ReadOnlySpan<double> InverseFactorials =>
    [
        1.0 / 479001600.0, 1.0 / 39916800.0, 1.0 / 3628800.0, 1.0 / 362880.0, 1.0 / 40320.0, 1.0 / 5040.0, 1.0 / 720.0,
        1.0 / 120.0, 1.0 / 24.0, 1.0 / 6.0, 0.5, 1.0, 1.0,
    ];

    /// <summary>e^x, relative error below 4e-16, for |x| up to 700; held there beyond.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Lanes Exp(Lanes x)
    {
        var held = Clamp(x, -LargestExponent, LargestExponent);
        var shifted = (held * InverseLn2) + Vector256.Create(Rounder);
        var whole = shifted - Vector256.Create(Rounder);
        var rest = held - (whole * Ln2High) - (whole * Ln2Low);
        var series = Vector256.Create(InverseFactorials[0]);
        for (var k = 1; k < InverseFactorials.Length; k++)
        {
            series = (series * rest) + Vector256.Create(InverseFactorials[k]);
        }

        return series * ((shifted.AsInt64() + Vector256.Create(1023L)) << 52).AsDouble();
    }

    /// <summary>Each lane held within two bounds.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Lanes Clamp(Lanes x, double low, double high) => Min(Max(x, Vector256.Create(low)), Vector256.Create(high));

    /// <summary>The larger of each two; for numbers only, in one instruction.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Lanes Max(Lanes a, Lanes b) => Vector256.MaxNative(a, b);

    /// <summary>The smaller of each two; for numbers only, in one instruction.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Lanes Min(Lanes a, Lanes b) => Vector256.MinNative(a, b);

    /// <summary>Saturation vapor pressure, kPa, and its slope, kPa/K. FAO-56 eq. 11 and 13.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (Lanes KPa, Lanes SlopeKPaK) Saturation(Lanes airC)
    {
        var inverse = Vector256<double>.One / (airC + Vector256.Create(237.3));
        var saturated = 0.6108 * Exp(17.27 * airC * inverse);
        return (saturated, 4098.0 * saturated * inverse * inverse);
    }

    /// <summary>An array of lanes as doubles: lane l of entry i stands at 4 i + l.</summary>
    internal static ReadOnlySpan<double> Doubles(Lanes[] lanes) => MemoryMarshal.Cast<Lanes, double>(lanes);

    /// <summary>Four values as lanes; where fewer are left the last one is repeated.</summary>
    internal static Lanes Gather(Func<int, double> value, int first, int count) => Vector256.Create(
        value(first), value(Math.Min(first + 1, count - 1)), value(Math.Min(first + 2, count - 1)), value(Math.Min(first + 3, count - 1)));
}
