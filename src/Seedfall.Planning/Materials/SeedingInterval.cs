using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>What past sprays allow.</summary>
/// <param name="Earliest">First day seed may go down; null where no past spray sets one.</param>
/// <param name="Walls">One per spray whose interval sets a day, the latest first: each holds seed-down before its day.</param>
/// <param name="Assumptions">One per spray whose label interval was not entered.</param>
/// <param name="Advice">What research found for the same active ingredient, beside the label.</param>
public sealed record SeedingWait(DateOnly? Earliest, IReadOnlyList<Wall> Walls, IReadOnlyList<Assumption> Assumptions, IReadOnlyList<Advice> Advice);

/// <summary>Waits between a herbicide and seed.</summary>
public static class SeedingInterval
{
    /// <summary>The first day the lawn's past sprays allow seeding, label first.</summary>
    public static SeedingWait EarliestSeeding(Lawn lawn, SeedingMethod method) => new(null, [], [], []);
}
