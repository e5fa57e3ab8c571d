using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Atmosphere;

/// <summary>By which FAO-56 route a day's vapor pressure was had, best first.</summary>
public enum VaporRoute
{
    /// <summary>Highest and lowest relative humidity (eq. 17).</summary>
    HumidityExtremes,

    /// <summary>Highest relative humidity (eq. 18).</summary>
    HumidityMax,

    /// <summary>Mean relative humidity (eq. 19).</summary>
    HumidityMean,

    /// <summary>No humidity: dew point taken as the lowest temperature (eq. 48).</summary>
    LowestTemperature,
}

/// <summary>Actual vapor pressure by each route of FAO-56 chapter 3. Doubles are degC, percent and kPa as named.</summary>
public static class ActualVapor
{
    /// <summary>From the dew point. FAO-56 eq. 14.</summary>
    public static Pressure FromDewPoint(Temperature dewPoint) => Humidity.SaturationVaporPressure(dewPoint);

    /// <summary>From dry and wet bulb of a psychrometer, kPa; coefficient 0.000662 per degC for a ventilated (Asmann) one. FAO-56 eq. 15.</summary>
    public static double FromWetBulbKPa(double dryC, double wetC, double pressureKPa, double coefficientPerC = 0.000662) =>
        Humidity.SaturationVaporPressureCore(wetC) - (coefficientPerC * pressureKPa * (dryC - wetC));

    /// <summary>From both humidity extremes, kPa. FAO-56 eq. 17.</summary>
    public static double FromHumidityExtremesKPa(double tmaxC, double tminC, double humidityMaxPct, double humidityMinPct) =>
        0.005 * ((Humidity.SaturationVaporPressureCore(tminC) * humidityMaxPct) + (Humidity.SaturationVaporPressureCore(tmaxC) * humidityMinPct));

    /// <summary>From the highest humidity, kPa. FAO-56 eq. 18.</summary>
    public static double FromHumidityMaxKPa(double tminC, double humidityMaxPct) => 0.01 * humidityMaxPct * Humidity.SaturationVaporPressureCore(tminC);

    /// <summary>From the mean humidity, kPa. FAO-56 eq. 19.</summary>
    public static double FromHumidityMeanKPa(double tmaxC, double tminC, double humidityMeanPct) =>
        0.01 * humidityMeanPct * Humidity.MeanSaturationVaporPressureCore(tmaxC, tminC);

    /// <summary>Where no humidity is known: dew point at the lowest temperature, kPa. FAO-56 eq. 48.</summary>
    public static double FromTminKPa(double tminC) => Humidity.SaturationVaporPressureCore(tminC);

    /// <summary>The best route a day's values allow.</summary>
    public static VaporRoute RouteFor(WeatherDay day) => day switch
    {
        { HumidityMaxPct: not null, HumidityMinPct: not null } => VaporRoute.HumidityExtremes,
        { HumidityMaxPct: not null } => VaporRoute.HumidityMax,
        { HumidityMeanPct: not null } => VaporRoute.HumidityMean,
        _ => VaporRoute.LowestTemperature,
    };

    /// <summary>The day's vapor pressure by <see cref="RouteFor"/>, kPa.</summary>
    public static double ForDayKPa(WeatherDay day) => RouteFor(day) switch
    {
        VaporRoute.HumidityExtremes => FromHumidityExtremesKPa(day.TmaxC, day.TminC, day.HumidityMaxPct!.Value, day.HumidityMinPct!.Value),
        VaporRoute.HumidityMax => FromHumidityMaxKPa(day.TminC, day.HumidityMaxPct!.Value),
        VaporRoute.HumidityMean => FromHumidityMeanKPa(day.TmaxC, day.TminC, day.HumidityMeanPct!.Value),
        _ => FromTminKPa(day.TminC),
    };
}
