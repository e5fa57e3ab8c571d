using System.Globalization;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>How much of a proof is asked.</summary>
public enum ProofDetail
{
    /// <summary>Whether simple rules find a timetable; it need not lie near the wishes, and the solver is not asked.</summary>
    Existence,

    /// <summary>A timetable near the wishes, or that there is none.</summary>
    Times,

    /// <summary>The same; and where there is none what binds, by how much, and which sets go without. Costs many times the answer alone.</summary>
    Explained,
}

/// <summary>Proves that all sets fit the hours and the flow, or that they cannot.</summary>
public static class TimetablePlanning
{
    /// <summary>Work for the search, in the solver's deterministic units.</summary>
    internal const double Work = 0.15;

    /// <summary>Mean minutes from the best possible that nobody would tell apart. Assumed.</summary>
    internal const int CloseEnoughMinutes = 5;

    /// <summary>
    /// A timetable with its distance from the wishes and the bound on it, or the limits that forbid one, or the plain statement that
    /// neither was shown. Depends on nothing but the problem.
    /// </summary>
    /// <param name="problem">Sets, taps, hours, hands and timers; throws where it cannot be meant.</param>
    public static TimetableProof Prove(TimetableProblem problem) => Prove(problem, ProofDetail.Explained, null);

    /// <summary>The same with so much asked and so much work left for it.</summary>
    internal static TimetableProof Prove(TimetableProblem problem, ProofDetail detail, WorkBudget? budget)
    {
        TimetableDoor.Check(problem);
        var explain = detail == ProofDetail.Explained;
        var solver = detail == ProofDetail.Existence ? WorkBudget.None : budget ?? new WorkBudget(Work);
        var decided = Decision.Of(problem, solver, Work, wanted: detail != ProofDetail.Existence);
        return decided switch
        {
            { Placement: { } placement } => Found(decided.Board!, placement, decided.Bound, decided.BySolver),
            { Refuted: true } => new TimetableProof.Impossible(decided.Reason, explain ? Loosening.Of(problem) : [], explain ? Unserved.Of(problem) : []),
            _ => new TimetableProof.NotProven(decided.Reason, explain ? Unserved.Of(problem) : []),
        };
    }

    private static TimetableProof.Found Found(Board board, Placement placement, long bound, bool bySolver)
    {
        var water = board.Jobs.Sum(job => job.Water);
        var cost = placement.Cost(board);
        return new TimetableProof.Found(
            Runs(board, placement),
            board.Jobs.Count(job => job.Trip),
            Away("water.timetable.away", "Mean distance of the water from its wished minute", cost, water, "of this timetable"),
            Away("water.timetable.bound", "No timetable comes nearer than", Math.Min(bound, cost), water, bySolver ? "the solver's bound, or poured water's" : "poured water's bound"),
            bySolver);
    }

    private static Figure Away(string id, string label, long cost, long water, string note) => new(id, label, QuantityKind.Minutes, cost / 2.0 / water, new Working(
        "sum(V |m - w|) / sum(V)",
        [new("V", "water of all runs", water / 1000.0, "L"), new("V |m - w|", "water times minutes from mid-run to the round's wish", cost / 2000.0, "L min")],
        "earliness and tardiness about a wished time; this plan's timetable",
        Sureness.Computed,
        string.Create(CultureInfo.InvariantCulture, $"{note}; {CloseEnoughMinutes} min on the mean are taken as alike")));

    private static IReadOnlyList<TimetableRun> Runs(Board board, Placement placement) =>
    [
        .. board.Jobs.SelectMany(job => job.Runs, (job, run) => (job, run, run.Offset + placement.Starts[job.Index]))
            .OrderBy(r => r.Item3).ThenBy(r => r.run.Set).ThenBy(r => r.run.Position)
            .Select(r => new TimetableRun(
                board.Problem.Sets[r.run.Set].Name,
                board.Problem.Taps[placement.Taps[r.job.Rig]].Name,
                r.job.Round + 1,
                r.run.Position + 1,
                r.run.Cycle + 1,
                r.Item3,
                r.run.Minutes,
                r.job.Program + 1,
                r.job.Trip && r.run.Offset == 0)),
    ];
}
