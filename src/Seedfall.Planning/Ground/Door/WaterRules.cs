using Seedfall.Planning.Water;

namespace Seedfall.Planning.Ground.Door;

/// <summary>Tap, sprinkler sets and allowed hours.</summary>
internal static class WaterRules
{
    private const double MostTapLitersPerMinute = 400.0;
    private const double MostRateMmPerHour = 250.0;

    internal static void Check(Lawn lawn, Findings found)
    {
        if (lawn.Water is not { } water)
        {
            return;
        }

        Tap(water, found);
        found.Once([.. water.Sets.Select(s => s.Name)], i => $"water.sets[{i}].name", "set name");
        var patches = lawn.Patches.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        for (var i = 0; i < water.Sets.Count; i++)
        {
            Set(water.Sets[i], $"water.sets[{i}]", patches, found);
            HeadRules.Check(lawn, water.Sets[i], $"water.sets[{i}]", found);
        }

        for (var i = 0; i < water.Allowed.Count; i++)
        {
            Window(water.Allowed[i], $"water.allowed[{i}]", found);
        }
    }

    private static void Tap(WaterSupply water, Findings found)
    {
        found.Above("water.flow", water.Flow?.LitersPerMinute, MostTapLitersPerMinute, "L/min");
        if (water.Bucket is not { } bucket)
        {
            return;
        }

        found.Above("water.bucket.volume", bucket.Volume.Liters, 2000.0, "L");
        found.Range("water.bucket.time", bucket.Seconds, 0.5, 36000.0, "s");
        if (bucket.Seconds > 0.0 && bucket.Volume.Liters > 0.0 && !(bucket.Volume.Liters / (bucket.Seconds / 60.0) is >= 0.2 and <= MostTapLitersPerMinute))
        {
            found.Add("water.bucket", Findings.Text(bucket.Volume.Liters / (bucket.Seconds / 60.0), "L/min"), "a tap flow from 0.2 to 400 L/min: check volume and seconds");
        }
    }

    private static void Set(SprinklerSet set, string path, HashSet<string> patches, Findings found)
    {
        found.Words($"{path}.name", set.Name);
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

        found.Above($"{path}.rate", set.Rate?.MillimetersPerHour, MostRateMmPerHour, "mm/h");
        found.Above($"{path}.flow", set.Flow?.LitersPerMinute, 2000.0, "L/min");
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
    }

    private static void Window(WateringWindow window, string path, Findings found)
    {
        if (window.Days == WeekDays.None || (window.Days & ~WeekDays.All) != 0)
        {
            found.Add($"{path}.days", "no day", "at least one day of the week");
        }

        if (window.To <= window.From)
        {
            found.Add(path, FormattableString.Invariant($"{window.From:HH\\:mm} to {window.To:HH\\:mm}"), "an end after the start on the same day; hours over midnight are two windows");
        }
    }
}
