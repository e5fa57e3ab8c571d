using System.Text;
using Microsoft.EntityFrameworkCore;
using Seedfall.Exchange.Spreaders;
using Seedfall.Planning.Calibration.Spreader;
using Seedfall.Web.Data;
using Seedfall.Web.Features.TakeOn;

namespace Seedfall.Web.Features.Spreader;

/// <summary>What became of a file.</summary>
/// <param name="Id">The spreader it went to; null where it was not taken.</param>
/// <param name="New">Entries that were not here before.</param>
/// <param name="Problem">Why it was not taken.</param>
internal sealed record FileTaking(string? Id, int New, string? Problem);

/// <summary>The adviser's spreaders: cards, and entries that are added and never changed; one sent twice is there once.</summary>
internal sealed class SpreaderShelf(IDbContextFactory<SeedfallDb> contexts, Writer writer, TimeProvider clock)
{
    /// <summary>Words of addresses under /spreaders that no spreader may have for an id.</summary>
    private static readonly string[] Addresses = ["new", "pans", "bands", "from-file"];

    /// <summary>All of them, in the order they were added.</summary>
    public async Task<IReadOnlyList<KeptSpreader>> All(CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        var rows = await db.Spreaders.AsNoTracking().Include(s => s.Entries).OrderBy(s => s.Added).ToListAsync(cancellation);
        return [.. rows.Select(Kept)];
    }

    public async Task<KeptSpreader?> Find(string id, CancellationToken cancellation) => (await All(cancellation)).FirstOrDefault(s => s.Id == id);

    /// <summary>Keeps a spreader under an id of its own, with its entries; gives the id.</summary>
    public async Task<string> Add(KeptSpreader spreader, CancellationToken cancellation) => await writer.Write(
        async db =>
        {
            var taken = await db.Spreaders.Select(s => s.Id).ToListAsync(cancellation);
            var id = Slug.Unique(spreader.Name, [.. taken, .. Addresses]);
            db.Spreaders.Add(new SpreaderRow { Id = id, Document = Encoding.UTF8.GetString(SpreaderFile.Write(spreader with { Id = id, Entries = [] })), Added = clock.GetUtcNow() });
            db.SpreaderEntries.AddRange(spreader.Entries.DistinctBy(e => e.Id).Select(e => Row(id, e)));
            return id;
        },
        cancellation);

    /// <summary>Takes a spreader from a file: one that is here gets the entries it lacks, another is added.</summary>
    public async Task<FileTaking> Take(KeptSpreader spreader, CancellationToken cancellation)
    {
        var all = await All(cancellation);
        if ((all.FirstOrDefault(s => s.IsSame(spreader) && s.Shares(spreader)) ?? all.FirstOrDefault(s => s.IsSame(spreader))) is not { } here)
        {
            return all.FirstOrDefault(s => s.Shares(spreader)) is { } other
                ? new(null, 0, $"Its entries are here already, with “{other.Name}”, whose scale is another: {other.Scale.Show(other.Scale.Least)} to {other.Scale.Show(other.Scale.Greatest)}.")
                : new(await Add(spreader, cancellation), spreader.Entries.DistinctBy(e => e.Id).Count(), null);
        }

        var added = 0;
        foreach (var entry in spreader.Entries.DistinctBy(e => e.Id))
        {
            added += await Append(here.Id, entry, cancellation) ? 1 : 0;
        }

        return new(here.Id, added, null);
    }

    /// <summary>Adds an entry that passed <see cref="SpreaderRules"/>; true where it was new.</summary>
    public async Task<bool> Append(string id, SpreaderEntry entry, CancellationToken cancellation) => await writer.Write(
        async db =>
        {
            if (await db.SpreaderEntries.AnyAsync(e => e.Id == entry.Id, cancellation))
            {
                return false;
            }

            db.SpreaderEntries.Add(Row(id, entry));
            return true;
        },
        cancellation);

    private SpreaderEntryRow Row(string id, SpreaderEntry entry) =>
        new() { Id = entry.Id, SpreaderId = id, At = entry.At, Document = Encoding.UTF8.GetString(SpreaderFile.WriteEntry(entry)), Received = clock.GetUtcNow() };

    private static KeptSpreader Kept(SpreaderRow row)
    {
        var read = SpreaderFile.Read(Encoding.UTF8.GetBytes(row.Document), row.Id);
        var card = read.IsRead ? read.Spreader : throw new InvalidDataException(string.Join("; ", read.Problems));
        return card with { Id = row.Id, Entries = [.. row.Entries.OrderBy(e => e.At).ThenBy(e => e.Id).Select(e => SpreaderFile.ReadEntry(Encoding.UTF8.GetBytes(e.Document)))] };
    }
}
