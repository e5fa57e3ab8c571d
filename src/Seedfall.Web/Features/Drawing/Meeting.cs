using Seedfall.Planning.Ground;

namespace Seedfall.Web.Features.Drawing;

/// <summary>Where sides of rings meet; every place, since the page marks each.</summary>
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

    /// <summary>Every place a ring crosses or touches itself, at most <paramref name="most"/>, sides numbered from 1.</summary>
    public static IReadOnlyList<RingCrossing> Within(IReadOnlyList<GroundPoint> ring, int most = 20)
    {
        var sides = Enumerable.Range(0, ring.Count).Select(i => (Number: i + 1, From: ring[i], To: ring[(i + 1) % ring.Count])).Where(s => s.From != s.To).ToList();
        var found = new List<RingCrossing>();
        for (var i = 0; i < sides.Count; i++)
        {
            for (var j = i + 1; j < sides.Count; j++)
            {
                var neighbors = j == i + 1 || (i == 0 && j == sides.Count - 1);
                var meet = neighbors ? Fold(sides[i], sides[j]) : Of(sides[i].From, sides[i].To, sides[j].From, sides[j].To);
                if (meet is { } at)
                {
                    found.Add(new(sides[i].Number, sides[j].Number, at));
                    if (found.Count == most)
                    {
                        return found;
                    }
                }
            }
        }

        return found;
    }

    /// <summary>Neighbors share one point by right; they meet again only where the outline folds back on itself.</summary>
    private static GroundPoint? Fold((int Number, GroundPoint From, GroundPoint To) a, (int Number, GroundPoint From, GroundPoint To) b)
    {
        var (shared, tailA, tailB) = a.To == b.From ? (a.To, a.From, b.To) : (a.From, a.To, b.From);
        if (Turn(tailA, shared, tailB) != 0)
        {
            return null;
        }

        var dot = (tailA.EastM - shared.EastM) * (tailB.EastM - shared.EastM) + (tailA.NorthM - shared.NorthM) * (tailB.NorthM - shared.NorthM);
        return dot > 0.0 ? shared : null;
    }

    private static int Turn(GroundPoint a, GroundPoint b, GroundPoint c) =>
        Math.Sign((b.EastM - a.EastM) * (c.NorthM - a.NorthM) - (b.NorthM - a.NorthM) * (c.EastM - a.EastM));

    private static bool Within(GroundPoint a, GroundPoint b, GroundPoint p) =>
        p.EastM >= Math.Min(a.EastM, b.EastM) && p.EastM <= Math.Max(a.EastM, b.EastM)
        && p.NorthM >= Math.Min(a.NorthM, b.NorthM) && p.NorthM <= Math.Max(a.NorthM, b.NorthM);
}
