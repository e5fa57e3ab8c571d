namespace Seedfall.Planning.Ground.Door;

/// <summary>Patches and their shapes.</summary>
internal static class PatchRules
{
    private const int MostPatches = 200;
    private const double LeastAreaM2 = 0.05;
    private const double MostAreaM2 = 1.0e6;

    internal static void Check(IReadOnlyList<Patch> patches, Findings found)
    {
        if (patches.Count is 0 or > MostPatches)
        {
            found.Add("patches", $"{patches.Count}", $"1 to {MostPatches} patches");
        }

        found.Once([.. patches.Select(p => p.Id)], i => $"patches[{i}].id", "patch id");
        for (var i = 0; i < patches.Count; i++)
        {
            Check(patches[i], $"patches[{i}]", found);
        }
    }

    private static void Check(Patch patch, string path, Findings found)
    {
        if (patch.Measured is { } measured && !Enum.IsDefined(measured.By))
        {
            found.Add($"{path}.measured.by", "an unknown way", "a known way of measuring");
        }

        found.Id($"{path}.id", patch.Id);
        found.Words($"{path}.name", patch.Name);
        if (patch.Grasses.Count == 0 || patch.Grasses.Any(g => !Enum.IsDefined(g)))
        {
            found.Add($"{path}.grasses", patch.Grasses.Count == 0 ? "none" : "an unknown grass", "at least one known grass");
        }

        found.Share($"{path}.livingCover", patch.LivingCover);
        found.Share($"{path}.weedCover", patch.WeedCover);
        if (patch is { LivingCover: { } living, WeedCover: { } weeds } && living.Value + weeds.Value > 1.0 + 1e-9)
        {
            found.Add($"{path}.weedCover", $"{Findings.Text(weeds.Percent, "%")} weeds beside {Findings.Text(living.Percent, "%")} living turf", "together no more than 100 % of the ground");
        }

        found.Range($"{path}.sun", patch.SunHours, 0.0, 16.0, "h");
        found.Range($"{path}.slope", patch.SlopePercent, 0.0, 100.0, "%");
        found.Range($"{path}.thatch", patch.Thatch?.Millimeters, 0.0, 150.0, "mm");
        found.Range($"{path}.grubs", patch.GrubsPerSquareFoot, 0.0, 500.0, "per sq ft");
        found.Share($"{path}.measured.areaBand", patch.Measured?.AreaBand);
        ShapeRules.Check(patch.Shape, $"{path}.shape", found);
        AreaOf(patch, path, found);
    }

    private static void AreaOf(Patch patch, string path, Findings found)
    {
        if (!ShapeRules.Computable(patch.Shape))
        {
            return;
        }

        var areaM2 = PatchArea.Of(patch.Shape).SquareMeters;
        if (!(areaM2 >= LeastAreaM2 && areaM2 <= MostAreaM2))
        {
            found.Add($"{path}.shape", Findings.Text(areaM2, "m2"), "an area from 0.05 m2 (half a square foot) to 100 ha");
        }
    }
}
