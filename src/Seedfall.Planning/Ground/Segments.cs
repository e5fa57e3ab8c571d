namespace Seedfall.Planning.Ground;

/// <summary>Straight lines on the lawn's plan.</summary>
internal static class Segments
{
    /// <summary>+1 when a, b, c turn left, -1 when right, 0 when in line.</summary>
    internal static int Turn(GroundPoint a, GroundPoint b, GroundPoint c) =>
        Math.Sign((b.EastM - a.EastM) * (c.NorthM - a.NorthM) - (b.NorthM - a.NorthM) * (c.EastM - a.EastM));

    /// <summary>A point two closed segments share; null where they share none.</summary>
    internal static GroundPoint? Meet(GroundPoint a, GroundPoint b, GroundPoint c, GroundPoint d)
    {
        var (abc, abd, cda, cdb) = (Turn(a, b, c), Turn(a, b, d), Turn(c, d, a), Turn(c, d, b));
        if (abc != abd && cda != cdb && abc * abd <= 0 && cda * cdb <= 0)
        {
            return Cross(a, b, c, d);
        }

        return (abc, abd, cda, cdb) switch
        {
            (0, _, _, _) when Within(a, b, c) => c,
            (_, 0, _, _) when Within(a, b, d) => d,
            (_, _, 0, _) when Within(c, d, a) => a,
            (_, _, _, 0) when Within(c, d, b) => b,
            _ => null,
        };
    }

    private static GroundPoint Cross(GroundPoint a, GroundPoint b, GroundPoint c, GroundPoint d)
    {
        var (abE, abN, cdE, cdN) = (b.EastM - a.EastM, b.NorthM - a.NorthM, d.EastM - c.EastM, d.NorthM - c.NorthM);
        var along = ((c.EastM - a.EastM) * cdN - (c.NorthM - a.NorthM) * cdE) / (abE * cdN - abN * cdE);
        return new GroundPoint(a.EastM + along * abE, a.NorthM + along * abN);
    }

    private static bool Within(GroundPoint a, GroundPoint b, GroundPoint p) =>
        p.EastM >= Math.Min(a.EastM, b.EastM) && p.EastM <= Math.Max(a.EastM, b.EastM)
        && p.NorthM >= Math.Min(a.NorthM, b.NorthM) && p.NorthM <= Math.Max(a.NorthM, b.NorthM);
}
