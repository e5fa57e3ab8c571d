using Seedfall.Planning.Field;
using Seedfall.Web.Data;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.Photos;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Features.Water;
using DayWorked = Seedfall.Planning.Field.DaySheet;

namespace Seedfall.Web.Features.DaySheet;

/// <summary>A lawn on one day.</summary>
/// <param name="Sheet">Null where there is no plan.</param>
/// <param name="Written">Everything the log holds of that day, struck or not, in order.</param>
/// <param name="Zone">IANA zone of the lawn's clock.</param>
/// <param name="Now">The lawn's clock when the page was made.</param>
public sealed record DayLawn(PlannedLawn Planned, DayWorked? Sheet, DateOnly Date, DateTimeOffset Now, string Zone, FieldLog Log, IReadOnlyList<LogEntry> Written, IReadOnlyList<PhotoSpotRow> Spots)
{
    public StoredLawn Stored => Planned.Stored;

    public DateOnly Today => DateOnly.FromDateTime(Now.DateTime);
}

/// <summary>Brings together what a day sheet is made from.</summary>
internal sealed class DayWork(WaterWork water, LogBook logs, PhotoShelf shelf, TimeProvider clock)
{
    public async Task<DayLawn> Of(StoredLawn stored, DateOnly date, CancellationToken cancellation)
    {
        var log = await logs.For(stored.Row.Id, cancellation);
        var watered = await water.Today(stored, log, cancellation);
        var sheet = watered.Planned.Plan is { } plan ? DayWorked.Of(stored.Lawn, plan, log, date, watered.Watering) : null;
        return new(
            watered.Planned,
            sheet,
            date,
            LawnClock.Now(stored, clock),
            Seedfall.Planning.Plan.LawnZone.Of(stored.Lawn).Zone,
            log,
            [.. log.Entries.Where(e => e.Day == date)],
            await shelf.Spots(stored.Row.Id, cancellation));
    }
}
