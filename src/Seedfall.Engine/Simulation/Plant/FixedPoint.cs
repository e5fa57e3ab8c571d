namespace Seedfall.Engine.Simulation.Plant;

/// <summary>
/// Progress counted in whole steps of 2^-30, so that sums over hours do not depend on where they begin: a difference of
/// prefix sums equals stepping hour by hour, exactly.
/// </summary>
internal static class FixedPoint
{
    internal const double One = 1L << 30;

    internal static long From(double value) => (long)((value * One) + 0.5);

    internal static double ToDouble(long value) => value / One;

    /// <summary>First index after <paramref name="from"/> at which the running sum has grown by <paramref name="target"/>; -1 where it never does.</summary>
    /// <param name="sums">Running sums, not falling; entry i is the sum before hour i.</param>
    /// <param name="from">Index the growth is counted from.</param>
    /// <param name="last">Last index looked at.</param>
    /// <param name="target">Growth wanted, above 0.</param>
    internal static int FirstReached(ReadOnlySpan<long> sums, int from, int last, long target)
    {
        var goal = sums[from] + target;
        if (sums[last] < goal)
        {
            return -1;
        }

        var (low, high) = (from, last);
        while (high - low > 1)
        {
            var middle = (low + high) >>> 1;
            if (sums[middle] >= goal)
            {
                high = middle;
            }
            else
            {
                low = middle;
            }
        }

        return high;
    }
}
