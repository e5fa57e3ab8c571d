using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Judgment;

/// <summary>Judges a lawn: recover, start over, wait or cure first.</summary>
public static class LawnVerdict
{
    /// <summary>The verdict on every patch and on the lawn.</summary>
    /// <param name="lawn">The lawn as taken on.</param>
    /// <param name="choices">Season and chosen day.</param>
    /// <param name="patches">The patches as the plan sees them, one for each patch of the lawn.</param>
    /// <param name="timing">The season's timing.</param>
    /// <param name="water">The water proof; null where none could be made.</param>
    /// <param name="earliestSeeding">First day past sprays allow seeding; null where nothing stands in the way.</param>
    /// <param name="tables">The trade's tables.</param>
    public static Verdict Judge(
        Lawn lawn,
        Choices choices,
        IReadOnlyList<PatchSummary> patches,
        SeasonTiming timing,
        WaterProof? water,
        DateOnly? earliestSeeding,
        TradeTables tables) =>
        throw new NotSupportedException("the verdict is being built");

    /// <summary>What the verdict had to assume about the lawn: thatch, grubs, weeds, cause not entered.</summary>
    public static IReadOnlyList<Assumption> Assumptions(Lawn lawn) =>
        throw new NotSupportedException("the verdict is being built");
}
