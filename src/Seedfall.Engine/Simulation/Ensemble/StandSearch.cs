using Seedfall.Engine.Simulation.Plant;

namespace Seedfall.Engine.Simulation.Ensemble;

/// <summary>Every seed-down date of a simulated season, answered from its running sums.</summary>
public static class StandSearch
{
    private const int SowingHourOfDay = 13;

    /// <summary>Hour of the season at which seed goes down on a day.</summary>
    internal static int SowingHour(int day) => (24 * day) + SowingHourOfDay;

    /// <summary>The outcome of seed put down on one day of a season.</summary>
    /// <param name="plants">The season's running sums, one per grass.</param>
    /// <param name="sown">The grasses as sown, in the same order.</param>
    /// <param name="seedDownDay">Index of the day in the season.</param>
    /// <param name="endDay">Index of the day that ends the season for seedlings.</param>
    /// <param name="depthMm">Seed depth, mm.</param>
    /// <param name="rule">What counts.</param>
    public static StandOutcome Of(IReadOnlyList<PlantRecord> plants, IReadOnlyList<SownGrass> sown, int seedDownDay, int endDay, double depthMm, StandRule rule)
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
                var fate = plants[i].Fate(share, start, end, depthMm);
                standing += fate.Emerged && fate.Leaves >= rule.Leaves ? perShare * fate.Survival : 0.0;
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
