using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground;

/// <summary>Area inside a closed outline, holes taken out, on the plan.</summary>
public static class PolygonArea
{
    /// <summary>m2. Shoelace formula <c>A = |sum (x_i y_i+1 - x_i+1 y_i)| / 2</c>, minus the same for each hole.</summary>
    /// <param name="ring">At least three points; need not repeat its first. Either direction.</param>
    /// <param name="holes">Rings inside the ring that do not overlap.</param>
    public static Area Of(IReadOnlyList<GroundPoint> ring, IReadOnlyList<IReadOnlyList<GroundPoint>> holes) =>
        Area.FromSquareMeters(Math.Abs(SignedM2(ring)) - holes.Sum(h => Math.Abs(SignedM2(h))));

    /// <summary>Twice-halved cross sum in m2, taken about the first point so that far origins lose no digits; positive counterclockwise.</summary>
    private static double SignedM2(IReadOnlyList<GroundPoint> ring)
    {
        if (ring.Count < 3)
        {
            throw new ArgumentException($"an outline needs at least three points, found {ring.Count}", nameof(ring));
        }

        var (originE, originN) = (ring[0].EastM, ring[0].NorthM);
        var twiceM2 = 0.0;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            twiceM2 += (a.EastM - originE) * (b.NorthM - originN) - (b.EastM - originE) * (a.NorthM - originN);
        }

        return 0.5 * twiceM2;
    }
}
