using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Records;

/// <summary>The applications of a log as the book lists them.</summary>
internal static class BookRecords
{
    /// <summary>
    /// Every record that stands, with the versions it replaced, and every struck one that none of them leads back to. Each
    /// application written down is there, whatever became of it.
    /// </summary>
    internal static IReadOnlyList<BookRecord> Of(Lawn lawn, FieldLog log, RulePack pack, IReadOnlyList<RecordRule> rules)
    {
        var applied = log.Entries.OfType<LogEntry.Applied>().ToList();
        var standing = applied.Where(entry => log.StateOf(entry) is EntryState.Stands).ToList();
        var shown = standing.Concat(standing.SelectMany(log.Earlier)).Select(entry => entry.Id).ToHashSet();
        return [.. applied.Where(entry => log.StateOf(entry) is EntryState.Stands || !shown.Contains(entry.Id)).Select(entry => Record(lawn, log, rules, entry) with { Law = FertilizerLaw.Of(lawn, log, pack, entry) })];
    }

    private static BookRecord Record(Lawn lawn, FieldLog log, IReadOnlyList<RecordRule> rules, LogEntry.Applied entry)
    {
        var state = log.StateOf(entry);
        var stands = state is EntryState.Stands;
        return new BookRecord(
            entry,
            Place(lawn, entry),
            state,
            stands ? null : log.Entries.OfType<LogEntry.Struck>().FirstOrDefault(strike => strike.EntryId == entry.Id)?.Why,
            stands ? Versions(log, entry) : [],
            stands && log.Clashes.FirstOrDefault(clash => clash.Rivals.Any(r => r.Id == entry.Id)) is { } clash ? [.. clash.Rivals.Select(r => r.Id).Where(id => id != entry.Id)] : [],
            stands ? MissingFields.Of(lawn, entry, rules) : []);
    }

    private static IReadOnlyList<EarlierVersion> Versions(FieldLog log, LogEntry.Applied entry)
    {
        var versions = new List<EarlierVersion>();
        var next = entry;
        foreach (var earlier in log.Earlier(entry))
        {
            versions.Add(new EarlierVersion(earlier, next.What.Why ?? "no reason written"));
            next = earlier;
        }

        return versions;
    }

    private static string Place(Lawn lawn, LogEntry.Applied entry) =>
        entry.PatchId is null ? "whole lawn" : lawn.Patches.FirstOrDefault(p => p.Id == entry.PatchId)?.Name ?? $"{entry.PatchId}, a patch no longer there";
}
