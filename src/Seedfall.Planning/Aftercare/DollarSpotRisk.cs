using Seedfall.Engine.Units;

namespace Seedfall.Planning.Aftercare;

/// <summary>Chance that dollar spot is active.</summary>
public static class DollarSpotRisk
{
    /// <summary>Chance at which spraying on forecast matched the calendar's control (Smith et al. 2018).</summary>
    public const double ActionChance = 0.20;

    private const double LeastC = 10.0;

    private const double MostC = 35.0;

    /// <summary>
    /// P = 1 / (1 + e^-x), x = -11.4041 + 0.0894 RH + 0.1932 T, over five-day means. Smith et al. 2018, PLoS ONE 13(3):e0194216;
    /// coefficients common practice, not seen in the paper. Null outside 10 to 35 degC, where it was not made.
    /// </summary>
    /// <param name="humidity">Five-day mean relative humidity.</param>
    /// <param name="mean">Five-day mean air temperature.</param>
    public static double? Chance(Fraction humidity, Temperature mean)
    {
        if (mean.Celsius is < LeastC or > MostC)
        {
            return null;
        }

        var x = -11.4041 + (0.0894 * humidity.Percent) + (0.1932 * mean.Celsius);
        return 1.0 / (1.0 + Math.Exp(-x));
    }
}
