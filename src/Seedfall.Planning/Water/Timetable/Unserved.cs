namespace Seedfall.Planning.Water.Timetable;

/// <summary>Which sets a timetable that leaves some out would leave out.</summary>
internal static class Unserved
{
    private const double Work = 0.03;

    /// <summary>Those the best partial timetable found leaves out: least water lost.</summary>
    internal static IReadOnlyList<UnservedSet> Of(TimetableProblem problem)
    {
        if (TimerLimits.Of(problem) is not null)
        {
            return [.. problem.Timers.SelectMany(timer => TimerLimits.Of(problem with { Timers = [timer] }) is null ? [] : TimerLimits.Sets(problem, timer)).Select(s => new UnservedSet(s.Set.Name, s.Set.PatchIds))];
        }

        var board = Board.Of(problem, TimerLimits.Choices(problem)[0]);
        var listed = ListSchedule.Best(board);
        var solved = SolverSchedule.Solve(board, listed, new WorkBudget(Work), Work, 0, mayDrop: true).Placement;
        var best = solved is not null && Lost(board, solved) <= Lost(board, listed) ? solved : listed;
        return best.Unserved(board);
    }

    private static long Lost(Board board, Placement placement) => board.Jobs.Where(job => placement.Starts[job.Index] == Placement.Nowhere).Sum(job => job.Water);
}
