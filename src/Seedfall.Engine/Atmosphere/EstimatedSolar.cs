using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Atmosphere;

/// <summary>Global solar radiation of a day where it was not measured, MJ m-2 d-1.</summary>
public static class EstimatedSolar
{
    /// <summary>Largest share of the extraterrestrial radiation an estimate may give.</summary>
    public const double LargestClearness = 0.75;

    /// <summary>FAO-56 adjustment coefficient for interior places, degC^-0.5.</summary>
    public const double InteriorCoefficient = 0.16;

    /// <summary>FAO-56 adjustment coefficient for coasts, degC^-0.5.</summary>
    public const double CoastalCoefficient = 0.19;

    // Bristow and Campbell 1984 form; constants that gave bias -0.05 and RMSE 3.7 MJ m-2 d-1 on humid stations of the
    // U.S. Climate Reference Network, August to November.
    private const double BristowScale = 0.75;
    private const double BristowRate = 0.012;
    private const double BristowPower = 1.9;
    private const double BristowWetDayFactor = 0.85;
    private const double WetDayMm = 1.0;

    /// <summary>From the day's temperature range, FAO-56 eq. 50 (Hargreaves and Samani), at most 0.75 of the extraterrestrial.</summary>
    public static double HargreavesSamaniMJ(double tmaxC, double tminC, double extraterrestrialMJ, double coefficient = InteriorCoefficient) =>
        Math.Min(coefficient * Math.Sqrt(Math.Max(0.0, tmaxC - tminC)), LargestClearness) * extraterrestrialMJ;

    /// <summary>From the temperature range and rain, Bristow and Campbell 1984 with the range taken from the mean of this and the next minimum.</summary>
    public static double BristowCampbellMJ(double tmaxC, double tminC, double nextTminC, double rainMm, double extraterrestrialMJ)
    {
        var rangeC = Math.Max(0.0, tmaxC - (0.5 * (tminC + nextTminC)));
        var clearness = BristowScale * (1.0 - Math.Exp(-BristowRate * Math.Pow(rangeC, BristowPower)));
        return (rainMm >= WetDayMm ? BristowWetDayFactor : 1.0) * clearness * extraterrestrialMJ;
    }

    /// <summary>From hours of bright sunshine, FAO-56 eq. 35 (Angstrom).</summary>
    public static double FromSunshineMJ(double sunshineHours, double daylightHours, double extraterrestrialMJ, double cloudyShare = 0.25, double sunnyShare = 0.50) =>
        daylightHours <= 0.0 ? 0.0 : (cloudyShare + (sunnyShare * sunshineHours / daylightHours)) * extraterrestrialMJ;

    /// <summary>The day's radiation: as measured, else by <see cref="BristowCampbellMJ"/>.</summary>
    /// <param name="day">The day.</param>
    /// <param name="nextTminC">Lowest temperature of the day after; the day's own where there is none.</param>
    /// <param name="latitudeDeg">Degrees north.</param>
    public static double ForDayMJ(WeatherDay day, double nextTminC, double latitudeDeg) =>
        day.SolarMJ ?? BristowCampbellMJ(day.TmaxC, day.TminC, nextTminC, day.RainMm, SolarGeometry.ExtraterrestrialDailyMJ(latitudeDeg, day.Date.DayOfYear));
}
