using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Validation;

/// <summary>What any model must beat.</summary>
public static class SoilBaselines
{
    private const double AirDays = 7.0;
    private const int HalfWindowDays = 3;
    private const int LeastYears = 3;

    /// <summary>Exponential mean of air temperature, time constant 7 days, degC, one per day.</summary>
    public static double[] Air7(IReadOnlyList<WeatherDay> days)
    {
        var mean = new ExponentialMean(AirDays, days[0].AverageC);
        var values = new double[days.Count];
        for (var d = 0; d < values.Length; d++)
        {
            values[d] = mean.Next(days[d].AverageC, d == 0 ? 1 : days[d].Date.DayNumber - days[d - 1].Date.DayNumber);
        }

        return values;
    }

    /// <summary>
    /// The station's own mean of the week around the calendar day in all years but the day's own, degC; null where fewer
    /// than three other years measured it.
    /// </summary>
    public static double?[] ClimatologyOfOtherYears(IReadOnlyList<WeatherDay> days, bool[] use)
    {
        var byYear = new SortedDictionary<int, double?[]>();
        for (var d = 0; d < days.Count; d++)
        {
            if (use[d])
            {
                var year = byYear.TryGetValue(days[d].Date.Year, out var known) ? known : byYear[days[d].Date.Year] = new double?[367];
                year[days[d].Date.DayOfYear] = days[d].Soil5CmC;
            }
        }

        var weekly = byYear.ToDictionary(y => y.Key, y => WeekMeans(y.Value));
        return [.. days.Select((day, d) => use[d] ? Mean(weekly.Where(y => y.Key != day.Date.Year).Select(y => y.Value[day.Date.DayOfYear])) : null)];
    }

    private static double?[] WeekMeans(double?[] year)
    {
        var means = new double?[year.Length];
        for (var day = 1; day < year.Length; day++)
        {
            var (sum, count) = (0.0, 0);
            for (var k = Math.Max(1, day - HalfWindowDays); k <= Math.Min(year.Length - 1, day + HalfWindowDays); k++)
            {
                if (year[k] is { } value)
                {
                    (sum, count) = (sum + value, count + 1);
                }
            }

            means[day] = count > 0 ? sum / count : null;
        }

        return means;
    }

    private static double? Mean(IEnumerable<double?> years)
    {
        var (sum, count) = (0.0, 0);
        foreach (var year in years)
        {
            if (year is { } value)
            {
                (sum, count) = (sum + value, count + 1);
            }
        }

        return count >= LeastYears ? sum / count : null;
    }
}
