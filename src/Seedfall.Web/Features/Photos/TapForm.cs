using System.Globalization;
using Seedfall.Photos.Cover;
using Seedfall.Web.Data;

namespace Seedfall.Web.Features.Photos;

/// <summary>Points of a picture the adviser answers: green or not.</summary>
internal static class TapForm
{
    /// <summary>Points asked about at once.</summary>
    public const int Asked = 10;

    /// <summary>Answers one picture may carry.</summary>
    public const int Most = 60;

    /// <summary>Width a picture is shown at where a tap on it is sent without script, CSS pixels.</summary>
    public const int ShownWidth = 340;

    /// <summary>Ten points: those that would tell most, filled up evenly over the picture, none beside one answered already.</summary>
    public static IReadOnlyList<PicturePoint> Points(PhotoRow row)
    {
        var answered = row.Taps();
        bool Fresh(PicturePoint p) => answered.All(t => double.Hypot(t.X - p.X, t.Y - p.Y) > 0.02);
        return [.. row.WorthTapping().Concat(Even()).Where(Fresh).Take(Asked)];
    }

    /// <summary>The answers posted: <c>at.N</c> holds the point, <c>answer.N</c> what it is; a tap on the picture itself comes as <c>tap.x</c>, <c>tap.y</c>.</summary>
    public static IReadOnlyList<CoverTap> Read(IFormCollection form, double widthOverHeight)
    {
        List<CoverTap> taps = [];
        foreach (var key in form.Keys.Where(k => k.StartsWith("at.", StringComparison.Ordinal)))
        {
            if (Answer(form["answer." + key[3..]]) is { } green && Point(form[key]) is { } at)
            {
                taps.Add(new(at.X, at.Y, green));
            }
        }

        if (OnPicture(form, widthOverHeight) is { } tapped && Answer(form["tapped"]) is { } isGreen)
        {
            taps.Add(new(tapped.X, tapped.Y, isGreen));
        }

        return taps;
    }

    /// <summary>Where a picture of the fixed width was tapped; null where it was not.</summary>
    public static PicturePoint? OnPicture(IFormCollection form, double widthOverHeight) =>
        int.TryParse(form["tap.x"], NumberStyles.None, CultureInfo.InvariantCulture, out var x) && int.TryParse(form["tap.y"], NumberStyles.None, CultureInfo.InvariantCulture, out var y)
            ? Inside(x / (double)ShownWidth, y / (ShownWidth / widthOverHeight))
            : null;

    private static bool? Answer(string? text) => text switch { "green" => true, "not" => false, _ => null };

    private static PicturePoint? Point(string? text) =>
        text?.Split(' ') is [var x, var y] && double.TryParse(x, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var across) && double.TryParse(y, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var down)
            ? Inside(across, down)
            : null;

    private static PicturePoint? Inside(double x, double y) => x is >= 0.0 and <= 1.0 && y is >= 0.0 and <= 1.0 ? new PicturePoint(x, y) : null;

    /// <summary>Points spread evenly in an order that never bunches (Halton, bases 2 and 3; from memory).</summary>
    private static IEnumerable<PicturePoint> Even() => Enumerable.Range(1, Most + Asked).Select(i => new PicturePoint(0.04 + 0.92 * Radical(i, 2), 0.04 + 0.92 * Radical(i, 3)));

    private static double Radical(int i, int numberBase)
    {
        var (value, part) = (0.0, 1.0 / numberBase);
        for (; i > 0; i /= numberBase, part /= numberBase)
        {
            value += i % numberBase * part;
        }

        return value;
    }
}
