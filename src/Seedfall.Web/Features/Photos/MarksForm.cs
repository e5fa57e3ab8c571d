using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Photos.Cover;
using Seedfall.Photos.Overview;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Photos;

/// <summary>The four marks of an overview as a form: where they lie in the picture, and how far apart on the ground.</summary>
internal static class MarksForm
{
    /// <summary>Names of the corners, in the order they are marked.</summary>
    public static IReadOnlyList<string> Corners { get; } = ["near left", "near right", "far right", "far left"];

    private const double MostSlender = 20.0;
    private static readonly Length Least = Length.FromMeters(0.5);
    private static readonly Length Most = Length.FromMeters(150.0);
    private static readonly QuantityField<Length> Across = Side("across", "Near side, from near left to near right", required: true);
    private static readonly QuantityField<Length> Away = Side("away", "Sides that run away from you") with { Hint = "For a rectangle. Leave blank where the tapes below say it." };
    private static readonly NumberField Thin = new("thin", "Thin is less green than", 5.0, 95.0, "%") { Required = true };
    private static readonly IReadOnlyList<QuantityField<Length>> Tapes =
        [Side("tape-right", "Right side, near to far"), Side("tape-far", "Far side"), Side("tape-left", "Left side, near to far"), Side("tape-diagonal", "Near left to far right, across the middle")];

    private static readonly IReadOnlyList<NumberField> Points =
        [.. Corners.SelectMany((c, i) => new[] { Percent($"m{i + 1}x", $"{Capital(c)}: from the left edge"), Percent($"m{i + 1}y", $"{Capital(c)}: from the top edge") })];

    public static IReadOnlyList<FieldGroup> Groups { get; } =
    [
        new("How far apart they lie", [Across, Away, Thin]),
        new("Not a rectangle: all four sides and a diagonal by tape", [.. Tapes]) { Folded = true },
        new("The marks in numbers", [.. Points]) { Folded = true, Closed = true, Hint = "What tapping fills in. In percent of the picture." },
    ];

    public static void Fill(Entries entries, MarksNote? note)
    {
        Across.Fill(entries, note is null ? null : Length.FromMeters(note.AcrossM));
        Away.Fill(entries, note is { Tapes: null } ? Length.FromMeters(note.AwayM) : null);
        Thin.Fill(entries, 100.0 * (note?.Threshold ?? new ThinSpotSettings().Threshold));
        for (var i = 0; i < Tapes.Count; i++)
        {
            Tapes[i].Fill(entries, note?.Tapes is { } tapes ? Length.FromMeters(tapes[i]) : null);
        }

        for (var i = 0; i < Corners.Count; i++)
        {
            Put(entries, i, note?.Points[i]);
        }
    }

    /// <summary>Puts a tapped point on the first corner not marked yet; false where all are.</summary>
    public static bool PutNext(Entries entries, PicturePoint point)
    {
        for (var i = 0; i < Corners.Count; i++)
        {
            if (entries.Text(Points[2 * i].Name).Length == 0)
            {
                Put(entries, i, point);
                return true;
            }
        }

        return false;
    }

    /// <summary>The corners marked so far; null where one is not.</summary>
    public static IReadOnlyList<PicturePoint?> Marked(Entries entries) =>
        [.. Enumerable.Range(0, Corners.Count).Select(i => NumberText.Parse(entries.Text(Points[2 * i].Name)) is { } x && NumberText.Parse(entries.Text(Points[2 * i + 1].Name)) is { } y ? new PicturePoint(x / 100.0, y / 100.0) : (PicturePoint?)null)];

    /// <summary>Null where problems were noted.</summary>
    public static (MarksNote Note, MarkFrame Frame)? Read(Entries entries)
    {
        var (across, away, thin) = (Across.Read(entries), Away.Read(entries), Thin.Read(entries));
        var tapes = Tapes.Select(t => t.Read(entries)).ToList();
        var points = Points.Select(p => p.Read(entries)).ToList();
        if (points.Any(p => p is null) && Points.All(p => entries.ProblemOf(p.Name) is null))
        {
            entries.Wrong("", $"Mark all four corners on the picture: {string.Join(", ", Corners.Where((_, i) => points[2 * i] is null || points[2 * i + 1] is null))} {(points.Count(p => p is null) > 2 ? "are" : "is")} missing.");
        }

        var taped = tapes.Any(t => t is not null);
        if (taped && tapes.Any(t => t is null))
        {
            entries.Wrong(Tapes[tapes.FindIndex(t => t is null)].Name, "All three other sides and the diagonal are needed, or none of them.");
        }
        else if (!taped && away is null)
        {
            entries.Wrong(Away.Name, $"{Away.Label}: a length is needed, or all sides by tape.");
        }

        if (!entries.Sound)
        {
            return null;
        }

        var note = new MarksNote(
            [.. points.Chunk(2).Select(p => new PicturePoint(p[0]!.Value / 100.0, p[1]!.Value / 100.0))], across!.Value.Meters, away?.Meters ?? 0.0, taped ? [.. tapes.Select(t => t!.Value.Meters)] : null, thin!.Value / 100.0);
        if (note.Frame() is { } frame)
        {
            if (Slender(frame) <= MostSlender)
            {
                return (note, frame);
            }

            entries.Wrong(Across.Name, FormattableString.Invariant($"Ground more than {MostSlender:0} times as long as wide is seen too unevenly. Mark a shorter piece of it."));
            return null;
        }

        entries.Wrong(Tapes[0].Name, "These tapes cannot meet in four corners. Measure the sides in turn, and the diagonal from near left to far right.");
        return null;
    }

    private static double Slender(MarkFrame frame)
    {
        var (across, away) = (frame.Corners.Max(c => c.AcrossM) - frame.Corners.Min(c => c.AcrossM), frame.Corners.Max(c => c.AwayM) - frame.Corners.Min(c => c.AwayM));
        return Math.Max(across / away, away / across);
    }

    private static void Put(Entries entries, int corner, PicturePoint? point)
    {
        entries.Put(Points[2 * corner].Name, point is { } p ? Text(p.X) : null);
        entries.Put(Points[2 * corner + 1].Name, point is { } q ? Text(q.Y) : null);
    }

    private static string Text(double share) => (100.0 * share).ToString("0.##", CultureInfo.InvariantCulture);

    private static QuantityField<Length> Side(string name, string label, bool required = false) => new(name, label, UnitChoices.Distance, Least, Most) { Required = required };

    private static NumberField Percent(string name, string label) => new(name, label, 0.0, 100.0, "%");

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
