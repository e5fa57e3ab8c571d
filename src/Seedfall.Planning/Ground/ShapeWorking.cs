using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Ground;

/// <summary>Formula, inputs and remark of a shape's area, for its working.</summary>
internal static class ShapeWorking
{
    internal static (string Formula, WorkingInput[] Inputs, string? Note) Of(PatchShape shape) => shape switch
    {
        PatchShape.Rectangle r => ("A = L W", [Feet("L", "length", r.Long), Feet("W", "width", r.Wide)], null),
        PatchShape.Circle c => ("A = pi d^2 / 4", [Feet("d", "diameter", c.Diameter)], null),
        PatchShape.Triangle t => ("A = b h / 2", [Feet("b", "base", t.Base), Feet("h", "height", t.Height)], null),
        PatchShape.Offsets o => Offsets(o),
        PatchShape.Outline o => ("A = |sum (x_i y_i+1 - x_i+1 y_i)| / 2, holes taken out", [new("n", "points of the outline", o.Ring.Count, ""), new("m", "holes", o.Holes.Count, "")], "Shoelace formula."),
        PatchShape.Typed t => ("as entered", [new("A", "area entered", t.Area.SquareFeet, "sq ft")], null),
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "is not a known shape"),
    };

    private static (string Formula, WorkingInput[] Inputs, string? Note) Offsets(PatchShape.Offsets o)
    {
        var trapezoid = OffsetArea.Trapezoid(o.Step, o.Widths);
        WorkingInput[] inputs = [Feet("h", "step between widths", o.Step), .. o.Widths.Select((w, i) => Feet($"w{i}", $"width {i + 1}", w))];
        return OffsetArea.SimpsonApplies(o.Widths)
            ? ("A = h/3 (w0 + 4 w1 + 2 w2 + ... + wn)", inputs, $"Simpson's rule; trapezoids give {Whole(trapezoid)} sq ft.")
            : ("A = h (w0/2 + w1 + ... + wn/2)", inputs, "Trapezoid rule; an odd number of widths would allow Simpson's rule, which follows curves better.");
    }

    private static WorkingInput Feet(string symbol, string meaning, Length length) => new(symbol, meaning, length.Feet, "ft");

    private static string Whole(Area area) => Math.Round(area.SquareFeet).ToString("#,##0", CultureInfo.InvariantCulture);
}
