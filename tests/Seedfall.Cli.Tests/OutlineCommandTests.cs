using System.Globalization;
using System.Text;
using System.Text.Json;
using Seedfall.Cli.Tests.Support;

namespace Seedfall.Cli.Tests;

public sealed class OutlineCommandTests
{
    private const string Square = """{"type":"Feature","properties":{"name":"Front"},"geometry":{"type":"Polygon","coordinates":[[[-84.12,42.31],[-84.1197,42.31],[-84.1197,42.3102],[-84.12,42.3102],[-84.12,42.31]]]}}""";

    [Fact]
    public async Task AnOutlineIsToldWithItsRangeAndEdge()
    {
        using var bench = new Workbench();
        var run = await Run.Of("outline", bench.Write("front.geojson", Square));
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("Front (outline): 5,915 sq ft (549 m2); nine times in ten", run.Results, StringComparison.Ordinal);
        Assert.Empty(run.Remarks);
    }

    [Fact]
    public async Task TheShapeOfTheJsonFitsIntoALawnFile()
    {
        using var bench = await Workbench.WithDemo();
        using var json = JsonDocument.Parse((await Run.Of("outline", bench.Write("front.geojson", Square), "--json")).Results);
        var outline = json.RootElement.GetProperty("outlines")[0];
        Assert.InRange(outline.GetProperty("areaM2").GetDouble(), outline.GetProperty("lowM2").GetDouble(), outline.GetProperty("highM2").GetDouble());
        var lawn = $$"""
            { "format": "seedfall-lawn/1", "id": "try", "name": "Try", "place": { "latitude": 42.31, "longitude": -84.12, "elevation": "900 ft" },
              "patches": [ { "id": "front", "name": "Front", "grasses": ["tall-fescue"], "shape": {{outline.GetProperty("shape").GetRawText()}}, "measured": {{outline.GetProperty("measured").GetRawText()}} } ] }
            """;
        var check = await Run.Of("check", bench.Write("try.json", lawn));
        Assert.Equal(0, check.ExitCode);
    }

    [Fact]
    public async Task AnOutlineGoesThroughEveryFormatAndComesBack()
    {
        using var bench = new Workbench();
        var path = bench.Write("front.geojson", Square);
        foreach (var ending in (string[])["kml", "gpx", "kmz", "geojson"])
        {
            var next = Path.Combine(Path.GetDirectoryName(path)!, $"next.{ending}");
            var run = await Run.Of("outline", path, "--to", next);
            Assert.Equal(0, run.ExitCode);
            Assert.True(File.Exists(next));
            path = next;
        }

        Assert.Contains("5,915 sq ft", (await Run.Of("outline", path)).Results, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AWalkIsToldWithItsRange()
    {
        using var bench = new Workbench();
        var run = await Run.Of("outline", bench.Write("walk.gpx", Walk()));
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("Back edge (walk):", run.Results, StringComparison.Ordinal);
        Assert.Contains("thinned", run.Results, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bow.geojson", """{"type":"Polygon","coordinates":[[[-84.12,42.31],[-84.1197,42.3102],[-84.1197,42.31],[-84.12,42.3102],[-84.12,42.31]]]}""", "crosses itself: side 1 meets side 3 at latitude 42.310100, longitude -84.119850")]
    [InlineData("bomb.kml", "<!DOCTYPE x [<!ENTITY a \"b\">]><kml/>", "bomb.kml:1:1: expected XML without a document type")]
    [InlineData("broken.geojson", "{\n\"type\":\"Polygon\",\"coordinates\":[[[NaN,1]]]}", "broken.geojson:2:")]
    public async Task WhatIsNotSoundIsRefusedWithItsPlace(string name, string text, string told)
    {
        using var bench = new Workbench();
        var run = await Run.Of("outline", bench.Write(name, text), "--to", Path.Combine(bench.Out, "never.kml"));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(told, run.Remarks, StringComparison.Ordinal);
        Assert.False(Directory.Exists(bench.Out));
    }

    [Fact]
    public async Task AnUnknownEndingIsRefused()
    {
        using var bench = new Workbench();
        var run = await Run.Of("outline", bench.Write("front.geojson", Square), "--to", "front.dwg");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(".kmz", run.Remarks, StringComparison.Ordinal);
    }

    /// <summary>Once round a square of 40 m, a fix every second.</summary>
    private static string Walk()
    {
        var text = new StringBuilder("<gpx version=\"1.1\" creator=\"test\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><name>Back edge</name><trkseg>");
        for (var s = 0; s < 134; s++)
        {
            var (side, along) = ((int)(s * 1.2 / 40) % 4, s * 1.2 % 40);
            var (east, north) = side switch { 0 => (along, 0.0), 1 => (40.0, along), 2 => (40.0 - along, 40.0), _ => (0.0, 40.0 - along) };
            text.Append(CultureInfo.InvariantCulture, $"<trkpt lat=\"{42.31 + north / 111000:0.0000000}\" lon=\"{-84.12 + east / 82000:0.0000000}\"><time>2026-08-20T14:{s / 60:00}:{s % 60:00}Z</time></trkpt>");
        }

        return text.Append("</trkseg></trk></gpx>").ToString();
    }
}
