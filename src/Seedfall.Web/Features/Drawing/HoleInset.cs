using Seedfall.Planning.Ground;

namespace Seedfall.Web.Features.Drawing;

/// <summary>
/// Holes for a patch's outline. A bed along the patch's edge, or a house with its terrace, shares a line with its neighbor;
/// the outline of a patch needs rings that keep apart. So a hole's corners on another ring are drawn a millimeter into the
/// hole, which changes its area by a thousandth of a square meter for each meter shared.
/// </summary>
internal static class HoleInset
{
    private const double ApartM = 0.001;
    private const double SameLineM = RingRelation.SameLineM;

    /// <summary>The holes, each apart from the ring and from the others.</summary>
    /// <param name="ring">The patch.</param>
    /// <param name="holes">Holes that lie in it, touching allowed.</param>
    public static IReadOnlyList<IReadOnlyList<GroundPoint>> Apart(IReadOnlyList<GroundPoint> ring, IReadOnlyList<IReadOnlyList<GroundPoint>> holes) =>
        [.. holes.Select((hole, i) => Apart(hole, ring, [.. holes.Where((_, j) => j != i)]))];

    private static IReadOnlyList<GroundPoint> Apart(IReadOnlyList<GroundPoint> hole, IReadOnlyList<GroundPoint> patch, IEnumerable<IReadOnlyList<GroundPoint>> holes)
    {
        List<IReadOnlyList<GroundPoint>> others = [.. holes.Prepend(patch).Where(o => RingCrossing.Between(hole, o) is not null || hole.Any(c => RingRelation.ToRing(o, c) < ApartM))];
        if (others.Count == 0)
        {
            return hole;
        }

        var cut = WithCornersOf(hole, others);
        var turn = Turn(cut);
        return [.. cut.Select((c, i) => others.Any(o => Close(o, c, isPatch: ReferenceEquals(o, patch))) ? Inward(cut, i, turn, others) : c)];
    }

    /// <summary>The hole with a corner wherever another ring has one on its sides.</summary>
    private static List<GroundPoint> WithCornersOf(IReadOnlyList<GroundPoint> hole, List<IReadOnlyList<GroundPoint>> others)
    {
        var cut = new List<GroundPoint>();
        for (var i = 0; i < hole.Count; i++)
        {
            var (a, b) = (hole[i], hole[(i + 1) % hole.Count]);
            cut.Add(a);
            cut.AddRange(others.SelectMany(o => o)
                .Where(c => RingRelation.ToSide(a, b, c) < SameLineM)
                .Select(c => RingRelation.Share(a, b, c))
                .Where(s => s is > 1.0e-6 and < 1.0 - 1.0e-6)
                .Distinct().Order()
                .Select(s => RingRelation.Along(a, b, s)));
        }

        return cut;
    }

    private static bool Close(IReadOnlyList<GroundPoint> other, GroundPoint corner, bool isPatch)
    {
        var apartM = RingRelation.ToRing(other, corner);
        return apartM < ApartM || (apartM < SameLineM && RingCrossing.Contains(other, corner) != isPatch);
    }

    /// <summary>A corner moved along the middle of its angle into the hole, past whatever it stands out by.</summary>
    private static GroundPoint Inward(List<GroundPoint> ring, int i, double turn, List<IReadOnlyList<GroundPoint>> others)
    {
        var (before, at, after) = (ring[(i + ring.Count - 1) % ring.Count], ring[i], ring[(i + 1) % ring.Count]);
        var (first, second) = (Normal(before, at, turn), Normal(at, after, turn));
        var (east, north) = (first.E + second.E, first.N + second.N);
        var length = double.Hypot(east, north);
        if (length < 1.0e-9)
        {
            return at;
        }

        // The nearer to a straight line, the closer the middle direction stands to both normals.
        var outM = others.Max(o => RingRelation.ToRing(o, at) is var d && d < SameLineM ? d : 0.0);
        var step = (outM + ApartM) * Math.Min(3.0, 2.0 / length) / length;
        return new(Math.Round(at.EastM + east * step, 4), Math.Round(at.NorthM + north * step, 4));
    }

    /// <summary>Unit vector from a side into the ring.</summary>
    private static (double E, double N) Normal(GroundPoint a, GroundPoint b, double turn)
    {
        var (east, north) = (b.EastM - a.EastM, b.NorthM - a.NorthM);
        var length = double.Hypot(east, north);
        return length == 0.0 ? (0.0, 0.0) : (-turn * north / length, turn * east / length);
    }

    /// <summary>+1 counterclockwise, -1 clockwise.</summary>
    private static double Turn(List<GroundPoint> ring)
    {
        var twice = 0.0;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            twice += (a.EastM - ring[0].EastM) * (b.NorthM - ring[0].NorthM) - (b.EastM - ring[0].EastM) * (a.NorthM - ring[0].NorthM);
        }

        return twice >= 0.0 ? 1.0 : -1.0;
    }
}
