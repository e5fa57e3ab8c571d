using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn;

/// <summary>How a patch was measured: a choice of shapes, each with its own measures.</summary>
internal static class PatchShapeFields
{
    private const string Rectangle = "rectangle";
    private const string Circle = "circle";
    private const string Triangle = "triangle";
    private const string Offsets = "offsets";
    private const string Sides = "sides";
    private const string Pieces = "pieces";
    private const string Taped = "taped";
    private const string Typed = "typed";
    private const string Kept = "kept";

    private static readonly Length Longest = Length.FromMeters(3000.0);

    private static readonly QuantityField<Length> Long = Side("long", "Length");
    private static readonly QuantityField<Length> Wide = Side("wide", "Width");
    private static readonly QuantityField<Length> Across = Side("across", "Diameter");
    private static readonly QuantityField<Length> Base = Side("base", "Base");
    private static readonly QuantityField<Length> Height = Side("height", "Height");
    private static readonly QuantityField<Length> Step = Side("step", "Step between widths");
    private static readonly TextField Widths = new("widths", "Widths at each step") { Longest = 400, Hint = "In the same unit as the step, first and last included, for example 0 18 24 22 9." };
    private static readonly IReadOnlyList<QuantityField<Length>> Three = [Side("side-1", "First side"), Side("side-2", "Second side"), Side("side-3", "Third side")];
    private static readonly ChoiceField<bool> PiecesUnit = new("pieces.in", "Lengths in", [(true, "ft", "ft"), (false, "m", "m")]) { Blank = null };
    private static readonly TextField Figure = new("pieces", "Pieces") { Longest = 600, Hint = $"Parted by semicolons; “less” takes one away, for example rectangle 60 40; half-circle 12; less circle 6. Pieces: {TapedText.PieceWords}." };
    private static readonly QuantityField<Length> Line = Side("line", "Base line, from end A to end B");
    private static readonly TextField Corners = new("corners", "Corners in order") { Longest = 600, Hint = "In the same unit: A or B for an end of the line, else left or right of it with the distances from A and from B, for example A; left 12 35; left 30 18; B." };
    private static readonly QuantityField<Area> Known = new("area", "Area", UnitChoices.Area, Area.Zero, Area.FromHectares(100.0)) { AboveLeast = true };

    /// <summary>True for shapes this page has no fields for: they can be kept as they are, or replaced.</summary>
    public static bool OnlyKept(PatchShape? shape) => shape is not (null or PatchShape.Rectangle or PatchShape.Circle or PatchShape.Triangle or PatchShape.Offsets or PatchShape.Sides or PatchShape.Taped or PatchShape.Typed) && !(shape is PatchShape.Pieces pieces && TapedText.CanSay(pieces.All));

    private static ChoiceField<char> Choice(PatchShape? before) =>
        new("shape", "Measured as", OnlyKept(before) ? [.. Shapes, ('o', Kept, before is PatchShape.Outline ? "Keep the outline as drawn" : "Keep the figure as measured")] : Shapes) { Required = true, Blank = null, AllShown = true };

    private static IReadOnlyList<(char, string, string)> Shapes =>
    [
        ('r', Rectangle, "Rectangle"), ('c', Circle, "Circle"), ('t', Triangle, "Triangle"), ('s', Sides, "Triangle by three sides"), ('w', Offsets, "Widths along a line"), ('p', Pieces, "Pieces added and taken away"), ('k', Taped, "Corners by two tapes"), ('a', Typed, "Area already known"),
    ];

    public static IReadOnlyList<FieldGroup> Groups(PatchShape? before) =>
    [
        new("Its size", [Choice(before)]) { Hint = "Pace or tape it. A size 10 percent wrong makes every bag 10 percent wrong." },
        new("Rectangle", [Long, Wide]) { When = Rectangle },
        new("Circle", [Across]) { When = Circle },
        new("Triangle", [Base, Height]) { When = Triangle },
        new("Triangle by three sides", [.. Three]) { When = Sides },
        new("Pieces added and taken away", [PiecesUnit, Figure]) { When = Pieces },
        new("Corners by two tapes", [Line, Corners]) { When = Taped, Hint = "Lay a straight line anywhere, then tape from both its ends to every corner." },
        new("Widths along a line", [Step, Widths]) { When = Offsets, Hint = "Lay a line down the middle, measure the width across it at equal steps." },
        new("Area already known", [Known]) { When = Typed },
    ];

    public static void Fill(PatchShape? shape, Entries entries)
    {
        foreach (var side in (QuantityField<Length>[])[Long, Wide, Across, Base, Height, Step, Line, .. Three])
        {
            side.Fill(entries, null);
        }

        Known.Fill(entries, null);
        PiecesUnit.Fill(entries, entries.System == Engine.Workings.UnitSystem.UsCustomary);
        entries.Put("shape", Rectangle);
        switch (shape)
        {
            case PatchShape.Rectangle r:
                Long.Fill(entries, r.Long);
                Wide.Fill(entries, r.Wide);
                break;
            case PatchShape.Circle c:
                entries.Put("shape", Circle);
                Across.Fill(entries, c.Diameter);
                break;
            case PatchShape.Triangle t:
                entries.Put("shape", Triangle);
                Base.Fill(entries, t.Base);
                Height.Fill(entries, t.Height);
                break;
            case PatchShape.Sides s:
                entries.Put("shape", Sides);
                foreach (var (field, side) in Three.Zip([s.First, s.Second, s.Third]))
                {
                    field.Fill(entries, side);
                }

                break;
            case PatchShape.Pieces p when TapedText.CanSay(p.All):
                entries.Put("shape", Pieces);
                Figure.Fill(entries, TapedText.Write(p.All, PieceUnit(entries).In));
                break;
            case PatchShape.Taped k:
                entries.Put("shape", Taped);
                Line.Fill(entries, k.Base);
                Corners.Fill(entries, TapedText.Write(k, Unit(entries, Line).In));
                break;
            case PatchShape.Offsets o:
                entries.Put("shape", Offsets);
                Step.Fill(entries, o.Step);
                Widths.Fill(entries, string.Join(' ', o.Widths.Select(w => NumberText.Write(Unit(entries).In(w)))));
                break;
            case PatchShape.Typed a:
                entries.Put("shape", Typed);
                Known.Fill(entries, a.Area);
                break;
            case not null when OnlyKept(shape):
                entries.Put("shape", Kept);
                break;
        }
    }

    /// <summary>The shape as measured; null where a problem was noted. Each measure is read, so that every problem shows at once.</summary>
    public static PatchShape? Read(PatchShape? before, Entries entries) => Choice(before).Read(entries) switch
    {
        'r' => Pair(Long, Wide, entries) is var (l, w) ? new PatchShape.Rectangle(l, w) : null,
        'c' => Needed(Across, entries) is { } d ? new PatchShape.Circle(d) : null,
        't' => Pair(Base, Height, entries) is var (b, h) ? new PatchShape.Triangle(b, h) : null,
        's' => Three.Select(side => Needed(side, entries)).ToArray() is [{ } a, { } b, { } c] ? new PatchShape.Sides(a, b, c) : null,
        'p' => ReadPieces(entries),
        'k' => ReadTaped(entries),
        'w' => (Needed(Step, entries), ReadWidths(entries)) is ({ } s, { } all) ? new PatchShape.Offsets(s, all) : null,
        'a' => (Known with { Required = true }).Read(entries) is { } a ? new PatchShape.Typed(a) : null,
        'o' => before,
        _ => null,
    };

    private static (Length, Length)? Pair(QuantityField<Length> first, QuantityField<Length> second, Entries entries) =>
        (Needed(first, entries), Needed(second, entries)) is ({ } a, { } b) ? (a, b) : null;

    private static Length? Needed(QuantityField<Length> field, Entries entries) => (field with { Required = true }).Read(entries);

    private static PatchShape.Pieces? ReadPieces(Entries entries)
    {
        var (pieces, problem) = TapedText.Pieces(entries.Text(Figure.Name), PieceUnit(entries).From);
        if (problem is not null)
        {
            entries.Wrong(Figure.Name, $"{Figure.Label}: {problem}");
        }

        return pieces is null ? null : new PatchShape.Pieces(pieces);
    }

    private static PatchShape.Taped? ReadTaped(Entries entries)
    {
        if (Needed(Line, entries) is not { } line)
        {
            return null;
        }

        var (corners, problem) = TapedText.Corners(entries.Text(Corners.Name), line, Unit(entries, Line).From);
        if (problem is not null)
        {
            entries.Wrong(Corners.Name, $"{Corners.Label}: {problem}");
        }

        return corners is null ? null : new PatchShape.Taped(line, corners);
    }

    private static IReadOnlyList<Length>? ReadWidths(Entries entries)
    {
        var unit = Unit(entries);
        var words = entries.Text(Widths.Name).Split([' ', ';', '\t'], StringSplitOptions.RemoveEmptyEntries);
        var widths = new List<Length>();
        foreach (var word in words)
        {
            if (NumberText.Parse(word) is not { } number || number < 0.0 || unit.From(number) > Longest)
            {
                entries.Wrong(Widths.Name, $"{Widths.Label}: numbers with blanks between them are needed, none negative; “{word}” is not one.");
                return null;
            }

            widths.Add(unit.From(number));
        }

        if (widths.Count is < 2 or > 100 || widths.All(w => w == Length.Zero))
        {
            entries.Wrong(Widths.Name, string.Create(CultureInfo.InvariantCulture, $"{Widths.Label}: 2 to 100 widths, not all zero, are needed; {widths.Count} were given."));
            return null;
        }

        return widths;
    }

    private static UnitChoice<Length> Unit(Entries entries) => Unit(entries, Step);

    private static UnitChoice<Length> Unit(Entries entries, QuantityField<Length> field) =>
        UnitChoices.Distance.FirstOrDefault(u => u.Key == entries.Text(field.UnitName)) ?? UnitChoices.Distance[0];

    private static UnitChoice<Length> PieceUnit(Entries entries) =>
        UnitChoices.Distance.FirstOrDefault(u => u.Key == entries.Text(PiecesUnit.Name)) ?? UnitChoices.Distance[0];

    private static QuantityField<Length> Side(string name, string label) => new(name, label, UnitChoices.Distance, Length.Zero, Longest) { AboveLeast = true };
}
