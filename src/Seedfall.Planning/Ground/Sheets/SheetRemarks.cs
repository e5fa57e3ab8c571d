using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Ground.Sheets;

/// <summary>What looks wrong on a lawn's sheet and may still be right: told on the plan, never put right in silence.</summary>
public static class SheetRemarks
{
    /// <summary>Overlaps and overhangs smaller than this are the unsteadiness of a hand, m2.</summary>
    public const double LeastAreaM2 = 0.5;

    /// <summary>The same as a share of the smaller part.</summary>
    public const double LeastShare = 0.01;

    /// <summary>True where so much shared ground is more than an unsteady hand.</summary>
    internal static bool Matters(double sharedM2, double smallerM2) => sharedM2 > Math.Max(LeastAreaM2, LeastShare * smallerM2);

    /// <summary>Patches that stand out of the boundary, and features left inside patches. The lawn must have passed its door.</summary>
    public static IEnumerable<Assumption> Of(Lawn lawn)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        return lawn.Sheet is { } sheet
            ? lawn.Patches.SelectMany(p => p.Shape is PatchShape.Outline outline ? Of(p, outline, sheet) : [])
            : [];
    }

    private static IEnumerable<Assumption> Of(Patch patch, PatchShape.Outline outline, GroundSheet sheet)
    {
        var areaM2 = PolygonArea.Of(outline.Ring, outline.Holes).SquareMeters;
        if (sheet.Boundary.Count > 0
            && areaM2 - OverlapArea.Of(outline, new(sheet.Boundary, [])).SquareMeters is var outsideM2 && Matters(outsideM2, areaM2))
        {
            yield return new(
                $"assumed.{patch.Id}.boundary", $"{patch.Name}: {Text(outsideM2)} lie outside the lawn's boundary as drawn; the whole patch is counted.",
                "Its area, and every amount that rests on it.", "Move the boundary or the patch on the sheet.");
        }

        foreach (var (feature, i) in sheet.Features.Select((f, i) => (f, i)))
        {
            var sharedM2 = OverlapArea.Of(outline, new(feature.Ring, [])).SquareMeters;
            if (Matters(sharedM2, Math.Min(areaM2, PolygonArea.Of(feature.Ring, []).SquareMeters)))
            {
                yield return new(
                    $"assumed.{patch.Id}.feature-{i + 1}", $"{patch.Name}: {feature.Name} covers {Text(sharedM2)} of it and is counted as lawn.",
                    "Its area, and every amount that rests on it.", "Cut it out of the patch on the sheet.");
            }
        }
    }

    private static string Text(double areaM2) => string.Create(CultureInfo.InvariantCulture, $"{Area.FromSquareMeters(areaM2).SquareFeet:#,##0} sq ft ({areaM2:#,##0.#} m2)");
}
