using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Tests.Water.Timetable;

/// <summary>Tries every start of every run: one tap, still sets, each on a timer of its own or opened by hand.</summary>
internal sealed class BruteForce
{
    private sealed record Run(int Set, int Round, int Cycle);

    private readonly TimetableProblem problem;

    private readonly Run[] runs;

    private readonly int[] starts;

    private long best = long.MaxValue;

    private BruteForce(TimetableProblem problem)
    {
        this.problem = problem;
        runs = [.. problem.Sets.SelectMany((set, s) => Enumerable.Range(0, problem.Rounds.Count).SelectMany(r => Enumerable.Range(0, set.Cycles).Select(c => new Run(s, r, c))))];
        starts = new int[runs.Length];
    }

    /// <summary>Least sum of water (mL) times half-minutes from the wish; null where no timetable exists.</summary>
    internal static long? Least(TimetableProblem problem)
    {
        var force = new BruteForce(problem);
        force.Try(0, 0);
        return force.best == long.MaxValue ? null : force.best;
    }

    private void Try(int k, long cost)
    {
        if (cost + Enumerable.Range(k, runs.Length - k).Sum(LeastOf) >= best)
        {
            return;
        }

        if (k == runs.Length)
        {
            best = cost;
            return;
        }

        var part = problem.Rounds[runs[k].Round];
        for (var start = part.From; start <= part.To; start++)
        {
            starts[k] = start;
            if (Holds(k))
            {
                Try(k + 1, cost + Cost(k, start));
            }
        }
    }

    private readonly Dictionary<int, long> leastOf = [];

    private long LeastOf(int k)
    {
        if (!leastOf.TryGetValue(k, out var least))
        {
            var part = problem.Rounds[runs[k].Round];
            leastOf[k] = least = Enumerable.Range(part.From, part.To - part.From + 1).Min(start => Cost(k, start));
        }

        return least;
    }

    private long Cost(int k, int start)
    {
        var set = problem.Sets[runs[k].Set];
        var milliliters = (long)Math.Round(set.Flow.LitersPerMinute * 1000.0) * set.CycleMinutes;
        return milliliters * Math.Abs((2 * start) + set.CycleMinutes - (2 * problem.Rounds[runs[k].Round].Wish));
    }

    private bool Holds(int k)
    {
        var (set, start) = (problem.Sets[runs[k].Set], starts[k]);
        var end = start + set.CycleMinutes;
        if (!problem.Allowed.Any(a => a.From <= start && end <= a.To))
        {
            return false;
        }

        var byHand = set.Timer is null;
        if (byHand && !problem.Hands.Any(h => h.From <= start - problem.MinutesPerTrip && end <= h.To))
        {
            return false;
        }

        for (var j = 0; j < k; j++)
        {
            var other = problem.Sets[runs[j].Set];
            if (runs[j].Set == runs[k].Set)
            {
                var gap = runs[j].Round != runs[k].Round ? set.CycleMinutes + problem.GapMinutes : Math.Max(set.CycleMinutes, set.SoakMinutes);
                gap = Math.Max(gap, byHand ? set.CycleMinutes + problem.MinutesPerTrip : 0);
                if (j == k - 1 && start < starts[j] + gap)
                {
                    return false;
                }
            }
            else if (byHand && other.Timer is null && Math.Abs(start - starts[j]) < problem.MinutesPerTrip)
            {
                return false;
            }
        }

        for (var m = start; m < end; m++)
        {
            var drawn = 0.0;
            for (var j = 0; j <= k; j++)
            {
                drawn += starts[j] <= m && m < starts[j] + problem.Sets[runs[j].Set].CycleMinutes ? problem.Sets[runs[j].Set].Flow.LitersPerMinute : 0.0;
            }

            if (drawn > problem.Taps[0].Flow.LitersPerMinute + 1e-9)
            {
                return false;
            }
        }

        return true;
    }
}
