using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation;

/// <summary>
/// One season's weather made ready for every patch of a place: hours, sky, evaporative demand, and how far the product's
/// soil temperature lies from the column's for reference ground, which every patch is corrected by.
/// </summary>
public sealed class SeasonForcing
{
    private SeasonForcing(int year, ColumnForcing column, double[] demandMm, double[] soil5CmC, double[] correctionC, double[] tminC)
    {
        (Year, Column, DemandMm, Soil5CmC, CorrectionC, TminC) = (year, column, demandMm, soil5CmC, correctionC, tminC);
    }

    /// <summary>Calendar year the season is named for.</summary>
    public int Year { get; }

    /// <summary>Hourly weather and sky.</summary>
    public ColumnForcing Column { get; }

    /// <summary>Reference evapotranspiration by the hour, mm: the day's total shared out by the sun.</summary>
    public double[] DemandMm { get; }

    /// <summary>Daily mean soil temperature at 5 cm under reference turf, degC: what a plan shows.</summary>
    public double[] Soil5CmC { get; }

    /// <summary>By the day, what to add to the column's soil temperature, degC.</summary>
    public double[] CorrectionC { get; }

    /// <summary>Lowest air temperature of each day, degC.</summary>
    public double[] TminC { get; }

    /// <summary>Days in the season.</summary>
    public int Days => TminC.Length;

    /// <summary>From a season's days; what was not measured is estimated.</summary>
    /// <param name="window">Run-up and season.</param>
    /// <param name="place">Where.</param>
    /// <param name="climate">Its usual year.</param>
    /// <param name="inputs">Which fitted models to use.</param>
    /// <param name="constants">Fitted numbers.</param>
    public static SeasonForcing From(SeasonWindow window, Place place, PlaceClimate climate, InputSet inputs, SoilHeatConstants constants)
    {
        ArgumentNullException.ThrowIfNull(window);
        var soil = SoilMethods.At5Cm(window.Days, place, climate, inputs, constants);
        var days = soil.CompleteDays.AsSpan(window.RunUpDays).ToArray();
        var column = ColumnForcing.FromDaily(days, place);
        var demand = new double[24 * days.Length];
        for (var d = 0; d < days.Length; d++)
        {
            ShareOut(days[d], place, column.Weather.SolarWm2.AsSpan(24 * d, 24), demand.AsSpan(24 * d, 24));
        }

        var product = soil.ProductC.AsSpan(window.RunUpDays).ToArray();
        var correction = new double[days.Length];
        for (var d = 0; d < days.Length; d++)
        {
            correction[d] = product[d] - soil.ColumnC[window.RunUpDays + d];
        }

        return new SeasonForcing(window.Year, column, demand, product, correction, [.. days.Select(d => d.TminC)]);
    }

    private static void ShareOut(WeatherDay day, Place place, ReadOnlySpan<double> solar, Span<double> demand)
    {
        var total = Math.Max(0.0, DailyEvapotranspiration.For(day, place).Eto.Millimeters);
        var sun = 0.0;
        foreach (var hour in solar)
        {
            sun += hour;
        }

        for (var h = 0; h < 24; h++)
        {
            demand[h] = sun > 0.0 ? total * solar[h] / sun : total / 24.0;
        }
    }
}
