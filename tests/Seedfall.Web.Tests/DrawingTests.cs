using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>The drawing as a form, the way a page without script sends it.</summary>
public sealed partial class DrawingTests : IDisposable
{
    private readonly App _app = new();

    [Fact]
    public async Task A_blank_sheet_says_so_and_is_one_tab_away()
    {
        var lawn = await _app.TakeOn();
        Assert.Contains($"href=\"{lawn}/draw\"", await _app.Get(lawn + "/notes"), StringComparison.Ordinal);
        var page = await _app.Get(lawn + "/draw");
        Assert.Contains("Nothing is drawn yet", page, StringComparison.Ordinal);
        Assert.Contains("aria-current=\"page\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Corners_typed_in_feet_become_the_patch_with_its_bed_taken_out()
    {
        var lawn = await _app.TakeOn();
        var answer = await Draw(lawn, ("edge", "0 0\n60, 0\n60 40\n0 40"), ("patch-front", "0 0\n60 0\n60 40\n0 40"), ("hole-1", "10 10\n20 10\n20 20\n10 20"), ("hole-1.kind", "bed"), ("hole-1.name", "Roses"));
        Assert.Equal($"{lawn}/draw?saved=yes", answer.Location);

        var document = await Document(lawn);
        var feature = Assert.Single(document.GetProperty("sheet").GetProperty("features").EnumerateArray());
        Assert.Equal("Roses", feature.GetProperty("name").GetString());
        Assert.Equal("bed", feature.GetProperty("kind").GetString());
        var words = App.Words(await _app.Get(lawn + "/draw"));

        // 60 ft x 40 ft less 10 ft x 10 ft
        Assert.Contains("Front 2,300 sq ft 200 ft", words, StringComparison.Ordinal);
        Assert.Contains("Roses (100 sq ft) 40 ft", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bed_along_the_edge_and_a_terrace_along_the_house_are_taken_out()
    {
        var lawn = await _app.TakeOn();
        var answer = await Draw(
            lawn,
            ("edge", "0 0\n60 0\n60 40\n0 40"), ("patch-front", "0 0\n60 0\n60 40\n0 40"),
            ("hole-1", "10 0\n30 0\n30 5\n10 5"), ("hole-1.kind", "bed"),
            ("hole-2", "40 20\n50 20\n50 30\n40 30"), ("hole-2.kind", "house"),
            ("hole-3", "42 15\n46 15\n46 20\n42 20"), ("hole-3.kind", "path"));
        Assert.True(answer.Status == HttpStatusCode.Found, App.Words(answer.Body));

        // 2,400 less 100, 100 and 20 sq ft; shared lines cost a millimeter.
        Assert.Contains("Front 2,180 sq ft", App.Words(await _app.Get(lawn + "/draw")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_distance_and_a_bearing_make_a_corner()
    {
        var lawn = await _app.TakeOn();
        await Draw(lawn, ("unit", "m"), ("edge", "0 0\n10 @ 90\n8 @ 0°\n10 @ 270"));
        var ring = (await Document(lawn)).GetProperty("sheet").GetProperty("boundary");
        Assert.Equal([0.0, 10.0, 10.0, 0.0], ring.EnumerateArray().Select(p => p[0].GetDouble()));
        Assert.Equal([0.0, 0.0, 8.0, 8.0], ring.EnumerateArray().Select(p => p[1].GetDouble()));
    }

    [Theory]
    [InlineData("0 0\n40 30\n40 0\n0 30", "Edge of the lawn: side 1 crosses or touches side 3 at 20.0 ft east, 15.0 ft north.")]
    [InlineData("0 0\n40 0", "Edge of the lawn: at least three corners are needed, 2 set.")]
    [InlineData("0 0\n40 zero\n40 30", "Edge of the lawn: line 2 should be two numbers, east and north, or a distance @ bearing, not “40 zero”.")]
    [InlineData("0 0\nNaN 1\n40 30", "line 2 should be two numbers")]
    [InlineData("0 0\n1e9 1\n40 30", "line 2 should be two numbers")]
    public async Task What_cannot_be_is_refused_where_it_is_and_nothing_typed_is_lost(string corners, string sentence)
    {
        var lawn = await _app.TakeOn();
        var answer = await Draw(lawn, ("edge", corners));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(sentence, App.Words(answer.Body), StringComparison.Ordinal);
        Assert.Contains(WebUtility.HtmlEncode(corners), answer.Body.Replace("&#xA;", "\n", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.False((await Document(lawn)).TryGetProperty("sheet", out _));
    }

    [Fact]
    public async Task More_corners_than_a_sheet_takes_are_refused_before_anything_is_worked_out()
    {
        var lawn = await _app.TakeOn();
        var zigzag = string.Join('\n', Enumerable.Range(0, 3_900).Select(i => $"{i} {i % 2}"));
        var answer = await Draw(lawn, [("edge", zigzag), .. Enumerable.Range(1, 4).Select(i => ($"hole-{i}", zigzag))]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("One sheet takes at most 12,000 corners in all, not 19,500.", App.Words(answer.Body), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Crossings_are_marked_in_the_picture_and_named_between_shapes()
    {
        var lawn = await _app.TakeOn();
        var answer = await Draw(lawn, ("edge", "0 0\n60 0\n60 40\n0 40"), ("patch-front", "10 10\n70 10\n70 30\n10 30"), ("hole-1", "5 5\n20 5\n20 20\n5 20"), ("hole-1.kind", "bed"));
        var words = App.Words(answer.Body);
        Assert.Contains("Front leaves the edge of the lawn at 60.0 ft east, 10.0 ft north.", words, StringComparison.Ordinal);
        Assert.Contains("Bed 1 lies only partly in Front: it crosses the edge at", words, StringComparison.Ordinal);
        Assert.Equal(2, CrossingMarks().Count(answer.Body));
    }

    [Fact]
    public async Task A_drawing_changed_meanwhile_is_shown_not_hidden()
    {
        var lawn = await _app.TakeOn();
        var stamp = Stamp().Match(await _app.Get(lawn + "/draw")).Groups[1].Value;
        await Draw(lawn, ("edge", "0 0\n60 0\n60 40\n0 40"));
        var second = await Draw(lawn, ("edge", "0 0\n50 0\n50 40\n0 40"), ("stamp", stamp));
        Assert.Equal(HttpStatusCode.Conflict, second.Status);
        Assert.Contains("Edge of the lawn 4 corners, 2,400 sq ft 4 corners, 2,000 sq ft", App.Words(second.Body), StringComparison.Ordinal);

        // Another leaf does not meet it.
        stamp = Stamp().Match(await _app.Get(lawn + "/draw")).Groups[1].Value;
        await _app.Post(lawn + "/notes/soil", [("texture", "clay")]);
        Assert.Equal(HttpStatusCode.Found, (await Draw(lawn, ("edge", "0 0\n50 0\n50 40\n0 40"), ("stamp", stamp))).Status);
    }

    [Fact]
    public async Task A_patch_does_not_lose_its_size_with_its_outline()
    {
        var lawn = await _app.TakeOn();
        await Draw(lawn, ("patch-front", "0 0\n60 0\n60 40\n0 40"));
        var answer = await Draw(lawn, ("patch-front", ""));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("Front: its outline was taken away, and with it its size.", App.Words(answer.Body), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Names_are_text_in_the_page_and_in_its_data()
    {
        const string name = "</script><script>alert(1)</script>";
        var lawn = await _app.TakeOn(("patch", name));
        await Draw(lawn, ("edge", "0 0\n60 0\n60 40\n0 40"), ("hole-1", "10 10\n20 10\n20 20"), ("hole-1.name", name));
        var page = await _app.Get(lawn + "/draw");
        Assert.DoesNotContain("<script>alert", page, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("\\u003C/script\\u003E", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_walk_round_a_circle_gives_its_area_and_a_range()
    {
        // 20 m across, a fix a second at a slow walk, good to 4 m: pi / 4 x 20^2 = 314 m2.
        var fixes = Enumerable.Range(0, 65).Select(i => 2.0 * Math.PI * i / 63.0)
            .Select((turn, i) => (double[])[42.31 + 10.0 * Math.Sin(turn) / 111_070.0, -84.12 + 10.0 * Math.Cos(turn) / (111_320.0 * Math.Cos(42.31 * Math.PI / 180.0)), 4.0, 1_790_000_000_000.0 + 1000.0 * i]);
        var lawn = await _app.TakeOn();
        var answer = await Walk(lawn, fixes);
        Assert.Null(answer.GetProperty("refused").GetString());
        var ring = answer.GetProperty("ring").EnumerateArray().Select(p => (E: p[0].GetDouble(), N: p[1].GetDouble())).ToList();
        Assert.InRange(0.5 * Math.Abs(ring.Select((p, i) => (p, q: ring[(i + 1) % ring.Count])).Sum(s => s.p.E * s.q.N - s.q.E * s.p.N)), 300.0, 325.0);
        Assert.InRange(answer.GetProperty("band").GetDouble(), 0.02, 0.4);

        Assert.Contains("No outline can be made of this walk", (await Walk(lawn, fixes.Take(5))).GetProperty("refused").GetString()!, StringComparison.Ordinal);
        Assert.Contains("damaged", (await Walk(lawn, [[142.0, 0.0, 4.0, 1.0]])).GetProperty("refused").GetString()!, StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();

    private Task<Answer> Draw(string lawn, params (string Name, string Value)[] fields) =>
        _app.Post(lawn + "/draw", fields.Any(f => f.Name == "unit") ? fields : [("unit", "ft"), .. fields]);

    private async Task<JsonElement> Walk(string lawn, IEnumerable<double[]> fixes)
    {
        using var content = new StringContent(JsonSerializer.Serialize(new { fixes, origin = (double[]?)null }), System.Text.Encoding.UTF8, "application/json");
        var answer = await _app.Send(lawn + "/draw/walk", content);
        Assert.True(answer.Status == HttpStatusCode.OK, answer.Body);
        return JsonDocument.Parse(answer.Body).RootElement;
    }

    private async Task<JsonElement> Document(string lawn) => JsonDocument.Parse(await _app.Get(lawn + "/lawn.json")).RootElement;

    [GeneratedRegex("class=\"crossing\"")]
    private static partial Regex CrossingMarks();

    [GeneratedRegex("name=\"stamp\" value=\"([^\"]+)\"")]
    private static partial Regex Stamp();
}
