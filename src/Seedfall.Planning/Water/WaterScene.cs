using Seedfall.Engine.Soil;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Water;

/// <summary>Everything the fit of one watering scheme depends on; remedies are the same scene with one thing changed.</summary>
/// <param name="Sets">Sprinkler sets.</param>
/// <param name="Supply">Hours and permit; null where nothing is known.</param>
/// <param name="Phases">Phases with what the air takes in each.</param>
/// <param name="Texture">Soil texture.</param>
/// <param name="MulchFactor">Covered over bare evaporation of the seedbed.</param>
/// <param name="MostRounds">Ceiling on seedbed rounds a day.</param>
/// <param name="Stages">Parts the lawn is seeded in, one after another.</param>
/// <param name="Taps">Taps run side by side, each as strong as the one measured.</param>
/// <param name="MinutesPerMove">Minutes to move a sprinkler; 0 where one stands in every position.</param>
internal sealed record WaterScene(
    IReadOnlyList<SetFacts> Sets,
    WaterSupply? Supply,
    IReadOnlyList<(Phase Phase, Demand Demand)> Phases,
    SoilTexture Texture,
    double MulchFactor,
    int MostRounds = 4,
    int Stages = 1,
    int Taps = 1,
    int MinutesPerMove = WaterScene.UsualMinutesPerMove)
{
    /// <summary>Seedbed watering chosen instead of worked out.</summary>
    internal SeedbedChoice Chosen { get; init; } = SeedbedChoice.None;

    /// <summary>Minutes to shut off, carry, set and open again. Assumed.</summary>
    internal const int UsualMinutesPerMove = 3;
}
