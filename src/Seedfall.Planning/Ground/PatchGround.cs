using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Ground;

/// <summary>The lawn's patches as the plan sees them: ground area and living cover, with what had to be assumed.</summary>
public static class PatchGround
{
    /// <summary>One summary per patch, in the lawn's order. The lawn must have passed <see cref="LawnRules.Problems"/>.</summary>
    public static Section<IReadOnlyList<PatchSummary>> Summarize(Lawn lawn) => Section<IReadOnlyList<PatchSummary>>.Of([]);
}
