namespace Seedfall.Engine.Simulation.Watering;

/// <summary>
/// The least water that keeps a layer wet with the weather known beforehand: a search over just-enough rounds, the few that have
/// used least kept among those that need water next in the same hour, when all of them hold about the same. It finds a plan that can be followed, so the true least is no higher.
/// </summary>
public static class LeastWater
{
    /// <summary>A bed at the hour in which water is next needed. Water used is weighed by the chance that it will be needed.</summary>
    private sealed record Branch(WateredBed Bed, double UsedMm, double[] Given, IReadOnlyList<(double DepthMm, int Until)> Options);

    /// <summary>The rounds of one day as the first of the days ahead, by the hour of the day, mm.</summary>
    /// <param name="bed">The bed at the day's midnight; left as it is.</param>
    /// <param name="ahead">The sky as it is expected, from its own hour 0 to the last looked at.</param>
    /// <param name="day">The day.</param>
    /// <param name="limits">What may be chosen.</param>
    public static double[] Day(WateredBed bed, BedWeather ahead, int day, RoundLimits limits)
    {
        ArgumentNullException.ThrowIfNull(ahead);
        return Plan(bed, ahead, 24 * day, ahead.Hours, limits, width: 2).AsSpan(24 * day, 24).ToArray();
    }

    /// <summary>Water by the hour of the weather, mm.</summary>
    /// <param name="start">The bed at the first hour; left as it is.</param>
    /// <param name="weather">The sky.</param>
    /// <param name="from">First hour.</param>
    /// <param name="until">First hour no longer cared for.</param>
    /// <param name="limits">What may be chosen.</param>
    /// <param name="width">Branches kept at an hour.</param>
    public static double[] Plan(WateredBed start, BedWeather weather, int from, int until, RoundLimits limits, int width = 3)
    {
        ArgumentNullException.ThrowIfNull(start);
        var ahead = new BedWeather(weather.RainMm[..until], weather.DemandMm[..until]);
        var waiting = new SortedDictionary<int, List<Branch>>();
        var (best, leastMm) = (new double[until], double.PositiveInfinity);
        void Wait(WateredBed bed, int hour, double used, double[] given)
        {
            var (next, options) = NextNeed(bed, ahead, hour, limits);
            if (options.Count == 0)
            {
                (best, leastMm) = used < leastMm ? (given, used) : (best, leastMm);
                return;
            }

            if (!waiting.TryGetValue(next, out var list))
            {
                waiting[next] = list = [];
            }

            list.Add(new Branch(bed, used, given, options));
        }

        Wait(start.Copy(), from, 0.0, new double[until]);
        while (waiting.Count > 0)
        {
            var (hour, branches) = waiting.First();
            waiting.Remove(hour);
            foreach (var branch in branches.OrderBy(b => b.UsedMm).Take(width))
            {
                foreach (var depth in branch.Options.Select(o => o.DepthMm).Distinct())
                {
                    var given = (double[])branch.Given.Clone();
                    given[hour] = depth;
                    var bed = branch.Bed.Copy();
                    bed.Step(ahead, hour, depth);
                    Wait(bed, hour + 1, branch.UsedMm + (depth * limits.StillNeeded(hour - from)), given);
                }
            }
        }

        return best;
    }

    /// <summary>Steps a bed on to the next round that must bring water; no options where none must before the end.</summary>
    private static (int Hour, IReadOnlyList<(double DepthMm, int Until)> Options) NextNeed(WateredBed bed, BedWeather ahead, int from, RoundLimits limits)
    {
        for (var hour = from; hour < ahead.Hours; hour++)
        {
            if (limits.HoursOfDay.Contains(hour % 24) && JustEnough.Options(bed, ahead, hour, limits) is { Count: > 0 } options)
            {
                return (hour, options);
            }

            bed.Step(ahead, hour, 0.0);
        }

        return (ahead.Hours, []);
    }
}
