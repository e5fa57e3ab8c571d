using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

public sealed class WalkOverTests : IDisposable
{
    private static readonly string[] Steps = ["arrive", "from-afar", "quadrats", "tug", "lift", "push", "thatch", "moisture", "up-close", "weeds"];

    private readonly App _app = new();

    [Fact]
    public async Task A_patch_is_walked_step_by_step_without_script()
    {
        var walk = await _app.TakeOn() + "/walk-over";
        Assert.Contains("Not walked yet", await _app.Get(walk), StringComparison.Ordinal);
        var page = (await Get302(walk + "/front"))!;
        var answers = new Dictionary<string, (string, string)[]>
        {
            ["arrive"] = [("walked", "2026-08-20"), ("began", "weeks"), ("weather", "hot-dry"), ("mown", "3"), ("mown.unit", "in"), ("sun", "7")],
            ["from-afar"] = [("signs", "Digging")],
            ["quadrats"] = [("points", "25"), ("living", "10"), ("weeds", "2")],
            ["tug"] = [("held", "1"), ("lifted", "5"), ("pulled", "0")],
            ["lift"] = [("ground", "1"), ("ground.unit", "sqft"), ("grubs1", "9"), ("grubs2", "11"), ("grubs3", "8")],
            ["push"] = [("depth1", "6"), ("depth1.unit", "in"), ("depth2", "15"), ("depth2.unit", "cm")],
            ["thatch"] = [("depth1", "0.3"), ("depth1.unit", "in")],
            ["moisture"] = [("feel", "moist"), ("down", "4"), ("down.unit", "in")],
            ["up-close"] = [],
            ["weeds"] = [("kinds", "broadleaf"), ("cover-broadleaf", "8")],
        };
        foreach (var step in Steps)
        {
            Assert.EndsWith($"/front/{step}", page, StringComparison.Ordinal);
            var answer = await _app.Post(page, [.. answers[step], ("then", "next")]);
            Assert.True(answer.Status == HttpStatusCode.Found, App.Words(answer.Body));
            page = answer.Location!;
        }

        Assert.EndsWith("/front/sum-up", page, StringComparison.Ordinal);
        var words = App.Words(await _app.Get(page));
        Assert.Contains("points strongly to white grubs", words, StringComparison.Ordinal);
        Assert.Contains("Clearly above the line of 5", words, StringComparison.Ordinal);
        Assert.Contains("Living cover", words, StringComparison.Ordinal);
        Assert.Contains("Looked, none of these seen", words, StringComparison.Ordinal);
        Assert.Contains("Know it before treating it", words, StringComparison.Ordinal);
        Assert.DoesNotContain("Do this next", words, StringComparison.Ordinal);
        var survey = (await Patch(walk)).GetProperty("survey");
        Assert.Equal("2026-08-20", survey.GetProperty("walked").GetString());
        Assert.Equal(10, survey.GetProperty("quadrats")[0].GetProperty("living").GetInt32());
        Assert.Equal("15 cm", survey.GetProperty("pushes")[1].GetString());
        Assert.True(survey.GetProperty("lookedUpClose").GetBoolean());
        Assert.Contains("40 % alive", App.Words(await _app.Get(walk[..^"/walk-over".Length] + "/notes")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_seen_is_said_and_the_next_step_named()
    {
        var walk = await _app.TakeOn() + "/walk-over";
        var words = App.Words(await _app.Get(walk + "/front/sum-up"));
        Assert.Contains("Not enough was seen yet", words, StringComparison.Ordinal);
        Assert.Contains("Do this next", words, StringComparison.Ordinal);
        Assert.Equal(10, Regex.Count(words, "Not looked at"));
    }

    [Fact]
    public async Task Throws_are_kept_one_by_one_and_can_be_mended()
    {
        var throws = await _app.TakeOn() + "/walk-over/front/quadrats";
        foreach (var living in (string[])["12", "9", "15"])
        {
            var answer = await _app.Post(throws, [("points", "25"), ("living", living), ("then", "again")]);
            Assert.EndsWith("/quadrats", answer.Location, StringComparison.Ordinal);
        }

        var words = App.Words(await _app.Get(throws));
        Assert.Contains("So far 48 % alive", words, StringComparison.Ordinal);
        Assert.Contains("Throw 4", words, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(throws + "/2", [("points", "25"), ("living", "0")])).Status);
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(throws + "/1/clear", [], throws + "/1")).Status);
        Assert.Contains("So far 30 % alive", App.Words(await _app.Get(throws)), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(throws, [("points", "25"), ("living", ""), ("photo", "45")])).Status);
        Assert.Contains("photograph, 45 % alive", App.Words(await _app.Get(throws)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("quadrats", "living", "26 hits of 25 points cannot be", "points=25", "living=26")]
    [InlineData("quadrats", "weeds", "20 living and 6 weeds make more than 25 points", "points=25", "living=20", "weeds=6")]
    [InlineData("quadrats", "living", "a count is needed", "points=25")]
    [InlineData("quadrats", "photo", "not both", "points=25", "living=4", "photo=30")]
    [InlineData("quadrats", "points", "how many points", "points=", "living=4")]
    [InlineData("quadrats", "living", "a whole number from 0 to 400 is needed, not 2.5", "points=25", "living=2.5")]
    [InlineData("tug", "lifted", "from 0 to 100 is needed, not -2", "held=3", "lifted=-2")]
    [InlineData("lift", "grubs2", "from 0 to 300 is needed, not 5000", "ground=1", "ground.unit=sqft", "grubs1=3", "grubs2=5000")]
    [InlineData("lift", "ground", "how much ground one lift was is needed", "ground=", "ground.unit=sqft", "grubs1=3")]
    [InlineData("push", "depth1", "from 0 to 24 in is needed, not -3", "depth1=-3", "depth1.unit=in", "depth2=4", "depth2.unit=in")]
    [InlineData("thatch", "depth1", "from 0 to 15.24 cm is needed, not 40", "depth1=40", "depth1.unit=cm")]
    [InlineData("thatch", "depth1", "a number of in is needed, not “thick”", "depth1=thick", "depth1.unit=in")]
    [InlineData("arrive", "sun", "from 0 to 16 hours is needed, not 25", "sun=25")]
    [InlineData("arrive", "began", "choose one of the answers", "began=yesterday")]
    [InlineData("weeds", "cover-clover", "together cover 120 %", "cover-clover=60", "cover-sedge=60")]
    public async Task What_cannot_be_is_named_and_nothing_typed_is_lost(string step, string field, string message, params string[] typed)
    {
        var page = await _app.TakeOn() + "/walk-over/front/" + step;
        var answer = await _app.Post(page, [.. typed.Select(t => (t.Split('=')[0], t.Split('=')[1]))]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(message, App.Words(answer.Body), StringComparison.Ordinal);
        Assert.Contains($"href=\"#f-{field.Replace('.', '-')}\"", answer.Body, StringComparison.Ordinal);
        foreach (var text in typed.Where(t => !t.EndsWith('=') && !t.Contains(".unit", StringComparison.Ordinal) && !t.StartsWith("began", StringComparison.Ordinal)))
        {
            Assert.Contains($"value=\"{text.Split('=')[1]}\"", answer.Body, StringComparison.Ordinal);
        }

        Assert.False((await Patch(page)).TryGetProperty("survey", out _));
    }

    [Fact]
    public async Task A_cause_is_taken_only_when_the_adviser_takes_it()
    {
        var lawn = await _app.TakeOn();
        var sum = lawn + "/walk-over/front/sum-up";
        await _app.Post(lawn + "/walk-over/front/up-close", [("signs", "DarkRim")]);
        Assert.Contains("points to dog spots", App.Words(await _app.Get(sum)), StringComparison.Ordinal);
        Assert.False((await Patch(sum)).TryGetProperty("cause", out _));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Take(sum, "Grubs")).Status);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Take(sum, "nonsense")).Status);
        Assert.Equal(HttpStatusCode.Conflict, (await _app.Post(sum + "/cause", [("cause", "DogSpots"), ("version", "1")], sum)).Status);
        Assert.Equal(HttpStatusCode.Found, (await Take(sum, "DogSpots")).Status);
        Assert.Equal("dog-spots", (await Patch(sum)).GetProperty("cause").GetString());
        Assert.Contains("cause stands as dog spots", App.Words(await _app.Get(sum)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_windows_on_one_step_see_each_other()
    {
        var page = await _app.TakeOn() + "/walk-over/front/tug";
        var stamp = Regex.Match(await _app.Get(page), "name=\"stamp\" value=\"([^\"]+)\"").Groups[1].Value;
        await _app.Post(page, [("held", "4")]);
        var second = await _app.Post(page, [("held", "1"), ("stamp", stamp)]);
        Assert.Equal(HttpStatusCode.Conflict, second.Status);
        Assert.Contains("Held fast 4 1", App.Words(second.Body), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_step_can_be_taken_back_and_the_walk_begun_anew()
    {
        var lawn = await _app.TakeOn();
        var walk = lawn + "/walk-over/front";
        await _app.Post(walk + "/tug", [("held", "4")]);
        await _app.Post(walk + "/from-afar", [("signs", "Rings")]);
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(walk + "/from-afar/clear", [], walk + "/from-afar")).Status);
        var survey = (await Patch(walk)).GetProperty("survey");
        Assert.False(survey.TryGetProperty("signs", out _));
        Assert.False(survey.TryGetProperty("lookedFromAfar", out _));
        Assert.True(survey.TryGetProperty("tugs", out _));
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(walk + "/sum-up/anew", [("version", Version(await _app.Get(walk + "/sum-up")))], walk + "/sum-up")).Status);
        Assert.False((await Patch(walk)).TryGetProperty("survey", out _));
    }

    [Fact]
    public async Task Saving_what_is_shown_changes_nothing_in_either_system()
    {
        var lawn = await _app.TakeOn();
        var walk = lawn + "/walk-over/front";
        await _app.Post(walk + "/arrive", [("walked", "2026-08-20"), ("began", "days"), ("mown", "7"), ("mown.unit", "cm"), ("weather", "cool-wet"), ("weather", "hot-dry"), ("sun", "5.5")]);
        await _app.Post(walk + "/from-afar", [("signs", "Rings")]);
        await _app.Post(walk + "/quadrats", [("points", "30"), ("living", "7")]);
        await _app.Post(walk + "/tug", [("held", "4")]);
        await _app.Post(walk + "/lift", [("ground", "0.0985"), ("ground.unit", "sqft"), ("grubs1", "0"), ("grubs2", "1")]);
        await _app.Post(walk + "/push", [("depth1", "3 1/4"), ("depth1.unit", "in"), ("depth2", "77"), ("depth2.unit", "mm")]);
        await _app.Post(walk + "/moisture", [("feel", "dry"), ("drop", "stood")]);
        await _app.Post(walk + "/up-close", [("signs", "GreenPellets")]);
        await _app.Post(walk + "/weeds", [("kinds", "clover"), ("cover-clover", "12.5"), ("notes", "a <b> & \"c\"")]);
        var before = await _app.Get(lawn + "/lawn.json");
        foreach (var system in (string[])["us", "metric"])
        {
            await _app.Post("/units", [("system", system), ("back", "/")], "/weather");
            foreach (var step in (string[])["arrive", "from-afar", "quadrats/1", "tug", "lift", "push", "thatch", "moisture", "up-close", "weeds"])
            {
                var answer = await _app.Post($"{walk}/{step}", [.. FormFields.Of(await _app.Get($"{walk}/{step}"))]);
                Assert.True(answer.Status == HttpStatusCode.Found, $"{step}: {App.Words(answer.Body)}");
                Assert.Equal(before, await _app.Get(lawn + "/lawn.json"));
            }
        }

        Assert.Equal(HttpStatusCode.Found, (await _app.Post(lawn + "/notes/patches/1", [.. FormFields.Of(await _app.Get(lawn + "/notes/patches/1"))])).Status);
        Assert.Equal(before, await _app.Get(lawn + "/lawn.json"));
    }

    [Fact]
    public async Task What_does_not_exist_says_so()
    {
        var walk = await _app.TakeOn() + "/walk-over";
        foreach (var path in (string[])["/lawns/nowhere/walk-over", walk + "/back", walk + "/front/dance", walk + "/front/quadrats/1", walk + "/front/quadrats/x", walk + "/front/tug/1", walk + "/back/sum-up"])
        {
            Assert.Contains("<h1>No such", await _app.Get(path, HttpStatusCode.NotFound), StringComparison.Ordinal);
        }
    }

    public void Dispose() => _app.Dispose();

    private async Task<Answer> Take(string sum, string cause) => await _app.Post(sum + "/cause", [("cause", cause), ("version", Version(await _app.Get(sum)))], sum);

    private static string Version(string page) => Regex.Match(page, "name=\"version\" value=\"([^\"]+)\"").Groups[1].Value;

    private async Task<string?> Get302(string path)
    {
        using var answer = await _app.Client.GetAsync(path);
        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        return answer.Headers.Location?.OriginalString;
    }

    private async Task<JsonElement> Patch(string under)
    {
        var lawn = Regex.Match(under, "^/lawns/[^/]+").Value;
        return JsonDocument.Parse(await _app.Get(lawn + "/lawn.json")).RootElement.GetProperty("patches")[0];
    }
}
