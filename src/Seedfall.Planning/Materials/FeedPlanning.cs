using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>The fertilizer part of the plan.</summary>
public static class FeedPlanning
{
    /// <summary>Starter on seed-down day and about day 15, late-fall feed, under the lawn's rule pack.</summary>
    public static Section<FeedPlan> Plan(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches, DateOnly seedDown, DateOnly lateFeed) => new(null, [], []);
}
