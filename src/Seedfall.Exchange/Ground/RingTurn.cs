using System.Globalization;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Ground;

/// <summary>Rings the way round a format wants them; the first point stays the first.</summary>
internal static class RingTurn
{
    internal static IReadOnlyList<GeoPoint> Counterclockwise(IReadOnlyList<GeoPoint> ring) => IsCounterclockwise(ring) ? ring : Turned(ring);

    internal static IReadOnlyList<GeoPoint> Clockwise(IReadOnlyList<GeoPoint> ring) => IsCounterclockwise(ring) ? Turned(ring) : ring;

    private static bool IsCounterclockwise(IReadOnlyList<GeoPoint> ring)
    {
        var sum = 0.0;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            sum += Math.IEEERemainder(a.LongitudeDeg - ring[0].LongitudeDeg, 360.0) * (b.LatitudeDeg - ring[0].LatitudeDeg)
                - Math.IEEERemainder(b.LongitudeDeg - ring[0].LongitudeDeg, 360.0) * (a.LatitudeDeg - ring[0].LatitudeDeg);
        }

        return sum >= 0.0;
    }

    private static IReadOnlyList<GeoPoint> Turned(IReadOnlyList<GeoPoint> ring) => [ring[0], .. ring.Skip(1).Reverse()];
}

/// <summary>Degrees as files write them.</summary>
internal static class Degrees
{
    /// <summary>Seven places: a centimeter.</summary>
    internal static string Text(double degrees) => (Math.Round(degrees, 7) + 0.0).ToString("0.0######", CultureInfo.InvariantCulture);
}
