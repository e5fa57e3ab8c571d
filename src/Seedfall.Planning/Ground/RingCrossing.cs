namespace Seedfall.Planning.Ground;

/// <summary>Where two sides of outlines meet that must not.</summary>
/// <param name="FirstSide">1-based number of the first side; side n runs from point n to the next.</param>
/// <param name="SecondSide">1-based number of the other side.</param>
/// <param name="At">A point both sides share.</param>
public sealed record RingCrossing(int FirstSide, int SecondSide, GroundPoint At)
{
    /// <summary>The first place a ring crosses or touches itself; null for a simple ring. Repeated points are passed over.</summary>
    public static RingCrossing? Within(IReadOnlyList<GroundPoint> ring) => RingCrossings.Within(ring).FirstOrDefault();

    /// <summary>The first place two rings cross or touch; null where they keep apart.</summary>
    public static RingCrossing? Between(IReadOnlyList<GroundPoint> ring, IReadOnlyList<GroundPoint> other) => RingCrossings.Between(ring, other).FirstOrDefault();

    /// <summary>True when the point lies inside the ring: an eastward ray crosses it an odd number of times.</summary>
    public static bool Contains(IReadOnlyList<GroundPoint> ring, GroundPoint point)
    {
        var inside = false;
        foreach (var (_, a, b) in RingSides.Of(ring))
        {
            if (a.NorthM > point.NorthM != b.NorthM > point.NorthM
                && point.EastM < a.EastM + (point.NorthM - a.NorthM) / (b.NorthM - a.NorthM) * (b.EastM - a.EastM))
            {
                inside = !inside;
            }
        }

        return inside;
    }
}
