using Seedfall.Engine.Units;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Water;

/// <summary>Seedbed watering as chosen instead of worked out.</summary>
/// <param name="Rounds">Rounds a day, 1 to 4; null means worked out.</param>
/// <param name="PerRound">Net depth of a round; null means worked out.</param>
internal sealed record SeedbedChoice(int? Rounds, Depth? PerRound)
{
    internal static SeedbedChoice None { get; } = new(null, null);

    internal bool Any => Rounds is not null || PerRound is not null;

    /// <summary>From the season's choices; rain alone is not a watering that could be proved, so it leaves the proof as worked out.</summary>
    internal static SeedbedChoice Of(Choices choices) => choices.SeedbedRounds == 0 ? None : new SeedbedChoice(choices.SeedbedRounds, choices.RoundDepth);

    /// <summary>The need with what was chosen put in its place.</summary>
    internal SeedbedNeed Instead(SeedbedNeed worked, Depth loss)
    {
        var rounds = Rounds ?? worked.Rounds;
        return worked with { Rounds = rounds, PerRound = PerRound ?? Depth.FromMillimeters(Math.Max(loss.Millimeters / rounds, SeedbedNeed.LightestRound.Millimeters)) };
    }
}
