using Seedfall.Engine.Simulation.Correction;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Field;

/// <summary>What a field log entry must keep to be believed at all.</summary>
public static class LogRules
{
    /// <summary>About the most rain a day ever brought anywhere, mm (from memory: 1,825 at La Reunion, 1966).</summary>
    private const double MostRainMm = 1825.0;

    private const double MostFingerMm = 150.0;

    private const double MostGivenMm = 100.0;

    private const double LeastMowedMm = 10.0;

    private const double MostMowedMm = 254.0;

    private const double MostMinutes = 1440.0;

    /// <summary>Why the entry cannot stand, each in one sentence; empty where it can.</summary>
    /// <param name="lawn">The lawn it was written for.</param>
    /// <param name="entry">The entry.</param>
    public static IReadOnlyList<string> Problems(Lawn lawn, LogEntry entry)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(entry);
        return
        [
            .. entry.Id == Guid.Empty ? ["id: an id of its own is needed"] : Array.Empty<string>(),
            .. entry.PatchId is { } patch && lawn.Patches.All(p => p.Id != patch) ? [$"patch: {patch} is none of this lawn's patches"] : Array.Empty<string>(),
            .. Own(entry),
            .. entry is LogEntry.Applied applied ? ApplicationRules.Problems(lawn, applied) : [],
            .. entry is LogEntry.Watered { Set: { } set } ? Set(lawn, entry, set) : [],
        ];
    }

    /// <summary>What more is wrong with the entry beside the others of its log; empty where nothing is.</summary>
    /// <param name="log">The log it is written into; whether it holds the entry already makes no difference.</param>
    /// <param name="entry">The entry.</param>
    public static IReadOnlyList<string> ProblemsIn(FieldLog log, LogEntry entry)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(entry);
        return entry is LogEntry.Applied { What.Replaces: { } earlier } && !log.Entries.Any(e => e.Id == earlier && e is LogEntry.Applied)
            ? ["replaces: the record to be corrected is no application in this log"]
            : [];
    }

    /// <summary>A set named must be there, and must reach the patch named with it.</summary>
    private static IEnumerable<string> Set(Lawn lawn, LogEntry entry, string name)
    {
        var named = WateredSets.Of(lawn).Where(s => s.Name == name).ToList();
        if (named.Count == 0)
        {
            yield return $"set: {name} is none of this lawn's sprinkler sets";
        }
        else if (entry.PatchId is { } patch && lawn.Patches.FirstOrDefault(p => p.Id == patch) is { } meant && !named[0].PatchIds.Contains(patch))
        {
            yield return $"set: {name} does not wet {meant.Name}; choose the set that does, or another patch";
        }
    }

    private static IEnumerable<string> Own(LogEntry entry) => entry switch
    {
        LogEntry.SoilReading reading => new ProbeReading(reading.Day, null, reading.Depth, reading.Read).Problem() is { } problem ? [problem] : [],
        LogEntry.CoverSeen seen => Range(seen),
        LogEntry.Watered watered => Water(watered),
        LogEntry.Rained { Caught.Millimeters: var mm } when mm > MostRainMm => [FormattableString.Invariant($"rain: {mm / 25.4:0.#} in is more than fell in any day on record; check the unit")],
        LogEntry.FingerTest { WetTo.Millimeters: > MostFingerMm } => ["finger: no finger reaches deeper than 6 in (150 mm)"],
        LogEntry.Mowed { To.Millimeters: < LeastMowedMm or > MostMowedMm } => ["mowed: a height from 0.4 to 10 in (10 to 254 mm) is needed; check the unit"],
        LogEntry.Note { Text: var text } when string.IsNullOrWhiteSpace(text) => ["note: some words are needed"],
        LogEntry.Struck { Why: var why } when string.IsNullOrWhiteSpace(why) => ["struck: the reason is needed"],
        _ => [],
    };

    private static IEnumerable<string> Water(LogEntry.Watered watered)
    {
        if ((watered.Given is null) == (watered.Minutes is null))
        {
            yield return "watered: a depth or minutes is needed, and not both";
        }

        if (watered.Given is { Millimeters: > MostGivenMm })
        {
            yield return "watered: more than 4 in (100 mm) at once; check the unit";
        }

        if (watered.Minutes is < 0.0 or > MostMinutes)
        {
            yield return "watered: minutes from 0 to 1440 are needed";
        }
    }

    private static IEnumerable<string> Range(LogEntry.CoverSeen seen)
    {
        if ((seen.Low is null) != (seen.High is null))
        {
            yield return "cover: a range needs both its ends";
        }

        if (seen is { Low: { } low, High: { } high } && !(low.Value <= seen.Cover.Value && seen.Cover.Value <= high.Value))
        {
            yield return FormattableString.Invariant($"cover: {Percent(seen.Cover)} must lie within its range, {Percent(low)} to {Percent(high)}");
        }
    }

    private static string Percent(Fraction share) => FormattableString.Invariant($"{share.Percent:0.#} %");
}
