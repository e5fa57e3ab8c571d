using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Caching.Memory;
using Seedfall.Engine.Weather;
using Seedfall.Weather;
using Seedfall.Web.Data;

namespace Seedfall.Web.Features.Weather;

/// <summary>One imported weather history as listed.</summary>
public sealed record WeatherCard(int Id, string Name, DateOnly FirstDay, DateOnly LastDay, int DayCount, double? LatitudeDeg, double? LongitudeDeg, bool Invented, int LawnCount);

/// <summary>Imported weather: taken in whole or refused whole, kept packed, unpacked once while it is in use.</summary>
internal sealed class WeatherShelf(IDbContextFactory<SeedfallDb> contexts, Writer writer, TimeProvider clock) : IDisposable
{
    private const int KeptUnpacked = 4;
    private readonly MemoryCache _unpacked = new(new MemoryCacheOptions { SizeLimit = KeptUnpacked });

    public async Task<IReadOnlyList<WeatherCard>> All(CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        return await db.Weather.AsNoTracking().OrderBy(w => w.Name)
            .Select(w => new WeatherCard(w.Id, w.Name, w.FirstDay, w.LastDay, w.DayCount, w.LatitudeDeg, w.LongitudeDeg, w.Invented, db.Lawns.Count(l => l.WeatherId == w.Id)))
            .ToListAsync(cancellation);
    }

    /// <summary>Null where there is none.</summary>
    public async Task<(WeatherCard Card, WeatherReport Report)?> Report(int id, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        var found = await db.Weather.AsNoTracking().Where(w => w.Id == id)
            .Select(w => new { Card = new WeatherCard(w.Id, w.Name, w.FirstDay, w.LastDay, w.DayCount, w.LatitudeDeg, w.LongitudeDeg, w.Invented, db.Lawns.Count(l => l.WeatherId == w.Id)), w.Report })
            .FirstOrDefaultAsync(cancellation);
        return found is null ? null : (found.Card, JsonSerializer.Deserialize<WeatherReport>(found.Report)!);
    }

    /// <summary>The days themselves; null where there are none under this id. Imported weather never changes, so a kept copy stays true.</summary>
    public async Task<WeatherHistory?> History(int id, CancellationToken cancellation)
    {
        if (_unpacked.TryGetValue(id, out WeatherHistory? kept))
        {
            return kept;
        }

        await using var db = await contexts.CreateDbContextAsync(cancellation);
        if (await db.Weather.AsNoTracking().Where(w => w.Id == id).Select(w => w.History).FirstOrDefaultAsync(cancellation) is not { } packed)
        {
            return null;
        }

        var history = PackedHistory.Unpack(packed);
        _unpacked.Set(id, history, new MemoryCacheEntryOptions { Size = 1, SlidingExpiration = TimeSpan.FromMinutes(20) });
        return history;
    }

    /// <summary>Stores what the readers made of the files and returns its id.</summary>
    public async Task<int> Add(string name, WeatherHistory history, WeatherReport report, bool invented, CancellationToken cancellation)
    {
        var row = new WeatherRow
        {
            Name = name,
            FirstDay = report.FirstDay,
            LastDay = report.LastDay,
            DayCount = report.DayCount,
            LatitudeDeg = report.Position?.LatitudeDeg,
            LongitudeDeg = report.Position?.LongitudeDeg,
            Invented = invented,
            Report = JsonSerializer.Serialize(report),
            History = PackedHistory.Pack(history),
            Added = clock.GetUtcNow(),
        };
        return await writer.Write(
            async db =>
            {
                db.Weather.Add(row);
                await db.SaveChangesAsync(cancellation);
                return row.Id;
            },
            cancellation);
    }

    /// <summary>Gives a lawn this weather; false where either is gone.</summary>
    public async Task<bool> Pick(string lawnId, int weatherId, CancellationToken cancellation) =>
        await writer.Write(
            async db => await db.Weather.AnyAsync(w => w.Id == weatherId, cancellation)
                && await db.Lawns.Where(l => l.Id == lawnId).ExecuteUpdateAsync(row => row.SetProperty(l => l.WeatherId, weatherId), cancellation) == 1,
            cancellation);

    /// <summary>Removes weather no lawn is planned with; false where one is, or there is none.</summary>
    public async Task<bool> Remove(int id, CancellationToken cancellation) =>
        await writer.Write(
            async db => !await db.Lawns.AnyAsync(l => l.WeatherId == id, cancellation)
                && await db.Weather.Where(w => w.Id == id).ExecuteDeleteAsync(cancellation) == 1,
            cancellation);

    public void Dispose() => _unpacked.Dispose();
}
