using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Plan;

/// <summary>Sums over a lawn's patches.</summary>
internal static class GroundTotals
{
    internal static Figure Area(IReadOnlyList<PatchSummary> patches) => new(
        "ground.area",
        "Lawn area",
        QuantityKind.Area,
        patches.Sum(p => p.Area.Value),
        new Working(
            "sum of the patches",
            [.. patches.Select((p, i) => new WorkingInput($"A{i + 1}", p.Name, p.Area.Value, "m2"))],
            "arithmetic on the patch areas",
            Sureness.Computed));
}
