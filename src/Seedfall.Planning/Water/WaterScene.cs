using Seedfall.Planning.Water.Supply;

namespace Seedfall.Planning.Water;

/// <summary>Everything the proof of one way of watering depends on; remedies are the same scene with one thing changed.</summary>
/// <param name="Sets">Sprinkler sets.</param>
/// <param name="Supply">Hours and permit as entered; null where nothing is known.</param>
/// <param name="Lines">Taps, main and timers.</param>
/// <param name="Ground">What the need was worked out from.</param>
/// <param name="Needs">What each phase needs.</param>
internal sealed record WaterScene(IReadOnlyList<SetFacts> Sets, WaterSupply? Supply, SupplyLines Lines, NeedScene Ground, IReadOnlyList<PhaseNeed> Needs)
{
    /// <summary>Parts the lawn is seeded in, one after another, where its sets are split by position.</summary>
    internal int Stages { get; init; } = 1;

    /// <summary>Minutes to move a sprinkler; 0 where one stands in every position.</summary>
    internal int MinutesPerMove { get; init; } = UsualMinutesPerMove;

    /// <summary>Minutes to shut off, carry, set and open again. Assumed.</summary>
    internal const int UsualMinutesPerMove = 3;

    /// <summary>True where a timer opens at least the sets that are not held by hand.</summary>
    internal bool Timed => Lines.Timed;

    /// <summary>The same on other ground or dates, its need worked out anew.</summary>
    internal WaterScene On(NeedScene ground) => this with { Ground = ground, Needs = LawnNeeds.Of(ground) };

    /// <summary>One more tap as strong as the first.</summary>
    internal WaterScene WithTap() => this with { Lines = Lines.WithTap() };
}
