namespace Seedfall.Planning.Ground;

/// <summary>A side of a ring, with its 1-based number.</summary>
internal readonly record struct RingSide(int Number, GroundPoint From, GroundPoint To)
{
    internal double WestM => Math.Min(From.EastM, To.EastM);

    internal double EastM => Math.Max(From.EastM, To.EastM);
}

/// <summary>The sides of rings, and which of them may meet.</summary>
internal static class RingSides
{
    /// <summary>Sides of any length; repeated points are passed over.</summary>
    internal static List<RingSide> Of(IReadOnlyList<GroundPoint> ring)
    {
        var sides = new List<RingSide>(ring.Count);
        for (var i = 0; i < ring.Count; i++)
        {
            var (from, to) = (ring[i], ring[(i + 1) % ring.Count]);
            if (from != to)
            {
                sides.Add(new(i + 1, from, to));
            }
        }

        return sides;
    }

    /// <summary>
    /// Pairs of sides that overlap in east, as a line sweeping eastward meets them: far fewer than all pairs on an outline
    /// that runs round. Ends when the visitor says no.
    /// </summary>
    internal static void Near(List<RingSide> first, List<RingSide> second, Func<int, int, bool> visit)
    {
        int[] byWest = [.. Enumerable.Range(0, second.Count).OrderBy(j => second[j].WestM)];
        var widestM = second.Count == 0 ? 0.0 : second.Max(s => s.EastM - s.WestM);
        for (var i = 0; i < first.Count; i++)
        {
            for (var k = FirstFrom(second, byWest, first[i].WestM - widestM); k < byWest.Length && second[byWest[k]].WestM <= first[i].EastM; k++)
            {
                if (second[byWest[k]].EastM >= first[i].WestM && !visit(i, byWest[k]))
                {
                    return;
                }
            }
        }
    }

    /// <summary>Neighboring sides share one point by right; they meet again only where the outline folds back on itself.</summary>
    internal static GroundPoint? Fold(RingSide a, RingSide b)
    {
        var (shared, tailA, tailB) = a.To == b.From ? (a.To, a.From, b.To) : (a.From, a.To, b.From);
        if (Segments.Turn(tailA, shared, tailB) != 0)
        {
            return null;
        }

        var dot = (tailA.EastM - shared.EastM) * (tailB.EastM - shared.EastM) + (tailA.NorthM - shared.NorthM) * (tailB.NorthM - shared.NorthM);
        return dot > 0.0 ? shared : null;
    }

    private static int FirstFrom(List<RingSide> sides, int[] byWest, double westM)
    {
        var (low, high) = (0, byWest.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = sides[byWest[middle]].WestM < westM ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
