namespace Seedfall.Engine.Weather;

/// <summary>
/// Hours of weather as arrays of equal length, one entry per hour of local standard time, the first the hour that
/// starts at 00:00 of <see cref="FirstDay"/>. Each entry is the mean (rain: the sum) over that hour.
/// </summary>
public sealed class HourlyWeather
{
    /// <summary>All arrays must have 24 times a whole number of days; throws otherwise.</summary>
    public HourlyWeather(DateOnly firstDay, double[] airC, double[] vaporKPa, double[] solarWm2, double[] rainMm, double[] windMs)
    {
        var hours = airC.Length;
        if (hours % 24 != 0 || vaporKPa.Length != hours || solarWm2.Length != hours || rainMm.Length != hours || windMs.Length != hours)
        {
            throw new ArgumentException("hourly arrays must be of one length, a whole number of days", nameof(airC));
        }

        (FirstDay, AirC, VaporKPa, SolarWm2, RainMm, WindMs) = (firstDay, airC, vaporKPa, solarWm2, rainMm, windMs);
    }

    public DateOnly FirstDay { get; }

    public int Hours => AirC.Length;

    public int DayCount => AirC.Length / 24;

    /// <summary>Air temperature, degC.</summary>
    public double[] AirC { get; }

    /// <summary>Actual vapor pressure, kPa.</summary>
    public double[] VaporKPa { get; }

    /// <summary>Global solar radiation on the horizontal, W/m2.</summary>
    public double[] SolarWm2 { get; }

    /// <summary>Precipitation in the hour, mm.</summary>
    public double[] RainMm { get; }

    /// <summary>Wind speed at 2 m, m/s.</summary>
    public double[] WindMs { get; }
}
