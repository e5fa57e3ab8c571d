using CsCheck;
using Seedfall.Planning.Ground;

namespace Seedfall.Checks.Published.Ground;

/// <summary>Meters in a degree, and how far the flat sheet errs.</summary>
public sealed class DegreeLengthChecks
{
    [Fact]
    public void Degrees_at_the_equator_the_pole_and_48_north()
    {
        // A public answer page on degree lengths (WGS 84) gives 110,574 m of latitude and 111,320 m of longitude at the equator
        // and 111,694 m of latitude at the pole; the caption of a published WGS 84 chart reads 74.63 km of longitude and
        // 111.2 km of latitude at 48 degrees north.
        Assert.Equal(110_574, new LocalPlane(new(0, 0)).NorthMPerDeg, 0.5);
        Assert.Equal(111_320, new LocalPlane(new(0, 0)).EastMPerDeg, 0.6);
        Assert.Equal(111_694, new LocalPlane(new(89, 0)).NorthMPerDeg, 1.0);
        Assert.Equal(74_630, new LocalPlane(new(48, 37.8)).EastMPerDeg, 5.0);
        Assert.Equal(111_200, new LocalPlane(new(48, 37.8)).NorthMPerDeg, 50.0);

        // An encyclopedia's article on geographic coordinates: a second at the equator is 30.715 m north and 30.92 m east.
        Assert.Equal(30.715, new LocalPlane(new(0, 0)).NorthMPerDeg / 3600.0, 0.0006);
        Assert.Equal(30.92, new LocalPlane(new(0, 0)).EastMPerDeg / 3600.0, 0.005);
    }

    [Fact]
    public void The_published_series_for_every_latitude()
    {
        // The encyclopedia's article gives for WGS 84: 111132.92 - 559.82 cos 2p + 1.175 cos 4p - 0.0023 cos 6p for latitude and
        // 111412.84 cos p - 93.5 cos 3p + 0.118 cos 5p for longitude (the second from memory), in meters; its rounded
        // coefficients are good to a few centimeters in the degree.
        for (var latitudeDeg = -80; latitudeDeg <= 80; latitudeDeg += 5)
        {
            var p = latitudeDeg * Math.PI / 180.0;
            var plane = new LocalPlane(new(latitudeDeg, -84));
            Assert.Equal(111132.92 - 559.82 * Math.Cos(2 * p) + 1.175 * Math.Cos(4 * p) - 0.0023 * Math.Cos(6 * p), plane.NorthMPerDeg, 0.1);
            Assert.Equal(111412.84 * Math.Cos(p) - 93.5 * Math.Cos(3 * p) + 0.118 * Math.Cos(5 * p), plane.EastMPerDeg, 0.1);
        }
    }

    [Fact]
    public void The_stated_error_of_the_flat_sheet_holds_against_space_coordinates() =>
        Gen.Select(Gen.Double[-66, 66], Gen.Double[-180, 180], Gen.Double[-1000, 1000], Gen.Double[-1000, 1000]).Sample((latitude, longitude, east, north) =>
        {
            // Straight-line distance between the two points on the ellipsoid in earth-centered coordinates: an exact measure
            // that shares nothing with the plane but the ellipsoid.
            var plane = new LocalPlane(new(latitude, longitude));
            var there = plane.ToEarth(new GroundPoint(east, north));
            var flatM = Math.Sqrt(east * east + north * north);
            var trueM = Apart(new(latitude, longitude), there);
            var statedM = flatM * (flatM * Math.Abs(Math.Tan(latitude * Math.PI / 180.0)) / 6.371e6 + 2e-8) + flatM * flatM / 6.371e6 * 0.01 + 1e-6;
            Assert.InRange(Math.Abs(trueM - flatM), 0.0, statedM);
            var back = plane.ToGround(there);
            Assert.Equal(east, back.EastM, 1e-6);
            Assert.Equal(north, back.NorthM, 1e-6);
        });

    private static double Apart(GeoPoint a, GeoPoint b)
    {
        var (p, q) = (Space(a), Space(b));
        return Math.Sqrt(Math.Pow(p.X - q.X, 2) + Math.Pow(p.Y - q.Y, 2) + Math.Pow(p.Z - q.Z, 2));
    }

    private static (double X, double Y, double Z) Space(GeoPoint point)
    {
        const double A = 6378137.0, F = 1.0 / 298.257223563, E2 = F * (2.0 - F);
        var (sinLat, cosLat) = Math.SinCos(point.LatitudeDeg * Math.PI / 180.0);
        var (sinLon, cosLon) = Math.SinCos(point.LongitudeDeg * Math.PI / 180.0);
        var n = A / Math.Sqrt(1.0 - E2 * sinLat * sinLat);
        return (n * cosLat * cosLon, n * cosLat * sinLon, n * (1.0 - E2) * sinLat);
    }
}
