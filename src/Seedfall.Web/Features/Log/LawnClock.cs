using Seedfall.Exchange.Demo;
using Seedfall.Planning.Plan;
using Seedfall.Web.Features.TakeOn;

namespace Seedfall.Web.Features.Log;

/// <summary>A lawn's own clock. The demo's stands still on the day it is looked at.</summary>
internal static class LawnClock
{
    public static DateTimeOffset Now(StoredLawn stored, TimeProvider clock) => stored.Row.Invented
        ? At(stored, DemoTown.Today.ToDateTime(TimeOnly.FromDateTime(Local(stored, clock.GetUtcNow()).DateTime)))
        : Local(stored, clock.GetUtcNow());

    /// <summary>An instant from the time its clock shows, to the second; of an hour that comes twice the later, of one that is skipped the clock as it was before.</summary>
    public static DateTimeOffset At(StoredLawn stored, DateTime local)
    {
        var whole = new DateTime(local.Year, local.Month, local.Day, local.Hour, local.Minute, local.Second, DateTimeKind.Unspecified);
        return new DateTimeOffset(whole, Zone(stored).GetUtcOffset(whole));
    }

    private static DateTimeOffset Local(StoredLawn stored, DateTimeOffset now)
    {
        var local = TimeZoneInfo.ConvertTime(now, Zone(stored));
        return new DateTimeOffset(local.Year, local.Month, local.Day, local.Hour, local.Minute, local.Second, local.Offset);
    }

    /// <summary>The zone its clock keeps; UTC where this machine does not know it.</summary>
    public static TimeZoneInfo Zone(StoredLawn stored) =>
        TimeZoneInfo.TryFindSystemTimeZoneById(LawnZone.Of(stored.Lawn).Zone, out var known) ? known : TimeZoneInfo.Utc;
}
