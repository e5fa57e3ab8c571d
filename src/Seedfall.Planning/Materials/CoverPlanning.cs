using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>The covering part of the plan.</summary>
public static class CoverPlanning
{
    /// <summary>Covering for thin and sloped patches. Null where nothing needs it.</summary>
    public static Section<CoverPlan> Plan(Lawn lawn, IReadOnlyList<PatchSummary> patches) => new(null, [], []);
}
