using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground;

/// <summary>Length of closed outlines.</summary>
public static class RingLength
{
    /// <summary>m. Sum of the sides, the closing one included; need not repeat the first point.</summary>
    public static Length Of(IReadOnlyList<GroundPoint> ring)
    {
        var sumM = 0.0;
        for (var i = 0; i < ring.Count; i++)
        {
            sumM += Apart(ring[i], ring[(i + 1) % ring.Count]);
        }

        return Length.FromMeters(sumM);
    }

    internal static double Apart(GroundPoint a, GroundPoint b) => Math.Sqrt((a.EastM - b.EastM) * (a.EastM - b.EastM) + (a.NorthM - b.NorthM) * (a.NorthM - b.NorthM));
}
