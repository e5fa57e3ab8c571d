using System.Text;
using Seedfall.Exchange.Ground;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Tests.Ground;

public sealed class OutlineReadTests
{
    [Fact]
    public void GeoJSON_with_a_hole_and_heights()
    {
        var read = Read(OutlineText.GeoJson);
        var outline = Assert.Single(read.Outlines);
        Assert.Equal("Front", outline.Name);
        Assert.Equal(4, outline.Ring.Count);
        Assert.Equal(3, Assert.Single(outline.Holes).Count);
        Assert.Equal(new GeoPoint(42.31, -84.12), outline.Ring[0]);
        Assert.Empty(read.Remarks);
    }

    [Fact]
    public void A_ring_turned_the_other_way_is_the_same_outline()
    {
        var turned = OutlineText.GeoJson.Replace("[-84.1197, 42.3100], [-84.1197, 42.3102], [-84.1200, 42.3102]", "[-84.1200, 42.3102], [-84.1197, 42.3102], [-84.1197, 42.3100]", StringComparison.Ordinal);
        Assert.NotEqual(OutlineText.GeoJson, turned);
        Assert.Equal(AreaM2(OutlineText.GeoJson), AreaM2(turned), 6);
    }

    [Fact]
    public void A_GPX_track_with_times_is_a_walk_and_a_waypoint_is_told()
    {
        var read = Read(OutlineText.Gpx);
        var walk = Assert.Single(read.Walks);
        Assert.Equal("Back lawn edge", walk.Name);
        Assert.Equal(6.0, walk.Fixes[0].AccuracyM);
        Assert.Null(walk.Fixes[1].AccuracyM);
        Assert.Equal(new DateTimeOffset(2026, 8, 20, 14, 3, 24, TimeSpan.Zero), walk.Fixes[1].Time);
        Assert.Contains(read.Remarks, r => r.Contains("waypoint", StringComparison.Ordinal));
        Assert.Contains(read.Remarks, r => r.Contains("dilution", StringComparison.Ordinal));
    }

    [Fact]
    public void A_GPX_route_is_an_outline_of_either_version()
    {
        const string Route = "<gpx version='1.0' xmlns='http://www.topografix.com/GPX/1/0'><rte><rtept lat='42' lon='-84'/><rtept lat='42' lon='-83.9997'/><rtept lat='42.0002' lon='-84'/></rte></gpx>";
        var read = Read(Route);
        Assert.Equal(3, Assert.Single(read.Outlines).Ring.Count);
        Assert.Equal(["an open line was closed to an outline"], read.Remarks);
    }

    [Fact]
    public void KML_with_inner_boundary_and_line()
    {
        var read = Read(OutlineText.Kml);
        Assert.Equal(2, read.Outlines.Count);
        Assert.Equal("Front & side", read.Outlines[0].Name);
        Assert.Single(read.Outlines[0].Holes);
        Assert.Equal(["an open line was closed to an outline"], read.Remarks);
        Assert.Equal(AreaM2(OutlineText.GeoJson), PatchArea.Of(read.Outlines[0].OnSheet(new LocalPlane(read.Outlines[0].Ring[0]))).SquareMeters, 6);
    }

    [Fact]
    public void A_KML_track_is_a_walk_and_a_link_is_never_followed()
    {
        var read = Read("<kml xmlns='http://www.opengis.net/kml/2.2'><Document><NetworkLink><Link><href>http://example.org/x.kml</href></Link></NetworkLink>"
            + "<Placemark><Track><when>2026-08-20T14:00:00Z</when><when>2026-08-20T14:00:01Z</when><coord>-84.1 42.3 0</coord><coord>-84.1001 42.3 0</coord></Track></Placemark></Document></kml>");
        Assert.Equal(2, Assert.Single(read.Walks).Fixes.Count);
        Assert.Contains(read.Remarks, r => r.Contains("never followed", StringComparison.Ordinal));
    }

    [Fact]
    public void A_KMZ_is_read_from_doc_kml_whatever_lies_beside_it()
    {
        var zip = OutlineText.Zip(("other.kml", "<kml/>"u8.ToArray()), ("doc.kml", OutlineText.Bytes(OutlineText.Kml)), ("files/picture.png", [1, 2, 3]));
        var read = OutlineFiles.Read(zip, "lawn.kmz");
        Assert.True(read.IsRead, read.Problem?.ToString());
        Assert.Equal(2, read.Outlines.Count);
    }

    [Theory]
    [InlineData("urn:ogc:def:crs:OGC:1.3:CRS84")]
    [InlineData("EPSG:4326")]
    public void An_older_crs_member_that_says_WGS_84_is_taken_and_told(string crs)
    {
        var read = Read(OutlineText.GeoJson.Replace("\"features\"", $"\"crs\": {{\"type\": \"name\", \"properties\": {{\"name\": \"{crs}\"}}}}, \"features\"", StringComparison.Ordinal));
        Assert.Contains(read.Remarks, r => r.Contains("crs", StringComparison.Ordinal));
    }

    [Fact]
    public void UTF_16_XML_and_byte_order_marks_are_taken()
    {
        Assert.True(OutlineFiles.Read([.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(OutlineText.Kml.Replace("UTF-8", "UTF-16", StringComparison.Ordinal))], "lawn.kml").IsRead);
        Assert.True(OutlineFiles.Read([.. Encoding.UTF8.Preamble, .. OutlineText.Bytes(OutlineText.GeoJson)], "lawn.geojson").IsRead);
        Assert.True(OutlineFiles.Read([.. Encoding.UTF8.Preamble, .. OutlineText.Bytes(OutlineText.Gpx)], "lawn.gpx").IsRead);
    }

    [Fact]
    public void An_outline_across_the_180th_meridian_keeps_its_size()
    {
        var read = Read("""{"type":"Polygon","coordinates":[[[179.9999,52],[-179.9999,52],[-179.9999,52.0001],[179.9999,52.0001],[179.9999,52]]]}""");
        var outline = read.Outlines[0].OnSheet(new LocalPlane(read.Outlines[0].Ring[0]));
        Assert.InRange(PatchArea.Of(outline).SquareMeters, 150.0, 155.0);
    }

    private static OutlineReadResult Read(string text)
    {
        var read = OutlineFiles.Read(OutlineText.Bytes(text), "lawn");
        Assert.True(read.IsRead, read.Problem?.ToString());
        return read;
    }

    private static double AreaM2(string text)
    {
        var outline = Read(text).Outlines[0];
        return PatchArea.Of(outline.OnSheet(new LocalPlane(outline.Ring[0]))).SquareMeters;
    }
}
