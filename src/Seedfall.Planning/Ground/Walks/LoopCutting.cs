namespace Seedfall.Planning.Ground.Walks;

/// <summary>Small loops where a wavering path crosses itself.</summary>
internal static class LoopCutting
{
    private const int MostLoops = 40;

    /// <summary>The ring with every small loop replaced by its crossing; null where a loop is too large to be cut.</summary>
    internal static (List<GroundPoint> Ring, int Loops)? Cut(List<GroundPoint> ring)
    {
        var (wholeM2, wholeM) = (Math.Abs(Area(ring)), RingLength.Of(ring).Meters);
        for (var loops = 0; loops <= MostLoops; loops++)
        {
            if (RingCrossing.Within(ring) is not { } crossing)
            {
                return (ring, loops);
            }

            // Side n runs from point n to the next, counted from one: points First+1 .. Second lie on one loop.
            var inner = new List<GroundPoint> { crossing.At };
            inner.AddRange(ring.Skip(crossing.FirstSide).Take(crossing.SecondSide - crossing.FirstSide));
            var outer = new List<GroundPoint>(ring.Take(crossing.FirstSide)) { crossing.At };
            outer.AddRange(ring.Skip(crossing.SecondSide));
            var (small, large) = RingLength.Of(inner).Meters < RingLength.Of(outer).Meters ? (inner, outer) : (outer, inner);
            if (large.Count < 3 || RingLength.Of(small).Meters > WalkFacts.MostGapShare * wholeM || Math.Abs(Area(small)) > WalkFacts.MostLoopShare * wholeM2)
            {
                return null;
            }

            ring = [.. large.Where((p, i) => p != large[(i + 1) % large.Count])];
        }

        return null;
    }

    private static double Area(IReadOnlyList<GroundPoint> ring) => ring.Count < 3 ? 0.0 : PolygonArea.Of(ring, []).SquareMeters;
}
