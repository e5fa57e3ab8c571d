using Seedfall.Engine.Units;
using Seedfall.Planning.Ground.Shapes;

namespace Seedfall.Planning.Ground;

/// <summary>A patch's area as measured, before any slope correction.</summary>
public static class PatchArea
{
    /// <summary>m2, by the formula of the shape; offsets by Simpson's rule where their number allows it, else by trapezoids.</summary>
    public static Area Of(PatchShape shape) => shape switch
    {
        PatchShape.Rectangle r => Area.FromSquareMeters(r.Long.Meters * r.Wide.Meters),
        PatchShape.Circle c => Area.FromSquareMeters(0.25 * Math.PI * c.Diameter.Meters * c.Diameter.Meters),
        PatchShape.Triangle t => Area.FromSquareMeters(0.5 * t.Base.Meters * t.Height.Meters),
        PatchShape.Sides s => TriangleBySides.Area(s.First, s.Second, s.Third) ?? throw new ArgumentException("the three sides close no triangle", nameof(shape)),
        PatchShape.Slice s => CirclePart.SliceArea(s),
        PatchShape.Bow b => CirclePart.BowArea(b),
        PatchShape.Strip s => Area.FromSquareMeters(s.Along.Meters * s.Wide.Meters),
        PatchShape.Pieces p => Area.FromSquareMeters(p.All.Sum(piece => (piece.TakenAway ? -1.0 : 1.0) * Of(piece.Shape).SquareMeters)),
        PatchShape.Taped t => Of(TapedRing.Outline(t)),
        PatchShape.Offsets o => OffsetArea.SimpsonApplies(o.Widths) ? OffsetArea.Simpson(o.Step, o.Widths) : OffsetArea.Trapezoid(o.Step, o.Widths),
        PatchShape.Outline o => PolygonArea.Of(o.Ring, o.Holes),
        PatchShape.Typed t => t.Area,
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "is not a known shape"),
    };

    /// <summary>True where the lengths were taken on a plan or map, so that a slope adds ground; a tape laid on the lawn has it already.</summary>
    public static bool TakenOnPlan(PatchShape shape) => shape is PatchShape.Outline or PatchShape.Typed;
}
