namespace Seedfall.Planning.Field;

/// <summary>The field log of one lawn: append-only events, in order of when they happened.</summary>
public sealed class FieldLog
{
    private FieldLog(IReadOnlyList<LogEntry> entries, IReadOnlyList<LogEntry> standing) => (Entries, Standing) = (entries, standing);

    /// <summary>Nothing written yet.</summary>
    public static FieldLog Empty { get; } = new([], []);

    /// <summary>Everything written, struck or not; an id that came twice stands once.</summary>
    public IReadOnlyList<LogEntry> Entries { get; }

    /// <summary>What holds: neither struck nor a striking itself.</summary>
    public IReadOnlyList<LogEntry> Standing { get; }

    /// <summary>The log of entries in any order; of entries with one id the first given counts.</summary>
    public static FieldLog Of(IEnumerable<LogEntry> entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        LogEntry[] once = [.. entries.DistinctBy(entry => entry.Id).OrderBy(entry => entry.At.UtcTicks).ThenBy(entry => entry.Id)];
        var struck = once.OfType<LogEntry.Struck>().Select(strike => strike.EntryId).ToHashSet();
        return new FieldLog(once, [.. once.Where(entry => entry is not LogEntry.Struck && !struck.Contains(entry.Id))]);
    }

    /// <summary>Standing entries of one kind, by the lawn's clock from one day to another, both inclusive.</summary>
    public IEnumerable<T> During<T>(DateOnly first, DateOnly last)
        where T : LogEntry =>
        Standing.OfType<T>().Where(entry => entry.Day >= first && entry.Day <= last);
}
