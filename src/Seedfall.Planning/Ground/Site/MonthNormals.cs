using Seedfall.Engine.Weather;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Ground;

/// <summary>One month of the year as it usually is here.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="Years">Whole months it rests on.</param>
/// <param name="MeanC">Mean temperature, degC.</param>
/// <param name="RainMm">Mean rain, mm.</param>
/// <param name="DryMm">Two years in ten have no more rain, mm.</param>
/// <param name="WetMm">Two years in ten have more, mm.</param>
/// <param name="GrowingDegreeDays">Mean growing degree-days above 10 degC (50 degF), degC d.</param>
public sealed record MonthNormals(int Month, int Years, double MeanC, double RainMm, double DryMm, double WetMm, double GrowingDegreeDays)
{
    /// <summary>Base of the growing degree-days: 50 degF, the usual one in the trade (common practice, no source read).</summary>
    public const double BaseC = 10.0;

    /// <summary>Months of which at least one was whole, January first.</summary>
    public static IReadOnlyList<MonthNormals> Of(WeatherHistory weather)
    {
        ArgumentNullException.ThrowIfNull(weather);
        var whole = weather.Days.GroupBy(d => (d.Date.Year, d.Date.Month)).Where(g => g.Count() == DateTime.DaysInMonth(g.Key.Year, g.Key.Month));
        return [.. whole.GroupBy(g => g.Key.Month).OrderBy(g => g.Key).Select(Normal)];
    }

    private static MonthNormals Normal(IGrouping<int, IGrouping<(int Year, int Month), WeatherDay>> months)
    {
        double[] rain = [.. months.Select(m => m.Sum(d => d.RainMm)).Order()];
        return new MonthNormals(
            months.Key,
            rain.Length,
            months.Average(m => m.Average(d => d.MidC)),
            rain.Average(),
            Spread.Percentile(rain, 0.2),
            Spread.Percentile(rain, 0.8),
            months.Average(m => m.Sum(d => Math.Max(0.0, d.MidC - BaseC))));
    }
}
