using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Timing;

/// <summary>How much growing weather days hold for cool-season grass.</summary>
public static class GrowingDays
{
    private const double BestC = 20.0;
    private const double SpreadC = 5.5;

    /// <summary>Degree days of one day above a base: the mean less the base, never negative; degC d.</summary>
    public static double DegreeDays(Temperature mean, Temperature baseline) => Math.Max(0.0, mean.Celsius - baseline.Celsius);

    /// <summary>Sum of degree days above a base, degC d.</summary>
    public static double DegreeDays(IEnumerable<WeatherDay> days, Temperature baseline) =>
        days.Sum(day => Math.Max(0.0, day.AverageC - baseline.Celsius));

    /// <summary>
    /// Growth potential of cool-season grass at a mean air temperature, 0 to 1: exp(-0.5 ((T - 20) / 5.5)^2). Gelernter and
    /// Stowell 2005; the optimum is read, the spread of 5.5 degC is common practice.
    /// </summary>
    public static double GrowthPotential(Temperature mean) => GrowthPotentialCore(mean.Celsius);

    /// <summary>As <see cref="GrowthPotential"/>.</summary>
    public static double GrowthPotentialCore(double meanC)
    {
        var off = (meanC - BestC) / SpreadC;
        return Math.Exp(-0.5 * off * off);
    }

    /// <summary>Days at full growth that these days amount to: the sum of their growth potential, d.</summary>
    public static double GrowthDays(IEnumerable<WeatherDay> days) => days.Sum(day => GrowthPotentialCore(day.AverageC));
}
