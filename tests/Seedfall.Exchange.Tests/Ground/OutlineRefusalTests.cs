using System.Text;
using Seedfall.Exchange.Ground;

namespace Seedfall.Exchange.Tests.Ground;

public sealed class OutlineRefusalTests
{
    [Theory]
    [InlineData("42.3102]", "142.3102]", 6, "look reversed")]
    [InlineData("[-84.1197, 42.3100]", "[-84.1197]", 6, "longitude, latitude")]
    [InlineData("[-84.1197, 42.3100]", "[-84.1197, 1e999]", 6, "finite")]
    [InlineData("[-84.1197, 42.3100]", "[-84.1197, NaN]", 6, "no NaN")]
    [InlineData("[-84.1197, 42.3100]", "[-84.1197, \"42\"]", 6, "positions like")]
    [InlineData("[-84.1197, 42.3100]", "[-84.1197, 42.31, 1, 2, 3]", 6, "two to four")]
    [InlineData("[-84.1197, 42.3100]", "[84.1197, 42.3100]", 5, "within 20 km")]
    [InlineData("\"Polygon\"", "\"Polygone\"", 5, "a GeoJSON object")]
    [InlineData("\"Polygon\"", "\"LineString\"", 6, "positions like")]
    [InlineData("\"features\"", "\"crs\": null, \"features\"", 3, "WGS 84")]
    [InlineData("\"features\"", "\"crs\": {\"type\":\"name\",\"properties\":{\"name\":\"urn:ogc:def:crs:EPSG::25832\"}}, \"features\"", 3, "WGS 84")]
    [InlineData("\"features\"", "\"type\": \"Feature\", \"features\"", 3, "each field once")]
    public void A_fault_in_GeoJSON_is_told_with_its_line(string was, string becomes, int line, string expected)
    {
        var problem = Refused(OutlineText.GeoJson.Replace(was, becomes, StringComparison.Ordinal));
        Assert.Contains(expected, problem.Expected + problem.Found, StringComparison.Ordinal);
        Assert.Equal(line, problem.Line);
        Assert.True(problem.Column >= 1);
    }

    [Theory]
    [InlineData("lat=\"42.310145\"", "lat=\"NaN\"", 6, "a number in lat")]
    [InlineData("lat=\"42.310145\"", "lat=\"142.3\"", 6, "latitude from -90 to 90")]
    [InlineData("lat=\"42.310145\" ", "", 6, "a point with lat")]
    [InlineData("14:03:24Z", "24:99:00Z", 6, "a time like")]
    [InlineData("<hdop>1.5", "<hdop>-1", 5, "above 0")]
    [InlineData("</trkseg>", "</trkpt>", 6, "well-formed XML")]
    public void A_fault_in_GPX_is_told_with_its_line(string was, string becomes, int line, string expected)
    {
        var problem = Refused(OutlineText.Gpx.Replace(was, becomes, StringComparison.Ordinal));
        Assert.Contains(expected, problem.Expected, StringComparison.Ordinal);
        Assert.Equal(line, problem.Line);
    }

    [Theory]
    [InlineData("-84.1197,42.3102,0", "-84.1197;42.3102", 5, "tuples like")]
    [InlineData("-84.1197,42.3102,0", "-84.1197,Infinity,0", 5, "tuples like")]
    [InlineData("-84.1197,42.3102,0", "42.3102,-184.1197", 5, "latitude from -90 to 90")]
    [InlineData("innerBoundaryIs", "outerBoundaryIs", 7, "one outer boundary")]
    public void A_fault_in_KML_is_told_with_its_line(string was, string becomes, int line, string expected)
    {
        var problem = Refused(OutlineText.Kml.Replace(was, becomes, StringComparison.Ordinal));
        Assert.Contains(expected, problem.Expected, StringComparison.Ordinal);
        Assert.Equal(line, problem.Line);
    }

    [Theory]
    [InlineData("<!DOCTYPE kml [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;\">]><kml>&b;</kml>")]
    [InlineData("<!DOCTYPE gpx SYSTEM \"file:///etc/passwd\"><gpx/>")]
    [InlineData("<?xml version='1.0'?><!DOCTYPE kml [<!ENTITY x SYSTEM 'http://127.0.0.1:9/'>]><kml><name>&x;</name></kml>")]
    public void A_document_type_is_refused_before_anything_is_expanded(string text)
    {
        var problem = Refused(text);
        Assert.Contains("document type", problem.Expected, StringComparison.Ordinal);
        Assert.Equal(1, problem.Line);
    }

    [Fact]
    public void Depth_is_bounded()
    {
        Assert.Contains("levels of nesting", Refused("<kml>" + string.Concat(Enumerable.Repeat("<Folder>", 5000))).Expected, StringComparison.Ordinal);
        Assert.Contains("levels of nesting", Refused("{\"type\":\"Feature\",\"x\":" + new string('[', 5000)).Expected, StringComparison.Ordinal);
        Assert.Contains("levels of nesting", Refused("{\"coordinates\":" + new string('[', 5000)).Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{\"type\":\"Polygon\",\"coordinates\":[[", "[-84.12,42.31],", "in one ring")]
    [InlineData("{\"type\":\"Polygon\",\"coordinates\":[", "[[-84.12,42.31]],", "in one ring")]
    [InlineData("<kml><Polygon><outerBoundaryIs><LinearRing><coordinates>", "-84.12,42.31 ", "in one ring")]
    [InlineData("<gpx><trk>", "<trkpt lat='42.31' lon='-84.12'/>", "points in one file")]
    public void A_ring_of_ten_million_points_is_refused_unread(string head, string point, string expected)
    {
        // An endless file: the reader stops at its own bound of bytes, and of what fits in there at its bound of points.
        using var endless = new Repeated(head, point, 10_000_000);
        Assert.Contains("16 MB", OutlineFiles.Read(endless, "huge").Problem!.Expected, StringComparison.Ordinal);
        Assert.InRange(endless.Served, 1, 17 << 20);

        var bytes = Encoding.UTF8.GetBytes(head + string.Concat(Enumerable.Repeat(point, (15 << 20) / point.Length)));
        var before = GC.GetAllocatedBytesForCurrentThread();
        var full = OutlineFiles.Read(bytes, "full");
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.Contains(expected, full.Problem!.Expected, StringComparison.Ordinal);
        Assert.InRange(allocated, 0, 24L << 20);
    }

    [Fact]
    public void Zip_bombs_and_paths_are_refused()
    {
        var kml = OutlineText.Bytes(OutlineText.Kml);
        Assert.Contains("at most 20 entries", RefusedZip([.. Enumerable.Range(0, 30).Select(i => ($"a{i}.kml", kml))]).Expected, StringComparison.Ordinal);
        Assert.Contains("no tighter", RefusedZip(("doc.kml", new byte[8 << 20])).Expected, StringComparison.Ordinal);
        Assert.Contains("of at most 16 MB", RefusedZip(("doc.kml", new byte[40 << 20])).Expected, StringComparison.Ordinal);
        Assert.Contains("doc.kml", RefusedZip(("readme.txt", [1])).Expected, StringComparison.Ordinal);
        Assert.Contains("KML inside", RefusedZip(("doc.kml", OutlineText.Zip(("doc.kml", kml)))).Expected, StringComparison.Ordinal);
        foreach (var name in (string[])["../doc.kml", "/doc.kml", "a/../../doc.kml", "a\\doc.kml", "C:doc.kml"])
        {
            Assert.Contains("plain entry names", RefusedZip((name, kml)).Expected, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void An_entry_that_claims_less_than_it_holds_is_not_unpacked_beyond_the_bound()
    {
        // 20 MB of noise-free but not too regular text, its size fields overwritten with small numbers.
        var text = new byte[20 << 20];
        var state = 12345u;
        for (var i = 0; i < text.Length; i++)
        {
            state = state * 1664525u + 1013904223u;
            text[i] = (byte)('a' + (state >> 28));
        }

        var zip = OutlineText.Zip(("doc.kml", text));
        var central = zip.AsSpan().LastIndexOf("PK\x01\x02"u8);
        BitConverter.TryWriteBytes(zip.AsSpan(central + 24), 1000);
        Assert.False(OutlineFiles.Read(zip, "lying.kmz").IsRead);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("name;lat;lon")]
    [InlineData("<html/>")]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("PK")]
    [InlineData("{\"type\":\"FeatureCollection\",\"features\":[]}")]
    [InlineData("{\"type\":\"Point\",\"coordinates\":[-84.12,42.31]}")]
    [InlineData("{\"type\":\"Polygon\",\"coordinates\":[]}")]
    [InlineData("{\"type\":\"Polygon\",\"coordinates\":[[[-84.12,42.31],[-84.12,42.31],[-84.12,42.31]]]}")]
    [InlineData("{\"type\":\"Polygon\",\"coordinates\":[[[-84.12,42.31],[-84.12000001,42.31],[-84.12,42.31000001]]]}")]
    [InlineData("{\"type\":\"Polygon\",\"coordinates\":[[[-84.12,42.31],[-84.02,42.31],[-84.02,42.41]]]}")]
    [InlineData("{\"type\":\"Polygon\",\"coordinates\":[[[0,90],[1,90],[1,89.9999]]]}")]
    [InlineData("<kml><Polygon/></kml>")]
    public void What_holds_no_lawn_is_refused(string text) => Refused(text);

    private static OutlineProblem Refused(string text)
    {
        var read = OutlineFiles.Read(Encoding.UTF8.GetBytes(text), "lawn");
        Assert.False(read.IsRead);
        Assert.Empty(read.Outlines);
        Assert.StartsWith("lawn", read.Problem.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain('\n', read.Problem.ToString());
        return read.Problem;
    }

    private static OutlineProblem RefusedZip(params (string Name, byte[] Bytes)[] entries)
    {
        var read = OutlineFiles.Read(OutlineText.Zip(entries), "lawn.kmz");
        Assert.False(read.IsRead);
        return read.Problem;
    }

    /// <summary>A head, then the same text again and again, made as it is read.</summary>
    private sealed class Repeated(string head, string text, long times) : Stream
    {
        private readonly byte[] _head = Encoding.UTF8.GetBytes(head);
        private readonly byte[] _text = Encoding.UTF8.GetBytes(text);

        public long Served { get; private set; }

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => Served; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var i = 0;
            for (; i < count && Served < _head.Length + _text.Length * times; i++, Served++)
            {
                buffer[offset + i] = Served < _head.Length ? _head[Served] : _text[(Served - _head.Length) % _text.Length];
            }

            return i;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
