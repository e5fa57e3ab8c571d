using System.Globalization;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Walks;

namespace Seedfall.Exchange.Ground;

/// <summary>Collects what a reader finds, and holds every point and ring against the limits as it comes.</summary>
internal sealed class OutlineGather
{
    private readonly List<ImportedOutline> _outlines = [];
    private readonly List<ImportedWalk> _walks = [];
    private readonly SortedDictionary<string, int> _remarks = new(StringComparer.Ordinal);
    private int _points;

    internal IReadOnlyList<ImportedOutline> Outlines => _outlines;

    internal IReadOnlyList<ImportedWalk> Walks => _walks;

    internal IReadOnlyList<string> Remarks => [.. _remarks.Select(r => r.Value == 1 ? r.Key : string.Create(CultureInfo.InvariantCulture, $"{r.Key} ({r.Value} times)"))];

    internal void Remark(string what) => _remarks[what] = _remarks.GetValueOrDefault(what) + 1;

    /// <summary>One more point read; refused beyond the limit, before it is kept.</summary>
    internal GeoPoint Point(double longitudeDeg, double latitudeDeg, Spot at)
    {
        if (++_points > OutlineLimits.MostPoints)
        {
            throw new RefusedException(at, $"at most {OutlineLimits.MostPoints:N0} points in one file", "more");
        }

        if (!(Math.Abs(latitudeDeg) <= 90.0) || !(Math.Abs(longitudeDeg) <= 180.0))
        {
            throw new RefusedException(
                at,
                Math.Abs(latitudeDeg) is > 90.0 and <= 180.0 && Math.Abs(longitudeDeg) <= 90.0
                    ? "latitude from -90 to 90 and longitude from -180 to 180 degrees; they look reversed, or the file is in another system than WGS 84"
                    : "latitude from -90 to 90 and longitude from -180 to 180 degrees (WGS 84)",
                string.Create(CultureInfo.InvariantCulture, $"latitude {latitudeDeg}, longitude {longitudeDeg}"));
        }

        return new(latitudeDeg, longitudeDeg);
    }

    /// <summary>Refuses a ring as soon as it is too long.</summary>
    internal static void Grow(int points, Spot at)
    {
        if (points > OutlineLimits.MostRingPoints)
        {
            throw new RefusedException(at, $"at most {OutlineLimits.MostRingPoints:N0} points in one ring", "more");
        }
    }

    /// <summary>A ring without its repeated end; refused with fewer than three different points.</summary>
    internal IReadOnlyList<GeoPoint> Ring(IReadOnlyList<GeoPoint> points, bool closedByRule, Spot at)
    {
        var ring = new List<GeoPoint>(points.Count);
        foreach (var point in points)
        {
            if (ring.Count == 0 || ring[^1] != point)
            {
                ring.Add(point);
            }
        }

        var closed = ring.Count > 1 && ring[0] == ring[^1];
        if (closed)
        {
            ring.RemoveAt(ring.Count - 1);
        }

        if (ring.Distinct().Count() < 3)
        {
            throw new RefusedException(at, "an outline of at least three different points", $"{ring.Distinct().Count()}");
        }

        if (!closed)
        {
            Remark(closedByRule ? "a ring that does not end where it starts was closed" : "an open line was closed to an outline");
        }

        return ring;
    }

    internal void Outline(string? name, IReadOnlyList<GeoPoint> ring, IReadOnlyList<IReadOnlyList<GeoPoint>> holes, Spot at)
    {
        if (_outlines.Count >= OutlineLimits.MostShapes || holes.Count > OutlineLimits.MostHoles)
        {
            throw new RefusedException(at, $"at most {OutlineLimits.MostShapes} outlines of at most {OutlineLimits.MostHoles} holes", "more");
        }

        if (holes.Sum(h => h.Count) > OutlineLimits.MostHolePoints)
        {
            throw new RefusedException(at, $"at most {OutlineLimits.MostHolePoints:N0} points in all holes of one outline", "more");
        }

        var outline = new ImportedOutline(Short(name), ring, holes);
        Size(outline, at);
        _outlines.Add(outline);
    }

    internal void Walk(string? name, IReadOnlyList<TrackFix> fixes, Spot at)
    {
        if (_walks.Count >= OutlineLimits.MostShapes)
        {
            throw new RefusedException(at, $"at most {OutlineLimits.MostShapes} walks", "more");
        }

        if (fixes.Count > 0)
        {
            _walks.Add(new(Short(name), fixes));
        }
    }

    private static void Size(ImportedOutline outline, Spot at)
    {
        if (Math.Abs(outline.Ring[0].LatitudeDeg) > LocalPlane.MostLatitudeDeg)
        {
            throw new RefusedException(at, "a place a lawn can grow", "a point at a pole of the earth");
        }

        var onSheet = outline.OnSheet(new LocalPlane(outline.Ring[0]));
        if (onSheet.Ring.Concat(onSheet.Holes.SelectMany(h => h)).Any(p => Math.Abs(p.EastM) > LocalPlane.ReachM || Math.Abs(p.NorthM) > LocalPlane.ReachM))
        {
            throw new RefusedException(at, $"the outline of a lawn, all within {LocalPlane.ReachM / 1000.0:0} km; latitude and longitude may be reversed", "points farther apart");
        }

        var areaM2 = PolygonArea.Of(onSheet.Ring, []).SquareMeters;
        if (areaM2 > OutlineLimits.MostAreaM2 || (areaM2 < OutlineLimits.LeastAreaM2 && OutlineFaults.Of(onSheet).Count == 0))
        {
            throw new RefusedException(at, "an area from 0.05 m2 (half a square foot) to 100 ha", string.Create(CultureInfo.InvariantCulture, $"{areaM2:0.####} m2"));
        }
    }

    private static string? Short(string? name)
    {
        var clean = name is null ? "" : string.Concat(name.Where(c => !char.IsControl(c))).Trim();
        return clean.Length == 0 ? null : clean.Length > 200 ? clean[..200] : clean;
    }
}
