using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>The spray part of the plan.</summary>
public static class SprayPlanning
{
    /// <summary>Pre-emergent and partners under the entered label: amounts, tanks, mixing order. Null where nothing is sprayed.</summary>
    public static Section<SprayPlan> Plan(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches, DateOnly seedDown) => new(null, [], []);
}
