namespace Seedfall.Planning.Water;

/// <summary>How often rounds come.</summary>
/// <param name="Rounds">Rounds on a watering day.</param>
/// <param name="EveryDays">Days from one watering day to the next.</param>
internal readonly record struct RoundTurn(int Rounds, int EveryDays)
{
    /// <summary>Rounds a day on the mean.</summary>
    internal double PerDay => (double)Rounds / EveryDays;

    /// <summary>Watering days a week, rounded up.</summary>
    internal int DaysPerWeek => (7 + EveryDays - 1) / EveryDays;

    /// <summary>All that may be chosen in a phase, seldomest first.</summary>
    internal static IReadOnlyList<RoundTurn> Of(NeededPhase phase) =>
    [
        .. phase.EveryDays.SelectMany(days => Enumerable.Range(phase.LeastRounds, phase.MostRounds - phase.LeastRounds + 1).Select(rounds => new RoundTurn(rounds, days))).OrderBy(turn => turn.PerDay),
    ];
}
