using Seedfall.Planning.Ground.Sheets;

namespace Seedfall.Planning.Ground.Door;

/// <summary>The lawn's sheet: sound rings on this lawn's place, patches apart from each other.</summary>
internal static class SheetRules
{
    private const int MostFeatures = 200;
    private const int MostPoints = 20_000;
    private const double MostKmAway = 100.0;

    internal static void Check(Lawn lawn, Findings found)
    {
        if (lawn.Sheet is not { } sheet)
        {
            return;
        }

        if (sheet.Origin is { } origin)
        {
            Origin(lawn, origin, found);
        }

        if (sheet.Boundary.Count > 0)
        {
            ShapeRules.Ring(sheet.Boundary, "sheet.boundary", found);
        }

        if (Points(sheet, lawn.Patches) > MostPoints)
        {
            found.Add("sheet", $"{Points(sheet, lawn.Patches)} points with those of the patches", $"at most {MostPoints} points on one sheet");
            return;
        }

        if (sheet.Features.Count > MostFeatures)
        {
            found.Add("sheet.features", $"{sheet.Features.Count}", $"at most {MostFeatures} features");
            return;
        }

        for (var i = 0; i < sheet.Features.Count; i++)
        {
            found.Words($"sheet.features[{i}].name", sheet.Features[i].Name);
            if (!Enum.IsDefined(sheet.Features[i].Kind))
            {
                found.Add($"sheet.features[{i}].kind", "an unknown kind", "a known kind of feature");
            }

            ShapeRules.Ring(sheet.Features[i].Ring, $"sheet.features[{i}].ring", found);
        }

        Overlaps(lawn.Patches, found);
    }

    private static void Origin(Lawn lawn, GeoPoint origin, Findings found)
    {
        if (!(Math.Abs(origin.LatitudeDeg) <= LocalPlane.MostLatitudeDeg) || !(Math.Abs(origin.LongitudeDeg) <= 180.0))
        {
            found.Add("sheet.origin", FormattableString.Invariant($"{origin.LatitudeDeg}, {origin.LongitudeDeg}"), "a point of the earth in degrees");
            return;
        }

        var place = new LocalPlane(origin).ToGround(new GeoPoint(lawn.Place.LatitudeDeg, lawn.Place.LongitudeDeg));
        var awayKm = RingLength.Apart(new(0.0, 0.0), place) / 1000.0;
        if (!(awayKm <= MostKmAway))
        {
            found.Add("sheet.origin", $"{Findings.Text(Math.Round(awayKm), "km")} from the lawn's place", $"a point within {MostKmAway:0} km of it; latitude and longitude may be reversed");
        }
    }

    /// <summary>Ground in two patches would be seeded and sprayed twice.</summary>
    private static void Overlaps(IReadOnlyList<Patch> patches, Findings found)
    {
        var sound = patches.Select((p, i) => (Number: i, p.Name, Outline: p.Shape as PatchShape.Outline))
            .Where(p => p.Outline is not null && ShapeRules.Computable(p.Outline))
            .Select(p => (p.Number, p.Name, Outline: p.Outline!, AreaM2: PatchArea.Of(p.Outline!).SquareMeters)).ToList();
        for (var i = 0; i < sound.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var sharedM2 = OverlapArea.Of(sound[j].Outline, sound[i].Outline).SquareMeters;
                if (SheetRemarks.Matters(sharedM2, Math.Min(sound[j].AreaM2, sound[i].AreaM2)))
                {
                    found.Add($"patches[{sound[i].Number}].shape.outline", $"{Findings.Text(Math.Round(sharedM2, 1), "m2")} that also lie in {sound[j].Name}", "patches apart from each other on the sheet: ground in two is seeded and sprayed twice");
                }
            }
        }
    }

    private static int Points(GroundSheet sheet, IReadOnlyList<Patch> patches) =>
        sheet.Boundary.Count + sheet.Features.Sum(f => f.Ring.Count)
        + patches.Sum(p => p.Shape is PatchShape.Outline o ? o.Ring.Count + o.Holes.Sum(h => h.Count) : 0);
}
