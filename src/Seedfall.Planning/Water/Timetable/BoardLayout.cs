namespace Seedfall.Planning.Water.Timetable;

/// <summary>Turns sets and programs into jobs and links.</summary>
internal sealed class BoardLayout(TimetableProblem problem)
{
    private readonly List<Job> jobs = [];

    private readonly List<JobLink> links = [];

    private readonly List<Rig> rigs = [];

    internal IReadOnlyList<Job> Jobs => jobs;

    internal IReadOnlyList<JobLink> Links => links;

    internal IReadOnlyList<Rig> Rigs => rigs;

    /// <summary>A set opened by hand: every cycle in every position is a job, and one trip.</summary>
    internal void AddByHand(int index, TimetableSet set)
    {
        rigs.Add(new Rig(TapsOf(set), false, [index]));
        Chain(set, [index], [set.CycleMinutes], set.Cycles, set.SoakMinutes, program: null);
    }

    /// <summary>A timer's programs: every start of a program is a job; moved sets need a hand before each.</summary>
    internal void AddTimer(IReadOnlyList<(int Index, TimetableSet Set)> sets, IReadOnlyList<TimerProgram> programs)
    {
        rigs.Add(new Rig(TapsOf(sets[0].Set), true, [.. sets.Select(s => s.Index)]));
        for (var p = 0; p < programs.Count; p++)
        {
            var program = programs[p];
            Chain(problem.Sets[program.Sets[0]], program.Sets, program.Minutes, program.Cycles, program.SoakMinutes, p);
        }
    }

    private void Chain(TimetableSet first, IReadOnlyList<int> sets, IReadOnlyList<int> minutes, int cycles, int soak, int? program)
    {
        int? last = null;
        var length = minutes.Sum();
        var before = new int?[first.Positions];
        for (var round = 0; round < problem.Rounds.Count; round++)
        {
            for (var cycle = 0; cycle < cycles; cycle++)
            {
                for (var position = 0; position < first.Positions; position++)
                {
                    var moved = first.Positions > 1;
                    var trip = program is null || (moved && last is not null);
                    var job = Add(sets, minutes, position, cycle, round, program, trip);
                    if (last is { } previous)
                    {
                        links.Add(new JobLink(previous, job, length + (moved || program is null ? problem.MinutesPerTrip : 0)));
                    }

                    if (before[position] is { } same)
                    {
                        links.Add(new JobLink(same, job, cycle == 0 ? length + problem.GapMinutes : Math.Max(length, soak)));
                    }

                    (last, before[position]) = (job, job);
                }
            }
        }
    }

    private int Add(IReadOnlyList<int> sets, IReadOnlyList<int> minutes, int position, int cycle, int round, int? program, bool trip)
    {
        var runs = new List<JobRun>();
        var offset = 0;
        for (var k = 0; k < sets.Count; k++)
        {
            runs.Add(new JobRun(sets[k], position, cycle, offset, minutes[k], Board.Whole(problem.Sets[sets[k]].Flow)));
            offset += minutes[k];
        }

        jobs.Add(new Job(jobs.Count, rigs.Count - 1, round, program, runs, trip, Starts(problem.Rounds[round], offset, program is null, trip)));
        return jobs.Count - 1;
    }

    /// <summary>
    /// Starts that lie in the round's part and keep the whole job inside one allowed span, with a hand there for the trip and, where no
    /// timer shuts it off, until it ends.
    /// </summary>
    private IReadOnlyList<MinuteSpan> Starts(RoundPart part, int length, bool byHand, bool trip)
    {
        var starts = problem.Allowed.Select(span => new MinuteSpan(Math.Max(span.From, part.From), Math.Min(span.To - length, part.To)));
        if (byHand || trip)
        {
            var stays = byHand ? length : 0;
            starts = starts.SelectMany(_ => problem.Hands, (start, there) => new MinuteSpan(
                Math.Max(start.From, there.From + (trip ? problem.MinutesPerTrip : 0)), Math.Min(start.To, there.To - stays)));
        }

        return [.. starts.Where(s => s.From <= s.To).OrderBy(s => s.From)];
    }

    private IReadOnlyList<int> TapsOf(TimetableSet set) =>
        [.. Enumerable.Range(0, problem.Taps.Count).Where(t => set.Taps.Count == 0 || set.Taps.Contains(problem.Taps[t].Name))];
}
