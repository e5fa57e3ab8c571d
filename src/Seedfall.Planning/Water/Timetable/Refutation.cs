using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>Plain reasons why there can be no timetable: each can be checked by hand.</summary>
internal static class Refutation
{
    /// <summary>The first reason found; null where none of them applies.</summary>
    internal static string? Of(Board board) => NoStart(board) ?? TooStrong(board) ?? TooMuchWater(board) ?? TooManyMinutes(board);

    private static string Names(Board board, Job job) => string.Join(", ", job.Runs.Select(run => board.Problem.Sets[run.Set].Name).Distinct());

    private static string Rounds(IReadOnlyList<Job> jobs) => jobs[0].Round == jobs[^1].Round
        ? FormattableString.Invariant($"Round {jobs[0].Round + 1} needs")
        : FormattableString.Invariant($"Rounds {jobs[0].Round + 1} to {jobs[^1].Round + 1} need");

    private static string Water(long milliliters) => FormattableString.Invariant($"{Volume.FromMilliliters(milliliters).Gallons:0} gal ({milliliters / 1000.0:0} L)");

    private static string Flow(long milliliters) => FormattableString.Invariant($"{FlowRate.FromLitersPerMinute(milliliters / 1000.0).GallonsPerMinute:0.0} gpm ({milliliters / 1000.0:0.##} L/min)");

    private static string? NoStart(Board board) => board.Jobs.FirstOrDefault(job => job.Starts.Count == 0) is { } job
        ? $"{Names(board, job)}: a run of {job.Length} minutes fits no allowed hours in its part of the day for round {job.Round + 1}{(job.Program is null || job.Trip ? " while somebody is there" : "")}."
        : null;

    private static string? TooStrong(Board board)
    {
        foreach (var job in board.Jobs)
        {
            var most = job.Runs.Max(run => run.Draw);
            if (board.Rigs[job.Rig].Taps.All(t => board.Taps[t].Flow < most) || board.Main < most)
            {
                return $"{Names(board, job)} draws {Flow(most)}, more than any tap it can stand on.";
            }
        }

        return null;
    }

    /// <summary>More water in a run of rounds than the flow gives in all the minutes their jobs could use.</summary>
    private static string? TooMuchWater(Board board)
    {
        foreach (var (jobs, taps) in Groups(board))
        {
            var minutes = Usable(jobs);
            var flow = taps.Sum(t => board.Taps[t].Flow);
            flow = Math.Min(flow, board.Main ?? flow);
            var water = jobs.Sum(job => job.Water);
            if (water > flow * minutes)
            {
                return $"{Rounds(jobs)} {Water(water)}; in {minutes} usable minutes the flow of {Flow(flow)} gives {Water(flow * minutes)}.";
            }

            if (taps.All(t => board.Taps[t].Stored is not null))
            {
                var given = taps.Sum(t => board.Taps[t].Stored!.Value + (board.Taps[t].Recovery * (jobs.Max(Latest) / WellBook.MinutesPerEntry)));
                if (water > given)
                {
                    return $"{Rounds(jobs)} {Water(water)}; the well gives {Water(given)} by the latest start.";
                }
            }
        }

        return null;
    }

    private static int Latest(Job job) => job.Starts[^1].To + job.Length;

    /// <summary>Jobs that can never run at once - one timer's, or trips of one pair of hands - and too few minutes for them.</summary>
    private static string? TooManyMinutes(Board board)
    {
        var timed = board.Jobs.Where(job => board.Rigs[job.Rig].Timer).GroupBy(job => (job.Rig, job.Round));
        if (timed.FirstOrDefault(g => g.Sum(job => job.Length) > Usable([.. g])) is { } group)
        {
            return $"Round {group.Key.Round + 1} of the timer with {Names(board, group.First())} takes {group.Sum(job => job.Length)} minutes one after another; {Usable([.. group])} are usable.";
        }

        return null;
    }

    /// <summary>Minutes that any of the jobs could run in.</summary>
    private static int Usable(IReadOnlyList<Job> jobs)
    {
        var (sum, end) = (0, 0);
        foreach (var span in jobs.SelectMany(job => job.Starts.Select(s => new MinuteSpan(s.From, s.To + job.Length))).OrderBy(s => s.From))
        {
            sum += Math.Max(0, span.To - Math.Max(span.From, end));
            end = Math.Max(end, span.To);
        }

        return sum;
    }

    /// <summary>Every run of rounds, over all taps and over each tap with the jobs that can stand nowhere else.</summary>
    private static IEnumerable<(IReadOnlyList<Job> Jobs, IReadOnlyList<int> Taps)> Groups(Board board)
    {
        int[] all = [.. Enumerable.Range(0, board.Taps.Count)];
        int[][] choices = all.Length == 1 ? [all] : [all, .. all.Select(t => (int[])[t])];
        for (var first = 0; first < board.Problem.Rounds.Count; first++)
        {
            for (var last = first; last < board.Problem.Rounds.Count; last++)
            {
                foreach (var taps in choices)
                {
                    Job[] jobs = [.. board.Jobs.Where(job => job.Round >= first && job.Round <= last && board.Rigs[job.Rig].Taps.All(taps.Contains)).OrderBy(job => job.Round)];
                    if (jobs.Length > 0)
                    {
                        yield return (jobs, taps);
                    }
                }
            }
        }
    }
}
