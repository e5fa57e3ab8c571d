using Seedfall.Engine.Simulation.Plant;

namespace Seedfall.Engine.Simulation.Ensemble;

/// <summary>Every seed-down date of a simulated season, answered from its running sums.</summary>
public static class StandSearch
{
    private const int SowingHourOfDay = 13;

    /// <summary>Hour of the season at which seed goes down on a day.</summary>
    internal static int SowingHour(int day) => (24 * day) + SowingHourOfDay;

    /// <summary>The outcomes of seed put down on each candidate day of one season.</summary>
    /// <param name="plants">The running sums of four seasons, one record per grass.</param>
    /// <param name="lane">Which of the four.</param>
    /// <param name="sown">The grasses as sown, in the same order.</param>
    /// <param name="tminC">Lowest air temperature by the season's day, degC.</param>
    /// <param name="candidates">Dates to try.</param>
    /// <param name="depthMm">Seed depth, mm.</param>
    /// <param name="rule">What counts.</param>
    /// <param name="outcomes">Receives one outcome per candidate.</param>
    internal static void Fill(
        IReadOnlyList<PlantRecord> plants, int lane, IReadOnlyList<SownGrass> sown, double[] tminC, CandidateDays candidates, double depthMm, StandRule rule, Span<StandOutcome> outcomes)
    {
        var searches = new FateSearch[plants.Count * PlantRecord.Shares];
        var end = -1;
        for (var c = 0; c < outcomes.Length; c++)
        {
            var day = candidates.FirstDay + c;
            end = end > day ? end : EndDay(tminC, day, rule.HardFrostC);
            outcomes[c] = Of(plants, lane, sown, day, end, depthMm, rule, searches);
        }
    }

    private static StandOutcome Of(
        IReadOnlyList<PlantRecord> plants, int lane, IReadOnlyList<SownGrass> sown, int seedDownDay, int endDay, double depthMm, StandRule rule, FateSearch[] searches)
    {
        var (start, end) = (SowingHour(seedDownDay), 24 * endDay);
        if (end <= start)
        {
            return default;
        }

        var (standing, slowest, allUp) = (0.0, 0, true);
        for (var i = 0; i < plants.Count; i++)
        {
            var perShare = sown[i].LiveSeedsPerM2 * rule.FieldSurvival / PlantRecord.Shares;
            for (var share = 0; share < PlantRecord.Shares; share++)
            {
                var fate = plants[i].Fate(lane, share, start, end, depthMm, ref searches[(i * PlantRecord.Shares) + share]);
                standing += fate.Emerged && fate.Leaves >= rule.Leaves ? perShare * plants[i].Survival(lane, fate.GerminatedHour, end) : 0.0;
                if (share == PlantRecord.Shares / 2)
                {
                    (slowest, allUp) = (Math.Max(slowest, fate.EmergedHour), allUp && fate.Emerged);
                }
            }
        }

        return new StandOutcome(standing, allUp ? (slowest - start) / 24.0 : null);
    }

    /// <summary>Index of the first day at or after <paramref name="from"/> as cold as hard frost; the season's length where none comes.</summary>
    public static int EndDay(ReadOnlySpan<double> tminC, int from, double hardFrostC)
    {
        for (var day = from; day < tminC.Length; day++)
        {
            if (tminC[day] <= hardFrostC)
            {
                return day;
            }
        }

        return tminC.Length;
    }
}
