namespace Seedfall.Engine.Simulation.Watering;

/// <summary>The same rounds on every watering day of past seasons: how deep they must be.</summary>
public static class SteadyRounds
{
    /// <summary>Of so many seasons one may fall short: 19 of 20 must not.</summary>
    public const int OneIn = 20;

    private const int Passes = 6;

    /// <summary>Least depth of a round that holds in 19 of 20 seasons, to 1/64 of the most; null where the most does not.</summary>
    /// <param name="beds">The bed of each season at the midnight its first day begins; left as they are.</param>
    /// <param name="seasons">The sky of each.</param>
    /// <param name="hoursOfDay">Hours of the rounds, ascending; at least one.</param>
    /// <param name="everyDays">Days from one watering day to the next, 1 or more.</param>
    /// <param name="firstDay">First watering day.</param>
    /// <param name="days">Days looked at.</param>
    /// <param name="hold">What to hold from the first round on.</param>
    /// <param name="mostMm">Heaviest round, mm: what the soil takes without runoff.</param>
    public static double? LeastMm(
        IReadOnlyList<WateredBed> beds, IReadOnlyList<BedWeather> seasons, IReadOnlyList<int> hoursOfDay, int everyDays, int firstDay, int days, Hold hold, double mostMm)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(beds.Count, seasons.Count);
        ArgumentOutOfRangeException.ThrowIfLessThan(everyDays, 1);
        bool Enough(double depthMm)
        {
            var failed = 0;
            for (var season = 0; season < seasons.Count && failed <= seasons.Count / OneIn; season++)
            {
                failed += Holds(beds[season].Copy(), seasons[season], hoursOfDay, everyDays, firstDay, days, hold, depthMm) ? 0 : 1;
            }

            return failed <= seasons.Count / OneIn;
        }

        var (low, high) = (0.0, mostMm);
        if (!Enough(high))
        {
            return null;
        }

        for (var pass = 0; pass < Passes; pass++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = Enough(middle) ? (low, middle) : (middle, high);
        }

        return high;
    }

    private static bool Holds(WateredBed bed, BedWeather sky, IReadOnlyList<int> hoursOfDay, int everyDays, int firstDay, int days, Hold hold, double depthMm)
    {
        for (var hour = 24 * firstDay; hour < Math.Min(sky.Hours, 24 * (firstDay + days)); hour++)
        {
            var watering = ((hour / 24) - firstDay) % everyDays == 0 && hoursOfDay.Contains(hour % 24);
            bed.Step(sky, hour, watering ? depthMm : 0.0);
            if (hour >= (24 * firstDay) + hoursOfDay[0] && !bed.Holds(hold))
            {
                return false;
            }
        }

        return true;
    }
}
