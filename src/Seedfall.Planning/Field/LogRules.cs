using Seedfall.Engine.Simulation.Correction;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Field;

/// <summary>What a field log entry must keep to be believed at all.</summary>
public static class LogRules
{
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
        ];
    }

    private static IEnumerable<string> Own(LogEntry entry) => entry switch
    {
        LogEntry.SoilReading reading => new ProbeReading(reading.Day, null, reading.Depth, reading.Read).Problem() is { } problem ? [problem] : [],
        LogEntry.CoverSeen seen => Range(seen),
        LogEntry.Note { Text: var text } when string.IsNullOrWhiteSpace(text) => ["note: some words are needed"],
        LogEntry.Struck { Why: var why } when string.IsNullOrWhiteSpace(why) => ["struck: the reason is needed"],
        _ => [],
    };

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
