using System.Text;
using Microsoft.EntityFrameworkCore;
using Seedfall.Exchange.Logs;
using Seedfall.Planning.Field;
using Seedfall.Web.Data;

namespace Seedfall.Web.Features.Log;

/// <summary>The field logs of all lawns: entries are added, never changed, and one sent twice is there once.</summary>
internal sealed class LogBook(IDbContextFactory<SeedfallDb> contexts, Writer writer, TimeProvider clock)
{
    /// <summary>A lawn's whole log.</summary>
    public async Task<FieldLog> For(string lawnId, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        var rows = await db.Log.AsNoTracking().Where(l => l.LawnId == lawnId).Select(l => l.Document).ToListAsync(cancellation);
        return rows.Count == 0 ? FieldLog.Empty : FieldLog.Of(rows.Select(text => FieldLogFile.ReadEntry(Encoding.UTF8.GetBytes(text))));
    }

    /// <summary>Which of the ids are here already, on any lawn: the lawn and the entry as stored.</summary>
    public async Task<IReadOnlyDictionary<Guid, (string LawnId, LogEntry Entry)>> Known(IReadOnlyCollection<Guid> ids, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        var rows = await db.Log.AsNoTracking().Where(l => ids.Contains(l.Id)).ToListAsync(cancellation);
        return rows.ToDictionary(l => l.Id, l => (l.LawnId, FieldLogFile.ReadEntry(Encoding.UTF8.GetBytes(l.Document))));
    }

    /// <summary>Adds entries that passed <see cref="LogRules"/>; returns how many were new.</summary>
    public async Task<int> Append(string lawnId, IReadOnlyList<LogEntry> entries, CancellationToken cancellation) =>
        await writer.Write(
            async db =>
            {
                var ids = entries.Select(e => e.Id).ToList();
                var known = await db.Log.Where(l => ids.Contains(l.Id)).Select(l => l.Id).ToListAsync(cancellation);
                var added = entries.DistinctBy(e => e.Id).Where(e => !known.Contains(e.Id)).ToList();
                db.Log.AddRange(added.Select(e => new LogRow { Id = e.Id, LawnId = lawnId, At = e.At, Document = Encoding.UTF8.GetString(FieldLogFile.WriteEntry(e)), Received = clock.GetUtcNow() }));
                return added.Count;
            },
            cancellation);
}
