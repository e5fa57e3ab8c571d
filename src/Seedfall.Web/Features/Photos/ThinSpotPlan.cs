using Seedfall.Engine.Units;
using Seedfall.Planning.Materials;
using Seedfall.Web.Data;
using Seedfall.Web.Features.Plan;

namespace Seedfall.Web.Features.Photos;

/// <summary>The extra seed of the thin spots found on an overview.</summary>
internal static class ThinSpotPlan
{
    /// <summary>Null where the spot names no patch, or the plan seeds none.</summary>
    public static ThinSpotSeed? Of(PlannedLawn planned, PhotoSpotRow spot, FoundNote found)
    {
        var patchId = spot.PatchId ?? (planned.Stored.Lawn.Patches.Count == 1 ? planned.Stored.Lawn.Patches[0].Id : null);
        return planned.Plan is { Seed: { } seed } plan
            && plan.Patches.FirstOrDefault(p => p.Id == patchId) is { } patch
            && seed.Patches.FirstOrDefault(p => p.PatchId == patchId) is { } seeding
            ? ThinSpotSeed.For(planned.Stored.Lawn, planned.Asked, patch, seeding, [.. found.Spots.Select(Found)])
            : null;
    }

    private static FoundThinSpot Found(SpotNote spot, int index) => new(
        FormattableString.Invariant($"spot-{index + 1}"),
        FormattableString.Invariant($"spot {index + 1}"),
        Area.FromSquareMeters(spot.AreaM2),
        Area.FromSquareMeters(spot.LowM2),
        Area.FromSquareMeters(spot.HighM2),
        Fraction.Of(Math.Clamp(spot.Cover, 0.0, 1.0)));
}
