namespace Seedfall.Planning.Water;

/// <summary>One set's run in one round: whole minutes, split into cycles where the ground takes water slowly.</summary>
/// <param name="Set">The set.</param>
/// <param name="NetMm">Net depth asked of it, mm.</param>
/// <param name="Minutes">Minutes in each position, all cycles together.</param>
/// <param name="Cycles">Cycles it is split into.</param>
/// <param name="DepthMm">Mean depth put on, mm, uneven watering allowed for.</param>
internal sealed record FittedRun(SetFacts Set, double NetMm, int Minutes, int Cycles, double DepthMm)
{
    internal int PositionMinutes => Minutes * Set.Positions;

    internal double Liters => DepthMm * Set.AreaM2;
}

/// <summary>How a phase fits the hours.</summary>
/// <param name="Need">What the phase needs.</param>
/// <param name="Runs">Minutes by set.</param>
/// <param name="RoundMinutes">From the first set's start to the last one's end, moves and soaking included.</param>
/// <param name="Moves">Times a sprinkler is moved in one round.</param>
/// <param name="StartsByDay">Start minutes of the rounds that fit, Monday to Sunday.</param>
/// <param name="Evening">True where a round had to go into evening or night.</param>
/// <param name="ShortMinutes">Minutes a week for which there is no allowed time.</param>
internal sealed record PhaseFit(
    PhaseNeed Need,
    IReadOnlyList<FittedRun> Runs,
    int RoundMinutes,
    int Moves,
    IReadOnlyList<IReadOnlyList<int>> StartsByDay,
    bool Evening,
    double ShortMinutes)
{
    /// <summary>Rounds a week those minutes come to.</summary>
    internal double ShortRounds => ShortMinutes / RoundMinutes;

    /// <summary>True where a round of the seldom-watered phases has to be spread over several days.</summary>
    internal bool Spread => Need.DaysPerWeek < 7 && ShortMinutes <= 0.0 && StartsByDay.Count(starts => starts.Count > 0) < Need.DaysPerWeek;

    /// <summary>Fewest rounds that fit on any day of the week.</summary>
    internal int TightestRounds => StartsByDay.Min(starts => starts.Count);

    /// <summary>Starts of the tightest day on which any round fits; empty where none fits on any day.</summary>
    internal IReadOnlyList<int> Starts => StartsByDay.Where(starts => starts.Count > 0).MinBy(starts => starts.Count) ?? [];

    internal double LitersPerRound => Runs.Sum(run => run.Liters);
}
