namespace Seedfall.Photos.Overview;

/// <summary>Measures of closed outlines; a ring need not repeat its first point.</summary>
internal static class Rings
{
    /// <summary>Signed area, m2; above 0 going round counterclockwise: <c>A = 1/2 sum(x_i y_i+1 - x_i+1 y_i)</c>.</summary>
    internal static double Area(IReadOnlyList<PlanPoint> ring)
    {
        var sum = 0.0;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            sum += (a.AcrossM - ring[0].AcrossM) * (b.AwayM - ring[0].AwayM) - (b.AcrossM - ring[0].AcrossM) * (a.AwayM - ring[0].AwayM);
        }

        return 0.5 * sum;
    }

    /// <summary>Length all round, m.</summary>
    internal static double Length(IReadOnlyList<PlanPoint> ring) =>
        Enumerable.Range(0, ring.Count).Sum(i => Distance(ring[i], ring[(i + 1) % ring.Count]));

    /// <summary>True inside: a ray to the right crosses the ring an odd number of times.</summary>
    internal static bool Contains(IReadOnlyList<PlanPoint> ring, double acrossM, double awayM)
    {
        var inside = false;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.AwayM > awayM != b.AwayM > awayM && acrossM < a.AcrossM + (awayM - a.AwayM) / (b.AwayM - a.AwayM) * (b.AcrossM - a.AcrossM))
            {
                inside = !inside;
            }
        }

        return inside;
    }

    /// <summary>
    /// With fewer points, none of those left out farther than the tolerance from the new line (Douglas and Peucker 1973, The
    /// Canadian Cartographer 10:112-122; from memory). The ring as it was where fewer points would make it cross itself.
    /// </summary>
    internal static IReadOnlyList<PlanPoint> Simplified(IReadOnlyList<PlanPoint> ring, double toleranceM)
    {
        if (ring.Count <= 4)
        {
            return ring;
        }

        var far = Enumerable.Range(1, ring.Count - 1).MaxBy(i => Distance(ring[0], ring[i]));
        PlanPoint[] closed = [.. ring, ring[0]];
        var keep = new bool[closed.Length];
        (keep[0], keep[far]) = (true, true);
        Mark(closed, keep, 0, far, toleranceM);
        Mark(closed, keep, far, ring.Count, toleranceM);
        List<PlanPoint> kept = [.. ring.Where((_, i) => keep[i])];
        return kept.Count >= 3 && !CrossesItself(kept) ? kept : ring;
    }

    private static void Mark(PlanPoint[] points, bool[] keep, int first, int last, double toleranceM)
    {
        if (last - first < 2)
        {
            return;
        }

        var (farthest, most) = (first, 0.0);
        for (var i = first + 1; i < last; i++)
        {
            var off = OffLine(points[first], points[last], points[i]);
            (farthest, most) = off > most ? (i, off) : (farthest, most);
        }

        if (most > toleranceM)
        {
            keep[farthest] = true;
            Mark(points, keep, first, farthest, toleranceM);
            Mark(points, keep, farthest, last, toleranceM);
        }
    }

    private static double OffLine(PlanPoint a, PlanPoint b, PlanPoint p)
    {
        var length = Distance(a, b);
        return length == 0.0 ? Distance(a, p) : Math.Abs(Turn(a, b, p)) / length;
    }

    private static bool CrossesItself(List<PlanPoint> ring)
    {
        for (var i = 0; i < ring.Count; i++)
        {
            for (var j = i + 2; j < ring.Count; j++)
            {
                var neighbors = i == 0 && j == ring.Count - 1;
                if (!neighbors && Cross(ring[i], ring[i + 1], ring[j], ring[(j + 1) % ring.Count]))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static bool Cross(PlanPoint a, PlanPoint b, PlanPoint c, PlanPoint d) =>
        Turn(a, b, c) > 0.0 != Turn(a, b, d) > 0.0 && Turn(c, d, a) > 0.0 != Turn(c, d, b) > 0.0;

    private static double Turn(PlanPoint a, PlanPoint b, PlanPoint c) =>
        (b.AcrossM - a.AcrossM) * (c.AwayM - a.AwayM) - (b.AwayM - a.AwayM) * (c.AcrossM - a.AcrossM);

    private static double Distance(PlanPoint a, PlanPoint b) => double.Hypot(a.AcrossM - b.AcrossM, a.AwayM - b.AwayM);
}
