namespace Seedfall.Planning.Water.Timetable;

/// <summary>What each minute already carries: flow by tap and on the main, hands, timers, and what the wells have given.</summary>
internal sealed class Occupancy
{
    private readonly Board board;

    private readonly long[][] tapFlow;

    private readonly long[] mainFlow;

    private readonly bool[] hands;

    private readonly bool[]?[] timers;

    private readonly List<(int Start, long Water)>[] drawn;

    internal Occupancy(Board board)
    {
        this.board = board;
        tapFlow = [.. board.Taps.Select(_ => new long[board.Horizon])];
        mainFlow = new long[board.Horizon];
        hands = new bool[board.Horizon];
        timers = [.. board.Rigs.Select(rig => rig.Timer ? new bool[board.Horizon] : null)];
        drawn = [.. board.Taps.Select(_ => new List<(int, long)>())];
        for (var t = 0; t < board.Taps.Count; t++)
        {
            foreach (var (when, draw) in board.Taps[t].Household)
            {
                for (var m = Math.Max(0, when.From); m < Math.Min(board.Horizon, when.To); m++)
                {
                    tapFlow[t][m] += draw;
                    mainFlow[m] += draw;
                }

                drawn[t].AddRange(WellBook.Household(when, draw));
            }
        }
    }

    /// <summary>True where the job can start then on that tap beside all that is placed.</summary>
    internal bool Fits(Job job, int start, int tap)
    {
        if (job.Trip && HandsBusy(start))
        {
            return false;
        }

        var timer = timers[job.Rig];
        foreach (var run in job.Runs)
        {
            for (var m = start + run.Offset; m < start + run.Offset + run.Minutes; m++)
            {
                if (tapFlow[tap][m] + run.Draw > board.Taps[tap].Flow || (board.Main is { } main && mainFlow[m] + run.Draw > main) || (timer is not null && timer[m]))
                {
                    return false;
                }
            }
        }

        return board.Taps[tap].Stored is not { } stored || WellBook.Holds(stored, board.Taps[tap].Recovery, [.. drawn[tap], .. Draws(job, start)]);
    }

    internal void Take(Job job, int start, int tap) => Mark(job, start, tap, 1);

    /// <summary>Takes a placed job back.</summary>
    internal void Give(Job job, int start, int tap) => Mark(job, start, tap, -1);

    private static IEnumerable<(int Start, long Water)> Draws(Job job, int start) => job.Runs.Select(run => (start + run.Offset, run.Water));

    private bool HandsBusy(int start)
    {
        for (var m = start - board.Problem.MinutesPerTrip; m < start; m++)
        {
            if (hands[m])
            {
                return true;
            }
        }

        return false;
    }

    private void Mark(Job job, int start, int tap, int sign)
    {
        foreach (var run in job.Runs)
        {
            for (var m = start + run.Offset; m < start + run.Offset + run.Minutes; m++)
            {
                tapFlow[tap][m] += sign * run.Draw;
                mainFlow[m] += sign * run.Draw;
            }
        }

        for (var m = start - board.Problem.MinutesPerTrip; job.Trip && m < start; m++)
        {
            hands[m] = sign > 0;
        }

        if (timers[job.Rig] is { } timer)
        {
            Array.Fill(timer, sign > 0, start, job.Length);
        }

        foreach (var draw in Draws(job, start))
        {
            if (sign > 0)
            {
                drawn[tap].Add(draw);
            }
            else
            {
                drawn[tap].Remove(draw);
            }
        }
    }
}
