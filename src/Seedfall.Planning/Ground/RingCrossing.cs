namespace Seedfall.Planning.Ground;

/// <summary>Where two sides of outlines meet that must not.</summary>
/// <param name="FirstSide">1-based number of the first side; side n runs from point n to the next.</param>
/// <param name="SecondSide">1-based number of the other side.</param>
/// <param name="At">A point both sides share.</param>
public sealed record RingCrossing(int FirstSide, int SecondSide, GroundPoint At)
{
    /// <summary>The first place a ring crosses or touches itself; null for a simple ring. Repeated points are passed over.</summary>
    public static RingCrossing? Within(IReadOnlyList<GroundPoint> ring)
    {
        var sides = Sides(ring);
        for (var i = 0; i < sides.Count; i++)
        {
            for (var j = i + 1; j < sides.Count; j++)
            {
                var neighbors = j == i + 1 || (i == 0 && j == sides.Count - 1);
                var meet = neighbors ? Fold(sides[i], sides[j]) : Segments.Meet(sides[i].From, sides[i].To, sides[j].From, sides[j].To);
                if (meet is { } at)
                {
                    return new RingCrossing(sides[i].Number, sides[j].Number, at);
                }
            }
        }

        return null;
    }

    /// <summary>The first place two rings cross or touch; null where they keep apart.</summary>
    public static RingCrossing? Between(IReadOnlyList<GroundPoint> ring, IReadOnlyList<GroundPoint> other)
    {
        var others = Sides(other);
        foreach (var side in Sides(ring))
        {
            foreach (var second in others)
            {
                if (Segments.Meet(side.From, side.To, second.From, second.To) is { } at)
                {
                    return new RingCrossing(side.Number, second.Number, at);
                }
            }
        }

        return null;
    }

    /// <summary>True when the point lies inside the ring: an eastward ray crosses it an odd number of times.</summary>
    public static bool Contains(IReadOnlyList<GroundPoint> ring, GroundPoint point)
    {
        var inside = false;
        foreach (var (_, a, b) in Sides(ring))
        {
            if (a.NorthM > point.NorthM != b.NorthM > point.NorthM
                && point.EastM < a.EastM + (point.NorthM - a.NorthM) / (b.NorthM - a.NorthM) * (b.EastM - a.EastM))
            {
                inside = !inside;
            }
        }

        return inside;
    }

    private static List<(int Number, GroundPoint From, GroundPoint To)> Sides(IReadOnlyList<GroundPoint> ring)
    {
        var sides = new List<(int, GroundPoint, GroundPoint)>(ring.Count);
        for (var i = 0; i < ring.Count; i++)
        {
            var (from, to) = (ring[i], ring[(i + 1) % ring.Count]);
            if (from != to)
            {
                sides.Add((i + 1, from, to));
            }
        }

        return sides;
    }

    /// <summary>Neighboring sides share one point by right; they meet again only where the outline folds back on itself.</summary>
    private static GroundPoint? Fold((int Number, GroundPoint From, GroundPoint To) a, (int Number, GroundPoint From, GroundPoint To) b)
    {
        var (shared, tailA, tailB) = a.To == b.From ? (a.To, a.From, b.To) : (a.From, a.To, b.From);
        if (Segments.Turn(tailA, shared, tailB) != 0)
        {
            return null;
        }

        var dot = (tailA.EastM - shared.EastM) * (tailB.EastM - shared.EastM) + (tailA.NorthM - shared.NorthM) * (tailB.NorthM - shared.NorthM);
        return dot > 0.0 ? shared : null;
    }
}
