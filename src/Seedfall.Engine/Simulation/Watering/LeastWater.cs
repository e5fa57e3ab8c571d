namespace Seedfall.Engine.Simulation.Watering;

/// <summary>
/// The least water that keeps a layer wet with the weather known beforehand: a search over just-enough rounds, the few that have
/// used least kept at every hour. It finds a plan that can be followed, so the true least is no higher.
/// </summary>
public static class LeastWater
{
    private sealed record Branch(WateredBed Bed, double UsedMm, double[] Given);

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
        var waiting = new SortedDictionary<int, List<Branch>> { [from] = [new Branch(start.Copy(), 0.0, new double[until])] };
        var best = default(Branch);
        while (waiting.Count > 0)
        {
            var (hour, branches) = waiting.First();
            waiting.Remove(hour);
            foreach (var branch in branches.OrderBy(b => b.UsedMm).Take(width))
            {
                if (best is not null && branch.UsedMm >= best.UsedMm)
                {
                    break;
                }

                var (next, options) = NextNeed(branch.Bed, ahead, hour, limits);
                if (options.Count == 0)
                {
                    best = branch;
                    break;
                }

                Spread(branch, ahead, next, options, waiting);
            }
        }

        return best!.Given;
    }

    private static void Spread(Branch branch, BedWeather ahead, int hour, IReadOnlyList<(double DepthMm, int Until)> options, SortedDictionary<int, List<Branch>> waiting)
    {
        foreach (var depth in options.Select(o => o.DepthMm).Distinct())
        {
            var given = (double[])branch.Given.Clone();
            given[hour] = depth;
            var bed = branch.Bed.Copy();
            bed.Step(ahead, hour, depth);
            if (!waiting.TryGetValue(hour + 1, out var list))
            {
                waiting[hour + 1] = list = [];
            }

            list.Add(new Branch(bed, branch.UsedMm + depth, given));
        }
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
