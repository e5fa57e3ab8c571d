using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Ground;

/// <summary>The outlines in a GeoJSON object.</summary>
internal readonly ref struct GeoJsonShapes(OutlineGather gather, ReadOnlySpan<byte> utf8)
{
    private readonly ReadOnlySpan<byte> _utf8 = utf8;

    internal void Take(GeoJsonThing thing, string? name)
    {
        switch (thing.Type)
        {
            case "FeatureCollection" or "Feature" or "GeometryCollection":
                foreach (var inner in thing.Inner)
                {
                    Take(inner, thing.Name ?? name);
                }

                break;
            case "Polygon":
                Polygon(Listed(thing), name, thing.At);
                break;
            case "MultiPolygon":
                foreach (var polygon in Listed(thing).Items)
                {
                    Polygon(polygon, name, polygon.At);
                }

                break;
            case "LineString":
                Line(Listed(thing), name);
                break;
            case "MultiLineString":
                foreach (var line in Listed(thing).Items)
                {
                    Line(line, name);
                }

                break;
            case "Point" or "MultiPoint":
                gather.Remark("a point was passed over");
                break;
            default:
                throw new GeoJsonFault(thing.At, "a GeoJSON object: FeatureCollection, Feature, Polygon, MultiPolygon, LineString or a collection of them", thing.Type is null ? "an object without a type" : $"the type \"{GeoJsonReader.Cut(thing.Type)}\"");
        }
    }

    private static GeoJsonCoordinates Listed(GeoJsonThing thing) =>
        thing.Coordinates is { Numbers: 0 } all ? all : throw new GeoJsonFault(thing.At, $"coordinates of a {thing.Type}", thing.Coordinates is null ? "none" : "a single position");

    private void Polygon(GeoJsonCoordinates rings, string? name, long at)
    {
        if (rings.Items.Count == 0)
        {
            throw new GeoJsonFault(at, "a polygon with an outer ring", "none");
        }

        if (rings.Items.Count > OutlineLimits.MostHoles + 1)
        {
            throw new GeoJsonFault(at, $"at most {OutlineLimits.MostHoles} holes", $"{rings.Items.Count - 1}");
        }

        var all = new List<IReadOnlyList<GeoPoint>>(rings.Items.Count);
        foreach (var ring in rings.Items)
        {
            all.Add(gather.Ring(Points(ring), closedByRule: true, Spot(ring.At)));
        }

        gather.Outline(name, all[0], all[1..], Spot(at));
    }

    private void Line(GeoJsonCoordinates line, string? name) =>
        gather.Outline(name, gather.Ring(Points(line), closedByRule: false, Spot(line.At)), [], Spot(line.At));

    private List<GeoPoint> Points(GeoJsonCoordinates ring)
    {
        var points = new List<GeoPoint>(ring.Items.Count);
        foreach (var position in ring.Items)
        {
            if (position.Numbers < 2)
            {
                throw new GeoJsonFault(position.At, "positions like [-84.12, 42.31]: longitude, latitude", position.Numbers == 1 ? "one number" : "a list deeper than the type has");
            }

            // The place is looked up only where a point is refused: it costs a walk through the file.
            points.Add(Math.Abs(position.LatitudeDeg) <= 90.0 && Math.Abs(position.LongitudeDeg) <= 180.0
                ? gather.Point(position.LongitudeDeg, position.LatitudeDeg, default)
                : gather.Point(position.LongitudeDeg, position.LatitudeDeg, Spot(position.At)));
        }

        return points;
    }

    private Spot Spot(long offset) => OffsetSpot.Of(_utf8, offset);
}

/// <summary>Line and column of a byte.</summary>
internal static class OffsetSpot
{
    internal static Spot Of(ReadOnlySpan<byte> utf8, long offset)
    {
        var before = utf8[..(int)Math.Min(offset, utf8.Length)];
        return new(before.Count((byte)'\n') + 1, before.Length - before.LastIndexOf((byte)'\n'));
    }
}
