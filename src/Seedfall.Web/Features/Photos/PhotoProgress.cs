using Seedfall.Planning.Field;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Timing;
using Seedfall.Web.Data;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.TakeOn;

namespace Seedfall.Web.Features.Photos;

/// <summary>How one patch, or the lawn, comes on.</summary>
/// <param name="Title">The patch's name; null where there is only the lawn.</param>
/// <param name="Forecast">The forecast it is measured against.</param>
public sealed record PatchProgress(string? Title, CoverProgress Progress, IReadOnlyList<CoverFanDay> Forecast);

/// <summary>Measured cover against the plan's forecast, patch by patch where spots name patches.</summary>
internal static class PhotoProgress
{
    /// <summary>Empty where there is no plan or no spot.</summary>
    public static IReadOnlyList<PatchProgress> Of(StoredLawn stored, RecoveryPlan? plan, IReadOnlyList<PhotoSpotRow> spots, DateOnly today)
    {
        if (plan is null || spots.Count == 0)
        {
            return [];
        }

        var single = stored.Lawn.Patches.Count == 1;
        return [.. spots.GroupBy(s => single ? null : stored.Lawn.Patches.FirstOrDefault(p => p.Id == s.PatchId)?.Id).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => One(stored, plan, g.Key, g, today))];
    }

    /// <summary>The day at the lawn.</summary>
    public static DateOnly Today(StoredLawn stored, TimeProvider clock) => DateOnly.FromDateTime(LawnClock.Now(stored, clock).DateTime);

    private static PatchProgress One(StoredLawn stored, RecoveryPlan plan, string? patchId, IEnumerable<PhotoSpotRow> spots, DateOnly today)
    {
        var forecast = plan.Timing.CoverByPatch.FirstOrDefault(p => p.PatchId == patchId)?.Days ?? plan.Timing.CoverForecast;
        var measured = spots.SelectMany(s => s.Photos.Where(p => p.Taken.Year == plan.Season).Select(p => PhotoLogging.Reading(s, p))).OfType<MeasuredCover>().ToList();
        var progress = CoverJudging.Judge(plan.Timing with { CoverForecast = forecast }, plan.Feed, measured, today);
        return new(patchId is null ? null : stored.Lawn.Patches.First(p => p.Id == patchId).Name, progress, forecast);
    }
}
