using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Watering;

/// <summary>What the sky brings to a seedbed, by the hour from a midnight on.</summary>
/// <param name="RainMm">Rain, mm; not negative.</param>
/// <param name="DemandMm">Reference evapotranspiration, mm; as long as the rain.</param>
public sealed record BedWeather(double[] RainMm, double[] DemandMm)
{
    /// <summary>Hours.</summary>
    public int Hours => RainMm.Length;

    /// <summary>Consecutive days as hours; what was not measured is estimated.</summary>
    /// <param name="days">No day missing.</param>
    /// <param name="place">Where.</param>
    /// <param name="climate">Its usual year.</param>
    /// <param name="constants">Fitted numbers.</param>
    public static BedWeather Of(IReadOnlyList<WeatherDay> days, Place place, PlaceClimate climate, SoilHeatConstants constants)
    {
        ArgumentNullException.ThrowIfNull(constants);
        var complete = DayEstimates.Complete(days, climate, place, constants.Estimates);
        var weather = ColumnForcing.FromDaily(complete, place).Weather;
        return new BedWeather(weather.RainMm, SeasonForcing.DemandMm(complete, weather, place));
    }

    /// <summary>Demand of one day, mm.</summary>
    public double DayDemandMm(int day) => Sum(DemandMm, day);

    /// <summary>Rain of one day, mm.</summary>
    public double DayRainMm(int day) => Sum(RainMm, day);

    /// <summary>The same with every hour's demand times a factor.</summary>
    public BedWeather Thirstier(double factor) => this with { DemandMm = [.. DemandMm.Select(d => factor * d)] };

    private static double Sum(double[] hours, int day)
    {
        var sum = 0.0;
        for (var h = 24 * day; h < 24 * (day + 1); h++)
        {
            sum += hours[h];
        }

        return sum;
    }
}
