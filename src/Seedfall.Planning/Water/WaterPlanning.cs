using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Water;

/// <summary>Proves that the water can, or cannot, be put on.</summary>
public static class WaterPlanning
{
    /// <summary>
    /// The water proof of the season. The value is never null; where <see cref="SeasonTiming.SeedDown"/> is null the proof is
    /// made for the days an average seeding would take.
    /// </summary>
    public static Section<WaterProof> Prove(
        Lawn lawn,
        IReadOnlyList<PatchSummary> patches,
        SeasonTiming timing,
        WeatherHistory weather,
        TradeTables tables) =>
        throw new NotSupportedException("the water proof is being built");
}
