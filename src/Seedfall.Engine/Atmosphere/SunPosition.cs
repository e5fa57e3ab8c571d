using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Atmosphere;

/// <summary>Where the sun stands.</summary>
/// <param name="AltitudeDeg">Degrees above the horizon, geometric (no refraction).</param>
/// <param name="AzimuthDeg">Degrees clockwise from north, 0 to 360.</param>
public readonly record struct SunPosition(double AltitudeDeg, double AzimuthDeg)
{
    // Horizontal parallax of the sun, 8.794 arc seconds (Meeus 1998, chapter 40).
    private const double ParallaxDeg = 8.794 / 3600.0;

    /// <summary>Air at which refraction tables are printed: 101.0 kPa and 10 degC.</summary>
    private const double TableKPa = 101.0;

    /// <summary>
    /// Position at an instant from the center of the earth, within about 0.01 degrees from 1950 to 2050. Meeus 1998, Astronomical
    /// Algorithms, chapters 12 (sidereal time), 13 (horizontal coordinates) and 25 (solar coordinates, lower accuracy).
    /// </summary>
    public static SunPosition At(Place place, DateTimeOffset instant)
    {
        var days = (instant.UtcDateTime - new DateTime(2000, 1, 1, 12, 0, 0, DateTimeKind.Utc)).TotalDays;
        var sun = SunCoordinates.At((days + (DynamicalAheadSeconds(days) / 86400.0)) / 36525.0);
        var centuries = days / 36525.0;
        var siderealDeg = 280.46061837 + (360.98564736629 * days) + (0.000387933 * centuries * centuries) + sun.EquinoxShiftDeg;
        var hourAngle = SolarGeometry.Radians(siderealDeg + place.LongitudeDeg) - sun.RightAscensionRad;
        return FromAngles(SolarGeometry.Radians(place.LatitudeDeg), sun.DeclinationRad, hourAngle);
    }

    /// <summary>
    /// Altitude as seen from the ground, degrees: parallax taken off, refraction added. Saemundsson's formula (Meeus 1998, eq. 16.4)
    /// scaled by pressure and temperature; below -1 degree no refraction is added, since none can be seen there.
    /// </summary>
    /// <param name="pressureKPa">Air pressure, kPa.</param>
    /// <param name="airC">Air temperature, degC.</param>
    public double SeenAltitudeDeg(double pressureKPa = TableKPa, double airC = 10.0)
    {
        var seen = AltitudeDeg - (ParallaxDeg * Math.Cos(SolarGeometry.Radians(AltitudeDeg)));
        return seen < -1.0
            ? seen
            : seen + (pressureKPa / TableKPa * (283.0 / (273.0 + airC)) * 1.02 / 60.0 / Math.Tan(SolarGeometry.Radians(seen + (10.3 / (seen + 5.11)))));
    }

    /// <summary>Dynamical time ahead of universal time, s. Polynomial of Espenak and Meeus 2006 for 2005 to 2050; 2 s off in 1992, which moves the sun by 0.00002 degrees.</summary>
    private static double DynamicalAheadSeconds(double daysFrom2000)
    {
        var years = daysFrom2000 / 365.25;
        return 62.92 + (0.32217 * years) + (0.005589 * years * years);
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
