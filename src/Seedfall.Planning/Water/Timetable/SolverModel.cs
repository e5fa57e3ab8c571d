using Google.OrTools.Sat;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>A board as constraints for the solver.</summary>
internal sealed class SolverModel
{
    private readonly Board board;

    private readonly IntVar?[] starts;

    private readonly (int Rig, int? Program)[] chains;

    private readonly Dictionary<(int Rig, int? Program), BoolVar> served = [];

    private readonly Dictionary<(int Rig, int Tap), BoolVar> stands = [];

    private readonly List<IntervalVar> trips = [];

    private readonly List<(IntervalVar Interval, long Draw)>[] draws;

    private readonly List<(Job Job, int Offset, IntVar At, long Water, ILiteral? On)>[] wellDraws;

    /// <param name="board">The board.</param>
    /// <param name="mayDrop">True where whole sets may be left out, as few and small as can be; else all must run, near their wishes.</param>
    internal SolverModel(Board board, bool mayDrop)
    {
        this.board = board;
        starts = new IntVar?[board.Jobs.Count];
        chains = [.. board.Jobs.Select(job => (job.Rig, job.Program)).Distinct()];
        draws = [.. board.Taps.Select(_ => new List<(IntervalVar, long)>())];
        wellDraws = [.. board.Taps.Select(_ => new List<(Job, int, IntVar, long, ILiteral?)>())];
        for (var rig = 0; rig < board.Rigs.Count; rig++)
        {
            Stand(rig);
        }

        foreach (var chain in chains)
        {
            AddChain(chain, mayDrop);
        }

        AddFlows();
        AddWells();
        Model.AddNoOverlap(trips);
        AddGoal(mayDrop);
    }

    internal CpModel Model { get; } = new();

    /// <summary>Starts the search from a placement.</summary>
    internal void Hint(Placement placement)
    {
        foreach (var job in board.Jobs.Where(job => starts[job.Index] is not null && placement.Starts[job.Index] != Placement.Nowhere))
        {
            Model.AddHint(starts[job.Index]!, placement.Starts[job.Index]);
        }

        foreach (var ((rig, tap), on) in stands)
        {
            Model.AddHint(on, placement.Taps[rig] == tap);
        }
    }

    internal Placement Read(CpSolver solver)
    {
        bool Runs(Job job) => starts[job.Index] is not null && (!served.TryGetValue((job.Rig, job.Program), out var on) || solver.BooleanValue(on));
        return new Placement(
            [.. board.Jobs.Select(job => Runs(job) ? (int)solver.Value(starts[job.Index]!) : Placement.Nowhere)],
            [.. board.Rigs.Select((rig, index) => rig.Taps.Count == 1 ? rig.Taps[0] : rig.Taps.First(tap => solver.BooleanValue(stands[(index, tap)])))]);
    }

    private void Stand(int rig)
    {
        if (board.Rigs[rig].Taps.Count > 1)
        {
            foreach (var tap in board.Rigs[rig].Taps)
            {
                stands[(rig, tap)] = Model.NewBoolVar("");
            }

            Model.AddExactlyOne(board.Rigs[rig].Taps.Select(tap => (ILiteral)stands[(rig, tap)]));
        }
    }

    private void AddChain((int Rig, int? Program) chain, bool mayDrop)
    {
        Job[] jobs = [.. board.Jobs.Where(job => (job.Rig, job.Program) == chain)];
        if (jobs.Any(job => job.Starts.Count == 0))
        {
            return;
        }

        BoolVar? on = mayDrop ? served[chain] = Model.NewBoolVar("") : null;
        foreach (var job in jobs)
        {
            starts[job.Index] = Model.NewIntVarFromDomain(Google.OrTools.Util.Domain.FromIntervals([.. job.Starts.Select(s => (long[])[s.From, s.To])]), "");
            if (job.Trip)
            {
                trips.Add(Interval(starts[job.Index]!, -board.Problem.MinutesPerTrip, board.Problem.MinutesPerTrip, on));
            }
        }

        var mine = jobs.Select(job => job.Index).ToHashSet();
        foreach (var link in board.Links.Where(link => mine.Contains(link.After)))
        {
            var constraint = Model.Add(starts[link.After]! >= starts[link.Before]! + link.Gap);
            if (on is not null)
            {
                constraint.OnlyEnforceIf(on);
            }
        }

        foreach (var tap in board.Rigs[chain.Rig].Taps)
        {
            var here = Presence(chain.Rig, tap, on);
            foreach (var job in jobs)
            {
                foreach (var run in job.Runs)
                {
                    draws[tap].Add((Interval(starts[job.Index]!, run.Offset, run.Minutes, here), run.Draw));
                    wellDraws[tap].Add((job, run.Offset, starts[job.Index]!, run.Water, here));
                }
            }
        }
    }

    /// <summary>The literal that is true where a chain runs on a tap; null where it always does.</summary>
    private ILiteral? Presence(int rig, int tap, BoolVar? on)
    {
        if (!stands.TryGetValue((rig, tap), out var stand) || on is null)
        {
            return (ILiteral?)stand ?? on;
        }

        var both = Model.NewBoolVar("");
        Model.AddMinEquality(both, [on, stand]);
        return both;
    }

    private IntervalVar Interval(IntVar start, int offset, int minutes, ILiteral? on) => on is null
        ? Model.NewFixedSizeIntervalVar(start + offset, minutes, "")
        : Model.NewOptionalFixedSizeIntervalVar(start + offset, minutes, on, "");

    private void AddFlows()
    {
        var main = board.Main is { } most ? Model.AddCumulative(most) : null;
        for (var t = 0; t < board.Taps.Count; t++)
        {
            var flow = Model.AddCumulative(Math.Max(0, board.Taps[t].Flow));
            foreach (var (interval, draw) in draws[t].Concat(board.Taps[t].Household.Select(use => (Model.NewFixedSizeIntervalVar(Model.NewConstant(use.When.From), use.When.To - use.When.From, ""), use.Draw))))
            {
                flow.AddDemand(interval, draw);
                main?.AddDemand(interval, draw);
            }
        }

        for (var rig = 0; rig < board.Rigs.Count; rig++)
        {
            if (board.Rigs[rig].Timer)
            {
                Model.AddNoOverlap(board.Jobs.Where(job => job.Rig == rig && starts[job.Index] is not null)
                    .Select(job => Interval(starts[job.Index]!, 0, job.Length, served.GetValueOrDefault((job.Rig, job.Program)))));
            }
        }
    }

    /// <summary>The well's books as <see cref="WellBook"/> keeps them.</summary>
    private void AddWells()
    {
        for (var t = 0; t < board.Taps.Count; t++)
        {
            if (board.Taps[t].Stored is not { } stored)
            {
                continue;
            }

            var household = board.Taps[t].Household.SelectMany(use => WellBook.Household(use.When, use.Draw)).ToLookup(d => d.Start / WellBook.MinutesPerEntry, d => d.Water);
            var inEntry = wellDraws[t].Select(_ => new List<BoolVar>()).ToArray();
            LinearExpr level = LinearExpr.Constant(stored);
            for (var entry = 0; entry * WellBook.MinutesPerEntry < board.Horizon; entry++)
            {
                var drawn = new List<LinearExpr> { LinearExpr.Constant(household[entry].Sum()) };
                for (var d = 0; d < wellDraws[t].Count; d++)
                {
                    if (StartsIn(wellDraws[t][d], entry * WellBook.MinutesPerEntry) is { } now)
                    {
                        inEntry[d].Add(now);
                        drawn.Add(now * wellDraws[t][d].Water);
                    }
                }

                var taken = LinearExpr.Sum(drawn);
                Model.Add(level - taken >= 0);
                var after = Model.NewIntVar(0, stored, "");
                Model.Add(after <= level - taken + board.Taps[t].Recovery);
                Model.Add(after + taken <= stored);
                level = after;
            }

            for (var d = 0; d < wellDraws[t].Count; d++)
            {
                var once = Model.AddExactlyOne(inEntry[d]);
                if (wellDraws[t][d].On is { } on)
                {
                    once.OnlyEnforceIf(on);
                }
            }
        }
    }

    /// <summary>A literal that may be true only where the draw starts in the entry beginning at a minute; null where it cannot.</summary>
    private BoolVar? StartsIn((Job Job, int Offset, IntVar At, long Water, ILiteral? On) draw, int from)
    {
        if (!draw.Job.Starts.Any(s => s.From + draw.Offset < from + WellBook.MinutesPerEntry && s.To + draw.Offset >= from))
        {
            return null;
        }

        var now = Model.NewBoolVar("");
        Model.Add(draw.At + draw.Offset >= from).OnlyEnforceIf(now);
        Model.Add(draw.At + draw.Offset < from + WellBook.MinutesPerEntry).OnlyEnforceIf(now);
        return now;
    }

    private void AddGoal(bool mayDrop)
    {
        if (mayDrop)
        {
            Model.Maximize(LinearExpr.Sum(served.Select(s => s.Value * board.Jobs.Where(job => (job.Rig, job.Program) == s.Key).Sum(job => job.Water))));
            return;
        }

        var costs = new List<LinearExpr>();
        foreach (var job in board.Jobs)
        {
            foreach (var run in job.Runs)
            {
                var away = Model.NewIntVar(0, 2L * board.Horizon, "");
                var from = (2L * run.Offset) + run.Minutes - (2L * board.Problem.Rounds[job.Round].Wish);
                Model.Add(away >= (2 * starts[job.Index]!) + from);
                Model.Add(away >= (-2 * starts[job.Index]!) - from);
                costs.Add(away * run.Water);
            }
        }

        var goal = LinearExpr.Sum(costs);
        Model.Add(goal >= FluidBound.Least(board));
        Model.Minimize(goal);
    }
}
