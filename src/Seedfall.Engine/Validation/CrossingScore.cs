using Seedfall.Engine.Simulation;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Validation;

/// <summary>Errors of the day soil falls below a threshold, in days; season by season.</summary>
public static class CrossingScore
{
    private const int LongestHoleDays = 3;

    /// <summary>
    /// Day-of-season pairs (predicted, observed; days from 1 August, or 1 February in the south) for each season measured
    /// without long holes in which the measured soil starts above the threshold and falls below it by 30 November. A
    /// prediction that never crosses counts as the day after the season.
    /// </summary>
    /// <param name="days">Ascending days.</param>
    /// <param name="predictedC">Daily means at 5 cm, one per day.</param>
    /// <param name="use">Which measured days are good.</param>
    /// <param name="latitudeDeg">Degrees north.</param>
    /// <param name="thresholdC">Threshold, degC.</param>
    public static IReadOnlyList<SeasonCrossing> Seasons(IReadOnlyList<WeatherDay> days, ReadOnlySpan<double> predictedC, bool[] use, double latitudeDeg, double thresholdC)
    {
        var crossings = new List<SeasonCrossing>();
        var index = new Dictionary<int, int>();
        for (var d = 0; d < days.Count; d++)
        {
            index[days[d].Date.DayNumber] = d;
        }

        foreach (var year in days.Select(d => d.Date.Year).Distinct())
        {
            var first = new DateOnly(year, latitudeDeg < 0 ? 2 : 8, 1);
            var last = latitudeDeg < 0 ? new DateOnly(year, 5, 31) : new DateOnly(year, 11, 30);
            if (Season(days, predictedC, use, index, first, last) is not { } season)
            {
                continue;
            }

            var observed = SoilCrossing.FirstFallBelow(season.Observed, thresholdC, 0);
            if (observed is > 0)
            {
                var predicted = SoilCrossing.FirstFallBelow(season.Predicted, thresholdC, 0) ?? season.Predicted.Length;
                crossings.Add(new SeasonCrossing(year, predicted, observed.Value));
            }
        }

        return crossings;
    }

    private static (double[] Predicted, double[] Observed)? Season(
        IReadOnlyList<WeatherDay> days, ReadOnlySpan<double> predictedC, bool[] use, Dictionary<int, int> index, DateOnly first, DateOnly last)
    {
        var count = last.DayNumber - first.DayNumber + 1;
        var (predicted, observed) = (new double[count], new double[count]);
        var known = -1;
        for (var k = 0; k < count; k++)
        {
            if (!index.TryGetValue(first.DayNumber + k, out var d))
            {
                return null;
            }

            predicted[k] = predictedC[d];
            if (!use[d])
            {
                continue;
            }

            observed[k] = days[d].Soil5CmC!.Value;
            if (k - known - 1 > LongestHoleDays || (known < 0 && k > 0))
            {
                return null;
            }

            Bridge(observed, known, k);
            known = k;
        }

        return known == count - 1 ? (predicted, observed) : null;
    }

    private static void Bridge(double[] values, int from, int to)
    {
        for (var k = Math.Max(from + 1, 0); k < to; k++)
        {
            values[k] = values[from] + ((values[to] - values[from]) * (k - from) / (to - from));
        }
    }
}

/// <summary>One season's crossing, days after its first day.</summary>
public readonly record struct SeasonCrossing(int Year, int PredictedDay, int ObservedDay);
