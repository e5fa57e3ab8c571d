namespace Seedfall.Planning.Ground.Walks;

/// <summary>A walked ring made fit to draw: even steps, smoothed, few corners. The area is put right afterwards.</summary>
internal static class RingThinning
{
    /// <summary>Fixes at least a step apart.</summary>
    internal static List<PathFix> Stepped(IReadOnlyList<PathFix> path, double stepM)
    {
        var kept = new List<PathFix> { path[0] };
        foreach (var fix in path)
        {
            if (RingLength.Apart(kept[^1].At, fix.At) >= stepM)
            {
                kept.Add(fix);
            }
        }

        return kept;
    }

    /// <summary>Weights 1-2-1 along the ring as often as spreads a fix over about a meter; none where fixes lie farther apart.</summary>
    internal static List<PathFix> Smoothed(List<PathFix> ring, double stepM)
    {
        var rounds = Math.Clamp((int)Math.Round(2.0 / (stepM * stepM)), 0, 12);
        for (var round = 0; round < rounds; round++)
        {
            var n = ring.Count;
            var from = ring;
            ring = [.. from.Select((fix, i) => fix with { At = Between(from[(i + n - 1) % n].At, fix.At, from[(i + 1) % n].At) })];
        }

        return ring;
    }

    /// <summary>
    /// Corners left so that no point of the ring lies farther than the tolerance from the outline: Douglas and Peucker 1973,
    /// on the two halves between the first point and the one farthest from it.
    /// </summary>
    internal static List<GroundPoint> Corners(IReadOnlyList<GroundPoint> ring, double toleranceM)
    {
        var far = Enumerable.Range(0, ring.Count).MaxBy(i => RingLength.Apart(ring[0], ring[i]));
        var keep = new bool[ring.Count];
        (keep[0], keep[far]) = (true, true);
        var open = new Stack<(int From, int To)>([(0, far), (far, ring.Count)]);
        while (open.TryPop(out var part))
        {
            var (at, mostM) = Farthest(ring, part.From, part.To);
            if (mostM > toleranceM)
            {
                keep[at] = true;
                open.Push((part.From, at));
                open.Push((at, part.To));
            }
        }

        return [.. ring.Where((_, i) => keep[i])];
    }

    /// <summary>The ring grown or shrunk about the middle of its corners so that it holds exactly an area.</summary>
    internal static List<GroundPoint> Holding(IReadOnlyList<GroundPoint> ring, double areaM2)
    {
        var scale = Math.Sqrt(areaM2 / PolygonArea.Of(ring, []).SquareMeters);
        var (eastM, northM) = (ring.Average(p => p.EastM), ring.Average(p => p.NorthM));
        return [.. ring.Select(p => new GroundPoint(eastM + (p.EastM - eastM) * scale, northM + (p.NorthM - northM) * scale))];
    }

    private static (int At, double MostM) Farthest(IReadOnlyList<GroundPoint> ring, int from, int to)
    {
        var (a, b) = (ring[from], ring[to % ring.Count]);
        var (alongE, alongN) = (b.EastM - a.EastM, b.NorthM - a.NorthM);
        var lengthM2 = alongE * alongE + alongN * alongN;
        var (at, mostM) = (from, -1.0);
        for (var i = from + 1; i < to; i++)
        {
            var share = lengthM2 > 0.0 ? Math.Clamp(((ring[i].EastM - a.EastM) * alongE + (ring[i].NorthM - a.NorthM) * alongN) / lengthM2, 0.0, 1.0) : 0.0;
            var offM = RingLength.Apart(ring[i], new(a.EastM + share * alongE, a.NorthM + share * alongN));
            if (offM > mostM)
            {
                (at, mostM) = (i, offM);
            }
        }

        return (at, mostM);
    }

    private static GroundPoint Between(GroundPoint before, GroundPoint here, GroundPoint after) =>
        new(0.25 * before.EastM + 0.5 * here.EastM + 0.25 * after.EastM, 0.25 * before.NorthM + 0.5 * here.NorthM + 0.25 * after.NorthM);
}
