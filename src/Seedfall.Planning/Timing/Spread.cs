using Seedfall.Engine.Timing;

namespace Seedfall.Planning.Timing;

/// <summary>Middles and percentiles over seasons.</summary>
internal static class Spread
{
    /// <summary>Chances by day of the season from one day per season, null where it never came; null where no season is known.</summary>
    internal static DateChances? Of(IEnumerable<int?> days)
    {
        int?[] known = [.. days];
        return known.Length == 0 ? null : DateChances.FromDays(known.OfType<int>(), known.Length);
    }

    /// <summary>The middle day; null where most seasons never had it, or none is known.</summary>
    internal static int? Middle(IEnumerable<int?> days) => Of(days)?.Quantile(0.5);

    /// <summary>Percentile of ascending values by linear interpolation between order statistics; at least one value.</summary>
    internal static double Percentile(ReadOnlySpan<double> ascending, double share)
    {
        var position = share * (ascending.Length - 1);
        var low = (int)Math.Floor(position);
        var high = Math.Min(low + 1, ascending.Length - 1);
        return ascending[low] + ((position - low) * (ascending[high] - ascending[low]));
    }
}
