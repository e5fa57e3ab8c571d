using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground;

/// <summary>Area from widths measured across a base line at equal steps, the first and last included.</summary>
public static class OffsetArea
{
    /// <summary>m2. <c>A = h (w0/2 + w1 + ... + wn/2)</c>: the trapezoid rule.</summary>
    /// <exception cref="ArgumentException">Fewer than two widths.</exception>
    public static Area Trapezoid(Length step, IReadOnlyList<Length> widths)
    {
        Require(widths, 2);
        var sumM = 0.5 * (widths[0].Meters + widths[^1].Meters);
        for (var i = 1; i < widths.Count - 1; i++)
        {
            sumM += widths[i].Meters;
        }

        return Area.FromSquareMeters(step.Meters * sumM);
    }

    /// <summary>m2. <c>A = h/3 (w0 + 4 w1 + 2 w2 + ... + wn)</c>: Simpson's rule; exact for edges that bend like a parabola.</summary>
    /// <exception cref="ArgumentException">Fewer than three widths, or an even number of them.</exception>
    public static Area Simpson(Length step, IReadOnlyList<Length> widths)
    {
        Require(widths, 3);
        if (!SimpsonApplies(widths))
        {
            throw new ArgumentException($"an odd number of widths is needed for Simpson's rule, found {widths.Count}", nameof(widths));
        }

        var sumM = widths[0].Meters + widths[^1].Meters;
        for (var i = 1; i < widths.Count - 1; i++)
        {
            sumM += (i % 2 == 1 ? 4.0 : 2.0) * widths[i].Meters;
        }

        return Area.FromSquareMeters(step.Meters * sumM / 3.0);
    }

    /// <summary>True for an odd number of widths, three or more.</summary>
    public static bool SimpsonApplies(IReadOnlyList<Length> widths) => widths.Count >= 3 && widths.Count % 2 == 1;

    private static void Require(IReadOnlyList<Length> widths, int least)
    {
        if (widths.Count < least)
        {
            throw new ArgumentException($"at least {least} widths are needed, found {widths.Count}", nameof(widths));
        }
    }
}
