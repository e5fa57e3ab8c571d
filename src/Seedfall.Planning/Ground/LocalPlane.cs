namespace Seedfall.Planning.Ground;

/// <summary>
/// Degrees to meters east and north of a fixed point, and back: the plane that touches the WGS 84 ellipsoid there.
/// <c>east = N cos(lat0) dLon</c>, <c>north = M dLat</c> with the radii of curvature
/// <c>N = a / sqrt(1 - e^2 sin^2 lat0)</c> (prime vertical) and <c>M = a (1 - e^2) / (1 - e^2 sin^2 lat0)^1.5</c> (meridian);
/// a = 6,378,137 m and 1/f = 298.257223563 (NGA.STND.0036, World Geodetic System 1984).
/// </summary>
/// <remarks>
/// Error: a length at the distance d from the zero point is off by no more than the share <c>d tan(lat) / R</c>, since
/// meridians draw together: 0.02 % at 1 km and 45 degrees, 0.03 % at 60. Height above the sea would add 0.016 % per km and
/// is left out. Both are far below what any measuring of a lawn can tell.
/// </remarks>
public sealed class LocalPlane
{
    /// <summary>How far from the zero point the plane is good for, m.</summary>
    public const double ReachM = 20_000.0;

    private const double EquatorM = 6_378_137.0;
    private const double Flattening = 1.0 / 298.257223563;
    private const double SquaredEccentricity = Flattening * (2.0 - Flattening);
    private const double RadPerDeg = Math.PI / 180.0;

    /// <summary>The plane about a point; throws at the poles and for what is no point of the earth.</summary>
    public LocalPlane(GeoPoint origin)
    {
        if (!(Math.Abs(origin.LatitudeDeg) <= MostLatitudeDeg) || !(Math.Abs(origin.LongitudeDeg) <= 180.0))
        {
            throw new ArgumentOutOfRangeException(nameof(origin), origin, "a point between 89 degrees south and north and 180 degrees west and east is needed");
        }

        Origin = origin;
        var latitude = origin.LatitudeDeg * RadPerDeg;
        var bulge = 1.0 - SquaredEccentricity * Math.Sin(latitude) * Math.Sin(latitude);
        NorthMPerDeg = EquatorM * (1.0 - SquaredEccentricity) / (bulge * Math.Sqrt(bulge)) * RadPerDeg;
        EastMPerDeg = EquatorM / Math.Sqrt(bulge) * Math.Cos(latitude) * RadPerDeg;
    }

    /// <summary>The farthest north or south a plane is made, degrees.</summary>
    public const double MostLatitudeDeg = 89.0;

    public GeoPoint Origin { get; }

    /// <summary>Length of a degree of latitude here, m.</summary>
    public double NorthMPerDeg { get; }

    /// <summary>Length of a degree of longitude here, m.</summary>
    public double EastMPerDeg { get; }

    /// <summary>Meters east and north of the zero point; the short way round where the 180th meridian lies between.</summary>
    public GroundPoint ToGround(GeoPoint point) => new(
        Math.IEEERemainder(point.LongitudeDeg - Origin.LongitudeDeg, 360.0) * EastMPerDeg,
        (point.LatitudeDeg - Origin.LatitudeDeg) * NorthMPerDeg);

    /// <summary>The point of the earth at these meters; longitude from -180 to 180.</summary>
    public GeoPoint ToEarth(GroundPoint point) => new(
        Origin.LatitudeDeg + point.NorthM / NorthMPerDeg,
        Math.IEEERemainder(Origin.LongitudeDeg + point.EastM / EastMPerDeg, 360.0));

    /// <summary>Every point of a ring in meters.</summary>
    public IReadOnlyList<GroundPoint> ToGround(IReadOnlyList<GeoPoint> ring) => [.. ring.Select(ToGround)];

    /// <summary>Every point of a ring in degrees.</summary>
    public IReadOnlyList<GeoPoint> ToEarth(IReadOnlyList<GroundPoint> ring) => [.. ring.Select(ToEarth)];
}
