using Seedfall.Engine.Units;
using Seedfall.Planning.Field;
using Seedfall.Web.Data;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.TakeOn;

namespace Seedfall.Web.Features.Photos;

/// <summary>Measured cover written into the field log, where it moves the plan; an entry is struck when its picture is measured again or removed.</summary>
internal sealed class PhotoLogging(LogBook log, TimeProvider clock)
{
    /// <summary>The entry of a picture as it is measured now; null where there is none to write.</summary>
    public LogEntry.CoverSeen? Entry(StoredLawn stored, PhotoSpotRow spot, PhotoRow photo)
    {
        if (Reading(spot, photo) is not { } reading || photo.Taken > DateOnly.FromDateTime(LawnClock.Now(stored, clock).DateTime))
        {
            return null;
        }

        // One picture is one place: the entry's range holds how cover differs from place to place as well.
        var pooled = PooledCover.ByDay([reading])[0];
        var entry = new LogEntry.CoverSeen(pooled.Cover, CoverJudged.Photograph)
        {
            Id = Guid.CreateVersion7(clock.GetUtcNow()),
            At = LawnClock.At(stored, photo.Taken.ToDateTime(new TimeOnly(12, 0))),
            PatchId = spot.PatchId,
            Low = pooled.Low,
            High = pooled.High,
            Remark = $"photo spot {spot.Name}",
        };
        return LogRules.Problems(stored.Lawn, entry).Count == 0 ? entry : null;
    }

    /// <summary>Writes an entry and strikes the one it takes the place of.</summary>
    public async Task Write(StoredLawn stored, LogEntry.CoverSeen? entry, Guid? before, string why, CancellationToken cancellation)
    {
        List<LogEntry> entries = [];
        if (before is { } old)
        {
            entries.Add(new LogEntry.Struck(old, why) { Id = Guid.CreateVersion7(clock.GetUtcNow()), At = LawnClock.Now(stored, clock) });
        }

        if (entry is not null)
        {
            entries.Add(entry);
        }

        if (entries.Count > 0)
        {
            await log.Append(stored.Row.Id, entries, cancellation);
        }
    }

    /// <summary>Null where nothing is measured.</summary>
    public static MeasuredCover? Reading(PhotoSpotRow spot, PhotoRow photo) => photo is { Cover: { } cover, CoverLow: { } low, CoverHigh: { } high }
        ? new(photo.Taken, Fraction.Of(cover), Fraction.Of(Math.Min(low, cover)), Fraction.Of(Math.Max(high, cover)), spot.IsOverview)
        : null;
}
