using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>The seed part of the plan.</summary>
public static class SeedPlanning
{
    /// <summary>Mix, rates, bulk seed per patch, bags to buy.</summary>
    public static Section<SeedPlan> Plan(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches) => new(null, [], []);
}
