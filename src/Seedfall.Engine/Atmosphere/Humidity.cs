using Seedfall.Engine.Units;

namespace Seedfall.Engine.Atmosphere;

/// <summary>
/// Water vapor in air after FAO-56 chapter 3. Methods named <c>...Core</c> take and give plain doubles in the unit of their
/// names (degC, kPa, percent) for use inside loops; the others carry units.
/// </summary>
public static class Humidity
{
    /// <summary>Saturation vapor pressure at a temperature. FAO-56 eq. 11.</summary>
    public static Pressure SaturationVaporPressure(Temperature air) => Pressure.FromKilopascals(SaturationVaporPressureCore(air.Celsius));

    /// <summary>Saturation vapor pressure, kPa. FAO-56 eq. 11.</summary>
    public static double SaturationVaporPressureCore(double airC) => 0.6108 * Math.Exp(17.27 * airC / (airC + 237.3));

    /// <summary>Mean saturation vapor pressure of a day: the mean of the two at the extremes. FAO-56 eq. 12.</summary>
    public static Pressure MeanSaturationVaporPressure(Temperature tmax, Temperature tmin) =>
        Pressure.FromKilopascals(MeanSaturationVaporPressureCore(tmax.Celsius, tmin.Celsius));

    /// <summary>Mean saturation vapor pressure of a day, kPa. FAO-56 eq. 12.</summary>
    public static double MeanSaturationVaporPressureCore(double tmaxC, double tminC) =>
        0.5 * (SaturationVaporPressureCore(tmaxC) + SaturationVaporPressureCore(tminC));

    /// <summary>Slope of the saturation vapor pressure curve, kPa per degC. FAO-56 eq. 13.</summary>
    public static double SlopeKPaPerC(double airC) => 4098.0 * SaturationVaporPressureCore(airC) / ((airC + 237.3) * (airC + 237.3));

    /// <summary>Mean air pressure at an elevation. FAO-56 eq. 7.</summary>
    public static Pressure AtmosphericPressure(Length elevation) => Pressure.FromKilopascals(AtmosphericPressureCore(elevation.Meters));

    /// <summary>Mean air pressure, kPa. FAO-56 eq. 7.</summary>
    public static double AtmosphericPressureCore(double elevationM) => 101.3 * Math.Pow((293.0 - (0.0065 * elevationM)) / 293.0, 5.26);

    /// <summary>Psychrometric constant, kPa per degC, from air pressure in kPa. FAO-56 eq. 8.</summary>
    public static double PsychrometricConstantKPaPerC(double pressureKPa) => 0.665e-3 * pressureKPa;

    /// <summary>Temperature at which a vapor pressure saturates; throws at or below 0 kPa. Inverse of FAO-56 eq. 11.</summary>
    public static Temperature DewPoint(Pressure vapor) => vapor.Kilopascals > 0.0
        ? Temperature.FromCelsius(DewPointCore(vapor.Kilopascals))
        : throw new ArgumentOutOfRangeException(nameof(vapor), vapor, "a vapor pressure above 0 kPa is needed");

    /// <summary>Dew point, degC, of a vapor pressure above 0 kPa. Inverse of FAO-56 eq. 11.</summary>
    public static double DewPointCore(double vaporKPa)
    {
        var log = Math.Log(vaporKPa / 0.6108);
        return 237.3 * log / (17.27 - log);
    }

    /// <summary>Wet-bulb temperature at sea-level pressure from air temperature and relative humidity (5 to 99 percent). Stull 2011, J. Appl. Meteorol. Climatol. 50:2267.</summary>
    public static Temperature WetBulb(Temperature air, Fraction relativeHumidity) =>
        Temperature.FromCelsius(WetBulbCore(air.Celsius, relativeHumidity.Percent));

    /// <summary>Wet-bulb temperature, degC. Stull 2011.</summary>
    public static double WetBulbCore(double airC, double humidityPct) =>
        (airC * Math.Atan(0.151977 * Math.Sqrt(humidityPct + 8.313659)))
        + Math.Atan(airC + humidityPct)
        - Math.Atan(humidityPct - 1.676331)
        + (0.00391838 * Math.Pow(humidityPct, 1.5) * Math.Atan(0.023101 * humidityPct))
        - 4.686035;

    /// <summary>Air temperature minus wet bulb, degC: how fast spray droplets dry. Wet bulb by Stull 2011.</summary>
    public static double DeltaTC(Temperature air, Fraction relativeHumidity) => air.Celsius - WetBulb(air, relativeHumidity).Celsius;
}
