using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground.Door;

/// <summary>Shapes: lengths above zero, outlines that do not cross.</summary>
internal static class ShapeRules
{
    private const double MostMeters = 5000.0;
    private const int MostPoints = 4000;
    private const int MostHoles = 100;

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
            case PatchShape.Offsets o:
                Offsets(o, $"{path}.offsets", found);
                break;
            case PatchShape.Outline o:
                Outline(o, $"{path}.outline", found);
                break;
            case PatchShape.Typed t:
                found.Above($"{path}.area", t.Area.SquareMeters, 1.0e6, "m2");
                break;
        }
    }

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

        for (var i = 0; i < outline.Holes.Count; i++)
        {
            sound &= Ring(outline.Holes[i], $"{path}.holes[{i}]", found);
        }

        if (sound)
        {
            Holes(outline, path, found);
        }
    }

    private static bool Ring(IReadOnlyList<GroundPoint> ring, string path, Findings found)
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
