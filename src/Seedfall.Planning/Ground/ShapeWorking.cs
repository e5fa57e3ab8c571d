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
        PatchShape.Sides s => ("A = sqrt(s (s-a)(s-b)(s-c)), s = (a+b+c)/2", [Feet("a", "first side", s.First), Feet("b", "second side", s.Second), Feet("c", "third side", s.Third)], "Heron's formula."),
        PatchShape.Slice s => ("A = p pi r^2", [Feet("r", "radius", s.Radius), new("p", "share of the full round", s.Share.Percent, "%")], null),
        PatchShape.Bow b => ("A = r^2 (t - sin t)/2, r = (c^2/4 + h^2)/(2h), t = 4 atan(2h/c)", [Feet("c", "straight line", b.Chord), Feet("h", "rise of the arc", b.Rise)], "Bow of a circle."),
        PatchShape.Strip s => ("A = L W", [Feet("L", "length along the middle", s.Along), Feet("W", "width", s.Wide)], "Holds for curved strips of even width too, as long as they do not bend tighter than half their width."),
        PatchShape.Pieces p => ("A = sum of the pieces, less those taken away", [.. p.All.Select(Piece)], null),
        PatchShape.Taped t => ("A = |sum (x_i y_i+1 - x_i+1 y_i)| / 2, each corner from its two distances", [Feet("c", "base line", t.Base), .. t.Corners.SelectMany(Corner)], "x = (a^2 - b^2 + c^2)/(2c), y = sqrt(a^2 - x^2), then the shoelace formula."),
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

    private static WorkingInput Piece(ShapePiece piece, int i) =>
        new($"A{i + 1}", piece.TakenAway ? $"piece {i + 1}, taken away: {Name(piece.Shape)}" : $"piece {i + 1}: {Name(piece.Shape)}", PatchArea.Of(piece.Shape).SquareFeet, "sq ft");

    private static IEnumerable<WorkingInput> Corner(TapedCorner corner, int i) =>
        [Feet($"a{i + 1}", $"corner {i + 1} from A", corner.FromA), Feet($"b{i + 1}", $"corner {i + 1} from B", corner.FromB)];

    /// <summary>The shape in words, with its lengths.</summary>
    internal static string Name(PatchShape.Simple shape) => shape switch
    {
        PatchShape.Rectangle r => $"rectangle {Ft(r.Long)} by {Ft(r.Wide)}",
        PatchShape.Circle c => $"circle {Ft(c.Diameter)} across",
        PatchShape.Triangle t => $"triangle {Ft(t.Base)} by {Ft(t.Height)} high",
        PatchShape.Sides s => $"triangle {Ft(s.First)}, {Ft(s.Second)}, {Ft(s.Third)}",
        PatchShape.Slice s => $"{s.Share.Percent.ToString("0.#", CultureInfo.InvariantCulture)} % of a circle of {Ft(s.Radius)} radius",
        PatchShape.Bow b => $"bow {Ft(b.Chord)} long, {Ft(b.Rise)} high",
        PatchShape.Strip s => $"strip {Ft(s.Along)} by {Ft(s.Wide)}",
        PatchShape.Offsets o => $"{o.Widths.Count} widths every {Ft(o.Step)}",
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "is not a known shape"),
    };

    private static string Ft(Length length) => $"{length.Feet.ToString("0.##", CultureInfo.InvariantCulture)} ft";

    private static WorkingInput Feet(string symbol, string meaning, Length length) => new(symbol, meaning, length.Feet, "ft");

    private static string Whole(Area area) => Math.Round(area.SquareFeet).ToString("#,##0", CultureInfo.InvariantCulture);
}
