using System.Globalization;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>Whether a problem has a timetable, and which.</summary>
/// <param name="Board">The board it was decided on; null where the timers already forbid it.</param>
/// <param name="Placement">The timetable; null where none was found.</param>
/// <param name="Bound">Least cost of any timetable on that board, mL half-min.</param>
/// <param name="Refuted">True where there is none.</param>
/// <param name="Reason">Why there is none, or what was tried.</param>
/// <param name="BySolver">True where the solver was called.</param>
internal sealed record Decision(Board? Board, Placement? Placement, long Bound, bool Refuted, string Reason, bool BySolver)
{
    /// <summary>Tries the fewest programs first, then more, up to all the timers have.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="budget">Work left for the solver.</param>
    /// <param name="most">Most work for one call of it.</param>
    /// <param name="wanted">True where a timetable near the wishes is wanted, not only that there is one.</param>
    internal static Decision Of(TimetableProblem problem, WorkBudget budget, double most, bool wanted)
    {
        if (TimerLimits.Of(problem) is { } broken)
        {
            return new Decision(null, null, 0, true, broken, false);
        }

        var choices = TimerLimits.Choices(problem);
        Decision? last = null;
        var open = false;
        foreach (var programs in choices)
        {
            last = On(Board.Of(problem, programs), budget, most / choices.Count, wanted);
            if (last.Placement is not null)
            {
                return last;
            }

            open |= !last.Refuted;
        }

        return open && last!.Refuted ? last with { Refuted = false, Reason = "Some ways of using the timers' programs were neither found to fit nor refuted." } : last!;
    }

    private static Decision On(Board board, WorkBudget budget, double most, bool wanted)
    {
        if (Refutation.Of(board) is { } reason)
        {
            return new Decision(board, null, 0, true, reason, false);
        }

        var bound = FluidBound.Least(board);
        var listed = ListSchedule.Best(board);
        var closeEnough = board.Jobs.Sum(job => job.Water) * 2 * TimetablePlanning.CloseEnoughMinutes;
        if (listed.Whole && (!wanted || listed.Cost(board) - bound <= closeEnough))
        {
            return new Decision(board, listed, bound, false, "", false);
        }

        if (budget.Spent)
        {
            return listed.Whole
                ? new Decision(board, listed, bound, false, "", false)
                : new Decision(board, null, 0, false, $"Simple rules place {listed.Placed} of {board.Jobs.Count} runs; the work allowed to the solver was spent on the days and phases before.", false);
        }

        var solved = SolverSchedule.Solve(board, listed, budget, most, closeEnough);
        var better = solved.Placement is { } placement && (!listed.Whole || placement.Cost(board) < listed.Cost(board)) ? placement : listed;
        return solved.Answer switch
        {
            SolverAnswer.None when !listed.Whole => new Decision(board, null, 0, true, "The solver tried every start and proved that no timetable keeps to all limits at once.", true),
            _ when better.Whole => new Decision(board, better, Math.Max(bound, solved.Bound), false, "", solved.Answer != SolverAnswer.Missing),
            SolverAnswer.Missing => new Decision(board, null, 0, false, $"Simple rules place {listed.Placed} of {board.Jobs.Count} runs; the solver cannot be loaded on this machine.", false),
            _ => new Decision(board, null, 0, false, string.Create(CultureInfo.InvariantCulture, $"Simple rules place {listed.Placed} of {board.Jobs.Count} runs; the solver neither found a timetable nor refuted one within its allowed work."), true),
        };
    }
}
