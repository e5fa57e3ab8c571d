namespace Seedfall.Planning.Ground.Walks;

/// <summary>How far off the area inside a walk is.</summary>
internal static class WalkError
{
    /// <summary>
    /// Standard deviation, m2. First order: <c>sum_ij (g_i . g_j) C_ij</c> with the shoelace formula's derivative
    /// <c>g_i = (n_i+1 - n_i-1, e_i-1 - e_i+1) / 2</c> and errors that wander,
    /// <c>C_ij = s_i s_j (w exp(-|t_i - t_j| / T) + (1 - w) [i = j])</c>. An offset common to all fixes drops out by itself,
    /// since the g add up to nothing. Second order: <c>sum s^4 (1 - (2w - w^2) exp(-2 dt / T)) / 2</c>, the variance of the
    /// errors' own area. The phone carried beside the edge, and a gap left open, are added.
    /// </summary>
    /// <param name="ring">The closed walk, smoothed.</param>
    /// <param name="edgeM">Its length.</param>
    /// <param name="gapM">Gap between its last and first fix.</param>
    internal static double DeviationM2(IReadOnlyList<PathFix> ring, double edgeM, double gapM)
    {
        const double Wander = WalkFacts.WanderShare;
        var n = ring.Count;
        var (east, north) = (new double[n], new double[n]);
        var varianceM4 = 0.0;
        for (var i = 0; i < n; i++)
        {
            var (before, here, after) = (ring[(i + n - 1) % n], ring[i], ring[(i + 1) % n]);
            east[i] = 0.5 * (after.At.NorthM - before.At.NorthM) * here.DeviationM;
            north[i] = 0.5 * (before.At.EastM - after.At.EastM) * here.DeviationM;
            var own = here.DeviationM * here.DeviationM;
            var forgets = Math.Exp(-2.0 * Math.Abs(after.Seconds - here.Seconds) / WalkFacts.WanderSeconds);
            varianceM4 += east[i] * east[i] + north[i] * north[i] + 0.5 * own * own * (1.0 - (2.0 * Wander - Wander * Wander) * forgets);
        }

        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var together = Wander * Math.Exp(-Math.Abs(ring[i].Seconds - ring[j].Seconds) / WalkFacts.WanderSeconds);
                varianceM4 += 2.0 * together * (east[i] * east[j] + north[i] * north[j]);
            }
        }

        var besideM2 = WalkFacts.BesideEdgeM * edgeM;
        var gapM2 = 0.125 * gapM * gapM;
        return Math.Sqrt(Math.Max(0.0, varianceM4) + besideM2 * besideM2 + gapM2 * gapM2);
    }
}
