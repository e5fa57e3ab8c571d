namespace Seedfall.Engine.Simulation.Watering;

/// <summary>
/// Just-enough watering: a round falls only where the layer would dry before the next one, and brings the least that lasts to
/// some later round, whichever of them asks the least water an hour. In a bucket whose losses do not depend on what it holds
/// this is the least water there is.
/// </summary>
public static class JustEnough
{
    /// <summary>Rounds of one day.</summary>
    /// <param name="bed">The bed at the day's midnight; stepped through the day.</param>
    /// <param name="weather">The sky as it is expected, from its own hour 0 on.</param>
    /// <param name="day">The day.</param>
    /// <param name="limits">What may be chosen.</param>
    /// <returns>Water by the hour of the day, mm.</returns>
    public static double[] Day(WateredBed bed, BedWeather weather, int day, RoundLimits limits)
    {
        var given = new double[24];
        for (var hour = 24 * day; hour < 24 * (day + 1); hour++)
        {
            if (limits.HoursOfDay.Contains(hour % 24) && Options(bed, weather, hour, limits) is { Count: > 0 } options)
            {
                given[hour % 24] = options.MinBy(o => o.DepthMm / (o.Until - hour)).DepthMm;
            }

            bed.Step(weather, hour, given[hour % 24]);
        }

        return given;
    }

    /// <summary>Least depths that last to each later round in reach; empty where the next is reached without.</summary>
    internal static IReadOnlyList<(double DepthMm, int Until)> Options(WateredBed bed, BedWeather weather, int hour, RoundLimits limits)
    {
        var reach = hour + 24 + (24 * limits.ReachDays);
        var ends = limits.From(hour + 1, weather.Hours).TakeWhile(h => h <= reach).ToList();
        if (ends.Count == 0 || weather.Hours <= reach)
        {
            ends.Add(weather.Hours);
        }

        if (bed.DriesAt(weather, hour, ends[0], limits.HoldMPa) is null)
        {
            return [];
        }

        var most = Math.Max(limits.LeastMm, bed.MostTakenMm(weather, hour, limits.MostMm));
        var options = new List<(double, int)>(ends.Count);
        foreach (var end in ends)
        {
            if (bed.LeastMm(weather, hour, end, limits.HoldMPa, most) is not { } depth)
            {
                break;
            }

            options.Add((Math.Max(limits.LeastMm, depth), end));
        }

        return options.Count > 0 ? options : [(most, ends[0])];
    }
}
