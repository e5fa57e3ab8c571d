namespace Seedfall.Engine.Simulation.Watering;

/// <summary>
/// Just-enough rounds: one falls only where the layer would dry before the next, and brings the least that lasts to some later
/// round. In a bucket whose losses do not depend on what it holds, nothing else can be least.
/// </summary>
internal static class JustEnough
{
    /// <summary>Hours given up at a time where no round lasts to the next.</summary>
    private const int ShorterBy = 2;

    /// <summary>
    /// Least depths that last to each later round in reach; empty where the next is reached without. Where no depth lasts to the next
    /// round, the one that lasts nearest to it; where the layers around the seed's cannot be held at all, what the seed's own needs.
    /// </summary>
    internal static IReadOnlyList<(double DepthMm, int Until)> Options(WateredBed bed, BedWeather weather, int hour, RoundLimits limits)
    {
        var reach = hour + 24 + (24 * limits.ReachDays);
        var ends = limits.From(hour + 1, weather.Hours).TakeWhile(h => h <= reach).ToList();
        if (ends.Count == 0 || weather.Hours <= reach)
        {
            ends.Add(weather.Hours);
        }

        if (bed.DriesAt(weather, hour, ends[0], limits.Hold) is null)
        {
            return [];
        }

        var most = Math.Max(limits.LeastMm, bed.MostTakenMm(weather, hour, limits.MostMm));
        var options = Lasting(bed, weather, hour, ends, limits, limits.Hold, most);
        if (options.Count > 0)
        {
            return options;
        }

        for (var until = ends[0] - ShorterBy; until > hour; until -= ShorterBy)
        {
            if (bed.LeastMm(weather, hour, until, limits.Hold, most) is { } depth)
            {
                return [(Math.Max(limits.LeastMm, depth), ends[0])];
            }
        }

        var seedOnly = limits.Hold with { Around = false };
        if (bed.DriesAt(weather, hour, ends[0], seedOnly) is null)
        {
            return [];
        }

        options = Lasting(bed, weather, hour, ends, limits, seedOnly, most);
        return options.Count > 0 ? options : [(most, ends[0])];
    }

    private static List<(double DepthMm, int Until)> Lasting(WateredBed bed, BedWeather weather, int hour, List<int> ends, RoundLimits limits, in Hold hold, double most)
    {
        var options = new List<(double, int)>(ends.Count);
        foreach (var end in ends)
        {
            if (bed.LeastMm(weather, hour, end, hold, most) is not { } depth)
            {
                break;
            }

            options.Add((Math.Max(limits.LeastMm, depth), end));
        }

        return options;
    }
}
