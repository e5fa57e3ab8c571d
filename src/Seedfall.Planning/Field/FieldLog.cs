namespace Seedfall.Planning.Field;

/// <summary>What became of an entry.</summary>
public enum EntryState
{
    /// <summary>It holds.</summary>
    Stands,

    /// <summary>A later entry struck it.</summary>
    Struck,

    /// <summary>A later record of the same application stands in its place.</summary>
    Replaced,

    /// <summary>It strikes another and says nothing of its own.</summary>
    Striking,
}

/// <summary>The field log of one lawn: append-only events, in order of when they happened.</summary>
public sealed class FieldLog
{
    private readonly HashSet<Guid> _struck;
    private readonly Corrections _corrections;

    private FieldLog(IReadOnlyList<LogEntry> entries, HashSet<Guid> struck)
    {
        (Entries, _struck, _corrections) = (entries, struck, Corrections.Among(entries, struck));
        Standing = [.. entries.Where(_corrections.Stands)];
    }

    /// <summary>Nothing written yet.</summary>
    public static FieldLog Empty { get; } = new([], []);

    /// <summary>Everything written, struck or not; an id that came twice stands once.</summary>
    public IReadOnlyList<LogEntry> Entries { get; }

    /// <summary>What holds: neither struck, nor a striking itself, nor an application that a later record stands in place of.</summary>
    public IReadOnlyList<LogEntry> Standing { get; }

    /// <summary>Applications that two or more standing records correct, each in its own way. All of them stand; a person must strike all but one.</summary>
    public IReadOnlyList<CorrectionClash> Clashes => _corrections.Clashes;

    /// <summary>The log of entries in any order; of entries with one id the first given counts.</summary>
    public static FieldLog Of(IEnumerable<LogEntry> entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        LogEntry[] once = [.. entries.DistinctBy(entry => entry.Id).OrderBy(entry => entry.At.UtcTicks).ThenBy(entry => entry.Id)];
        return new FieldLog(once, [.. once.OfType<LogEntry.Struck>().Select(strike => strike.EntryId)]);
    }

    /// <summary>Standing entries of one kind, by the lawn's clock from one day to another, both inclusive.</summary>
    public IEnumerable<T> During<T>(DateOnly first, DateOnly last)
        where T : LogEntry =>
        Standing.OfType<T>().Where(entry => entry.Day >= first && entry.Day <= last);

    /// <summary>What became of an entry of this log. One both struck and replaced counts as struck.</summary>
    public EntryState StateOf(LogEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return entry is LogEntry.Struck ? EntryState.Striking
            : _struck.Contains(entry.Id) ? EntryState.Struck
            : _corrections.Replaced.ContainsKey(entry.Id) ? EntryState.Replaced
            : EntryState.Stands;
    }
}
