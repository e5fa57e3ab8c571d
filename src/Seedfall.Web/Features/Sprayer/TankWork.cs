using Seedfall.Planning.Field;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;

namespace Seedfall.Web.Features.Sprayer;

/// <summary>A lawn's tank mix as a page shows it.</summary>
/// <param name="ForSeedDown">True where the day is the plan's seed-down day, which is still to come.</param>
/// <param name="Calibrated">True where the carrier was entered or calibrated, not taken.</param>
public sealed record MixedLawn(StoredLawn Stored, TankSheet Sheet, bool ForSeedDown, bool Calibrated);

/// <summary>Works out what is mixed for a lawn: for the planned seed-down day while that is ahead, else for today.</summary>
internal sealed class TankWork(PlanWork plans, LogBook logs, TradeTables trade, TimeProvider clock)
{
    public async Task<MixedLawn> Mix(StoredLawn stored, TankAsk ask, CancellationToken cancellation)
    {
        var today = DateOnly.FromDateTime(LawnClock.Now(stored, clock).DateTime);
        var log = await logs.For(stored.Row.Id, cancellation);
        var kept = await plans.Kept(stored, null, cancellation);
        var planned = await plans.Plan(stored, kept, null, cancellation);
        var seeded = log.Standing.OfType<LogEntry.SeededDown>().Any(entry => entry.Day.Year == kept.Season);
        var ahead = !seeded && (planned.Plan?.Timing.SeedDown ?? kept.SeedDown) is { } day && day >= today ? day : (DateOnly?)null;
        var sprayer = stored.Lawn.Sprayer ?? new SprayerFacts();
        var lawn = stored.Lawn with { Sprayer = sprayer with { Carrier = ask.Carrier ?? sprayer.Carrier, Tank = ask.Tank ?? sprayer.Tank } };
        var choices = ahead is { } seedDown ? kept with { SeedDown = seedDown } : kept;
        return new(stored, TankSheet.Of(lawn, choices, trade, log, ahead ?? today, ask.Left), ahead is not null, lawn.Sprayer.Carrier is not null);
    }
}
