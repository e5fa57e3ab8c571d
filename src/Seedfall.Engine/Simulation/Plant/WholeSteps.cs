using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Plant;

/// <summary>
/// Progress counted in whole steps of 2^-30, so that sums over hours do not depend on where they begin: a difference of
/// running sums equals stepping hour by hour, exactly. Sums stay below 2^22, where a double holds such steps without rounding.
/// </summary>
internal static class WholeSteps
{
    /// <summary>Steps in one.</summary>
    internal const double One = 1L << 30;

    /// <summary>1.5 times 2^22: adding it leaves 30 bits behind the point.</summary>
    private const double Rounder = 6291456.0;

    /// <summary>The nearest whole number of steps.</summary>
    internal static double Of(double value) => value + Rounder - Rounder;

    /// <summary>The nearest whole numbers of steps.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Lanes Of(Lanes values) => values + Vector256.Create(Rounder) - Vector256.Create(Rounder);

    /// <summary>First hour after <paramref name="from"/> by which a lane's running sum has grown by <paramref name="target"/>; -1 where it has not by <paramref name="last"/>.</summary>
    /// <param name="sums">Running sums, not falling: <see cref="Numerics.LaneMath.Doubles"/> of them; entry h is the sum before hour h.</param>
    /// <param name="lane">Which of the four.</param>
    /// <param name="from">Hour the growth is counted from.</param>
    /// <param name="last">Last hour looked at.</param>
    /// <param name="target">Growth wanted, above 0.</param>
    /// <param name="notBefore">An hour known to lie at or before the answer; <paramref name="from"/> where none is.</param>
    internal static int FirstReached(ReadOnlySpan<double> sums, int lane, int from, int last, double target, int notBefore)
    {
        const int Stride = 8;
        var goal = At(sums, lane, from) + target;
        if (At(sums, lane, last) < goal)
        {
            return -1;
        }

        var hour = Math.Max(from + 1, notBefore);
        while (hour + Stride <= last && At(sums, lane, hour + Stride) < goal)
        {
            hour += Stride;
        }

        while (At(sums, lane, hour) < goal)
        {
            hour++;
        }

        return hour;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double At(ReadOnlySpan<double> sums, int lane, int hour) => sums[(hour * Numerics.LaneMath.Width) + lane];
}
