using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Records;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Plan.Followed;

/// <summary>What the tasks of a season are held against.</summary>
/// <param name="Log">The field log.</param>
/// <param name="Lawn">The lawn.</param>
/// <param name="Feed">The feed part of the plan; null for none.</param>
/// <param name="Spray">The spray part of the plan; null for none.</param>
/// <param name="SeedDown">Seed-down day; of a lawn that waits the first day of its work.</param>
/// <param name="FirstMowed">Day of the new grass's first mowing by the log; null where there was none yet.</param>
internal sealed record DoneScene(FieldLog Log, Lawn Lawn, FeedPlan? Feed, SprayPlan? Spray, DateOnly SeedDown, DateOnly? FirstMowed)
{
    internal IEnumerable<string> PatchIds => Lawn.Patches.Select(patch => patch.Id);

    /// <summary>The scene of one season.</summary>
    internal static DoneScene Of(FieldLog log, Lawn lawn, FeedPlan? feed, SprayPlan? spray, SeasonTiming timing, DateOnly seedDown) => new(
        log, lawn, feed, spray, seedDown, timing.Figures.FirstOrDefault(f => f.Id == "timing.first-mow") is { Working.Sureness: Sureness.Measured } written ? written.AsDate() : null);

    internal string Name(string? patchId) => patchId is null ? "the whole lawn" : Lawn.Patches.FirstOrDefault(p => p.Id == patchId)?.Name ?? patchId;

    /// <summary>The records that stand in the place of a feeding.</summary>
    internal IReadOnlyList<LogEntry> Fed(string taskId)
    {
        var ids = Feed?.Recorded?.Steps.FirstOrDefault(step => taskId == $"feed.{step.Id}")?.EntryIds ?? [];
        return [.. Log.Standing.Where(entry => ids.Contains(entry.Id))];
    }

    /// <summary>True where a record names a product of the trip.</summary>
    internal bool Sprays(string taskId, Application what) =>
        Spray?.Trips.FirstOrDefault(trip => taskId == $"spray.{trip.Id}")?.Products.Any(product =>
            Actives.Is(what.Product, product.Name) || what.Actives.Any(active => Actives.Is(active.Name, product.Name))) == true;
}
