using System.Globalization;
using Seedfall.Planning.Ground;

namespace Seedfall.Web.Features.Drawing;

/// <summary>A lawn's notes as a drawing, and a drawing taken into the notes.</summary>
internal static class DrawnLawn
{
    /// <summary>The lawn's sheet: its edge, what is no grass, and every patch, drawn or not.</summary>
    public static Drawn Of(Lawn lawn, SheetNotes notes)
    {
        var places = Places(lawn);
        var holes = lawn.Sheet?.Features.Select(f => (f.Name, f.Kind, f.Ring)).ToList() ?? [];
        foreach (var ring in places.Values.SelectMany(p => p.Holes).Where(h => !holes.Exists(f => RingRelation.LiesIn(h, f.Ring))))
        {
            holes.Add((string.Create(CultureInfo.InvariantCulture, $"Hole {holes.Count + 1}"), FeatureKind.Other, ring));
        }

        return new(
            [
                new(Drawn.EdgeKey, DrawnKind.Edge, Drawn.EdgeName, lawn.Sheet?.Boundary ?? []) { Taken = notes.EdgeTaken },
                .. holes.Select((h, i) => new DrawnShape(string.Create(CultureInfo.InvariantCulture, $"hole-{i + 1}"), DrawnKind.Hole, h.Name, h.Ring) { Hole = h.Kind }),
                .. lawn.Patches.Select(p => new DrawnShape($"patch-{p.Id}", DrawnKind.Patch, p.Name, places.TryGetValue(p.Id, out var at) ? at.Ring : []) { PatchId = p.Id, Taken = p.Shape is PatchShape.Outline ? p.Measured : null }),
            ],
            lawn.Sheet?.Origin,
            notes.Picture);
    }

    /// <summary>
    /// The lawn with the drawing taken in. A patch that is drawn takes its size from its outline, the holes in it taken out;
    /// one that is not keeps the size it had.
    /// </summary>
    /// <param name="undrawn">Names of patches that had an outline and lost it, so that they have no size any more.</param>
    public static Lawn Apply(Lawn lawn, Drawn drawn, out IReadOnlyList<string> undrawn)
    {
        var patches = drawn.Of(DrawnKind.Patch).ToDictionary(s => s.PatchId!);
        undrawn = [.. lawn.Patches.Where(p => p.Shape is PatchShape.Outline && (!patches.TryGetValue(p.Id, out var s) || s.Ring.Count == 0)).Select(p => p.Name)];
        var sheet = new GroundSheet
        {
            Origin = drawn.Origin,
            Boundary = drawn.Shapes.First(s => s.Kind == DrawnKind.Edge).Ring,
            Features = [.. drawn.Of(DrawnKind.Hole).Where(h => h.IsDrawn).Select(h => new SheetFeature(h.Name, h.Hole ?? FeatureKind.Other, h.Ring))],
        };
        return lawn with
        {
            Sheet = drawn.IsBlank ? null : sheet,
            Patches = [.. lawn.Patches.Select(p => patches.TryGetValue(p.Id, out var shape) && shape.IsDrawn ? p with { Shape = drawn.OutlineOf(shape), Measured = Measured(drawn, shape) } : p)],
        };
    }

    /// <summary>How a shape was taken, with the range of its area where a scaled picture lies under it.</summary>
    public static Measuring? Measured(Drawn drawn, DrawnShape shape) => shape.Taken switch
    {
        { By: MeasuredBy.Picture, AreaBand: null } when drawn.Picture?.Scaled is { } scale => scale.Measured(drawn.OutlineOf(shape)),
        var taken => taken,
    };

    /// <summary>
    /// Outlines by patch. Without a sheet each has its own zero point: one alone is taken as it is, several are laid side by
    /// side, a stride apart, since nothing tells how they lie.
    /// </summary>
    private static Dictionary<string, PatchShape.Outline> Places(Lawn lawn)
    {
        var outlined = lawn.Patches.Where(p => p.Shape is PatchShape.Outline).ToDictionary(p => p.Id, p => (PatchShape.Outline)p.Shape);
        if (lawn.Sheet is not null || outlined.Count < 2)
        {
            return outlined;
        }

        var eastM = 0.0;
        var laid = new Dictionary<string, PatchShape.Outline>();
        foreach (var (id, outline) in outlined)
        {
            var (west, south) = (outline.Ring.Min(p => p.EastM), outline.Ring.Min(p => p.NorthM));
            var (moveE, moveN) = (eastM - west, -south);
            IReadOnlyList<GroundPoint> Move(IReadOnlyList<GroundPoint> ring) => [.. ring.Select(p => new GroundPoint(p.EastM + moveE, p.NorthM + moveN))];
            laid[id] = new(Move(outline.Ring), [.. outline.Holes.Select(Move)]);
            eastM += outline.Ring.Max(p => p.EastM) - west + 1.0;
        }

        return laid;
    }
}
