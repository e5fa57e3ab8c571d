using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration;

/// <summary>What a row of pans across a spreader's path says.</summary>
public static class SpreaderPattern
{
    /// <summary>
    /// Effective swath: twice the distance from the center to where the catch has fallen to half the center's, taken as the mean
    /// of both sides and read between pans by a straight line (Ohio State Extension Bulletin 817).
    /// </summary>
    /// <param name="catches">Catches of an odd number of equally spaced pans, the middle one under the spreader; not negative.</param>
    /// <param name="spacing">Distance between neighboring pans.</param>
    /// <returns>Null where a side never falls to half: the row was too short.</returns>
    public static Length? EffectiveSwath(IReadOnlyList<double> catches, Length spacing)
    {
        Require(catches, 3);
        if (catches.Count % 2 == 0)
        {
            throw new ArgumentException($"an odd number of pans is needed, found {catches.Count}", nameof(catches));
        }

        var center = catches.Count / 2;
        return HalfAt(catches, center, -1) is { } left && HalfAt(catches, center, 1) is { } right
            ? spacing * (left + right)
            : null;
    }

    /// <summary>
    /// Catches across the ground between two passes when swaths are laid side by side, every pass adding its tails: the pattern
    /// repeated every <paramref name="everyPans"/> pans and summed.
    /// </summary>
    /// <param name="catches">One pass, pan by pan; nothing falls outside the row.</param>
    /// <param name="everyPans">Distance between passes in pans, at least 1.</param>
    public static IReadOnlyList<double> Overlapped(IReadOnlyList<double> catches, int everyPans)
    {
        Require(catches, 1);
        if (everyPans < 1)
        {
            throw new ArgumentOutOfRangeException(nameof(everyPans), everyPans, "a spacing of at least one pan is needed");
        }

        var sums = new double[everyPans];
        for (var i = 0; i < catches.Count; i++)
        {
            sums[i % everyPans] += catches[i];
        }

        return sums;
    }

    /// <summary>Coefficient of variation [-]: sample standard deviation over the mean. Up to 0.10 to 0.15 is good, 0.20 to 0.25 the limit (common practice, no source read).</summary>
    /// <param name="catches">At least two, not all zero.</param>
    public static double CoefficientOfVariation(IReadOnlyList<double> catches)
    {
        Require(catches, 2);
        var mean = catches.Average();
        if (!(mean > 0.0))
        {
            throw new ArgumentException("catches must not all be zero", nameof(catches));
        }

        var squares = catches.Sum(c => (c - mean) * (c - mean));
        return Math.Sqrt(squares / (catches.Count - 1)) / mean;
    }

    private static double? HalfAt(IReadOnlyList<double> catches, int center, int step)
    {
        var half = 0.5 * catches[center];
        for (var i = center + step; i >= 0 && i < catches.Count; i += step)
        {
            if (catches[i] <= half)
            {
                var before = catches[i - step];
                return Math.Abs(i - center) - (before > catches[i] ? (half - catches[i]) / (before - catches[i]) : 0.0);
            }
        }

        return null;
    }

    private static void Require(IReadOnlyList<double> catches, int least)
    {
        ArgumentNullException.ThrowIfNull(catches);
        if (catches.Count < least || catches.Any(c => !(c >= 0.0 && double.IsFinite(c))))
        {
            throw new ArgumentException($"at least {least} catches, none negative, are needed", nameof(catches));
        }
    }
}
