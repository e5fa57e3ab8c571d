using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>Heads placed on a drawn lawn of 60 ft by 40 ft beside a drive: their map, their figures, and places suggested.</summary>
public sealed class CoverageTests : IDisposable
{
    private readonly App _app = new();

    [Fact]
    public async Task Where_nothing_is_drawn_the_page_says_so_and_leads_to_the_drawing()
    {
        var lawn = await _app.TakeOn();
        var page = await _app.Get(lawn + "/coverage");
        Assert.Contains("Nothing is drawn yet", App.Words(page), StringComparison.Ordinal);
        Assert.Contains($"href=\"{lawn}/draw\"", page, StringComparison.Ordinal);
        Assert.Contains("No such lawn", await _app.Get("/lawns/none/coverage", HttpStatusCode.NotFound), StringComparison.Ordinal);
        Assert.Contains("No such head", await _app.Get(lawn + "/coverage?set=4", HttpStatusCode.NotFound), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Heads_typed_in_become_a_map_with_its_figures()
    {
        var lawn = await Drawn();
        Assert.Contains("No head is placed yet", App.Words(await _app.Get(lawn + "/coverage")), StringComparison.Ordinal);
        await Corners(lawn);

        var page = await _app.Get(lawn + "/coverage");
        Assert.InRange(page.Length, 5_000, 100_000);
        Assert.Contains("class=\"shade-3\"", page, StringComparison.Ordinal);
        Assert.Equal(4, Regex.Count(page, "class=\"depth-head\""));
        Assert.Contains(">driest</text>", page, StringComparison.Ordinal);
        var words = App.Words(page);
        Assert.Contains("on average over Front in still air; the driest place gets", words, StringComparison.Ordinal);
        foreach (var label in (string[])["Distribution uniformity, low quarter", "Distribution uniformity, low half", "Coefficient of uniformity", "Scheduling coefficient", "Mean precipitation rate over the patch", "Drive"])
        {
            Assert.Contains(label, words, StringComparison.Ordinal);
        }

        // 4 x 3 gal/min over 2,400 sq ft would be 0.48125 in/h if all of it landed there; of a triangular round of 20 ft, 10 ft from
        // two sides, the share 0.7873 does (a polar sum of r - r^2/R over the angles, worked out apart from the grid): 0.3789 in/h.
        var rate = double.Parse(Regex.Match(words, "Corner sprays: ([0-9.]+) in/h").Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.InRange(rate, 0.377, 0.381);
    }

    [Fact]
    public async Task Wind_changes_the_map_and_is_said()
    {
        var lawn = await Drawn();
        await Corners(lawn);
        var calm = await _app.Get(lawn + "/coverage?set=1");
        var windy = await _app.Get(lawn + "/coverage?set=1&wind=10&from=270");
        Assert.Contains("in a wind of 10 mph (16 km/h) from the west", App.Words(windy), StringComparison.Ordinal);
        Assert.NotEqual(Map(calm), Map(windy));

        // The drive lies east: a west wind blows more onto it.
        Assert.True(OnDrive(windy) > OnDrive(calm), $"{OnDrive(windy)} is not above {OnDrive(calm)}");
    }

    [Fact]
    public async Task A_head_off_the_lawn_is_refused_by_name_and_nothing_typed_is_lost()
    {
        var lawn = await Drawn();
        await Corners(lawn);
        var answer = await Head(lawn, "1/new", 130, 20);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("Head 5 of Corner sprays, 21.3 m off the nearest patch", App.Words(answer.Body), StringComparison.Ordinal);
        Assert.Contains("value=\"130\"", answer.Body, StringComparison.Ordinal);
        Assert.Equal(4, (await Heads(lawn)).GetArrayLength());
    }

    [Fact]
    public async Task A_head_is_changed_and_taken_away_and_a_saved_set_keeps_its_heads()
    {
        var lawn = await Drawn();
        await Corners(lawn);
        var leaf = lawn + "/notes/sets/1";
        var saved = await _app.Post(leaf, [.. FormFields.Of(await _app.Get(leaf))]);
        Assert.Equal(HttpStatusCode.Found, saved.Status);
        Assert.Equal(4, (await Heads(lawn)).GetArrayLength());

        Assert.Equal($"{lawn}/coverage?set=1", (await Head(lawn, "1/2", 55, 5, ("from", "270"), ("to", "45"))).Location);
        var head = (await Heads(lawn))[1];
        Assert.Equal((270.0, 135.0), (head.GetProperty("arcFrom").GetDouble(), head.GetProperty("arc").GetDouble()));
        var address = lawn + "/coverage/heads/1/2";
        Assert.Equal($"{lawn}/coverage", (await _app.Post(address + "/remove", [("version", Version(await _app.Get(address)))], address)).Location);
        Assert.Equal(3, (await Heads(lawn)).GetArrayLength());
        Assert.Equal(HttpStatusCode.Conflict, (await _app.Post(address + "/remove", [("version", "1")], address)).Status);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Head(lawn, "1/1", 5, 5, ("from", "90"))).Status);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Head(lawn, "1/1", 5, 5, ("profile", "leg"), ("leg", "0 0"))).Status);
    }

    [Fact]
    public async Task Suggested_places_cover_the_patch_and_are_taken_as_heads()
    {
        var lawn = await Drawn();
        (string Name, string Value)[] asked = [("patch", "1"), ("radius", "28"), ("radius.unit", "ft"), ("flow", "5"), ("flow.unit", "gpm"), ("profile", "uniform")];
        var page = lawn + "/coverage/places?" + string.Join('&', asked.Select(f => $"{f.Name}={f.Value}"));
        var body = await _app.Get(page);
        var words = App.Words(body);

        // A disc of 28 ft covers squares up to 39.6 ft wide: 60 ft by 40 ft wants two side by side, each covering 30 ft by 40 ft (half diagonal 25 ft).
        Assert.Contains("Front: 2 places cover it; on the grid tried, fewer cannot.", words, StringComparison.Ordinal);
        var answer = await _app.Post(lawn + "/coverage/places", [.. asked, ("into", "new"), ("version", Version(body))], page);
        Assert.Equal($"{lawn}/coverage?set=2", answer.Location);
        var document = (await Document(lawn)).GetProperty("water").GetProperty("sets")[1];
        Assert.Equal(("Moved over Front", 2, 2), (document.GetProperty("name").GetString(), document.GetProperty("positions").GetInt32(), document.GetProperty("heads").GetArrayLength()));

        // The search stands on a coarser grid than the map, so a corner cell may be missed.
        var dry = Regex.Match(App.Words(await _app.Get(answer.Location!)), "Ground that gets almost nothing\\s+([0-9.]+)");
        Assert.InRange(double.Parse(dry.Groups[1].Value, CultureInfo.InvariantCulture), 0.0, 1.0);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await _app.Client.GetAsync(lawn + "/coverage/places?radius=500&patch=1")).StatusCode);
    }

    [Fact]
    public async Task A_moved_sprinkler_given_one_place_more_is_moved_once_more()
    {
        var lawn = await Drawn();
        await Corners(lawn);
        Assert.Equal(1, Positions(await Document(lawn)));
        var file = JsonNode.Parse(await _app.Get(lawn + "/lawn.json"))!;
        file["water"]!["sets"]![0]!["positions"] = 4;
        lawn = await FromFile(file);
        await Head(lawn, "1/new", 30, 20);
        Assert.Equal(5, Positions(await Document(lawn)));
        var words = App.Words(await _app.Get(lawn + "/coverage"));
        Assert.Contains("in still air once each place has run an hour", words, StringComparison.Ordinal);

        static int Positions(JsonElement document) => document.GetProperty("water").GetProperty("sets")[0].TryGetProperty("positions", out var positions) ? positions.GetInt32() : 1;
    }

    [Fact]
    public async Task A_page_of_a_hundred_heads_and_beds_stays_under_a_hundred_kilobytes()
    {
        var file = JsonNode.Parse(await _app.Get(await Drawn() + "/lawn.json"))!;
        JsonArray Point(double east, double north) => [east, north];
        JsonArray Box(double west, double south, double side) => [Point(west, south), Point(west + side, south), Point(west + side, south + side), Point(west, south + side)];
        file["patches"]![0]!["shape"]!["outline"]!["ring"] = Box(0, 0, 95);
        file["patches"]![0]!["shape"]!["outline"]!.AsObject().Remove("holes");
        file["sheet"]!["boundary"] = Box(0, 0, 95);
        file["sheet"]!["features"] = new JsonArray([.. Enumerable.Range(0, 50).Select(i => new JsonObject { ["name"] = $"Bed {i}", ["kind"] = "bed", ["ring"] = Box(3 + (9 * (i % 10)), 100 + (9 * (i / 10)), 6) })]);
        file["water"]!["sets"]![0]!["heads"] = new JsonArray([.. Enumerable.Range(0, 100).Select(i => new JsonObject { ["at"] = Point(5 + (9.5 * (i % 10)), 5 + (9.5 * (i / 10))), ["radius"] = "5.5 m", ["flow"] = "8 L/min", ["profile"] = "triangular" })]);
        var page = await _app.Get(await FromFile(file) + "/coverage");
        Assert.Equal(100, Regex.Count(page, "class=\"depth-head\""));
        Assert.InRange(Encoding.UTF8.GetByteCount(page), 30_000, 100_000);
    }

    public void Dispose() => _app.Dispose();

    private async Task<string> FromFile(JsonNode lawn)
    {
        var answer = await _app.Upload("/lawns/from-file", [("lawn.json", Encoding.UTF8.GetBytes(lawn.ToJsonString()))]);
        Assert.True(answer.Status == HttpStatusCode.Found, App.Words(answer.Body));
        return Regex.Match(answer.Location!, "^/lawns/[^/]+").Value;
    }

    /// <summary>A lawn drawn in feet with a drive along its east side and one set without heads.</summary>
    private async Task<string> Drawn()
    {
        var lawn = await _app.TakeOn();
        var drawn = await _app.Post(lawn + "/draw", [("unit", "ft"), ("edge", "0 0\n60 0\n60 40\n0 40"), ("patch-front", "0 0\n60 0\n60 40\n0 40"), ("hole-1", "61 0\n70 0\n70 40\n61 40"), ("hole-1.kind", "drive"), ("hole-1.name", "Drive")]);
        Assert.True(drawn.Status == HttpStatusCode.Found, App.Words(drawn.Body));
        var set = await _app.Post(lawn + "/notes/sets/new", [("set", "Corner sprays"), ("wets", "front"), ("positions", "1")]);
        Assert.True(set.Status == HttpStatusCode.Found, App.Words(set.Body));
        return lawn;
    }

    private async Task Corners(string lawn)
    {
        foreach (var (east, north) in ((int, int)[])[(10, 10), (50, 10), (50, 30), (10, 30)])
        {
            var answer = await Head(lawn, "1/new", east, north);
            Assert.True(answer.Status == HttpStatusCode.Found, App.Words(answer.Body));
        }
    }

    private async Task<Answer> Head(string lawn, string item, int east, int north, params (string Name, string Value)[] instead)
    {
        var address = $"{lawn}/coverage/heads/{item}";
        (string Name, string Value)[] sound =
        [
            ("east", east.ToString(CultureInfo.InvariantCulture)), ("east.unit", "ft"), ("north", north.ToString(CultureInfo.InvariantCulture)), ("north.unit", "ft"),
            ("radius", "20"), ("radius.unit", "ft"), ("flow", "3"), ("flow.unit", "gpm"), ("profile", "triangular"), ("version", Version(await _app.Get(address))),
        ];
        return await _app.Post(address, [.. sound.Where(f => instead.All(i => i.Name != f.Name)), .. instead]);
    }

    private async Task<JsonElement> Document(string lawn) => JsonDocument.Parse(await _app.Get(lawn + "/lawn.json")).RootElement;

    private async Task<JsonElement> Heads(string lawn) => (await Document(lawn)).GetProperty("water").GetProperty("sets")[0].GetProperty("heads");

    private static string Version(string page) => Regex.Match(page, "name=\"version\" value=\"([0-9]+)\"").Groups[1].Value;

    private static string Map(string page) => Regex.Match(page, "shape-rendering=[\\s\\S]*?</g>").Value;

    private static double OnDrive(string page) =>
        double.Parse(Regex.Match(App.Words(page), "Share of the water Drive ([0-9.]+)").Groups[1].Value, CultureInfo.InvariantCulture);
}
