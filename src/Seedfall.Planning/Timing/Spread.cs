namespace Seedfall.Planning.Timing;

/// <summary>Middles and percentiles over seasons.</summary>
internal static class Spread
{
    /// <summary>
    /// The day by which a share of the seasons had the event, 0 to 1; seasons without it count as after every day. Null where
    /// that share never had it, or no season is known.
    /// </summary>
    internal static int? Day(IEnumerable<int?> days, double share)
    {
        var sorted = days.Select(d => d ?? int.MaxValue).Order().ToArray();
        if (sorted.Length == 0)
        {
            return null;
        }

        var day = sorted[(int)Math.Floor(share * (sorted.Length - 1))];
        return day == int.MaxValue ? null : day;
    }

    /// <summary>Percentile of ascending values by linear interpolation between order statistics; at least one value.</summary>
    internal static double Percentile(ReadOnlySpan<double> ascending, double share)
    {
        var position = share * (ascending.Length - 1);
        var low = (int)Math.Floor(position);
        var high = Math.Min(low + 1, ascending.Length - 1);
        return ascending[low] + ((position - low) * (ascending[high] - ascending[low]));
    }
}
