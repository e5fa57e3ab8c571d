using Seedfall.Planning.Materials;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Field;

/// <summary>All that judging cover rests on, for one day.</summary>
/// <param name="Last">The last reading after seed-down.</param>
/// <param name="Due">The forecast of its day.</param>
/// <param name="Start">Cover at seed-down: measured, else as entered.</param>
/// <param name="StartMeasured">True where a picture from before seed-down is the start.</param>
internal sealed record CoverScene(SeasonTiming Timing, PooledCover Last, CoverFanDay Due, DateOnly Today, double Start, bool StartMeasured, Feeding? NextFeeding)
{
    /// <summary>A rise of the forecast this small cannot be told from a photograph, share.</summary>
    internal const double LeastRise = 0.03;

    /// <summary>Below this part of the forecast's gain the seedlings are missing rather than slow. Seedfall's own choice.</summary>
    private const double MissingBelow = 1.0 / 3.0;

    private const int FeedingAheadDays = 7;
    private const int FeedingPastDays = 14;

    /// <summary>Middle forecast of the gain in cover from seed-down to the reading.</summary>
    internal double ForecastRise => Due.P50 - Timing.CoverForecast[0].P50;

    /// <summary>Part of the forecast's gain that came; below 0 where cover fell.</summary>
    internal double Gained => ForecastRise <= 0.0 ? 0.0 : (Last.Cover.Value - Start) / ForecastRise;

    internal bool Missing => Gained < MissingBelow;

    internal DateOnly? Closes => Timing.Window?.Closes;

    /// <summary>Days left to seed; below 0 after the window closed, null without one.</summary>
    internal int? DaysLeft => Closes is { } closes ? closes.DayNumber - Today.DayNumber : null;

    /// <summary>The day the slowest grass should be up.</summary>
    internal DateOnly? SlowestUp => Timing.Phases.FirstOrDefault(p => p.Id == "seedbed")?.To;

    /// <summary>The day the middle forecast has risen enough to be seen.</summary>
    internal DateOnly? FirstDue => Timing.CoverForecast.FirstOrDefault(d => d.P50 - Timing.CoverForecast[0].P50 >= LeastRise)?.Date;

    /// <summary>Chance of a stand from seed put down today; null where it was not computed.</summary>
    internal double? ChanceToday => Timing.Stand.FirstOrDefault(c => c.Date == Today)?.Chance;

    internal static CoverScene Of(SeasonTiming timing, FeedPlan? feed, IReadOnlyList<PooledCover> readings, PooledCover last, CoverFanDay due, DateOnly today, int startDays)
    {
        var seedDown = timing.SeedDown!.Value;
        var before = readings.LastOrDefault(r => r.Date <= seedDown && r.Date >= seedDown.AddDays(-startDays));
        var next = feed?.Feedings.Where(f => f.Date > seedDown && f.Date >= today.AddDays(-FeedingPastDays) && f.Date <= today.AddDays(FeedingAheadDays)).OrderBy(f => f.Date).FirstOrDefault();
        return new(timing, last, due, today, before?.Cover.Value ?? timing.CoverForecast[0].P50, before is not null, next);
    }
}
