using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>Pictures under the sheet, and files of outlines in and out.</summary>
public sealed partial class DrawingFileTests : IDisposable
{
    /// <summary>A red pixel as PNG.</summary>
    private static readonly byte[] Png = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==");

    private readonly App _app = new();

    [Fact]
    public async Task A_picture_is_kept_as_our_own_jpeg_and_shown_to_its_lawn_only()
    {
        var (lawn, other) = (await _app.TakeOn(), await _app.TakeOn());
        var answer = await _app.Upload(lawn + "/draw/picture", [("plan.png", Png)], page: lawn + "/draw");
        Assert.Equal($"{lawn}/draw#picture", answer.Location);
        var address = PictureAddress().Match(await _app.Get(lawn + "/draw")).Value;
        using var picture = await _app.Client.GetAsync(address);
        Assert.Equal("image/jpeg", picture.Content.Headers.ContentType!.MediaType);
        Assert.Contains("sandbox", picture.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        Assert.Equal([0xFF, 0xD8], (await picture.Content.ReadAsByteArrayAsync())[..2]);
        await _app.Get(address.Replace(lawn, other, StringComparison.Ordinal), HttpStatusCode.NotFound);
        await _app.Get(lawn + "/draw/picture/..%2F..%2Fseedfall.db", HttpStatusCode.NotFound);

        await _app.Post(lawn + "/remove", []);
        Assert.Empty(Directory.EnumerateFiles(Path.Combine(_app.Folder, "pictures"), "*", SearchOption.AllDirectories));
    }

    [Fact]
    public async Task What_is_no_picture_is_refused_in_words()
    {
        var lawn = await _app.TakeOn();
        var answer = await _app.Upload(lawn + "/draw/picture", [("plan.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>"u8.ToArray())], page: lawn + "/draw");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("expected a JPEG, PNG, WebP or HEIC picture", App.Words(answer.Body), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_scaled_picture_sets_the_range_of_what_is_drawn_over_it()
    {
        var lawn = await _app.TakeOn();
        await _app.Upload(lawn + "/draw/picture", [("plan.png", Png)], page: lawn + "/draw");
        var stored = WebUtility.HtmlDecode(PlacingField().Match(await _app.Get(lawn + "/draw")).Groups[1].Value);
        var file = JsonDocument.Parse(stored).RootElement.GetProperty("file").GetString();
        string Placing(string name, double b) => JsonSerializer.Serialize(new { file = name, width = 1, height = 1, east = 0.0, north = 0.0, metersPerPixel = 0.05, turnDeg = 0.0, scale = new { a = (double[])[0.0, 0.0], b = (double[])[b, 0.0], meters = 20.0 } });

        // A point 400 px off is not near this picture; another lawn's file is not this one's.
        foreach (var wrong in (string[])[Placing(file!, 400.0), Placing("0123456789abcdef.jpg", 2.0), "{}", "[1"])
        {
            var refused = await _app.Post(lawn + "/draw", [("unit", "m"), ("edge", "0 0\n20 0\n20 20\n0 20"), ("picture", wrong)]);
            Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        }

        // Points of a 1 px picture lie too close together for a scale, so the range is the usual one of a picture.
        var answer = await _app.Post(lawn + "/draw", [("unit", "m"), ("patch-front", "0 0\n20 0\n20 20\n0 20"), ("patch-front.by", "Picture"), ("patch-front.band", "0.9"), ("picture", stored)]);
        Assert.True(answer.Status == HttpStatusCode.Found, App.Words(answer.Body));
        var measured = JsonDocument.Parse(await _app.Get(lawn + "/lawn.json")).RootElement.GetProperty("patches")[0].GetProperty("measured");
        Assert.Equal("picture", measured.GetProperty("by").GetString());
        Assert.False(measured.TryGetProperty("areaBand", out _));
    }

    [Theory]
    [InlineData("lawn.geojson")]
    [InlineData("lawn.kml")]
    [InlineData("lawn.gpx")]
    public async Task A_drawing_goes_out_and_comes_back(string name)
    {
        var lawn = await _app.TakeOn();
        await _app.Post(lawn + "/draw", [("unit", "ft"), ("origin", "42.31 -84.12"), ("edge", "0 0\n80 0\n80 50\n0 50"), ("patch-front", "0 0\n60 0\n60 40\n0 40"), ("hole-1", "10 10\n20 10\n20 20\n10 20"), ("hole-1.kind", "bed"), ("hole-1.name", "Roses")]);
        using var file = await _app.Client.GetAsync($"{lawn}/draw/file/{name}");
        Assert.Equal(HttpStatusCode.OK, file.StatusCode);

        var other = await _app.TakeOn();
        var shown = await _app.Upload(other + "/draw/file", [(name, await file.Content.ReadAsByteArrayAsync())], [("target", "edge")], other + "/draw");
        var words = App.Words(shown.Body);
        Assert.True(shown.Status == HttpStatusCode.OK, words);
        Assert.Contains("Read from the file and not saved yet", words, StringComparison.Ordinal);

        // Degrees to seven places are a centimeter: within 2 sq ft.
        Assert.InRange(Grass(words, "Front"), 2298.0, 2302.0);
        Assert.InRange(Grass(words, "Edge of the lawn"), 3898.0, 3902.0);
        Assert.False(JsonDocument.Parse(await _app.Get(other + "/lawn.json")).RootElement.TryGetProperty("sheet", out _));
    }

    [Theory]
    [InlineData("a.geojson", """{"type":"Polygon","coordinates":[[[0,0],[1,""")]
    [InlineData("a.kml", """<!DOCTYPE x [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]><kml>&b;</kml>""")]
    [InlineData("a.gpx", "<gpx></gpx>")]
    [InlineData("a.kmz", "PK not a zip")]
    [InlineData("a.json", """{"type":"Polygon","coordinates":[[[0,0],[1e999,0],[1,1],[0,0]]]}""")]
    public async Task A_damaged_file_is_refused_with_its_line(string name, string text)
    {
        var lawn = await _app.TakeOn();
        var answer = await _app.Upload(lawn + "/draw/file", [(name, Encoding.UTF8.GetBytes(text))], [("target", "edge")], lawn + "/draw");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        var words = App.Words(answer.Body);
        Assert.Contains("That file was not taken", words, StringComparison.Ordinal);
        Assert.Contains(name, words, StringComparison.Ordinal);
        Assert.Contains("expected", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_comes_into_what_is_drawn_and_not_saved()
    {
        var lawn = await _app.TakeOn();
        const string square = """{"type":"Polygon","coordinates":[[[-84.12,42.31],[-84.1199,42.31],[-84.1199,42.3101],[-84.12,42.3101],[-84.12,42.31]]]}""";
        var shown = await _app.Upload(lawn + "/draw/file", [("a.geojson", Encoding.UTF8.GetBytes(square))], [("target", "patch-front"), ("unit", "m"), ("edge", "0 0\n30 0\n30 30\n0 30")], lawn + "/draw");
        var words = App.Words(shown.Body);
        Assert.Contains("this sheet has no place on the earth, so the file was laid in the middle of what is drawn", words, StringComparison.Ordinal);
        Assert.Contains("Edge of the lawn 9,688 sq ft", words, StringComparison.Ordinal);
        Assert.True(Grass(words, "Front") > 900.0);
    }

    public void Dispose() => _app.Dispose();

    private static double Grass(string words, string shape) =>
        double.Parse(Regex.Match(words, Regex.Escape(shape) + @" ([\d,]+) sq ft").Groups[1].Value, System.Globalization.NumberStyles.AllowThousands, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex("/lawns/[a-z0-9-]+/draw/picture/[0-9a-f]+\\.jpg")]
    private static partial Regex PictureAddress();

    [GeneratedRegex("name=\"picture\" value=\"([^\"]+)\"")]
    private static partial Regex PlacingField();
}
