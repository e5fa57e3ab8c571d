using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Atmosphere;

/// <summary>Where the sun stands.</summary>
/// <param name="AltitudeDeg">Degrees above the horizon, geometric (no refraction).</param>
/// <param name="AzimuthDeg">Degrees clockwise from north, 0 to 360.</param>
public readonly record struct SunPosition(double AltitudeDeg, double AzimuthDeg)
{
    /// <summary>
    /// Position at an instant, within about 0.02 degrees from 1950 to 2050. Low-precision solar coordinates of the
    /// Astronomical Almanac (mean longitude, equation of center, obliquity, sidereal time).
    /// </summary>
    public static SunPosition At(Place place, DateTimeOffset instant)
    {
        var days = (instant.UtcDateTime - new DateTime(2000, 1, 1, 12, 0, 0, DateTimeKind.Utc)).TotalDays;
        var anomaly = SolarGeometry.Radians(357.528 + (0.9856003 * days));
        var eclipticDeg = 280.460 + (0.9856474 * days) + (1.915 * Math.Sin(anomaly)) + (0.020 * Math.Sin(2.0 * anomaly));
        var ecliptic = SolarGeometry.Radians(eclipticDeg);
        var obliquity = SolarGeometry.Radians(23.439 - (0.0000004 * days));
        var declination = Math.Asin(Math.Sin(obliquity) * Math.Sin(ecliptic));
        var rightAscension = Math.Atan2(Math.Cos(obliquity) * Math.Sin(ecliptic), Math.Cos(ecliptic));
        var siderealDeg = 280.46061837 + (360.98564736629 * days);
        var hourAngle = SolarGeometry.Radians(siderealDeg + place.LongitudeDeg) - rightAscension;
        return FromAngles(SolarGeometry.Radians(place.LatitudeDeg), declination, hourAngle);
    }

    private static SunPosition FromAngles(double latitude, double declination, double hourAngle)
    {
        var altitude = Math.Asin(Math.Clamp(SolarGeometry.SineAltitude(latitude, declination, hourAngle), -1.0, 1.0));
        var east = -Math.Sin(hourAngle) * Math.Cos(declination);
        var north = (Math.Sin(declination) * Math.Cos(latitude)) - (Math.Cos(declination) * Math.Sin(latitude) * Math.Cos(hourAngle));
        var azimuth = Math.Atan2(east, north) * (180.0 / Math.PI);
        return new SunPosition(altitude * (180.0 / Math.PI), azimuth < 0.0 ? azimuth + 360.0 : azimuth);
    }
}
