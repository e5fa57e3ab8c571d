namespace Seedfall.Engine.Atmosphere;

/// <summary>The sun among the stars, as seen from the center of the earth.</summary>
/// <param name="RightAscensionRad">Apparent right ascension, rad.</param>
/// <param name="DeclinationRad">Apparent declination, rad.</param>
/// <param name="LongitudeDeg">Apparent ecliptic longitude, degrees, 0 to 360.</param>
/// <param name="DistanceAu">Distance, astronomical units.</param>
/// <param name="EquinoxShiftDeg">Nutation in right ascension, which apparent sidereal time carries, degrees.</param>
public readonly record struct SunCoordinates(double RightAscensionRad, double DeclinationRad, double LongitudeDeg, double DistanceAu, double EquinoxShiftDeg)
{
    /// <summary>
    /// Coordinates within 0.01 degrees. Meeus 1998, Astronomical Algorithms, chapter 25, lower accuracy: mean longitude and anomaly,
    /// equation of center, aberration and the largest term of nutation; mean obliquity of chapter 22.
    /// </summary>
    /// <param name="centuries">Julian centuries of dynamical time from 2000 January 1, 12 h.</param>
    public static SunCoordinates At(double centuries)
    {
        var t = centuries;
        var meanLongitudeDeg = 280.46646 + (t * (36000.76983 + (t * 0.0003032)));
        var anomaly = SolarGeometry.Radians(357.52911 + (t * (35999.05029 - (t * 0.0001537))));
        var eccentricity = 0.016708634 - (t * (0.000042037 + (t * 0.0000001267)));
        var centerDeg = ((1.914602 - (t * (0.004817 + (t * 0.000014)))) * Math.Sin(anomaly))
            + ((0.019993 - (t * 0.000101)) * Math.Sin(2.0 * anomaly)) + (0.000289 * Math.Sin(3.0 * anomaly));
        var node = SolarGeometry.Radians(125.04 - (1934.136 * t));
        var nutationDeg = -0.00478 * Math.Sin(node);
        var longitudeDeg = meanLongitudeDeg + centerDeg - 0.00569 + nutationDeg;
        var obliquity = SolarGeometry.Radians(23.4392911 - (t * (0.0130042 + (t * 0.00000016))) + (0.00256 * Math.Cos(node)));
        var longitude = SolarGeometry.Radians(longitudeDeg);
        return new SunCoordinates(
            Math.Atan2(Math.Cos(obliquity) * Math.Sin(longitude), Math.Cos(longitude)),
            Math.Asin(Math.Sin(obliquity) * Math.Sin(longitude)),
            Wrapped(longitudeDeg),
            1.000001018 * (1.0 - (eccentricity * eccentricity)) / (1.0 + (eccentricity * Math.Cos(anomaly + SolarGeometry.Radians(centerDeg)))),
            nutationDeg * Math.Cos(obliquity));
    }

    private static double Wrapped(double degrees)
    {
        var rest = degrees % 360.0;
        return rest < 0.0 ? rest + 360.0 : rest;
    }
}
