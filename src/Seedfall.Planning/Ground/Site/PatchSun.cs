using System.Globalization;
using Seedfall.Engine.Site;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Ground;

/// <summary>Sun on a patch, reckoned from where it lies and what stands around it.</summary>
public static class PatchSun
{
    /// <summary>Entered and reckoned hours farther apart than this are worth a word, h.</summary>
    internal const double WorthSaying = 1.0;

    private const string Source =
        "sun's path after Meeus 1998, Astronomical Algorithms, chapter 25; clear sky after ASCE 2005, appendix D";

    // Days of the month that stand for it.
    private static readonly int[] Days = [3, 9, 15, 21, 27];

    /// <summary>True where the patch's obstacles can be reckoned with.</summary>
    public static bool IsKnown(Patch patch)
    {
        ArgumentNullException.ThrowIfNull(patch);
        return patch.Obstacles.Count > 0 && patch.Obstacles.All(o => o.AngleDeg is not null);
    }

    /// <summary>One cloudless day of sun on the patch.</summary>
    public static SunExposureDay On(Place place, Patch patch, DateOnly date, double stepMinutes = 1.0)
    {
        ArgumentNullException.ThrowIfNull(patch);
        ArgumentNullException.ThrowIfNull(place);
        return SunExposure.On(place, date, [.. patch.Obstacles.Where(o => o.AngleDeg is not null).Select(o => o.On(date, place.LatitudeDeg))], Tilt(patch), stepMinutes);
    }

    /// <summary>How the patch leans; level where no direction was entered.</summary>
    public static GroundTilt Tilt(Patch patch)
    {
        ArgumentNullException.ThrowIfNull(patch);
        return patch is { SlopePercent: { } slope, AspectDeg: { } aspect } ? new GroundTilt(slope, aspect) : GroundTilt.Level;
    }

    /// <summary>Every so many days of a season: mid-August to mid-November, mid-February to mid-May in the south.</summary>
    public static IReadOnlyList<SunExposureDay> Season(Place place, Patch patch, int year, int everyDays = 15)
    {
        ArgumentNullException.ThrowIfNull(place);
        var first = place.LatitudeDeg >= 0.0 ? new DateOnly(year, 8, 15) : new DateOnly(year, 2, 15);
        return [.. Enumerable.Range(0, (92 / everyDays) + 1).Select(i => On(place, patch, first.AddDays(i * everyDays)))];
    }

    /// <summary>Hours of direct sun in September (March in the south) with their working; null where no obstacle is known.</summary>
    /// <param name="place">Where the lawn lies.</param>
    /// <param name="patch">The patch.</param>
    /// <param name="year">Year of the season.</param>
    public static Figure? Hours(Place place, Patch patch, int year)
    {
        if (!IsKnown(patch))
        {
            return null;
        }

        ArgumentNullException.ThrowIfNull(place);
        var month = place.LatitudeDeg >= 0.0 ? 9 : 3;
        SunExposureDay[] days = [.. Days.Select(d => On(place, patch, new DateOnly(year, month, d), 2.0))];
        return new Figure($"sun.{patch.Id}.hours", $"{patch.Name}: direct sun in {(month == 9 ? "September" : "March")}, h", QuantityKind.Number, days.Average(d => d.DirectHours), new Working(
            "mean over the month of: sum over the day of (share of the beam let through) dt",
            [
                new("latitude", "degrees north", place.LatitudeDeg, "deg"), new("longitude", "degrees east", place.LongitudeDeg, "deg"),
                new("D", "hours from sunrise to sunset", days.Average(d => d.OpenHours), "h"),
                new("K", "share of open ground's clear-sky radiation kept", days.Average(d => d.KeptShare), ""),
                .. patch.Obstacles.Select((o, i) => new WorkingInput($"h{i + 1}", string.Create(CultureInfo.InvariantCulture, $"{o.Name}, {o.FromDeg:0} to {o.ToDeg:0} degrees: height"), o.AngleDeg!.Value, "deg")),
            ],
            $"{Source}; {SunThrough.Source}",
            Sureness.Computed,
            Note(place, patch, year, days)));
    }

    private static string Note(Place place, Patch patch, int year, SunExposureDay[] days)
    {
        var late = On(place, patch, place.LatitudeDeg >= 0.0 ? new DateOnly(year, 10, 31) : new DateOnly(year, 4, 30), 2.0);
        var bare = patch.Obstacles.FirstOrDefault(o => o.Kind == ObstacleKind.Deciduous);
        var leaves = bare is null ? "" : string.Create(CultureInfo.InvariantCulture, $" Leaves are taken to be down from {SunThrough.BareFrom(bare, place.LatitudeDeg):MMMM d}.");
        return string.Create(CultureInfo.InvariantCulture, $"Clear days, seen from the middle of the patch; obstacles are taken as level-topped. From {days[0].DirectHours:0.0} h early in the month to {days[^1].DirectHours:0.0} h late in it, {late.DirectHours:0.0} h on {late.Date:MMMM d}.{leaves}");
    }
}
