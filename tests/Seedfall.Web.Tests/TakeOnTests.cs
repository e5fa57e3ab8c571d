using System.Net;
using System.Text.Json;

namespace Seedfall.Web.Tests;

public sealed class TakeOnTests : IDisposable
{
    private readonly App _app = new();

    [Fact]
    public async Task A_place_a_patch_and_its_grass_make_a_lawn()
    {
        var lawn = await _app.TakeOn(("cover", ""));
        var document = await Document(lawn);
        Assert.Equal("Ash Street", document.GetProperty("name").GetString());
        Assert.Equal(42.31, document.GetProperty("place").GetProperty("latitude").GetDouble());
        Assert.Equal(-84.12, document.GetProperty("place").GetProperty("longitude").GetDouble());
        Assert.Contains("60 ft", document.GetRawText(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Everything_wrong_is_said_beside_its_field_and_nothing_typed_is_lost()
    {
        var answer = await _app.Post("/lawns/new", App.SoundLawn(("name", "Kept name"), ("latitude", "142.31"), ("elevation", "high"), ("cover", "155"), ("wide", "-40"), ("grasses", "")));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        var words = App.Words(answer.Body);
        Assert.Contains("A few things to put right", words, StringComparison.Ordinal);
        Assert.Contains("Latitude: a number from -66.5 to 66.5 ° north is needed, not 142.31.", words, StringComparison.Ordinal);
        Assert.Contains("Elevation above the sea: a number of ft is needed, not “high”.", words, StringComparison.Ordinal);
        Assert.Contains("Living cover: a number from 0 to 100 % is needed, not 155.", words, StringComparison.Ordinal);
        Assert.Contains("Width: more than 0 and at most", words, StringComparison.Ordinal);
        Assert.Contains("Grass growing or wanted here: at least one is needed.", words, StringComparison.Ordinal);
        foreach (var kept in (string[])["value=\"Kept name\"", "value=\"142.31\"", "value=\"high\"", "value=\"155\"", "value=\"-40\""])
        {
            Assert.Contains(kept, answer.Body, StringComparison.Ordinal);
        }

        Assert.Contains("href=\"#f-latitude\"", answer.Body, StringComparison.Ordinal);
        Assert.Contains("aria-invalid=\"true\"", answer.Body, StringComparison.Ordinal);
        Assert.DoesNotContain("Kept name", await _app.Get("/"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("NaN")]
    [InlineData("1e400")]
    [InlineData("Infinity")]
    [InlineData("4_0")]
    public async Task What_is_no_number_is_refused(string text)
    {
        var answer = await _app.Post("/lawns/new", App.SoundLawn(("wide", text)));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
    }

    [Fact]
    public async Task A_western_longitude_may_be_typed_with_or_without_its_sign()
    {
        foreach (var typed in (string[])["84.12", "-84.12"])
        {
            var document = await Document(await _app.TakeOn(("longitude", typed)));
            Assert.Equal(-84.12, document.GetProperty("place").GetProperty("longitude").GetDouble());
        }
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\"><img src=x onerror=alert(1)>")]
    [InlineData("{{7*7}} & ' \" <")]
    public async Task A_name_is_text_on_every_page(string name)
    {
        var lawn = await _app.TakeOn(("name", name), ("patch", name));
        foreach (var path in (string[])["/", lawn, lawn + "/notes", lawn + "/notes/place", lawn + "/notes/patches/1", lawn + "/weather", lawn + "/remove"])
        {
            var body = await _app.Get(path);
            Assert.DoesNotContain("<script>alert", body, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("<img src=x", body, StringComparison.OrdinalIgnoreCase);
            Assert.Contains(name, WebUtility.HtmlDecode(body), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_change_made_meanwhile_is_shown_not_hidden()
    {
        var page = await _app.TakeOn() + "/notes/soil";
        var stamp = System.Text.RegularExpressions.Regex.Match(await _app.Get(page), "name=\"stamp\" value=\"([^\"]+)\"").Groups[1].Value;
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(page, [("texture", "clay"), ("ph", "6.1")])).Status);

        var second = await _app.Post(page, [("texture", "loam"), ("ph", "6.8"), ("stamp", stamp)]);
        Assert.Equal(HttpStatusCode.Conflict, second.Status);
        var words = App.Words(second.Body);
        Assert.Contains("This leaf was changed meanwhile", words, StringComparison.Ordinal);
        Assert.Contains("pH in water 6.1 6.8", words, StringComparison.Ordinal);
        Assert.Contains("value=\"6.8\"", second.Body, StringComparison.Ordinal);

        Assert.Equal(HttpStatusCode.Found, (await _app.Post(page, [("texture", "loam"), ("ph", "6.8")])).Status);
        Assert.Contains("pH 6.8", await _app.Get(page[..^"/soil".Length]), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_leaves_open_at_once_do_not_meet()
    {
        var lawn = await _app.TakeOn();
        var stamp = System.Text.RegularExpressions.Regex.Match(await _app.Get(lawn + "/notes/soil"), "name=\"stamp\" value=\"([^\"]+)\"").Groups[1].Value;
        await _app.Post(lawn + "/notes/tap", [("flow", "6"), ("flow.unit", "gpm")]);
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(lawn + "/notes/soil", [("texture", "clay"), ("stamp", stamp)])).Status);
        var notes = App.Words(await _app.Get(lawn + "/notes"));
        Assert.Contains("6 gpm", notes, StringComparison.Ordinal);
        Assert.Contains("Clay", notes, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_last_patch_stays_and_another_may_go()
    {
        var lawn = await _app.TakeOn();
        var refused = await _app.Post(lawn + "/notes/patches/1/remove", [], lawn + "/notes/patches/1");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("This is the last patch", refused.Body, StringComparison.Ordinal);

        await _app.Post(lawn + "/notes/patches/new", [("patch", "Back"), ("grasses", "kbg"), ("shape", "circle"), ("across", "10"), ("across.unit", "m")]);
        var removed = await _app.Post(lawn + "/notes/patches/1/remove", [], lawn + "/notes/patches/1");
        Assert.Equal(HttpStatusCode.Found, removed.Status);
        var patches = (await Document(lawn)).GetProperty("patches");
        Assert.Equal("Back", Assert.Single(patches.EnumerateArray()).GetProperty("name").GetString());
    }

    [Fact]
    public async Task What_does_not_exist_says_so()
    {
        var lawn = await _app.TakeOn();
        foreach (var path in (string[])["/lawns/nowhere", "/lawns/nowhere/notes", lawn + "/notes/nothing", lawn + "/notes/patches/7", lawn + "/notes/patches/x", lawn + "/notes/patches", lawn + "/notes/soil/1", "/weather/99", "/nothing"])
        {
            Assert.Contains("<h1>No such", await _app.Get(path, HttpStatusCode.NotFound), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Removing_a_lawn_asks_first()
    {
        var lawn = await _app.TakeOn();
        Assert.Contains("There is no way back", await _app.Get(lawn + "/remove"), StringComparison.Ordinal);
        Assert.Contains("Ash Street", await _app.Get("/"), StringComparison.Ordinal);
        Assert.Equal("/", (await _app.Post(lawn + "/remove", [])).Location);
        Assert.DoesNotContain("Ash Street", await _app.Get("/"), StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();

    private async Task<JsonElement> Document(string lawn) => JsonDocument.Parse(await _app.Get(lawn + "/lawn.json")).RootElement;
}
