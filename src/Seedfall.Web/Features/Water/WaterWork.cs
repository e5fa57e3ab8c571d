using Microsoft.Extensions.Caching.Memory;
using Seedfall.Planning.Field;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Water;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Features.Weather;

namespace Seedfall.Web.Features.Water;

/// <summary>A lawn's watering today, or why there is none.</summary>
/// <param name="Planned">Its plan.</param>
/// <param name="Watering">Null where there is no plan.</param>
/// <param name="KnownTo">Last day up to today whose weather is known; null without weather.</param>
/// <param name="Written">Water, rain and finger tests written today.</param>
public sealed record WateredLawn(PlannedLawn Planned, LawnWatering? Watering, DateOnly Today, DateOnly? KnownTo, IReadOnlyList<LogEntry> Written);

/// <summary>Works out the day's watering; kept while plan, weather, log and day are the same.</summary>
internal sealed class WaterWork(PlanWork plans, WeatherShelf shelf, LogBook logs, TradeTables trade, TimeProvider clock) : IDisposable
{
    private const int KeptDays = 32;
    private readonly MemoryCache _made = new(new MemoryCacheOptions { SizeLimit = KeptDays });

    public async Task<WateredLawn> Today(StoredLawn stored, CancellationToken cancellation) =>
        await Today(stored, await logs.For(stored.Row.Id, cancellation), cancellation);

    /// <summary>The same where the lawn's log was read already.</summary>
    public async Task<WateredLawn> Today(StoredLawn stored, FieldLog log, CancellationToken cancellation)
    {
        var today = DateOnly.FromDateTime(LawnClock.Now(stored, clock).DateTime);

        // Seed that went down lately says which season is watered, however late in the year it is.
        var seeded = log.During<LogEntry.SeededDown>(today.AddDays(-LawnWatering.LastDay), today).LastOrDefault();
        var kept = await plans.Kept(stored, seeded?.Day.Year, cancellation);
        var planned = await plans.Plan(stored, kept, null, cancellation, log: log);
        IReadOnlyList<LogEntry> written = [.. log.During<LogEntry>(today, today).Where(e => e is LogEntry.Watered or LogEntry.Rained or LogEntry.FingerTest)];
        if (planned.Plan is not { } plan || stored.Row.WeatherId is not { } weatherId || await shelf.History(weatherId, cancellation) is not { } weather)
        {
            return new(planned, null, today, null, written);
        }

        var key = (stored.Row.Id, stored.Row.Version, stored.Row.Changed, weatherId, log.Entries.Count, kept, today);
        if (!_made.TryGetValue(key, out LawnWatering? watering))
        {
            watering = LawnWatering.Of(stored.Lawn, kept, plan, weather, log, trade, today);
            _made.Set(key, watering, new MemoryCacheEntryOptions { Size = 1, SlidingExpiration = TimeSpan.FromMinutes(30) });
        }

        return new(planned, watering, today, weather.Days.LastOrDefault(d => d.Date <= today)?.Date, written);
    }

    public void Dispose() => _made.Dispose();
}
