using Seedfall.Engine.Simulation.Correction;
using Seedfall.Planning.Field;

namespace Seedfall.Planning.Timing;

/// <summary>Covers written in the log, as observations of one patch.</summary>
internal static class CoverSeenOn
{
    /// <summary>A range that holds nine times of ten is this many standard deviations wide.</summary>
    private const double DeviationsInRange = 3.29;

    private const double LeastDeviation = 0.02;

    /// <summary>What was seen of a patch from the seed-down day on; what was seen of the whole lawn counts for each patch, half as exactly.</summary>
    internal static IReadOnlyList<CoverObservation> Patch(SeasonScene scene, string patchId, DateOnly seedDown) =>
        [.. scene.Log.During<LogEntry.CoverSeen>(seedDown, scene.Calendar.Last)
            .Where(seen => seen.PatchId is null || seen.PatchId == patchId)
            .Select(seen => new CoverObservation(seen.Day.DayNumber - seedDown.DayNumber, seen.Cover.Value, Deviation(seen)))];

    private static double Deviation(LogEntry.CoverSeen seen)
    {
        var own = seen is { Low: { } low, High: { } high } ? (high.Value - low.Value) / DeviationsInRange : Usual(seen.Judged);
        return Math.Max(LeastDeviation, own) * (seen.PatchId is null ? 2.0 : 1.0);
    }

    /// <summary>Standard deviation where no range was given (judged).</summary>
    private static double Usual(CoverJudged judged) => judged switch
    {
        CoverJudged.ByEye => 0.10,
        CoverJudged.Counted => 0.06,
        _ => 0.05,
    };
}
