namespace Seedfall.Planning.Ground.Walks;

/// <summary>Where a walk comes back to its start.</summary>
internal static class WalkClosing
{
    /// <summary>
    /// The walk cut where its end lies beside its start: of all cuts within the allowed share of the way, the one with the
    /// least gap, half the way given up counted against it.
    /// </summary>
    internal static (int First, int Last, double GapM) Cut(IReadOnlyList<PathFix> path)
    {
        var alongM = Along(path);
        var mostM = WalkFacts.MostGapShare * alongM[^1];
        var (first, last, least) = (0, path.Count - 1, double.PositiveInfinity);
        for (var i = 0; i < path.Count && alongM[i] <= mostM; i++)
        {
            for (var j = path.Count - 1; j > i && alongM[i] + alongM[^1] - alongM[j] <= mostM; j--)
            {
                var cost = RingLength.Apart(path[i].At, path[j].At) + 0.5 * (alongM[i] + alongM[^1] - alongM[j]);
                if (cost < least)
                {
                    (first, last, least) = (i, j, cost);
                }
            }
        }

        return (first, last, RingLength.Apart(path[first].At, path[last].At));
    }

    /// <summary>Way walked to each fix, m.</summary>
    internal static double[] Along(IReadOnlyList<PathFix> path)
    {
        var alongM = new double[path.Count];
        for (var i = 1; i < path.Count; i++)
        {
            alongM[i] = alongM[i - 1] + RingLength.Apart(path[i - 1].At, path[i].At);
        }

        return alongM;
    }
}
