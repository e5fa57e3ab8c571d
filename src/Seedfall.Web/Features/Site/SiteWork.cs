using System.Globalization;
using Seedfall.Engine.Site;
using Seedfall.Engine.Workings;
using Seedfall.Exchange.Demo;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;

namespace Seedfall.Web.Features.Site;

/// <summary>The sun of one patch as a page shows it.</summary>
/// <param name="Hours">Reckoned hours in the month of seeding; null where no obstacle is entered.</param>
/// <param name="Season">Days of the season, two weeks apart.</param>
/// <param name="Sky">The sun's paths and what stands before them.</param>
public sealed record PatchSunView(Patch Patch, Figure? Hours, IReadOnlyList<SunExposureDay> Season, SkyDrawing Sky, TimeZoneInfo Clock);

/// <summary>Reckons sites for pages.</summary>
internal sealed class SiteWork(TimeProvider clock, Host.Settings settings)
{
    /// <summary>True where the operator lets the soil survey be asked.</summary>
    public bool LooksUp => settings.SoilSurveyMail is not null;

    public IReadOnlyList<PatchSunView> Suns(StoredLawn stored) => [.. stored.Lawn.Patches.Select(p => Sun(stored, p))];

    public PatchSunView Sun(StoredLawn stored, Patch patch)
    {
        var (place, year) = (stored.Lawn.Place, Year(stored));
        return new PatchSunView(patch, PatchSun.Hours(place, patch, year), PatchSun.Season(place, patch, year, 13), SkyDrawing.Of(place, patch, year), Clock(stored.Lawn));
    }

    /// <summary>Year of the season the page is about; the demo stands still.</summary>
    private int Year(StoredLawn stored) => (stored.Row.Invented ? DemoTown.Today : SeasonYear.Today(clock.GetUtcNow(), stored.Lawn.TimeZone, stored.Lawn.Place.LongitudeDeg)).Year;

    private static TimeZoneInfo Clock(Lawn lawn) => TimeZoneInfo.TryFindSystemTimeZoneById(LawnZone.Of(lawn).Zone, out var zone) ? zone : TimeZoneInfo.Utc;
}

/// <summary>Times of the sun on the lawn's clock.</summary>
internal static class SunClock
{
    public static string Time(DateTimeOffset? instant, TimeZoneInfo zone) =>
        instant is { } i ? TimeZoneInfo.ConvertTime(i, zone).ToString("h:mm tt", CultureInfo.InvariantCulture).ToLowerInvariant() : "never";

    public static string Day(DateOnly date) => date.ToString("MMM d", CultureInfo.InvariantCulture);

    public static string Hours(double hours) => hours.ToString("0.0", CultureInfo.InvariantCulture);

    public static string Percent(double share) => Math.Round(share * 100.0).ToString("0", CultureInfo.InvariantCulture);
}
