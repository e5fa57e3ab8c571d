namespace Seedfall.Web.Features.Plan;

/// <summary>Which autumn a day belongs to.</summary>
internal static class SeasonYear
{
    /// <summary>
    /// The autumn that is under way or comes next: after mid-October (mid-April in the south) nothing new is seeded, and
    /// the next year's is meant, unless this year's was already begun.
    /// </summary>
    public static int For(DateOnly today, double latitudeDeg, Func<int, bool> begun)
    {
        var lastMonth = latitudeDeg < 0.0 ? 4 : 10;
        var past = today.Month > lastMonth || (today.Month == lastMonth && today.Day > 15);
        return past && !begun(today.Year) ? today.Year + 1 : today.Year;
    }

    /// <summary>The local day at a lawn; by longitude where its zone is not known.</summary>
    public static DateOnly Today(DateTimeOffset now, string? zone, double longitudeDeg)
    {
        var local = zone is not null && TimeZoneInfo.TryFindSystemTimeZoneById(zone, out var known)
            ? TimeZoneInfo.ConvertTime(now, known)
            : now.ToOffset(TimeSpan.FromHours(Math.Clamp(Math.Round(longitudeDeg / 15.0), -12.0, 14.0)));
        return DateOnly.FromDateTime(local.DateTime);
    }
}
