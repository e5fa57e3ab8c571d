using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation;

/// <summary>
/// One season's weather made ready for every patch of a place: hours, sky, evaporative demand, the soil temperature the
/// product model gives, which the column is brought to.
/// </summary>
public sealed class SeasonForcing
{
    private SeasonForcing(int year, ColumnForcing column, double[] demandMm, double[] soil5CmC, double[] tminC)
    {
        (Year, Column, DemandMm, Soil5CmC, TminC) = (year, column, demandMm, soil5CmC, tminC);
    }

    /// <summary>Calendar year of the season's first day.</summary>
    public int Year { get; }

    /// <summary>Hourly weather and sky.</summary>
    public ColumnForcing Column { get; }

    /// <summary>Reference evapotranspiration by the hour, mm: the day's total shared out by the sun.</summary>
    public double[] DemandMm { get; }

    /// <summary>Daily mean soil temperature at 5 cm under reference turf, degC.</summary>
    public double[] Soil5CmC { get; }

    /// <summary>Lowest air temperature of each day, degC.</summary>
    public double[] TminC { get; }

    /// <summary>Days in the season.</summary>
    public int Days => TminC.Length;

    /// <summary>From consecutive days; throws where the soil series has another length.</summary>
    /// <param name="days">Consecutive days, spin-up included.</param>
    /// <param name="soil5CmC">Daily mean soil temperature at 5 cm of the same days, degC.</param>
    /// <param name="place">Where.</param>
    public static SeasonForcing From(IReadOnlyList<WeatherDay> days, ReadOnlySpan<double> soil5CmC, Place place)
    {
        if (soil5CmC.Length != days.Count)
        {
            throw new ArgumentException($"{days.Count} soil temperatures are needed, got {soil5CmC.Length}", nameof(soil5CmC));
        }

        var column = ColumnForcing.FromDaily(days, place);
        var demand = new double[24 * days.Count];
        for (var d = 0; d < days.Count; d++)
        {
            ShareOut(days[d], place, column.Weather.SolarWm2.AsSpan(24 * d, 24), demand.AsSpan(24 * d, 24));
        }

        return new SeasonForcing(days[0].Date.Year, column, demand, soil5CmC.ToArray(), [.. days.Select(d => d.TminC)]);
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
