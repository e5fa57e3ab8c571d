using System.Text;
using System.Text.Json;
using System.Xml;
using CsCheck;
using NetTopologySuite.Features;
using NetTopologySuite.Geometries;
using NetTopologySuite.IO;
using NetTopologySuite.IO.Converters;
using Seedfall.Exchange.Ground;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Tests.Ground;

public sealed class OutlineRoundTripTests
{
    /// <summary>Half of the seventh place, and what adding loses.</summary>
    private const double HalfPlaceDeg = 5.1e-8;

    [Theory]
    [InlineData(OutlineFileKind.GeoJson)]
    [InlineData(OutlineFileKind.Kml)]
    [InlineData(OutlineFileKind.Kmz)]
    public void Outlines_come_back_with_their_holes(OutlineFileKind kind) => AnyOutline.Some.Sample(
        outlines =>
        {
            var bytes = OutlineFiles.Write(kind, outlines, []);
            var read = OutlineFiles.Read(bytes, "outlines");
            Assert.True(read.IsRead, read.Problem?.ToString());
            Assert.Empty(read.Remarks);
            Assert.Equal(outlines.Select(o => o.Name), read.Outlines.Select(o => o.Name));
            for (var i = 0; i < outlines.Length; i++)
            {
                SameRing(outlines[i].Ring, read.Outlines[i].Ring);
                Assert.Equal(outlines[i].Holes.Count, read.Outlines[i].Holes.Count);
                Assert.All(outlines[i].Holes.Zip(read.Outlines[i].Holes), pair => SameRing(pair.First, pair.Second));
            }

            Assert.Equal(bytes, OutlineFiles.Write(kind, read.Outlines, []));
        },
        iter: 100);

    [Fact]
    public void Routes_come_back_one_for_each_ring() => AnyOutline.Some.Sample(
        outlines =>
        {
            var read = OutlineFiles.Read(OutlineFiles.Write(OutlineFileKind.Gpx, outlines, []), "outlines.gpx");
            Assert.True(read.IsRead, read.Problem?.ToString());
            var rings = outlines.SelectMany(o => o.Holes.Prepend(o.Ring)).ToList();
            Assert.Equal(rings.Count, read.Outlines.Count);
            Assert.All(rings.Zip(read.Outlines), pair => SameRing(pair.First, pair.Second.Ring));
        },
        iter: 100);

    [Fact]
    public void Walks_come_back_with_times_and_accuracies() => AnyOutline.Walk.Sample(
        walk =>
        {
            var read = OutlineFiles.Read(OutlineFiles.Write(OutlineFileKind.Gpx, [], [walk]), "walk.gpx");
            Assert.True(read.IsRead, read.Problem?.ToString());
            Assert.Equal(walk.Fixes, Assert.Single(read.Walks).Fixes);
        },
        iter: 100);

    [Fact]
    public void A_maintained_reader_of_GeoJSON_reads_what_is_written() => AnyOutline.Some.Sample(
        outlines =>
        {
            var options = new JsonSerializerOptions { Converters = { new GeoJsonConverterFactory() } };
            var features = JsonSerializer.Deserialize<FeatureCollection>(OutlineFiles.Write(OutlineFileKind.GeoJson, outlines, []), options)!;
            Assert.Equal(outlines.Length, features.Count);
            for (var i = 0; i < outlines.Length; i++)
            {
                var polygon = Assert.IsType<Polygon>(features[i].Geometry);
                if (polygon.EnvelopeInternal.Width < 180.0)
                {
                    // That reader's plane ends at the 180th meridian, where a ring across it seems to turn the other way.
                    Assert.True(polygon.Shell.IsCCW);
                    Assert.All(polygon.Holes, h => Assert.False(h.IsCCW));
                }

                Assert.Equal(outlines[i].Holes.Count, polygon.NumInteriorRings);
                Assert.Equal(outlines[i].Name, features[i].Attributes?.GetOptionalValue("name"));
                Assert.Equal(outlines[i].Ring[0].LongitudeDeg, polygon.Shell.Coordinates[0].X, HalfPlaceDeg);
                Assert.Equal(outlines[i].Ring[0].LatitudeDeg, polygon.Shell.Coordinates[0].Y, HalfPlaceDeg);
            }
        },
        iter: 60);

    [Fact]
    public void What_a_maintained_writer_of_GeoJSON_writes_is_read() => AnyOutline.One.Sample(
        outline =>
        {
            var factory = new GeometryFactory();
            LinearRing Ring(IReadOnlyList<GeoPoint> ring) => factory.CreateLinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.LongitudeDeg, p.LatitudeDeg))]);
            var polygon = factory.CreatePolygon(Ring(outline.Ring), [.. outline.Holes.Select(Ring)]);
            var options = new JsonSerializerOptions { Converters = { new GeoJsonConverterFactory() } };
            var read = OutlineFiles.Read(JsonSerializer.SerializeToUtf8Bytes<Geometry>(factory.CreateMultiPolygon([polygon]), options), "other.geojson");
            Assert.True(read.IsRead, read.Problem?.ToString());
            Assert.Equal(outline.Ring.Count, Assert.Single(read.Outlines).Ring.Count);
            Assert.Equal(outline.Holes.Count, read.Outlines[0].Holes.Count);
        },
        iter: 60);

    [Fact]
    public void A_maintained_reader_of_GPX_reads_what_is_written() => AnyOutline.Walk.Sample(
        walk =>
        {
            var text = Encoding.UTF8.GetString(OutlineFiles.Write(OutlineFileKind.Gpx, [], [walk]));
            using var reader = XmlReader.Create(new StringReader(text));
            var track = Assert.Single(GpxFile.ReadFrom(reader, new GpxReaderSettings()).Tracks);
            var points = Assert.Single(track.Segments).Waypoints;
            Assert.Equal(walk.Fixes.Count, points.Count);
            Assert.Equal(walk.Fixes[^1].At.LatitudeDeg, points[^1].Latitude.Value, HalfPlaceDeg);
            Assert.Equal(walk.Fixes[^1].Time!.Value.UtcDateTime, points[^1].TimestampUtc);
        },
        iter: 60);

    private static void SameRing(IReadOnlyList<GeoPoint> expected, IReadOnlyList<GeoPoint> found)
    {
        // The way round may have been turned; the first point stays the first.
        Assert.Equal(expected.Count, found.Count);
        var turned = Math.Abs(expected[1].LatitudeDeg - found[1].LatitudeDeg) > HalfPlaceDeg || Math.Abs(expected[1].LongitudeDeg - found[1].LongitudeDeg) > HalfPlaceDeg;
        for (var i = 0; i < expected.Count; i++)
        {
            var other = found[turned ? (found.Count - i) % found.Count : i];
            Assert.Equal(expected[i].LatitudeDeg, other.LatitudeDeg, HalfPlaceDeg);
            Assert.Equal(0.0, Math.IEEERemainder(expected[i].LongitudeDeg - other.LongitudeDeg, 360.0), HalfPlaceDeg);
        }
    }
}
