using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water;

/// <summary>How evenly a sprinkler waters, from catch-can depths.</summary>
public static class WaterUniformity
{
    /// <summary>
    /// Distribution uniformity of the low quarter, 0 to 1: mean of the driest quarter of the cans over the mean of all. A can
    /// that falls across the quarter counts in part. UC Davis, California Center for Urban Horticulture; null where no can
    /// caught water.
    /// </summary>
    /// <param name="cans">Depths caught, at least one; none negative.</param>
    public static double? LowQuarter(IReadOnlyList<Depth> cans) => LowShare(cans, 0.25);

    /// <summary>Distribution uniformity of the low half, 0 to 1, in the same way. Null where no can caught water.</summary>
    public static double? LowHalf(IReadOnlyList<Depth> cans) => LowShare(cans, 0.5);

    /// <summary>
    /// Christiansen's coefficient of uniformity: 1 - sum|x - mean| / (n mean). Can fall below 0 in very uneven patterns. Common
    /// practice, no source read. Null where no can caught water.
    /// </summary>
    public static double? Christiansen(IReadOnlyList<Depth> cans)
    {
        var mean = MeanMm(cans);
        return mean > 0.0 ? 1.0 - (cans.Sum(c => Math.Abs(c.Millimeters - mean)) / (cans.Count * mean)) : null;
    }

    /// <summary>
    /// Scheduling coefficient with the driest can as the driest spot: mean / least, at least 1. Common practice, no source
    /// read. Null where a can stayed dry: no run time waters it.
    /// </summary>
    public static double? SchedulingCoefficient(IReadOnlyList<Depth> cans)
    {
        var mean = MeanMm(cans);
        var leastMm = cans.Min(c => c.Millimeters);
        return leastMm > 0.0 ? mean / leastMm : null;
    }

    /// <summary>
    /// Run-time multiplier: 1 / (0.4 + 0.6 DU), with DU the low-quarter uniformity; close to 1 over the low half, which Mecham
    /// 2010 (ASABE 35895) reports practice moved to because 1/DU over-waters. Constants: common practice, no source read.
    /// </summary>
    public static double RunTimeMultiplier(Fraction lowQuarter) => 1.0 / (0.4 + (0.6 * lowQuarter.Value));

    private static double? LowShare(IReadOnlyList<Depth> cans, double share)
    {
        var mean = MeanMm(cans);
        if (mean <= 0.0)
        {
            return null;
        }

        var left = cans.Count * share;
        var sumMm = 0.0;
        foreach (var depthMm in cans.Select(c => c.Millimeters).Order())
        {
            var weight = Math.Min(1.0, left);
            sumMm += weight * depthMm;
            left -= weight;
            if (left <= 0.0)
            {
                break;
            }
        }

        return Math.Min(1.0, sumMm / (cans.Count * share) / mean);
    }

    private static double MeanMm(IReadOnlyList<Depth> cans)
    {
        if (cans.Count == 0)
        {
            throw new ArgumentException("at least one can is needed", nameof(cans));
        }

        foreach (var can in cans)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(can.Millimeters, nameof(cans));
        }

        return cans.Average(c => c.Millimeters);
    }
}
