namespace Seedfall.Planning.Water.Timetable;

/// <summary>What no timetable can beat, without looking for one.</summary>
internal static class FluidBound
{
    /// <summary>
    /// Least cost, mL half-min, by rounds: the larger of every job at its own best start, and of the round's water poured at full flow
    /// into the allowed minutes nearest the wish. Poured water lies nearer than runs can, but for a run across the wish, whose water is
    /// counted from its middle: at most the flow times half the longest run squared.
    /// </summary>
    internal static long Least(Board board) => board.Jobs.GroupBy(job => job.Round).Sum(round => Math.Max(Alone(board, round), Poured(board, round.Key, round)));

    private static long Alone(Board board, IEnumerable<Job> jobs) =>
        jobs.Sum(job => job.Starts.Min(span => board.Cost(job, board.Nearest(job, span))));

    private static long Poured(Board board, int round, IEnumerable<Job> jobs)
    {
        var (left, longest, flow) = (jobs.Sum(job => job.Water), (long)jobs.Max(job => job.Runs.Max(run => run.Minutes)), board.MostFlow);
        var wish = board.Problem.Rounds[round].Wish;
        var cost = 0L;
        foreach (var away in Minutes(board).Select(m => Math.Abs((2L * m) + 1 - (2L * wish))).Order())
        {
            var take = Math.Min(left, flow);
            cost += take * away;
            left -= take;
            if (left <= 0)
            {
                break;
            }
        }

        return Math.Max(0L, cost - (flow * longest * longest / 2) - 1);
    }

    private static IEnumerable<int> Minutes(Board board) => board.Problem.Allowed.SelectMany(span => Enumerable.Range(span.From, span.To - span.From));
}
