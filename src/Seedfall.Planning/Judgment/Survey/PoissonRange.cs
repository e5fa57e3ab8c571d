namespace Seedfall.Planning.Judgment.Survey;

/// <summary>Which true mean counts a count allows.</summary>
public static class PoissonRange
{
    private const double Tail = 0.05;
    private const int Halvings = 80;

    /// <summary>
    /// The 90 % range of the expected count behind one Poisson count, dimensionless: the means for which this count or more,
    /// and this count or less, each have a chance of 5 %. Garwood 1936, Biometrika 28:437-442.
    /// </summary>
    /// <param name="count">The count; not negative.</param>
    public static (double Low, double High) Of(int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        var most = count + 10.0 + (6.0 * Math.Sqrt(count + 1.0));
        return (count == 0 ? 0.0 : Crossing(most, mean => 1.0 - AtMost(count - 1, mean) - Tail), Crossing(most, mean => Tail - AtMost(count, mean)));
    }

    /// <summary>Chance of at most k events with this mean.</summary>
    private static double AtMost(int k, double mean)
    {
        var (sum, logTerm) = (0.0, -mean);
        for (var i = 0; i <= k; i++)
        {
            if (i > 0)
            {
                logTerm += Math.Log(mean / i);
            }

            sum += Math.Exp(logTerm);
        }

        return Math.Min(1.0, sum);
    }

    /// <summary>Where a rising function of the mean crosses zero, by halving.</summary>
    private static double Crossing(double most, Func<double, double> rising)
    {
        var (low, high) = (0.0, most);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = rising(middle) < 0.0 ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }
}
