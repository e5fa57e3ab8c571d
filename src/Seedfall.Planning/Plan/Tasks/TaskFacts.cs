using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Plan.Tasks;

/// <summary>What the dated tasks of one season are made from.</summary>
internal sealed record TaskFacts(
    Lawn Lawn,
    Choices Choices,
    Verdict Verdict,
    SeasonTiming Timing,
    WaterProof Water,
    LateSeason Late,
    IReadOnlyList<SpeciesFacts> Mix,
    SeedPlan? Seed,
    FeedPlan? Feed,
    SprayPlan? Spray,
    CoverPlan? Cover,
    IReadOnlyList<MaterialLine> Materials,
    FieldLog Log)
{
    /// <summary>A figure of the season's timing by its id; null where it has none.</summary>
    internal Figure? Timed(string id) => Timing.Figures.FirstOrDefault(figure => figure.Id == id);
}
