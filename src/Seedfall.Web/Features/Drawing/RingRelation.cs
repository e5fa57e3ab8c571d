using Seedfall.Planning.Ground;

namespace Seedfall.Web.Features.Drawing;

/// <summary>
/// How two rings lie toward each other, where lines within five centimeters lie on each other: a corner set on an edge is
/// neither in nor out, so that a patch may run along the lawn's edge and a bed along a patch. The script of the page judges
/// by the same rules.
/// </summary>
internal static class RingRelation
{
    /// <summary>Lines closer than this lie on each other, m.</summary>
    public const double SameLineM = 0.05;

    private enum Lies
    {
        In,
        Out,
        On,
    }

    /// <summary>Where a ring leaves another it should stay inside; null where it stays.</summary>
    public static GroundPoint? Leaves(IReadOnlyList<GroundPoint> ring, IReadOnlyList<GroundPoint> other) => First(ring, other, Lies.Out);

    /// <summary>Wholly inside, touching allowed.</summary>
    public static bool LiesIn(IReadOnlyList<GroundPoint> ring, IReadOnlyList<GroundPoint> other)
    {
        var (own, outer) = (Box(ring), Box(other));
        return own.West > outer.West - SameLineM && own.East < outer.East + SameLineM && own.South > outer.South - SameLineM && own.North < outer.North + SameLineM
            && Leaves(ring, other) is null;
    }

    /// <summary>Where two rings take the same ground; null where they lie apart or only touch.</summary>
    public static GroundPoint? Overlaps(IReadOnlyList<GroundPoint> ring, IReadOnlyList<GroundPoint> other) =>
        BoxesApart(ring, other) ? null : First(ring, other, Lies.In) ?? First(other, ring, Lies.In) ?? (AllOn(ring, other) && AllOn(other, ring) ? ring[0] : null);

    private static bool BoxesApart(IReadOnlyList<GroundPoint> ring, IReadOnlyList<GroundPoint> other)
    {
        var (a, b) = (Box(ring), Box(other));
        return a.East < b.West || b.East < a.West || a.North < b.South || b.North < a.South;
    }

    private static (double West, double South, double East, double North) Box(IReadOnlyList<GroundPoint> ring) =>
        (ring.Min(p => p.EastM), ring.Min(p => p.NorthM), ring.Max(p => p.EastM), ring.Max(p => p.NorthM));

    private static bool AllOn(IReadOnlyList<GroundPoint> ring, IReadOnlyList<GroundPoint> other) => Pieces(ring, other).TrueForAll(p => p.Lies == Lies.On);

    /// <summary>Where the first run of pieces that lie so begins.</summary>
    private static GroundPoint? First(IReadOnlyList<GroundPoint> ring, IReadOnlyList<GroundPoint> other, Lies lies)
    {
        var pieces = Pieces(ring, other);
        var at = pieces.FindIndex(p => p.Lies == lies);
        if (at < 0)
        {
            return null;
        }

        for (var i = 0; i < pieces.Count; i++)
        {
            if (pieces[i].Lies == lies && pieces[(i + pieces.Count - 1) % pieces.Count].Lies != lies)
            {
                at = i;
                break;
            }
        }

        return ToRing(other, pieces[at].From) < SameLineM ? pieces[at].From : pieces[at].Middle;
    }

    /// <summary>The ring cut wherever it meets the other.</summary>
    private static List<(GroundPoint From, GroundPoint Middle, Lies Lies)> Pieces(IReadOnlyList<GroundPoint> ring, IReadOnlyList<GroundPoint> other)
    {
        var pieces = new List<(GroundPoint, GroundPoint, Lies)>();
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a == b)
            {
                continue;
            }

            var cuts = Cuts(a, b, other);
            for (var c = 1; c < cuts.Count; c++)
            {
                if (cuts[c] - cuts[c - 1] >= 1.0e-9)
                {
                    var middle = Along(a, b, (cuts[c - 1] + cuts[c]) / 2.0);
                    var lies = ToRing(other, middle) < SameLineM ? Lies.On : RingCrossing.Contains(other, middle) ? Lies.In : Lies.Out;
                    pieces.Add((Along(a, b, cuts[c - 1]), middle, lies));
                }
            }
        }

        return pieces;
    }

    private static List<double> Cuts(GroundPoint a, GroundPoint b, IReadOnlyList<GroundPoint> other)
    {
        List<double> cuts = [0.0, 1.0];
        for (var j = 0; j < other.Count; j++)
        {
            var (c, d) = (other[j], other[(j + 1) % other.Count]);
            if (Meeting.Of(a, b, c, d) is { } at)
            {
                cuts.Add(Share(a, b, at));
            }

            if (ToSide(a, b, c) < SameLineM)
            {
                cuts.Add(Share(a, b, c));
            }
        }

        cuts.Sort();
        return cuts;
    }

    /// <summary>How far along a side the nearest place to a point lies, 0 to 1.</summary>
    public static double Share(GroundPoint a, GroundPoint b, GroundPoint p)
    {
        var (east, north) = (b.EastM - a.EastM, b.NorthM - a.NorthM);
        var square = east * east + north * north;
        return square == 0.0 ? 0.0 : Math.Clamp(((p.EastM - a.EastM) * east + (p.NorthM - a.NorthM) * north) / square, 0.0, 1.0);
    }

    /// <summary>The point a share of the way along a side.</summary>
    public static GroundPoint Along(GroundPoint a, GroundPoint b, double share) =>
        new(a.EastM + share * (b.EastM - a.EastM), a.NorthM + share * (b.NorthM - a.NorthM));

    /// <summary>Distance from a point to the nearest place on a side, m.</summary>
    public static double ToSide(GroundPoint a, GroundPoint b, GroundPoint p)
    {
        var near = Along(a, b, Share(a, b, p));
        return double.Hypot(p.EastM - near.EastM, p.NorthM - near.NorthM);
    }

    /// <summary>Distance from a point to the nearest place on a ring, m.</summary>
    public static double ToRing(IReadOnlyList<GroundPoint> ring, GroundPoint p)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < ring.Count; i++)
        {
            least = Math.Min(least, ToSide(ring[i], ring[(i + 1) % ring.Count], p));
        }

        return least;
    }
}
