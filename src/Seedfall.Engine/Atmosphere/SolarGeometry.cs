namespace Seedfall.Engine.Atmosphere;

/// <summary>
/// Sun and earth after FAO Irrigation and Drainage Paper 56 (Allen et al. 1998), chapter 3. Day of year 1 to 366,
/// latitude degrees north, longitude degrees east, hours of local standard time.
/// </summary>
public static class SolarGeometry
{
    /// <summary>Solar constant of FAO-56, MJ m-2 min-1.</summary>
    public const double SolarConstantMJm2min = 0.0820;

    /// <summary>Solar declination, rad. FAO-56 eq. 24.</summary>
    public static double DeclinationRad(int dayOfYear) => 0.409 * Math.Sin((2.0 * Math.PI / 365.0 * dayOfYear) - 1.39);

    /// <summary>Inverse relative distance earth to sun, squared form as used with the solar constant. FAO-56 eq. 23.</summary>
    public static double InverseDistance(int dayOfYear) => 1.0 + (0.033 * Math.Cos(2.0 * Math.PI / 365.0 * dayOfYear));

    /// <summary>Hour angle of sunset, rad, 0 in polar night and pi in polar day. FAO-56 eq. 25.</summary>
    public static double SunsetHourAngleRad(double latitudeRad, double declinationRad) =>
        Math.Acos(Math.Clamp(-Math.Tan(latitudeRad) * Math.Tan(declinationRad), -1.0, 1.0));

    /// <summary>Possible hours of sun. FAO-56 eq. 34.</summary>
    public static double DaylightHours(double latitudeDeg, int dayOfYear) =>
        24.0 / Math.PI * SunsetHourAngleRad(Radians(latitudeDeg), DeclinationRad(dayOfYear));

    /// <summary>Extraterrestrial radiation of the day, MJ m-2 d-1. FAO-56 eq. 21.</summary>
    public static double ExtraterrestrialDailyMJ(double latitudeDeg, int dayOfYear)
    {
        var latitude = Radians(latitudeDeg);
        var declination = DeclinationRad(dayOfYear);
        var sunset = SunsetHourAngleRad(latitude, declination);
        var sum = (sunset * Math.Sin(latitude) * Math.Sin(declination)) + (Math.Cos(latitude) * Math.Cos(declination) * Math.Sin(sunset));
        return Math.Max(0.0, 24.0 * 60.0 / Math.PI * SolarConstantMJm2min * InverseDistance(dayOfYear) * sum);
    }

    /// <summary>Seasonal correction for solar time (equation of time), h. FAO-56 eq. 32 and 33.</summary>
    public static double SeasonalCorrectionHours(int dayOfYear)
    {
        var b = 2.0 * Math.PI * (dayOfYear - 81) / 364.0;
        return (0.1645 * Math.Sin(2.0 * b)) - (0.1255 * Math.Cos(b)) - (0.025 * Math.Sin(b));
    }

    /// <summary>Hour of local standard time at which the sun is highest. FAO-56 eq. 31 solved for an hour angle of 0.</summary>
    /// <param name="longitudeDeg">Degrees east.</param>
    /// <param name="standardOffsetHours">Standard time ahead of UTC, h.</param>
    /// <param name="dayOfYear">1 to 366.</param>
    public static double SolarNoonHour(double longitudeDeg, double standardOffsetHours, int dayOfYear) =>
        12.0 - SeasonalCorrectionHours(dayOfYear) - ((longitudeDeg / 15.0) - standardOffsetHours);

    /// <summary>Hours ahead of UTC of the 15 degree zone the longitude lies in: the default where no zone is known.</summary>
    public static double NominalOffsetHours(double longitudeDeg) => Math.Round(longitudeDeg / 15.0, MidpointRounding.AwayFromZero);

    /// <summary>Solar hour angle at an hour of local standard time, rad, negative in the morning. FAO-56 eq. 31.</summary>
    public static double HourAngleRad(double hour, double solarNoonHour) => Math.PI / 12.0 * (hour - solarNoonHour);

    /// <summary>
    /// Extraterrestrial radiation over a period, MJ m-2 per period, 0 at night. FAO-56 eq. 28 to 30 with the ends of the
    /// period clipped to sunrise and sunset.
    /// </summary>
    /// <param name="latitudeDeg">Degrees north.</param>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="midHour">Middle of the period, hours of local standard time.</param>
    /// <param name="solarNoonHour">From <see cref="SolarNoonHour"/>.</param>
    /// <param name="periodHours">Length of the period, h.</param>
    public static double ExtraterrestrialHourlyMJ(double latitudeDeg, int dayOfYear, double midHour, double solarNoonHour, double periodHours = 1.0)
    {
        var latitude = Radians(latitudeDeg);
        var declination = DeclinationRad(dayOfYear);
        var sunset = SunsetHourAngleRad(latitude, declination);
        var middle = Math.IEEERemainder(HourAngleRad(midHour, solarNoonHour), 2.0 * Math.PI);
        var half = Math.PI * periodHours / 24.0;
        var from = Math.Clamp(middle - half, -sunset, sunset);
        var to = Math.Clamp(middle + half, -sunset, sunset);
        var sum = ((to - from) * Math.Sin(latitude) * Math.Sin(declination))
            + (Math.Cos(latitude) * Math.Cos(declination) * (Math.Sin(to) - Math.Sin(from)));
        return Math.Max(0.0, 12.0 * 60.0 / Math.PI * SolarConstantMJm2min * InverseDistance(dayOfYear) * sum);
    }

    /// <summary>Sine of the solar altitude at an hour angle. FAO-56 eq. 46.</summary>
    public static double SineAltitude(double latitudeRad, double declinationRad, double hourAngleRad) =>
        (Math.Sin(latitudeRad) * Math.Sin(declinationRad)) + (Math.Cos(latitudeRad) * Math.Cos(declinationRad) * Math.Cos(hourAngleRad));

    internal static double Radians(double degrees) => degrees * (Math.PI / 180.0);
}
