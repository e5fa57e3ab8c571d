namespace Seedfall.Planning.Water.Timetable;

/// <summary>Places jobs one after another by simple rules: quick, often enough, never proof that there is no timetable.</summary>
internal static class ListSchedule
{
    private const int SettlingPasses = 6;

    /// <summary>The best of the rules: most jobs placed, then nearest the wishes.</summary>
    internal static Placement Best(Board board)
    {
        Placement? best = null;
        foreach (var nearWish in (bool[])[true, false])
        {
            foreach (var order in Orders(board))
            {
                var tried = Place(board, order, nearWish);
                if (best is null || tried.Placed > best.Placed || (tried.Placed == best.Placed && tried.Cost(board) < best.Cost(board)))
                {
                    best = tried;
                }
            }
        }

        return best!;
    }

    /// <summary>Orders in which a round's chains are placed: most water first, as entered, least room first.</summary>
    private static IEnumerable<Func<Job[], long>> Orders(Board board)
    {
        yield return chain => -chain.Sum(job => job.Water);
        yield return chain => chain[0].Index;
        yield return chain => chain.Sum(job => job.Starts.Sum(s => (long)(s.To - s.From + 1))) / chain.Length;
        yield return chain => -chain.Sum(job => (long)job.Length);
    }

    private static Placement Place(Board board, Func<Job[], long> order, bool nearWish)
    {
        var taps = TapChoice(board);
        var starts = new int[board.Jobs.Count];
        Array.Fill(starts, Placement.Nowhere);
        var occupancy = new Occupancy(board);
        var before = board.Links.ToLookup(link => link.After);
        var lost = new HashSet<(int Rig, int? Program)>();
        foreach (var round in board.Jobs.GroupBy(job => job.Round).OrderBy(g => g.Key))
        {
            foreach (var chain in round.GroupBy(job => (job.Rig, job.Program)).Select(g => g.ToArray()).OrderBy(order).ThenBy(chain => chain[0].Index))
            {
                var key = (chain[0].Rig, chain[0].Program);
                foreach (var job in lost.Contains(key) ? [] : chain)
                {
                    var tap = taps[job.Rig];
                    var earliest = before[job.Index].Select(link => starts[link.Before] + link.Gap).DefaultIfEmpty(0).Max();
                    if (Start(board, occupancy, job, tap, earliest, nearWish) is { } start)
                    {
                        starts[job.Index] = start;
                        occupancy.Take(job, start, tap);
                        continue;
                    }

                    lost.Add(key);
                    foreach (var placed in board.Jobs.Where(j => (j.Rig, j.Program) == key && starts[j.Index] != Placement.Nowhere))
                    {
                        occupancy.Give(placed, starts[placed.Index], tap);
                        starts[placed.Index] = Placement.Nowhere;
                    }

                    break;
                }
            }
        }

        Settle(board, occupancy, starts, taps);
        return new Placement(starts, taps);
    }

    /// <summary>Takes up each job in turn, farthest from its wish first, and sets it down where it lies nearest among all the others.</summary>
    private static void Settle(Board board, Occupancy occupancy, int[] starts, int[] taps)
    {
        var (before, after) = (board.Links.ToLookup(link => link.After), board.Links.ToLookup(link => link.Before));
        for (var (pass, moved) = (0, true); moved && pass < SettlingPasses; pass++)
        {
            moved = false;
            foreach (var job in board.Jobs.Where(job => starts[job.Index] != Placement.Nowhere).OrderByDescending(job => board.Cost(job, starts[job.Index])).ThenBy(job => job.Index).ToArray())
            {
                var (old, tap) = (starts[job.Index], taps[job.Rig]);
                occupancy.Give(job, old, tap);
                var earliest = before[job.Index].Select(link => starts[link.Before] + link.Gap).DefaultIfEmpty(0).Max();
                var latest = after[job.Index].Select(link => starts[link.After] - link.Gap).DefaultIfEmpty(int.MaxValue).Min();
                starts[job.Index] = Start(board, occupancy, job, tap, earliest, nearWish: true, latest) ?? old;
                occupancy.Take(job, starts[job.Index], tap);
                moved |= starts[job.Index] != old;
            }
        }
    }

    /// <summary>Rigs by water, each to the tap it fills least.</summary>
    private static int[] TapChoice(Board board)
    {
        var (load, choice) = (new double[board.Taps.Count], new int[board.Rigs.Count]);
        var water = board.Jobs.ToLookup(job => job.Rig, job => job.Water);
        foreach (var rig in Enumerable.Range(0, board.Rigs.Count).OrderBy(r => board.Rigs[r].Taps.Count).ThenByDescending(r => water[r].Sum()).ThenBy(r => r))
        {
            var most = board.Jobs.Where(job => job.Rig == rig).SelectMany(job => job.Runs).Max(run => run.Draw);
            var able = board.Rigs[rig].Taps.Where(t => board.Taps[t].Flow >= most).DefaultIfEmpty(board.Rigs[rig].Taps[0]);
            var tap = able.MinBy(t => (load[t] + water[rig].Sum()) / Math.Max(1, board.Taps[t].Flow));
            load[tap] += water[rig].Sum();
            choice[rig] = tap;
        }

        return choice;
    }

    /// <summary>The first start that fits, or the one nearest the wish: outwards from the best start of each span, first to fit on either side.</summary>
    private static int? Start(Board board, Occupancy occupancy, Job job, int tap, int earliest, bool nearWish, int latest = int.MaxValue)
    {
        int? best = null;
        foreach (var span in job.Starts.Select(s => new MinuteSpan(Math.Max(s.From, earliest), Math.Min(s.To, latest))).Where(s => s.From <= s.To))
        {
            var middle = nearWish ? board.Nearest(job, span) : span.From;
            foreach (var (from, step) in ((int, int)[])[(middle, 1), (middle - 1, -1)])
            {
                for (var start = from; start >= span.From && start <= span.To && (best is null || board.Cost(job, start) < board.Cost(job, best.Value)); start += step)
                {
                    if (occupancy.Fits(job, start, tap))
                    {
                        best = start;
                        break;
                    }
                }
            }

            if (!nearWish && best is not null)
            {
                return best;
            }
        }

        return best;
    }
}
