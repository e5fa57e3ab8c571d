using Seedfall.Planning.Ground;

namespace Seedfall.Web.Features.Drawing;

/// <summary>Where two sides meet.</summary>
internal static class Meeting
{
    /// <summary>A point two closed segments share; null where they share none.</summary>
    public static GroundPoint? Of(GroundPoint a, GroundPoint b, GroundPoint c, GroundPoint d)
    {
        var (abc, abd, cda, cdb) = (Turn(a, b, c), Turn(a, b, d), Turn(c, d, a), Turn(c, d, b));
        if (abc != abd && cda != cdb && abc * abd <= 0 && cda * cdb <= 0)
        {
            var (abE, abN, cdE, cdN) = (b.EastM - a.EastM, b.NorthM - a.NorthM, d.EastM - c.EastM, d.NorthM - c.NorthM);
            var along = ((c.EastM - a.EastM) * cdN - (c.NorthM - a.NorthM) * cdE) / (abE * cdN - abN * cdE);
            return new(a.EastM + along * abE, a.NorthM + along * abN);
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

    private static int Turn(GroundPoint a, GroundPoint b, GroundPoint c) =>
        Math.Sign((b.EastM - a.EastM) * (c.NorthM - a.NorthM) - (b.NorthM - a.NorthM) * (c.EastM - a.EastM));

    private static bool Within(GroundPoint a, GroundPoint b, GroundPoint p) =>
        p.EastM >= Math.Min(a.EastM, b.EastM) && p.EastM <= Math.Max(a.EastM, b.EastM)
        && p.NorthM >= Math.Min(a.NorthM, b.NorthM) && p.NorthM <= Math.Max(a.NorthM, b.NorthM);
}
