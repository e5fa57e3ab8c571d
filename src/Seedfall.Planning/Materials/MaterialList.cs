using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Materials;

/// <summary>The shopping list.</summary>
public static class MaterialList
{
    /// <summary>One line per thing to have, in the order it is used.</summary>
    public static IReadOnlyList<MaterialLine> Lines(Lawn lawn, SeedPlan? seed, FeedPlan? feed, SprayPlan? spray, CoverPlan? cover) => [];

    /// <summary>Sum of the known costs; null where none is known.</summary>
    public static Figure? TotalCost(IReadOnlyList<MaterialLine> lines) => null;
}
