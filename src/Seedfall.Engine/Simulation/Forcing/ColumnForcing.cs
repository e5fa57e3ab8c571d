using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Forcing;

/// <summary>
/// Hourly weather with what the surface needs beside it: longwave of a clear and of an overcast sky, and the cloud share.
/// Made once per place and shared by all patches.
/// </summary>
public sealed class ColumnForcing
{
    private const double LeastSkyMJ = 0.5;
    private const double DaylightWm2 = 5.0;

    private ColumnForcing(HourlyWeather weather, double pressureKPa)
    {
        (Weather, PressureKPa) = (weather, pressureKPa);
        ClearEmissivity = new double[weather.DayCount];
        CloudShare = new double[weather.DayCount];
        BlackBodyWm2 = new double[weather.Hours];
    }

    /// <summary>The hours.</summary>
    public HourlyWeather Weather { get; }

    /// <summary>Mean air pressure, kPa.</summary>
    public double PressureKPa { get; }

    /// <summary>Emissivity of the sky without clouds, by the day at its mean air and vapor (Brutsaert 1975).</summary>
    public double[] ClearEmissivity { get; }

    /// <summary>Black-body emission at air temperature, W m-2, by the hour.</summary>
    public double[] BlackBodyWm2 { get; }

    /// <summary>Cloud share of each day, 0 to 1: 1 - solar / clear-sky solar (Crawford and Duchon 1999).</summary>
    public double[] CloudShare { get; }

    /// <summary>Weather at the surface in one hour, with the fitted sky and wind.</summary>
    public SurfaceWeather At(int hour, HeatParameters parameters)
    {
        var emissivity = SkyEmissivity(hour / 24, parameters);
        var solar = Weather.SolarWm2[hour];
        return new SurfaceWeather
        {
            AirC = Weather.AirC[hour],
            VaporKPa = Weather.VaporKPa[hour],
            SolarWm2 = solar,
            LongwaveWm2 = emissivity * BlackBodyWm2[hour],
            WindMs = Weather.WindMs[hour] * (solar > DaylightWm2 ? parameters.DayWind : parameters.NightWind),
            PressureKPa = PressureKPa,
        };
    }

    /// <summary>Emissivity of one day's sky with its clouds, with the fitted numbers.</summary>
    internal double SkyEmissivity(int day, HeatParameters parameters)
    {
        var cloud = Math.Min(1.0, parameters.CloudFactor * CloudShare[day]);
        return cloud + ((1.0 - cloud) * Math.Min(1.0, ClearEmissivity[day] + parameters.SkyOffset));
    }

    /// <summary>From hourly weather of a place.</summary>
    public static ColumnForcing From(HourlyWeather weather, Place place)
    {
        var pressure = Humidity.AtmosphericPressureCore(place.ElevationM);
        var forcing = new ColumnForcing(weather, pressure);
        for (var d = 0; d < weather.DayCount; d++)
        {
            forcing.CloudShare[d] = Cloud(weather, d, place);
            forcing.ClearEmissivity[d] = Atmosphere.SkyEmissivity.Brutsaert(Mean(weather.AirC, d), Mean(weather.VaporKPa, d));
        }

        for (var h = 0; h < weather.Hours; h++)
        {
            forcing.BlackBodyWm2[h] = Longwave.BlackBodyWm2(weather.AirC[h]);
        }

        return forcing;
    }

    /// <summary>From consecutive days; hours are shifted so that their mean is the day's measured mean where there is one.</summary>
    public static ColumnForcing FromDaily(IReadOnlyList<WeatherDay> days, Place place)
    {
        var weather = Disaggregation.FromDaily(days, place);
        for (var d = 0; d < days.Count; d++)
        {
            if (days[d].MeanC is { } mean)
            {
                Shift(weather, d, mean);
            }
        }

        return From(weather, place);
    }

    private static void Shift(HourlyWeather weather, int day, double meanC)
    {
        var air = weather.AirC.AsSpan(24 * day, 24);
        var shift = meanC - Mean(weather.AirC, day);
        for (var h = 0; h < 24; h++)
        {
            air[h] += shift;
            weather.VaporKPa[(24 * day) + h] = Math.Min(weather.VaporKPa[(24 * day) + h], Humidity.SaturationVaporPressureCore(air[h]));
        }
    }

    private static double Mean(double[] hours, int day)
    {
        double sum = 0;
        for (var h = 24 * day; h < 24 * (day + 1); h++)
        {
            sum += hours[h];
        }

        return sum / 24.0;
    }

    private static double Cloud(HourlyWeather weather, int day, Place place)
    {
        double solar = 0;
        for (var h = 24 * day; h < 24 * (day + 1); h++)
        {
            solar += weather.SolarWm2[h] * 3600.0e-6;
        }

        var date = weather.FirstDay.AddDays(day);
        var clear = ClearSky.RsoMJ(SolarGeometry.ExtraterrestrialDailyMJ(place.LatitudeDeg, date.DayOfYear), place.ElevationM);
        return clear > LeastSkyMJ ? Math.Clamp(1.0 - (solar / clear), 0.0, 1.0) : 0.5;
    }
}
