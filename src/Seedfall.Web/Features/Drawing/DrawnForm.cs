using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Extensions.Primitives;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Drawing;

/// <summary>The corners of one shape as a form shows them.</summary>
/// <param name="Shape">The shape; its ring is empty where the text could not be read.</param>
/// <param name="Field">Name the corners are posted under.</param>
/// <param name="Text">The corners as typed.</param>
/// <param name="Problem">What is wrong with them; null where nothing is.</param>
public sealed record CornerField(DrawnShape Shape, string Field, string Text, string? Problem);

/// <summary>A drawing as a form carries it, so that the page works without script and nothing typed is lost.</summary>
/// <param name="Drawn">What could be read.</param>
/// <param name="Fields">Every shape with its text, in the drawing's order.</param>
/// <param name="Unit">Key of the unit corners are typed in.</param>
/// <param name="Problems">What could not be read.</param>
public sealed partial record DrawnForm(Drawn Drawn, IReadOnlyList<CornerField> Fields, string Unit, IReadOnlyList<string> Problems)
{
    private const int MostHoles = 100;
    private const int MostCorners = 12_000;

    /// <summary>The kinds of hole, as key and words.</summary>
    public static IReadOnlyList<(FeatureKind Kind, string Key, string Words)> Kinds { get; } =
    [
        (FeatureKind.Bed, "bed", "Bed"), (FeatureKind.House, "house", "House"), (FeatureKind.Drive, "drive", "Drive"),
        (FeatureKind.Path, "path", "Path or terrace"), (FeatureKind.Water, "water", "Water"), (FeatureKind.Other, "other", "Something else"),
    ];

    /// <summary>A drawing filled into the form, in the viewer's unit.</summary>
    public static DrawnForm Of(Drawn drawn, UnitSystem system)
    {
        var unit = UnitChoices.Distance.First(u => u.System == system);
        var hole = 0;
        return new(drawn, [.. drawn.Shapes.Select(s => new CornerField(s, FieldOf(s, s.Kind == DrawnKind.Hole ? ++hole : 0), CornerText.Write(s.Ring, unit), null))], unit.Key, []);
    }

    /// <summary>What a form posted, for the patches the lawn has now and the picture stored with it.</summary>
    public static DrawnForm Read(IFormCollection form, Lawn lawn, PicturePlacing? stored)
    {
        var unit = UnitChoices.Distance.FirstOrDefault(u => u.Key == form["unit"]) ?? UnitChoices.Distance[0];
        var fields = new List<CornerField> { Field(form, new(Drawn.EdgeKey, DrawnKind.Edge, Drawn.EdgeName, []), Drawn.EdgeKey, unit) };
        for (var number = 1; number <= MostHoles && form.ContainsKey(Hole(number)); number++)
        {
            if (!StringValues.IsNullOrEmpty(form[Hole(number)]) || !StringValues.IsNullOrEmpty(form[Hole(number) + ".name"]))
            {
                var field = Field(form, HoleShape(form, number), Hole(number), unit);
                var key = Hole(fields.Count);
                fields.Add(field with { Shape = field.Shape with { Key = key }, Field = key });
            }
        }

        fields.AddRange(lawn.Patches.Select(p => Field(form, new($"patch-{p.Id}", DrawnKind.Patch, p.Name, []) { PatchId = p.Id }, $"patch-{p.Id}", unit)));
        var problems = fields.Where(f => f.Problem is not null).Select(f => $"{f.Shape.Name}: {f.Problem}").ToList();
        if (TooMany([.. fields.Select(f => f.Shape)]) is { } many)
        {
            problems.Add(many);
            fields = [.. fields.Select(f => f with { Shape = f.Shape with { Ring = [] } })];
        }

        var drawn = new Drawn([.. fields.Select(f => f.Shape)], Origin(form, problems), Picture(form, stored, problems));
        return new(drawn, fields, unit.Key, problems);
    }

    /// <summary>One sentence where there are more corners than one sheet takes.</summary>
    internal static string? TooMany(IReadOnlyList<DrawnShape> shapes) => shapes.Sum(s => s.Ring.Count) is > MostCorners and var corners
        ? string.Create(CultureInfo.InvariantCulture, $"One sheet takes at most {MostCorners:#,##0} corners in all, not {corners:#,##0}.")
        : null;

    private static string Hole(int number) => string.Create(CultureInfo.InvariantCulture, $"hole-{number}");

    private static string FieldOf(DrawnShape shape, int hole) => shape.Kind == DrawnKind.Hole ? Hole(hole) : shape.Key;

    private static DrawnShape HoleShape(IFormCollection form, int number)
    {
        var kind = Kinds.FirstOrDefault(k => k.Key == form[Hole(number) + ".kind"], Kinds[^1]);
        var name = form[Hole(number) + ".name"].ToString().Trim();
        return new(Hole(number), DrawnKind.Hole, name.Length is 0 or > 60 ? string.Create(CultureInfo.InvariantCulture, $"{kind.Words} {number}") : name, []) { Hole = kind.Kind };
    }

    private static CornerField Field(IFormCollection form, DrawnShape shape, string name, UnitChoice<Length> unit)
    {
        var text = form[name].ToString();
        var (ring, problem) = CornerText.Read(text, unit);
        return new(shape with { Ring = ring, Taken = ring.Count == 0 ? null : Taken(form, name) }, name, text, problem);
    }

    private static Measuring? Taken(IFormCollection form, string name)
    {
        if (!Enum.TryParse<MeasuredBy>(form[name + ".by"], ignoreCase: true, out var by) || !Enum.IsDefined(by))
        {
            return null;
        }

        // A picture's range is worked out afresh from its scale; what a walk or a file said of itself is kept.
        var band = NumberText.Parse(form[name + ".band"].ToString());
        return new(by, by != MeasuredBy.Picture && band is >= 0.0 and <= 1.0 ? Fraction.Of(band.Value) : null);
    }

    private static GeoPoint? Origin(IFormCollection form, List<string> problems)
    {
        if (form["origin"].ToString().Trim() is not { Length: > 0 } text)
        {
            return null;
        }

        if (Degrees().Match(text) is { Success: true } pair
            && double.Parse(pair.Groups[1].Value, CultureInfo.InvariantCulture) is >= -89.0 and <= 89.0 and var latitude
            && double.Parse(pair.Groups[2].Value, CultureInfo.InvariantCulture) is >= -180.0 and <= 180.0 and var longitude)
        {
            return new(latitude, longitude);
        }

        problems.Add("Place of the sheet’s zero point: latitude and longitude in degrees are needed, for example 42.31 -84.12.");
        return null;
    }

    private static PicturePlacing? Picture(IFormCollection form, PicturePlacing? stored, List<string> problems)
    {
        if (stored is null || !form.TryGetValue("picture", out var posted))
        {
            return stored;
        }

        // A blank field says that the picture was taken away.
        var json = posted.ToString();
        if (json.Length == 0 || form["no-picture"] == "yes")
        {
            return null;
        }

        if (PicturePlacing.Read(json, stored) is { } placing)
        {
            return placing;
        }

        problems.Add("The picture under the sheet was changed meanwhile: reload the page to see the one stored now.");
        return stored;
    }

    [GeneratedRegex(@"^([+-]?\d{1,2}(?:\.\d{1,12})?)[\s,]+([+-]?\d{1,3}(?:\.\d{1,12})?)$")]
    private static partial Regex Degrees();
}
