namespace Seedfall.Planning.Water.Timetable;

/// <summary>A run inside a job.</summary>
/// <param name="Set">Index of the set.</param>
/// <param name="Position">Position, 0-based.</param>
/// <param name="Cycle">Cycle, 0-based.</param>
/// <param name="Offset">Minutes after the job's start.</param>
/// <param name="Minutes">Minutes it runs.</param>
/// <param name="Draw">Flow, mL/min.</param>
internal sealed record JobRun(int Set, int Position, int Cycle, int Offset, int Minutes, long Draw)
{
    /// <summary>Water, mL.</summary>
    internal long Water => Draw * Minutes;
}

/// <summary>Runs that start together, back to back: one start of a timer's program, or one run opened by hand.</summary>
/// <param name="Index">Its place in the board.</param>
/// <param name="Rig">Index of the rig it belongs to.</param>
/// <param name="Round">Round, 0-based.</param>
/// <param name="Program">Program of its timer, 0-based; null by hand.</param>
/// <param name="Runs">Its runs.</param>
/// <param name="Trip">True where hands are needed in the minutes before it.</param>
/// <param name="Starts">Minutes it may start, last one included.</param>
internal sealed record Job(int Index, int Rig, int Round, int? Program, IReadOnlyList<JobRun> Runs, bool Trip, IReadOnlyList<MinuteSpan> Starts)
{
    internal int Length { get; } = Runs.Sum(run => run.Minutes);

    internal long Water { get; } = Runs.Sum(run => run.Water);
}

/// <summary>One job may start no sooner than so long after another's start.</summary>
internal readonly record struct JobLink(int Before, int After, int Gap);

/// <summary>Sets that stand on one tap together: a timer with all its sets, or one set by itself.</summary>
/// <param name="Taps">Indexes of the taps it can stand on.</param>
/// <param name="Timer">True where its jobs may never overlap.</param>
/// <param name="Sets">Indexes of its sets.</param>
internal sealed record Rig(IReadOnlyList<int> Taps, bool Timer, IReadOnlyList<int> Sets);

/// <summary>A tap in whole milliliters.</summary>
/// <param name="Flow">Usable flow, mL/min.</param>
/// <param name="Household">Household draws, mL/min.</param>
/// <param name="Stored">Water standing in the well, mL; null for none.</param>
/// <param name="Recovery">Water that comes back in a quarter of an hour, mL.</param>
internal sealed record BoardTap(long Flow, IReadOnlyList<(MinuteSpan When, long Draw)> Household, long? Stored, long Recovery);
