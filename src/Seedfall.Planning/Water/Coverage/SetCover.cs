using Google.OrTools.Sat;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>A cover and the least number any cover needs, as far as proved.</summary>
internal sealed record Cover(IReadOnlyList<int> Chosen, int Bound);

/// <summary>Fewest sets that together cover all: greedy first, the solver where greed is not provably the least.</summary>
internal static class SetCover
{
    private const string Limits = "num_workers:1 random_seed:1 max_deterministic_time:0.3";

    /// <summary>Fewest sets, then least cost.</summary>
    /// <param name="covers">By set, whether it covers each element; every element is in some set.</param>
    /// <param name="costs">Cost of each set, 0 to 1000; counts only between covers of one size.</param>
    internal static Cover Fewest(IReadOnlyList<IReadOnlyList<bool>> covers, IReadOnlyList<int> costs)
    {
        var greedy = Greedy(covers, costs);
        var apart = Apart(covers);
        try
        {
            return greedy.Count <= 1 ? new Cover(greedy, greedy.Count) : Solve(covers, costs, greedy, apart);
        }
        catch (Exception missing) when (missing is DllNotFoundException or BadImageFormatException or TypeInitializationException or EntryPointNotFoundException)
        {
            return new Cover(greedy, apart);
        }
    }

    private static Cover Solve(IReadOnlyList<IReadOnlyList<bool>> covers, IReadOnlyList<int> costs, IReadOnlyList<int> greedy, int apart)
    {
        var model = new CpModel();
        BoolVar[] uses = [.. covers.Select(_ => model.NewBoolVar(""))];
        foreach (var row in Enumerable.Range(0, covers[0].Count).Select(e => Enumerable.Range(0, covers.Count).Where(s => covers[s][e]).ToArray()).DistinctBy(row => string.Join(',', row)))
        {
            model.AddBoolOr(row.Select(s => uses[s]));
        }

        var one = (1001L * covers.Count) + 1;
        model.Minimize(LinearExpr.WeightedSum(uses, costs.Select(cost => one + cost)));
        foreach (var s in Enumerable.Range(0, covers.Count))
        {
            model.AddHint(uses[s], greedy.Contains(s));
        }

        var solver = new CpSolver { StringParameters = Limits };
        if (solver.Solve(model) is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return new Cover(greedy, apart);
        }

        int[] chosen = [.. Enumerable.Range(0, covers.Count).Where(s => solver.BooleanValue(uses[s]))];
        return new Cover(chosen, Math.Max(apart, (int)Math.Ceiling((solver.BestObjectiveBound - (1000.0 * covers.Count)) / one - 1e-9)));
    }

    /// <summary>Again and again the set that covers most of what is left, the cheaper of two alike.</summary>
    private static List<int> Greedy(IReadOnlyList<IReadOnlyList<bool>> covers, IReadOnlyList<int> costs)
    {
        var left = Enumerable.Range(0, covers.Count == 0 ? 0 : covers[0].Count).ToHashSet();
        var chosen = new List<int>();
        while (left.Count > 0)
        {
            var best = Enumerable.Range(0, covers.Count).OrderByDescending(s => left.Count(e => covers[s][e])).ThenBy(s => costs[s]).ThenBy(s => s).First();
            chosen.Add(best);
            left.RemoveWhere(e => covers[best][e]);
        }

        chosen.Sort();
        return chosen;
    }

    /// <summary>Elements no two of which share a set: each needs one of its own.</summary>
    private static int Apart(IReadOnlyList<IReadOnlyList<bool>> covers)
    {
        var taken = new HashSet<int>();
        var count = 0;
        foreach (var element in Enumerable.Range(0, covers.Count == 0 ? 0 : covers[0].Count).OrderBy(e => covers.Count(set => set[e])))
        {
            int[] sets = [.. Enumerable.Range(0, covers.Count).Where(s => covers[s][element])];
            if (!sets.Any(taken.Contains))
            {
                count++;
                taken.UnionWith(sets);
            }
        }

        return count;
    }
}
