using Seedfall.Engine.Workings;
using Seedfall.Photos.Cover;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Photos;

/// <summary>Where a gray card lies in a picture, as a form: its four edges in percent.</summary>
internal static class CardForm
{
    private const double Least = 1.0;
    private static readonly NumberField Left = Edge("card-left", "Left edge of the card, from the left");
    private static readonly NumberField Right = Edge("card-right", "Right edge of the card, from the left");
    private static readonly NumberField Top = Edge("card-top", "Upper edge of the card, from the top");
    private static readonly NumberField Bottom = Edge("card-bottom", "Lower edge of the card, from the top");

    public static IReadOnlyList<FieldGroup> Groups { get; } = [new("The card", [Left, Right, Top, Bottom]) { Bare = true, Hint = "In percent of the picture. Keep inside the card: its own edge and shadow spoil the color." }];

    public static Entries Of(PictureArea? card, UnitSystem system)
    {
        var entries = new Entries(system);
        Left.Fill(entries, card is { } a ? 100.0 * a.Left : null);
        Right.Fill(entries, card is { } b ? 100.0 * b.Right : null);
        Top.Fill(entries, card is { } c ? 100.0 * c.Top : null);
        Bottom.Fill(entries, card is { } d ? 100.0 * d.Bottom : null);
        return entries;
    }

    /// <summary>Null where problems were noted.</summary>
    public static PictureArea? Read(Entries entries)
    {
        var (left, right, top, bottom) = (Left.Read(entries), Right.Read(entries), Top.Read(entries), Bottom.Read(entries));
        if (right < left + Least)
        {
            entries.Wrong(Right.Name, "The card’s right edge must lie right of its left edge, by 1 % of the picture at least.");
        }

        if (bottom < top + Least)
        {
            entries.Wrong(Bottom.Name, "The card’s lower edge must lie below its upper edge, by 1 % of the picture at least.");
        }

        return entries.Sound && left is { } l && right is { } r && top is { } t && bottom is { } b ? new PictureArea(l / 100.0, t / 100.0, r / 100.0, b / 100.0) : null;
    }

    private static NumberField Edge(string name, string label) => new(name, label, 0.0, 100.0, "%") { Required = true };
}
