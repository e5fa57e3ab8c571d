using Seedfall.Planning.Ground;

namespace Seedfall.Web.Features.Drawing;

/// <summary>Puts a file's outlines, one after the other, where they belong in a drawing.</summary>
/// <param name="before">The drawing they come into.</param>
/// <param name="target">Key of the shape an outline without a known name becomes.</param>
/// <param name="remarks">Gets what was left out or guessed.</param>
internal sealed class ImportedShapes(Drawn before, string target, List<string> remarks)
{
    private readonly List<DrawnShape> _shapes = [.. before.Shapes];
    private readonly HashSet<string> _new = [];

    public Drawn Drawn => before with { Shapes = [.. _shapes.OrderBy(s => s.Kind)] };

    /// <summary>Takes one outline in.</summary>
    public void Add(string? name, PatchShape.Outline outline, Measuring taken)
    {
        name = string.IsNullOrWhiteSpace(name) ? null : name.Trim() is { Length: <= 60 } shortName ? shortName : name.Trim()[..60];
        if (Known(name) is { } known)
        {
            Put(known, outline, taken);
        }
        else if (name is not null && GroundFiles.KindOf(name) is { } kind)
        {
            AddHole(name, kind, outline.Ring);
        }
        else if (_shapes.Find(s => s.Key == target) is { } asked && !_new.Contains(asked.Key))
        {
            Put(asked, outline, taken);
        }
        else if (_shapes.Find(s => s.Key == target) is { IsDrawn: true } outer && RingRelation.LiesIn(outline.Ring, outer.Ring))
        {
            AddHole(name, FeatureKind.Other, outline.Ring);
        }
        else
        {
            remarks.Add($"{name ?? "an outline without a name"} was left out: nothing on this sheet goes by its name");
        }
    }

    /// <summary>What is new moved to the middle of what was drawn before: a sheet without a place on the earth keeps its own zero point.</summary>
    public Drawn LaidInTheMiddle()
    {
        var (old, fresh) = (before.Shapes.SelectMany(s => s.Ring).ToList(), _shapes.Where(s => _new.Contains(s.Key)).SelectMany(s => s.Ring).ToList());
        if (fresh.Count == 0)
        {
            return before;
        }

        var (east, north) = (old.Average(p => p.EastM) - fresh.Average(p => p.EastM), old.Average(p => p.NorthM) - fresh.Average(p => p.NorthM));
        remarks.Add("this sheet has no place on the earth, so the file was laid in the middle of what is drawn");
        for (var i = 0; i < _shapes.Count; i++)
        {
            if (_new.Contains(_shapes[i].Key))
            {
                _shapes[i] = _shapes[i] with { Ring = [.. _shapes[i].Ring.Select(p => new GroundPoint(Millimeters(p.EastM + east), Millimeters(p.NorthM + north)))] };
            }
        }

        return Drawn;
    }

    private DrawnShape? Known(string? name) => name is null
        ? null
        : _shapes.Find(s => s.Kind != DrawnKind.Edge && string.Equals(s.Name, name, StringComparison.OrdinalIgnoreCase)) ?? (GroundFiles.IsEdge(name) ? _shapes[0] : null);

    private void Put(DrawnShape shape, PatchShape.Outline outline, Measuring taken)
    {
        _shapes[_shapes.IndexOf(shape)] = shape with { Ring = Rounded(outline.Ring), Taken = taken };
        _new.Add(shape.Key);
        foreach (var hole in outline.Holes)
        {
            AddHole(null, FeatureKind.Other, hole);
        }
    }

    /// <summary>A hole, unless one on the same ground is there: files tell a bed both as itself and as a hole of its patch.</summary>
    private void AddHole(string? name, FeatureKind kind, IReadOnlyList<GroundPoint> ring)
    {
        ring = Rounded(ring);
        if (_shapes.FindIndex(s => s.Kind == DrawnKind.Hole && s.IsDrawn && ring.Count > 2 && RingRelation.LiesIn(ring, s.Ring) && RingRelation.LiesIn(s.Ring, ring)) is >= 0 and var same)
        {
            if (name is not null)
            {
                _shapes[same] = _shapes[same] with { Name = name, Hole = kind };
            }

            return;
        }

        var number = _shapes.Count(s => s.Kind == DrawnKind.Hole) + 1;
        while (_shapes.Exists(s => s.Key == $"hole-{number}"))
        {
            number++;
        }

        _shapes.Add(new($"hole-{number}", DrawnKind.Hole, name ?? GroundFiles.Numbered("Hole", number), ring) { Hole = kind, Taken = new(MeasuredBy.File, null) });
        _new.Add($"hole-{number}");
    }

    private static IReadOnlyList<GroundPoint> Rounded(IReadOnlyList<GroundPoint> ring) => [.. ring.Select(p => new GroundPoint(Millimeters(p.EastM), Millimeters(p.NorthM)))];

    private static double Millimeters(double meters) => Math.Round(meters, 3) + 0.0;
}
