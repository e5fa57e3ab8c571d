namespace Seedfall.Planning.Water.Timetable;

/// <summary>A start for each job and a tap for each rig.</summary>
/// <param name="Starts">Start minute by job; -1 where it found none.</param>
/// <param name="Taps">Index of the tap by rig.</param>
internal sealed record Placement(int[] Starts, int[] Taps)
{
    internal const int Nowhere = -1;

    internal bool Whole => Array.TrueForAll(Starts, start => start != Nowhere);

    /// <summary>Jobs that found a start.</summary>
    internal int Placed => Starts.Count(start => start != Nowhere);

    internal long Cost(Board board) => board.Jobs.Sum(job => Starts[job.Index] == Nowhere ? 0 : board.Cost(job, Starts[job.Index]));

    /// <summary>Sets of which some run found no start.</summary>
    internal IReadOnlyList<UnservedSet> Unserved(Board board) =>
    [
        .. board.Jobs.Where(job => Starts[job.Index] == Nowhere).SelectMany(job => job.Runs).Select(run => run.Set).Distinct().Order()
            .Select(set => new UnservedSet(board.Problem.Sets[set].Name, board.Problem.Sets[set].PatchIds)),
    ];
}
