using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation;

/// <summary>One simulated season by the day.</summary>
/// <param name="Year">Calendar year the season is named for.</param>
/// <param name="FirstDay">First day after the run-up.</param>
/// <param name="TminC">Lowest air temperature, degC.</param>
/// <param name="MeanAirC">Mean air temperature, degC.</param>
/// <param name="Soil5CmC">Daily mean soil temperature at 5 cm under reference turf, degC: what a plan shows.</param>
/// <param name="CorrectionC">What to add to the column's soil temperature to bring it to the product's, degC.</param>
public sealed record SeasonForcing(int Year, DateOnly FirstDay, double[] TminC, double[] MeanAirC, double[] Soil5CmC, double[] CorrectionC)
{
    /// <summary>Days in the season.</summary>
    public int Days => TminC.Length;

    /// <summary>Reference evapotranspiration by the hour, mm: each day's total shared out by the sun.</summary>
    internal static double[] DemandMm(IReadOnlyList<WeatherDay> days, HourlyWeather hours, Place place)
    {
        var demand = new double[24 * days.Count];
        for (var d = 0; d < days.Count; d++)
        {
            ShareOut(DailyEvapotranspiration.For(days[d], place).Eto.Millimeters, hours.SolarWm2.AsSpan(24 * d, 24), demand.AsSpan(24 * d, 24));
        }

        return demand;
    }

    private static void ShareOut(double totalMm, ReadOnlySpan<double> solar, Span<double> demand)
    {
        var sun = 0.0;
        foreach (var hour in solar)
        {
            sun += hour;
        }

        for (var h = 0; h < 24; h++)
        {
            demand[h] = sun > 0.0 ? totalMm * solar[h] / sun : totalMm / 24.0;
        }
    }
}
