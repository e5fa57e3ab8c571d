using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Plan;

/// <summary>The material sections of one plan; all empty where nothing is seeded.</summary>
internal sealed record MaterialParts(
    Section<SeedPlan> Seed,
    Section<FeedPlan> Feed,
    Section<SprayPlan> Spray,
    Section<CoverPlan> Cover,
    IReadOnlyList<MaterialLine> Lines)
{
    internal static MaterialParts None { get; } = new(new(null, [], []), new(null, [], []), new(null, [], []), new(null, [], []), []);
}
