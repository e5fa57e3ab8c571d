namespace Seedfall.Planning.Ground;

/// <summary>What misplaced corners do to an outline's area.</summary>
public static class CornerError
{
    /// <summary>
    /// Error of the area as a share of it, where every corner is off by the same error in each direction and each on its own:
    /// <c>e_A = e/2 sqrt(sum |p_i+1 - p_i-1|^2)</c>, the first-order propagation of the shoelace formula. Standard deviations
    /// give a standard deviation, 90 % half widths a 90 % half width.
    /// </summary>
    public static double AreaShare(PatchShape.Outline outline, double errorM)
    {
        var areaM2 = PolygonArea.Of(outline.Ring, outline.Holes).SquareMeters;
        return areaM2 > 0.0 ? 0.5 * errorM * Math.Sqrt(Spans(outline.Ring) + outline.Holes.Sum(Spans)) / areaM2 : 0.0;
    }

    private static double Spans(IReadOnlyList<GroundPoint> ring)
    {
        var sumM2 = 0.0;
        for (var i = 0; i < ring.Count; i++)
        {
            var (before, after) = (ring[(i + ring.Count - 1) % ring.Count], ring[(i + 1) % ring.Count]);
            var (eastM, northM) = (after.EastM - before.EastM, after.NorthM - before.NorthM);
            sumM2 += eastM * eastM + northM * northM;
        }

        return sumM2;
    }
}
