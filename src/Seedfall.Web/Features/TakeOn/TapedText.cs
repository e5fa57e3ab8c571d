using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn;

/// <summary>
/// Shapes taped from several lengths, as one line a person can type: pieces like <c>rectangle 40 20; less circle 6</c>, or corners
/// like <c>A; left 12 35; B</c>.
/// </summary>
internal static class TapedText
{
    /// <summary>The words pieces may begin with, each with what its numbers are.</summary>
    public const string PieceWords = "rectangle LENGTH WIDTH, circle DIAMETER, half-circle DIAMETER, quarter-circle RADIUS, triangle BASE HEIGHT, triangle with its three SIDES, bow LINE RISE, strip LENGTH WIDTH";

    private const string Less = "less";

    /// <summary>Pieces parted by semicolons, <c>less</c> before one that is taken away.</summary>
    public static (IReadOnlyList<ShapePiece>? Pieces, string? Problem) Pieces(string text, Func<double, Length> unit)
    {
        var pieces = new List<ShapePiece>();
        foreach (var part in Parts(text))
        {
            var words = part.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var away = words[0].Equals(Less, StringComparison.OrdinalIgnoreCase);
            var rest = away ? words[1..] : words;
            if (rest.Length == 0 || Numbers(rest[1..]) is not { } numbers || Simple(rest[0].ToLowerInvariant(), [.. numbers.Select(unit)]) is not { } shape)
            {
                return (null, $"“{part}” is no piece. Write {PieceWords}.");
            }

            pieces.Add(new ShapePiece(shape, away));
        }

        return pieces.Count == 0 ? (null, "one piece at least is needed") : pieces.TrueForAll(p => p.TakenAway) ? (null, "something must be there before anything is taken away") : (pieces, null);
    }

    /// <summary>Corners in order round the edge: an end of the base line, or a side with the distances from A and from B.</summary>
    public static (IReadOnlyList<TapedCorner>? Corners, string? Problem) Corners(string text, Length line, Func<double, Length> unit)
    {
        var corners = new List<TapedCorner>();
        foreach (var part in Parts(text))
        {
            var words = part.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (Corner(words, line, unit) is not { } corner)
            {
                return (null, $"“{part}” is no corner. Write A, B, or left or right with the distances from A and from B, for example left 12 35.");
            }

            corners.Add(corner);
        }

        return corners.Count < 3 ? (null, "three corners at least are needed") : (corners, null);
    }

    public static string Write(IReadOnlyList<ShapePiece> pieces, Func<Length, double> unit) =>
        string.Join("; ", pieces.Select(piece => (piece.TakenAway ? Less + " " : "") + Piece(piece.Shape, unit)));

    public static string Write(PatchShape.Taped taped, Func<Length, double> unit) => string.Join("; ", taped.Corners.Select(c =>
        c.FromA == Length.Zero ? "A" : c.FromB == Length.Zero ? "B" : $"{(c.Side == BaseSide.Left ? "left" : "right")} {Number(c.FromA, unit)} {Number(c.FromB, unit)}"));

    /// <summary>True for pieces this line can say; widths along a line inside a figure it cannot.</summary>
    public static bool CanSay(IReadOnlyList<ShapePiece> pieces) => pieces.All(p => p.Shape is not PatchShape.Offsets && (p.Shape is not PatchShape.Slice slice || slice.Share.Value is 0.5 or 0.25));

    private static TapedCorner? Corner(string[] words, Length line, Func<double, Length> unit) => words[0].ToLowerInvariant() switch
    {
        "a" when words.Length == 1 => new TapedCorner(Length.Zero, line, BaseSide.Left),
        "b" when words.Length == 1 => new TapedCorner(line, Length.Zero, BaseSide.Left),
        "left" or "right" when words.Length == 3 && Numbers(words[1..]) is [var a, var b] =>
            new TapedCorner(unit(a), unit(b), words[0].Equals("left", StringComparison.OrdinalIgnoreCase) ? BaseSide.Left : BaseSide.Right),
        _ => null,
    };

    private static PatchShape.Simple? Simple(string word, Length[] lengths) => (word, lengths) switch
    {
        ("rectangle", [var l, var w]) => new PatchShape.Rectangle(l, w),
        ("circle", [var d]) => new PatchShape.Circle(d),
        ("half-circle", [var d]) => new PatchShape.Slice(d * 0.5, Fraction.Of(0.5)),
        ("quarter-circle", [var r]) => new PatchShape.Slice(r, Fraction.Of(0.25)),
        ("triangle", [var b, var h]) => new PatchShape.Triangle(b, h),
        ("triangle", [var a, var b, var c]) => new PatchShape.Sides(a, b, c),
        ("bow", [var c, var r]) => new PatchShape.Bow(c, r),
        ("strip", [var l, var w]) => new PatchShape.Strip(l, w),
        _ => null,
    };

    private static string Piece(PatchShape.Simple shape, Func<Length, double> unit) => shape switch
    {
        PatchShape.Rectangle r => $"rectangle {Number(r.Long, unit)} {Number(r.Wide, unit)}",
        PatchShape.Circle c => $"circle {Number(c.Diameter, unit)}",
        PatchShape.Slice { Share.Value: 0.5 } s => $"half-circle {Number(s.Radius * 2.0, unit)}",
        PatchShape.Slice s => $"quarter-circle {Number(s.Radius, unit)}",
        PatchShape.Triangle t => $"triangle {Number(t.Base, unit)} {Number(t.Height, unit)}",
        PatchShape.Sides s => $"triangle {Number(s.First, unit)} {Number(s.Second, unit)} {Number(s.Third, unit)}",
        PatchShape.Bow b => $"bow {Number(b.Chord, unit)} {Number(b.Rise, unit)}",
        PatchShape.Strip s => $"strip {Number(s.Along, unit)} {Number(s.Wide, unit)}",
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape.GetType().Name, "cannot be said in one line"),
    };

    private static IEnumerable<string> Parts(string text) => text.Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    /// <summary>Null where one is no number above 0.</summary>
    private static IReadOnlyList<double>? Numbers(string[] words)
    {
        var numbers = words.Select(NumberText.Parse).ToList();
        return numbers.Count > 0 && numbers.TrueForAll(n => n is > 0.0 and < 1.0e4) ? [.. numbers.Select(n => n!.Value)] : null;
    }

    private static string Number(Length length, Func<Length, double> unit) => NumberText.Write(unit(length));
}
