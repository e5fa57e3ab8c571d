using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Caching.Memory;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Exchange.Demo;
using Seedfall.Planning.Field;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;
using Seedfall.Web.Data;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Features.Weather;

namespace Seedfall.Web.Features.Plan;

/// <summary>A lawn planned, or why it is not.</summary>
/// <param name="Kept">What is kept for the season.</param>
/// <param name="Asked">What this plan was made for; differs from <paramref name="Kept"/> in a what-if.</param>
/// <param name="Plan">Null where there is no weather or the planner refused.</param>
/// <param name="Refusal">Why there is no plan, in one sentence.</param>
public sealed record PlannedLawn(StoredLawn Stored, Choices Kept, Choices Asked, RecoveryPlan? Plan, string? Refusal)
{
    public bool IsWhatIf => Kept with { Today = null } != Asked with { Today = null };
}

/// <summary>Plans lawns. A plan is a function of its inputs, so a plan made once is kept while those inputs are the same.</summary>
internal sealed class PlanWork(IDbContextFactory<SeedfallDb> contexts, Writer writer, WeatherShelf shelf, LogBook logs, TradeTables trade, TimeProvider clock, ILogger<PlanWork> logger) : IDisposable
{
    private const int KeptPlans = 32;
    private readonly MemoryCache _plans = new(new MemoryCacheOptions { SizeLimit = KeptPlans });
    private readonly SemaphoreSlim _cores = new(2, 2);

    /// <summary>What is kept for a season: the one asked for, else the one under way.</summary>
    public async Task<Choices> Kept(StoredLawn stored, int? season, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        var rows = await db.Seasons.AsNoTracking().Where(s => s.LawnId == stored.Row.Id).ToListAsync(cancellation);

        // The demo stands still on a day of its own, so that it reads the same whenever it is tried out.
        var today = stored.Row.Invented ? DemoTown.Today : SeasonYear.Today(clock.GetUtcNow(), stored.Lawn.TimeZone, stored.Lawn.Place.LongitudeDeg);
        var year = season ?? SeasonYear.For(today, stored.Lawn.Place.LatitudeDeg, y => rows.Any(r => r.Year == y));
        var kept = rows.FirstOrDefault(r => r.Year == year);
        return new Choices
        {
            Season = year,
            SeedDown = kept?.SeedDown,
            Method = kept?.SlitSeed == true ? SeedingMethod.SlitSeed : SeedingMethod.Broadcast,
            OverseedShare = kept?.OverseedShare is { } share ? Fraction.Of(share) : null,
            SeedbedRounds = kept?.SeedbedRounds,
            RoundDepth = kept?.RoundDepthMm is { } depth ? Depth.FromMillimeters(depth) : null,
            Today = today.Year == year ? today : null,
        };
    }

    /// <summary>A number that rises with every change kept to the lawn's notes, its season or its log.</summary>
    public async Task<int> Sequence(string lawnId, int season, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        var lawn = await db.Lawns.Where(l => l.Id == lawnId).Select(l => l.Version).FirstOrDefaultAsync(cancellation);
        var kept = await db.Seasons.Where(s => s.LawnId == lawnId && s.Year == season).Select(s => s.Version).FirstOrDefaultAsync(cancellation);
        return Math.Max(0, lawn - 1) + kept + await db.Log.CountAsync(l => l.LawnId == lawnId, cancellation);
    }

    /// <summary>The plan for what is asked; <paramref name="asked"/> null asks for what is kept.</summary>
    /// <param name="beforeCovers">True for the forecast as it was before any cover was seen, to measure what was seen against.</param>
    /// <param name="log">The lawn's log where it was read already; null to read it.</param>
    public async Task<PlannedLawn> Plan(StoredLawn stored, Choices kept, Choices? asked, CancellationToken cancellation, bool beforeCovers = false, FieldLog? log = null)
    {
        var wanted = asked ?? kept;
        if (stored.Row.WeatherId is not { } weatherId || await shelf.History(weatherId, cancellation) is not { } history)
        {
            return new(stored, kept, wanted, null, null);
        }

        var written = log ?? await logs.For(stored.Row.Id, cancellation);
        written = beforeCovers ? FieldLog.Of(written.Standing.Where(e => e is not LogEntry.CoverSeen)) : written;
        var key = (stored.Row.Id, stored.Row.Version, stored.Row.Changed, weatherId, written.Entries.Count, wanted, beforeCovers);
        if (_plans.TryGetValue(key, out RecoveryPlan? made))
        {
            return new(stored, kept, wanted, made, null);
        }

        await _cores.WaitAsync(cancellation);
        try
        {
            var plan = RecoveryPlanner.Plan(stored.Lawn, wanted, Ahead(stored, history), trade, written);
            _plans.Set(key, plan, new MemoryCacheEntryOptions { Size = 1, SlidingExpiration = TimeSpan.FromMinutes(30) });
            return new(stored, kept, wanted, plan, null);
        }
        catch (ArgumentException e)
        {
            return new(stored, kept, wanted, null, e.Message);
        }
        catch (Exception e)
        {
            // One lawn that cannot be planned must not take the desk and all other lawns with it.
            logger.LogError(e, "The plan of {Lawn} for {Season} failed", stored.Row.Id, wanted.Season);
            return new(stored, kept, wanted, null, "The fault is on our side and was written to the log.");
        }
        finally
        {
            _cores.Release();
        }
    }

    /// <summary>Weather of days that have not come yet can only be a forecast.</summary>
    private WeatherHistory Ahead(StoredLawn stored, WeatherHistory history) => stored.Row.Invented
        ? history
        : history.WithDaysAheadForecast(SeasonYear.Today(clock.GetUtcNow(), stored.Lawn.TimeZone, stored.Lawn.Place.LongitudeDeg));

    /// <summary>Keeps choices for their season; false where the lawn is gone.</summary>
    public async Task<bool> Keep(string lawnId, Choices choices, CancellationToken cancellation) =>
        await writer.Write(
            async db =>
            {
                if (!await db.Lawns.AnyAsync(l => l.Id == lawnId, cancellation))
                {
                    return false;
                }

                var row = await db.Seasons.FindAsync([lawnId, choices.Season], cancellation);
                row ??= db.Seasons.Add(new SeasonRow { LawnId = lawnId, Year = choices.Season, Changed = clock.GetUtcNow() }).Entity;
                (row.SeedDown, row.SlitSeed, row.OverseedShare) = (choices.SeedDown, choices.Method == SeedingMethod.SlitSeed, choices.OverseedShare?.Value);
                (row.SeedbedRounds, row.RoundDepthMm) = (choices.SeedbedRounds, choices.RoundDepth?.Millimeters);
                (row.Version, row.Changed) = (row.Version + 1, clock.GetUtcNow());
                return true;
            },
            cancellation);

    public void Dispose()
    {
        _plans.Dispose();
        _cores.Dispose();
    }
}
