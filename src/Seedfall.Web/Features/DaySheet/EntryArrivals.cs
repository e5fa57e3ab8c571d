using Seedfall.Exchange.Logs;
using Seedfall.Planning.Field;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.TakeOn;

namespace Seedfall.Web.Features.DaySheet;

/// <summary>What became of one entry sent by a phone.</summary>
/// <param name="Id">As sent; null where none could be read.</param>
/// <param name="Result"><c>added</c>, <c>known</c> (here already, and the same) or <c>refused</c>.</param>
/// <param name="Problems">Why it was refused, each in one sentence.</param>
internal sealed record ArrivedEntry(string? Id, string Result, IReadOnlyList<string> Problems)
{
    public const string Added = "added";
    public const string Known = "known";
    public const string Refused = "refused";
}

/// <summary>Entries that come from phones: checked one by one, written once, however often they are sent.</summary>
internal sealed class EntryArrivals(LogBook log, TimeProvider clock)
{
    /// <summary>In the order sent. What is refused keeps no other out.</summary>
    public async Task<IReadOnlyList<ArrivedEntry>> Take(StoredLawn stored, IReadOnlyList<SentEntry> sent, CancellationToken cancellation)
    {
        var known = await log.Known([.. sent.Select(s => s.Entry?.Id).OfType<Guid>()], cancellation);
        var (written, taken, results) = (await log.For(stored.Row.Id, cancellation), new Dictionary<Guid, LogEntry>(), new List<ArrivedEntry>());
        foreach (var one in sent)
        {
            if (one.Entry is not { } entry)
            {
                results.Add(new(one.Id, ArrivedEntry.Refused, one.Problems));
                continue;
            }

            (string LawnId, LogEntry Entry)? here = known.TryGetValue(entry.Id, out var stands) ? stands : taken.TryGetValue(entry.Id, out var first) ? (stored.Row.Id, first) : null;
            IReadOnlyList<string> problems = here is { } there ? Against(stored, entry, there) : Problems(stored, written, taken.Values, entry);
            results.Add(new(one.Id, problems.Count > 0 ? ArrivedEntry.Refused : here is null ? ArrivedEntry.Added : ArrivedEntry.Known, problems));
            if (problems.Count == 0 && here is null)
            {
                taken.Add(entry.Id, entry);
            }
        }

        await log.Append(stored.Row.Id, [.. taken.Values], cancellation);
        return results;
    }

    private static IReadOnlyList<string> Against(StoredLawn stored, LogEntry entry, (string LawnId, LogEntry Entry) here) =>
        here.LawnId != stored.Row.Id ? ["another lawn's log holds an entry with this id"]
        : !FieldLogFile.WriteEntry(here.Entry).AsSpan().SequenceEqual(FieldLogFile.WriteEntry(entry)) ? ["the log holds an entry with this id that says something else; write the change as an entry of its own"]
        : [];

    private List<string> Problems(StoredLawn stored, FieldLog written, IEnumerable<LogEntry> before, LogEntry entry) =>
    [
        .. LogRules.Problems(stored.Lawn, entry),
        .. LogRules.ProblemsIn(FieldLog.Of([.. written.Entries, .. before]), entry),
        .. entry.Day > DateOnly.FromDateTime(LawnClock.Now(stored, clock).DateTime) ? ["at: the log keeps what has happened; this day is still to come by the lawn's clock"] : Array.Empty<string>(),
    ];
}
