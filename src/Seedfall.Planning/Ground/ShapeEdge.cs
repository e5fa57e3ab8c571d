using Seedfall.Engine.Units;
using Seedfall.Planning.Ground.Shapes;

namespace Seedfall.Planning.Ground;

/// <summary>Length of a shape's edge: what is trimmed, guarded from the spreader and sown along twice.</summary>
public static class ShapeEdge
{
    /// <summary>
    /// Outer edge, m; null where the measures taken do not fix it (a triangle by base and height, widths along a line, pieces
    /// that may lie against each other, an area typed in).
    /// </summary>
    public static Length? Outer(PatchShape shape) => shape switch
    {
        PatchShape.Rectangle r => (r.Long + r.Wide) * 2.0,
        PatchShape.Circle c => c.Diameter * Math.PI,
        PatchShape.Sides s => s.First + s.Second + s.Third,
        PatchShape.Slice s => CirclePart.SliceEdge(s),
        PatchShape.Bow b => CirclePart.BowEdge(b),
        PatchShape.Strip s => (s.Along + s.Wide) * 2.0,
        PatchShape.Taped t => RingLength.Of(TapedRing.Outline(t).Ring),
        PatchShape.Outline o => RingLength.Of(o.Ring),
        _ => null,
    };

    /// <summary>Edge round the beds and other holes of an outline, m; null without holes.</summary>
    public static Length? Beds(PatchShape shape) => shape is PatchShape.Outline { Holes.Count: > 0 } outline
        ? Length.FromMeters(outline.Holes.Sum(h => RingLength.Of(h).Meters))
        : null;
}
