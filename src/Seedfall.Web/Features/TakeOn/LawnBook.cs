using System.Text;
using Microsoft.EntityFrameworkCore;
using Seedfall.Exchange.Lawns;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Web.Data;

namespace Seedfall.Web.Features.TakeOn;

/// <summary>A stored lawn with its row.</summary>
public sealed record StoredLawn(LawnRow Row, Lawn Lawn);

/// <summary>What became of a change.</summary>
internal enum SaveResult
{
    Saved,

    /// <summary>Something is wrong; the problems say what.</summary>
    Refused,

    /// <summary>The lawn was changed since the form was filled.</summary>
    Conflict,

    Gone,
}

/// <summary>Lawns in and out of the database. Every lawn stored has passed <see cref="LawnRules"/>, the same check files pass.</summary>
internal sealed class LawnBook(IDbContextFactory<SeedfallDb> contexts, Writer writer, TradeTables trade, TimeProvider clock)
{
    /// <summary>Null where there is none.</summary>
    public async Task<StoredLawn?> Find(string id, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        return await db.Lawns.AsNoTracking().FirstOrDefaultAsync(l => l.Id == id, cancellation) is { } row ? new(row, Read(row)) : null;
    }

    /// <summary>All lawns with their seasons, by name.</summary>
    public async Task<IReadOnlyList<StoredLawn>> All(CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        var rows = await db.Lawns.AsNoTracking().Include(l => l.Seasons).OrderBy(l => l.Name).ToListAsync(cancellation);
        return [.. rows.Select(r => new StoredLawn(r, Read(r)))];
    }

    /// <summary>Stores a new lawn under a free id made from its name and returns that id.</summary>
    public async Task<string> Add(Lawn lawn, int? weatherId, bool invented, CancellationToken cancellation) =>
        await writer.Write(
            async db =>
            {
                var id = Slug.Unique(lawn.Name, [.. await db.Lawns.Select(l => l.Id).ToListAsync(cancellation), "new", "from-file"]);
                var now = clock.GetUtcNow();
                db.Lawns.Add(new LawnRow { Id = id, Name = lawn.Name, Document = Text(lawn with { Id = id }), WeatherId = weatherId, Invented = invented, Added = now, Changed = now });
                return id;
            },
            cancellation);

    /// <summary>Stores a changed lawn where the stored one still has the version the change was made from.</summary>
    public async Task<SaveResult> Save(string id, int version, Lawn lawn, CancellationToken cancellation)
    {
        var changed = await writer.Write(
            db =>
            {
                var (text, now) = (Text(lawn), clock.GetUtcNow());
                return db.Lawns.Where(l => l.Id == id && l.Version == version).ExecuteUpdateAsync(
                    row => row.SetProperty(l => l.Name, lawn.Name).SetProperty(l => l.Document, text).SetProperty(l => l.Version, version + 1).SetProperty(l => l.Changed, now),
                    cancellation);
            },
            cancellation);
        return changed == 1 ? SaveResult.Saved : await Find(id, cancellation) is null ? SaveResult.Gone : SaveResult.Conflict;
    }

    /// <summary>Removes the lawn and its seasons; false where there was none.</summary>
    public async Task<bool> Remove(string id, CancellationToken cancellation) =>
        await writer.Write(db => db.Lawns.Where(l => l.Id == id).ExecuteDeleteAsync(cancellation), cancellation) == 1;

    /// <summary>What the trade's rules find wrong, in the words of the file.</summary>
    public IReadOnlyList<LawnProblem> Problems(Lawn lawn) => LawnRules.Problems(lawn, trade);

    private static string Text(Lawn lawn) => Encoding.UTF8.GetString(LawnFile.Write(lawn));

    private static Lawn Read(LawnRow row)
    {
        var result = LawnFile.Read(Encoding.UTF8.GetBytes(row.Document), row.Id);
        return result.Lawn ?? throw new InvalidDataException($"the stored lawn {row.Id} cannot be read: {string.Join("; ", result.Problems)}");
    }
}
