using System.Globalization;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Field;

/// <summary>Reseed, feed or wait: measured cover against the forecast while the window holds.</summary>
public static class CoverJudging
{
    /// <summary>A picture before seed-down counts as the start for this many days.</summary>
    private const int StartDays = 30;

    /// <summary>Older readings say too little about today.</summary>
    private const int FreshDays = 10;

    /// <summary>Where the lawn stands and what to do.</summary>
    /// <param name="timing">The plan's forecast, window and phases.</param>
    /// <param name="feed">The plan's feedings; null where none is planned.</param>
    /// <param name="measured">What the pictures showed, in any order.</param>
    /// <param name="today">The day asked about.</param>
    public static CoverProgress Judge(SeasonTiming timing, FeedPlan? feed, IReadOnlyList<MeasuredCover> measured, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(timing);
        ArgumentNullException.ThrowIfNull(measured);
        var readings = PooledCover.ByDay(measured.Where(m => m.Date <= today));
        return Judged(timing, feed, readings, today) with { Readings = readings };
    }

    private static CoverProgress Judged(SeasonTiming timing, FeedPlan? feed, IReadOnlyList<PooledCover> readings, DateOnly today)
    {
        if (timing.SeedDown is not { } seedDown)
        {
            return new(CoverStanding.NothingYet, CoverAction.KeepOn, "Nothing is to be seeded this season, so there is no forecast to measure against.", [], []);
        }

        if (readings.LastOrDefault(r => r.Date > seedDown) is not { } last)
        {
            return today > seedDown
                ? new(CoverStanding.NothingYet, CoverAction.Look, "No picture since seed-down: take one from each photo spot.", [], [])
                : new(CoverStanding.NothingYet, CoverAction.Look, "Take a picture from each photo spot before seed-down: everything later is measured against it.", [], []);
        }

        if (timing.CoverForecast.FirstOrDefault(d => d.Date == last.Date) is not { } due)
        {
            return new(CoverStanding.NoForecast, CoverAction.KeepOn, $"Cover measured {Percent(last.Cover.Value)} on {Day(last.Date)}; the plan has no forecast for that day.", [], []);
        }

        var scene = CoverScene.Of(timing, feed, readings, last, due, today, StartDays);
        return last.High.Value < due.P10 ? Behind(scene)
            : last.Low.Value > due.P90 ? new(CoverStanding.Ahead, CoverAction.KeepOn, $"Ahead of nine of ten past seasons: go on as planned. {Measured(scene)}", [.. Notes(scene)], CoverFigures.Of(scene))
            : new(CoverStanding.AsForecast, CoverAction.KeepOn, $"As forecast: go on as planned. {Measured(scene)}", [.. Doubt(scene), .. Notes(scene)], CoverFigures.Of(scene));
    }

    private static CoverProgress Behind(CoverScene scene)
    {
        var (action, sentence, why) = scene switch
        {
            { ForecastRise: < CoverScene.LeastRise } => (CoverAction.Wait, "Behind the forecast, but hardly any new grass is due yet: wait, and keep it wet.",
                $"The forecast starts from the living cover entered; the pictures show less. If the picture is fair, correct the living cover in the notes. New grass is due {(scene.FirstDue is { } day ? $"from about {Day(day)}" : "later")}."),
            { Missing: true, SlowestUp: { } up, Closes: { } closes } when up > scene.Today && up <= closes => (CoverAction.Wait, $"Behind the forecast: wait until {Day(up)}, and keep it wet.",
                $"The slowest grass may still be coming until then, and the window stays open to {Day(closes)}. Seed on seed that is still to come crowds the seedlings."),
            { Missing: true, DaysLeft: >= 0 and var left } => (CoverAction.Reseed, $"Behind the forecast: reseed the thin spots now; {Days(left)} of the window left.",
                $"Of the gain forecast since seed-down {Percent(Math.Max(0.0, scene.Gained))} came: seedlings are missing there, not merely slow."),
            { Missing: true } => Later(scene),
            { NextFeeding: { } feeding } => (CoverAction.Feed, $"Behind the forecast: the seedlings are there but slow. Give {feeding.ProductName} as planned for {Day(feeding.Date)}, if it is not down yet; nothing beyond it.",
                $"Of the gain forecast since seed-down {Percent(scene.Gained)} came. The planned feeding is all the label and the law leave room for."),
            _ => (CoverAction.Wait, "Behind the forecast: the seedlings are there but slow. Wait, keep the water right, mow when they are tall enough.",
                $"Of the gain forecast since seed-down {Percent(scene.Gained)} came, and the plan has no feeding due: more would burn seedlings or break its limits."),
        };
        return new(CoverStanding.Behind, action, $"{sentence} {Measured(scene)}", [why, .. StillOpen(scene, action), .. Notes(scene)], CoverFigures.Of(scene));
    }

    private static (CoverAction, string, string) Later(CoverScene scene) => scene.Timing is { OtherWindow: { } other, OtherWindowName: { } name }
        ? (CoverAction.ReseedLater, $"Behind the forecast, and this window has closed: plan {name} from {Day(other.Opens)}.",
            $"Seed put down after {(scene.Closes is { } closes ? Day(closes) : "the window")} seldom makes a stand before frost.")
        : (CoverAction.Wait, "Behind the forecast, and this window has closed: care for what came, and judge the lawn again in spring.",
            "Seed put down now seldom makes a stand before frost.");

    private static IEnumerable<string> StillOpen(CoverScene scene, CoverAction action)
    {
        if (action is CoverAction.Feed or CoverAction.Wait && scene is { DaysLeft: > 0 and var left, Closes: { } closes })
        {
            yield return $"Places that stay bare can still be reseeded until {Day(closes)}, {Days(left)} from today.";
        }
    }

    private static IEnumerable<string> Doubt(CoverScene scene)
    {
        if (scene.Last.Cover.Value < scene.Due.P10)
        {
            yield return "The reading lies below the band, but within what the pictures can be off: take more pictures, in the shade or under cloud, before doing anything.";
        }
    }

    private static IEnumerable<string> Notes(CoverScene scene)
    {
        if (scene.Today.DayNumber - scene.Last.Date.DayNumber is > FreshDays and var age)
        {
            yield return $"The last picture is {Days(age)} old: take new ones before acting on this.";
        }

        if (scene.Last.Count < 3)
        {
            yield return scene.Last.Count == 1 ? "One picture stands for the whole lawn here: three or more tell far more." : "Two pictures stand for the whole lawn here: three or more tell more.";
        }

        if (!scene.StartMeasured)
        {
            yield return "No picture from before seed-down: the gain is counted from the living cover entered.";
        }
    }

    private static string Measured(CoverScene scene) =>
        $"Measured {Percent(scene.Last.Cover.Value)} ({Whole(scene.Last.Low.Value)} to {Percent(scene.Last.High.Value)}) on {Day(scene.Last.Date)}; forecast {Percent(scene.Due.P50)} ({Whole(scene.Due.P10)} to {Percent(scene.Due.P90)}).";

    private static string Day(DateOnly day) => day.ToString("MMM d", CultureInfo.InvariantCulture);

    private static string Days(int days) => days == 1 ? "1 day" : string.Create(CultureInfo.InvariantCulture, $"{days} days");

    private static string Percent(double share) => $"{Whole(share)} %";

    private static string Whole(double share) => (share * 100.0).ToString("0", CultureInfo.InvariantCulture);
}
