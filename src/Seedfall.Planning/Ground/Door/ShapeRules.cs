using Seedfall.Engine.Units;
using Seedfall.Planning.Ground.Shapes;

namespace Seedfall.Planning.Ground.Door;

/// <summary>Shapes: lengths above zero, outlines that do not cross.</summary>
internal static class ShapeRules
{
    private const double MostMeters = 5000.0;
    private const int MostPoints = 4000;
    private const int MostHoles = 100;
    private const int MostHolePoints = 8000;
    private const int MostPieces = 100;
    private const int MostCorners = 400;

    /// <summary>True when the shape is sound enough for its area to be worked out.</summary>
    internal static bool Computable(PatchShape shape)
    {
        var found = new Findings();
        Check(shape, "", found);
        return found.All.Count == 0;
    }

    internal static void Check(PatchShape shape, string path, Findings found)
    {
        switch (shape)
        {
            case PatchShape.Simple s:
                Simple(s, path, found);
                break;
            case PatchShape.Pieces p:
                Pieces(p, $"{path}.pieces", found);
                break;
            case PatchShape.Taped t:
                Taped(t, $"{path}.taped", found);
                break;
            case PatchShape.Outline o:
                Outline(o, $"{path}.outline", found);
                break;
            case PatchShape.Typed t:
                found.Above($"{path}.area", t.Area.SquareMeters, 1.0e6, "m2");
                break;
        }
    }

    private static void Simple(PatchShape.Simple shape, string path, Findings found)
    {
        switch (shape)
        {
            case PatchShape.Rectangle r:
                Length(found, $"{path}.rectangle.long", r.Long);
                Length(found, $"{path}.rectangle.wide", r.Wide);
                break;
            case PatchShape.Circle c:
                Length(found, $"{path}.circle.diameter", c.Diameter);
                break;
            case PatchShape.Triangle t:
                Length(found, $"{path}.triangle.base", t.Base);
                Length(found, $"{path}.triangle.height", t.Height);
                break;
            case PatchShape.Sides s:
                Sides(s, $"{path}.sides", found);
                break;
            case PatchShape.Slice s:
                Length(found, $"{path}.slice.radius", s.Radius);
                found.Above($"{path}.slice.share", s.Share.Percent, 100.0, "%");
                break;
            case PatchShape.Bow b:
                Length(found, $"{path}.bow.chord", b.Chord);
                Length(found, $"{path}.bow.rise", b.Rise);
                break;
            case PatchShape.Strip s:
                Length(found, $"{path}.strip.along", s.Along);
                Length(found, $"{path}.strip.wide", s.Wide);
                break;
            case PatchShape.Offsets o:
                Offsets(o, $"{path}.offsets", found);
                break;
        }
    }

    private static void Sides(PatchShape.Sides sides, string path, Findings found)
    {
        Length(found, $"{path}.a", sides.First);
        Length(found, $"{path}.b", sides.Second);
        Length(found, $"{path}.c", sides.Third);
        double[] meters = [sides.First.Meters, sides.Second.Meters, sides.Third.Meters];
        if (meters.All(m => m > 0.0) && TriangleBySides.Area(sides.First, sides.Second, sides.Third) is null)
        {
            var longest = meters.Max();
            found.Add(path, $"{Meters(longest)} against {Meters(meters.Sum() - longest)} of the other two together", "three sides that close a triangle: each shorter than the other two together");
        }
    }

    private static void Pieces(PatchShape.Pieces pieces, string path, Findings found)
    {
        if (pieces.All.Count is 0 or > MostPieces || pieces.All.All(p => p.TakenAway))
        {
            found.Add(path, pieces.All.Count is 0 or > MostPieces ? $"{pieces.All.Count} pieces" : "every piece taken away", $"1 to {MostPieces} pieces, at least one of them added");
        }

        var before = found.All.Count;
        for (var i = 0; i < pieces.All.Count; i++)
        {
            Simple(pieces.All[i].Shape, $"{path}[{i}].shape", found);
        }

        if (found.All.Count == before && pieces.All.Count > 0 && !(PatchArea.Of(pieces).SquareMeters > 0.0))
        {
            found.Add(path, "more taken away than added", "an area above 0");
        }
    }

    private static void Taped(PatchShape.Taped taped, string path, Findings found)
    {
        Length(found, $"{path}.base", taped.Base);
        if (taped.Corners.Count is < 3 or > MostCorners)
        {
            found.Add($"{path}.corners", $"{taped.Corners.Count}", $"3 to {MostCorners} corners");
            return;
        }

        for (var i = 0; i < taped.Corners.Count; i++)
        {
            found.Range($"{path}.corners[{i}].fromA", taped.Corners[i].FromA.Meters, 0.0, MostMeters, "m");
            found.Range($"{path}.corners[{i}].fromB", taped.Corners[i].FromB.Meters, 0.0, MostMeters, "m");
        }

        if (!(taped.Base.Meters > 0.0))
        {
            return;
        }

        var points = TapedRing.Points(taped);
        for (var i = 0; i < points.Count; i++)
        {
            if (points[i] is null)
            {
                var (corner, shortM) = (taped.Corners[i], TapedRing.ShortM(taped.Base.Meters, taped.Corners[i]));
                found.Add(
                    $"{path}.corners[{i}]",
                    $"{Meters(corner.FromA.Meters)} from A and {Meters(corner.FromB.Meters)} from B over a base of {Meters(taped.Base.Meters)}, which miss each other by {Meters(shortM)}",
                    $"two distances that meet: corner {i + 1} is no triangle with the base line");
            }
        }

        if (points.All(p => p is not null))
        {
            Ring([.. points.Select(p => p!.Value)], $"{path}.corners", found);
        }
    }

    private static string Meters(double meters) => $"{Findings.Text(new Length(meters).Feet, "ft")} ({Findings.Text(meters, "m")})";

    private static void Length(Findings found, string path, Length length) => found.Above(path, length.Meters, MostMeters, "m");

    private static void Offsets(PatchShape.Offsets offsets, string path, Findings found)
    {
        Length(found, $"{path}.step", offsets.Step);
        if (offsets.Widths.Count is < 2 or > 1000)
        {
            found.Add($"{path}.widths", $"{offsets.Widths.Count}", "2 to 1,000 widths, the first and last included");
        }

        for (var i = 0; i < offsets.Widths.Count; i++)
        {
            found.Range($"{path}.widths[{i}]", offsets.Widths[i].Meters, 0.0, MostMeters, "m");
        }

        if (offsets.Widths.Count >= 2 && offsets.Widths.All(w => w.Meters == 0.0))
        {
            found.Add($"{path}.widths", "all 0", "at least one width above 0");
        }
    }

    private static void Outline(PatchShape.Outline outline, string path, Findings found)
    {
        var sound = Ring(outline.Ring, $"{path}.ring", found);
        if (outline.Holes.Count > MostHoles)
        {
            found.Add($"{path}.holes", $"{outline.Holes.Count}", $"at most {MostHoles} holes");
            return;
        }

        if (outline.Holes.Sum(h => h.Count) > MostHolePoints)
        {
            found.Add($"{path}.holes", $"{outline.Holes.Sum(h => h.Count)} points", $"at most {MostHolePoints} points in all holes together");
            return;
        }

        for (var i = 0; i < outline.Holes.Count; i++)
        {
            sound &= Ring(outline.Holes[i], $"{path}.holes[{i}]", found);
        }

        if (sound)
        {
            Holes(outline, path, found);
        }
    }

    internal static bool Ring(IReadOnlyList<GroundPoint> ring, string path, Findings found)
    {
        if (ring.Count > MostPoints || ring.Distinct().Count() < 3)
        {
            found.Add(path, $"{ring.Count} points, {ring.Distinct().Count()} of them different", $"3 to {MostPoints} different points");
            return false;
        }

        var far = ring.FirstOrDefault(p => !double.IsFinite(p.EastM) || !double.IsFinite(p.NorthM) || Math.Abs(p.EastM) > 2.0e7 || Math.Abs(p.NorthM) > 2.0e7);
        if (far != default)
        {
            found.Add(path, Point(far), "points in meters east and north of one fixed point");
            return false;
        }

        if (RingCrossing.Within(ring) is { } crossing)
        {
            found.Add(path, $"side {crossing.FirstSide} meets side {crossing.SecondSide} at {Point(crossing.At)}", "an outline that does not cross or touch itself");
            return false;
        }

        return true;
    }

    private static void Holes(PatchShape.Outline outline, string path, Findings found)
    {
        for (var i = 0; i < outline.Holes.Count; i++)
        {
            var hole = outline.Holes[i];
            if (RingCrossing.Between(outline.Ring, hole) is { } edge)
            {
                found.Add($"{path}.holes[{i}]", $"its side {edge.SecondSide} meets side {edge.FirstSide} of the outline at {Point(edge.At)}", "a hole inside the outline");
            }
            else if (!RingCrossing.Contains(outline.Ring, hole[0]))
            {
                found.Add($"{path}.holes[{i}]", "it lies outside the outline", "a hole inside the outline");
            }

            for (var j = 0; j < i; j++)
            {
                if (RingCrossing.Between(outline.Holes[j], hole) is not null || RingCrossing.Contains(outline.Holes[j], hole[0]) || RingCrossing.Contains(hole, outline.Holes[j][0]))
                {
                    found.Add($"{path}.holes[{i}]", $"it overlaps hole {j + 1}", "holes apart from each other");
                }
            }
        }
    }

    private static string Point(GroundPoint point) => $"{Findings.Text(point.EastM, "m")} east, {Findings.Text(point.NorthM, "m")} north";
}
