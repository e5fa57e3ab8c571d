using System.Globalization;
using Google.OrTools.Sat;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>What the solver found.</summary>
internal enum SolverAnswer
{
    /// <summary>A timetable.</summary>
    Found,

    /// <summary>Proof that there is none.</summary>
    None,

    /// <summary>Neither, within the work allowed.</summary>
    Open,

    /// <summary>The solver's native library cannot be had on this machine.</summary>
    Missing,
}

/// <summary>An answer with its timetable and the least cost any timetable can have.</summary>
internal sealed record SolverResult(SolverAnswer Answer, Placement? Placement, long Bound);

/// <summary>
/// OR-Tools CP-SAT, held to one worker, one seed and a counted amount of work instead of a clock, so that the same board gives
/// the same answer on every run.
/// </summary>
internal static class SolverSchedule
{
    /// <summary>Looks for a timetable, or with <paramref name="mayDrop"/> for the one that serves most.</summary>
    /// <param name="board">The board; without <paramref name="mayDrop"/> every job has a start.</param>
    /// <param name="hint">Where to begin.</param>
    /// <param name="budget">Work left for all calls; nothing is tried where it is spent.</param>
    /// <param name="most">Most work for this call.</param>
    /// <param name="closeEnough">Difference between cost and bound at which the search may stop, mL half-min.</param>
    /// <param name="mayDrop">True where sets may be left out.</param>
    internal static SolverResult Solve(Board board, Placement? hint, WorkBudget budget, double most, long closeEnough, bool mayDrop = false)
    {
        if (budget.Spent)
        {
            return new SolverResult(SolverAnswer.Open, null, 0);
        }

        try
        {
            var model = new SolverModel(board, mayDrop);
            if (hint is not null)
            {
                model.Hint(hint);
            }

            var solver = new CpSolver
            {
                StringParameters = string.Create(
                    CultureInfo.InvariantCulture,
                    $"num_workers:1 random_seed:1 max_deterministic_time:{budget.Share(most)} absolute_gap_limit:{closeEnough}"),
            };
            var answer = solver.Solve(model.Model);
            budget.Take(solver.Response!.DeterministicTime);
            return answer switch
            {
                CpSolverStatus.Optimal or CpSolverStatus.Feasible => new SolverResult(SolverAnswer.Found, model.Read(solver), (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6)),
                CpSolverStatus.Infeasible => new SolverResult(SolverAnswer.None, null, 0),
                CpSolverStatus.Unknown => new SolverResult(SolverAnswer.Open, null, 0),
                var status => throw new InvalidOperationException($"the solver refused the model: {status}"),
            };
        }
        catch (Exception missing) when (missing is DllNotFoundException or BadImageFormatException or TypeInitializationException or EntryPointNotFoundException)
        {
            return new SolverResult(SolverAnswer.Missing, null, 0);
        }
    }
}
