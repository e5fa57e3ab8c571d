using Seedfall.Planning.Water;

namespace Seedfall.Planning.Ground.Door;

/// <summary>Sprinkler sets: what they wet, what they give, and what they hang on.</summary>
internal static class SetRules
{
    private const double MostRateMmPerHour = 250.0;
    private const double MostSetLitersPerMinute = 2000.0;
    private const double MostHoseM = 500.0;
    private const double LeastBoreMm = 3.0;
    private const double MostBoreMm = 200.0;

    internal static void Check(Lawn lawn, WaterSupply water, Findings found)
    {
        found.Once([.. water.Sets.Select(s => s.Name)], i => $"water.sets[{i}].name", "set name");
        var patches = lawn.Patches.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        for (var i = 0; i < water.Sets.Count; i++)
        {
            var (set, path) = (water.Sets[i], $"water.sets[{i}]");
            found.Words($"{path}.name", set.Name);
            Patches(set, path, patches, found);
            Figures(set, path, found);
            Line(set, path, found);
            Named(set.Tap, $"{path}.tap", "tap", [.. water.OtherTaps.Select(t => t.Name)], "no name for the first tap", found);
            Named(set.Timer, $"{path}.timer", "timer", [.. water.Timers.Select(t => t.Name)], "none", found);
            HeadRules.Check(lawn, set, path, found);
        }
    }

    private static void Patches(SprinklerSet set, string path, HashSet<string> patches, Findings found)
    {
        if (set.PatchIds.Count == 0)
        {
            found.Add($"{path}.patches", "none", "at least one patch it wets");
        }

        for (var i = 0; i < set.PatchIds.Count; i++)
        {
            if (!patches.Contains(set.PatchIds[i]))
            {
                found.Add($"{path}.patches[{i}]", $"'{set.PatchIds[i]}'", $"the id of a patch: {string.Join(", ", patches.Order(StringComparer.Ordinal))}");
            }
        }
    }

    private static void Figures(SprinklerSet set, string path, Findings found)
    {
        found.Above($"{path}.rate", set.Rate?.MillimetersPerHour, MostRateMmPerHour, "mm/h");
        found.Above($"{path}.flow", set.Flow?.LitersPerMinute, MostSetLitersPerMinute, "L/min");
        found.Range($"{path}.positions", set.Positions, 1.0, 100.0, "");
        if (set.Cans is { } cans)
        {
            Cans(cans, $"{path}.cans", found);
        }
    }

    private static void Cans(CatchCanTest cans, string path, Findings found)
    {
        found.Above($"{path}.time", cans.Minutes, 1440.0, "min");
        for (var i = 0; i < cans.Readings.Count; i++)
        {
            found.Range($"{path}.readings[{i}]", cans.Readings[i].Millimeters, 0.0, 300.0, "mm");
        }

        if (cans.Readings.Count == 0 || cans.Readings.All(r => r.Millimeters == 0.0))
        {
            found.Add($"{path}.readings", cans.Readings.Count == 0 ? "none" : "all 0", "at least one can with water in it");
        }
        else if (cans.Readings.Average(r => r.Millimeters) / (cans.Minutes / 60.0) is > MostRateMmPerHour and < double.PositiveInfinity and var mmh)
        {
            found.Add(path, Findings.Text(Math.Round(mmh), "mm/h on average"), $"at most {Findings.Text(MostRateMmPerHour, "mm/h")}: check depths, their unit and the minutes");
        }
    }

    /// <summary>Hose and nozzle.</summary>
    private static void Line(SprinklerSet set, string path, Findings found)
    {
        if (set.Hose is { } hose)
        {
            found.Range($"{path}.hose.length", hose.Length.Meters, 0.0, MostHoseM, "m");
            found.Range($"{path}.hose.bore", hose.Bore.Meters * 1000.0, LeastBoreMm, MostBoreMm, "mm");
        }

        found.Above($"{path}.nozzle.flow", set.Nozzle?.Flow.LitersPerMinute, MostSetLitersPerMinute, "L/min");
        found.Above($"{path}.nozzle.at", set.Nozzle?.At.Kilopascals, TapRules.MostKilopascals, "kPa");
    }

    private static void Named(string? name, string path, string what, string[] known, string none, Findings found)
    {
        if (name is not null && !known.Contains(name, StringComparer.Ordinal))
        {
            found.Add(path, $"'{name}'", known.Length == 0 ? $"{none}: no {(what == "tap" ? "further tap" : what)} is described" : $"the name of a {what}: {string.Join(", ", known)}");
        }
    }
}
