using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>The plan on the page, its what-if, and what is taken away, on the demo.</summary>
public sealed class PlanTests : IDisposable
{
    private readonly App _app = new(demo: true);

    [Fact]
    public async Task The_page_holds_the_whole_plan_under_100_kB()
    {
        var lawn = DemoLawns.Mill;
        var body = await _app.Get(lawn);
        foreach (var id in (string[])["verdict", "day", "water", "tasks", "assumptions", "cautions"])
        {
            Assert.Contains($"id=\"{id}\"", body, StringComparison.Ordinal);
        }

        Assert.Contains("class=\"ribbon-svg\"", body, StringComparison.Ordinal);
        Assert.True(Regex.Count(body, "class=\"working\"") > 20, "figures must open to their workings");

        using var request = new HttpRequestMessage(HttpMethod.Get, lawn);
        request.Headers.AcceptEncoding.ParseAdd("br");
        using var answer = await _app.Client.SendAsync(request);
        Assert.Equal("br", Assert.Single(answer.Content.Headers.ContentEncoding));
        Assert.InRange((await answer.Content.ReadAsByteArrayAsync()).Length, 1_000, 100_000);
    }

    [Fact]
    public async Task A_what_if_recomputes_and_is_kept_only_when_asked()
    {
        var lawn = DemoLawns.Mill;
        var before = App.Words(await _app.Get(lawn));
        var asked = await _app.Get(lawn + "?seedDown=2026-09-05");
        Assert.Contains("What if: seed-down on Sep 5, 2026. Nothing is kept yet.", App.Words(asked), StringComparison.Ordinal);
        Assert.Equal(before, App.Words(await _app.Get(lawn)));

        var kept = await _app.Post(lawn + "/season", [("season", "2026"), ("seedDown", "2026-09-05"), ("method", "broadcast"), ("share", "")], lawn + "?seedDown=2026-09-05");
        Assert.Equal(lawn + "?season=2026", kept.Location);
        var after = await _app.Get(lawn);
        Assert.Contains("name=\"seedDown\" value=\"2026-09-05\"", Regex.Replace(after, "(type|id)=\"[^\"]*\" ", ""), StringComparison.Ordinal);
        Assert.DoesNotContain("Nothing is kept yet.", after, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("?seedDown=never")]
    [InlineData("?seedDown=2019-09-05")]
    [InlineData("?season=1")]
    [InlineData("?share=90")]
    [InlineData("?method=%3Cscript%3E")]
    public async Task A_bad_what_if_is_said_and_the_kept_plan_stands(string query)
    {
        var body = await _app.Get(DemoLawns.Mill + query, HttpStatusCode.UnprocessableEntity);
        Assert.Contains("That what-if could not be planned", body, StringComparison.Ordinal);
        Assert.Contains("id=\"verdict\"", body, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>", body, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan.html", "text/html", "<!DOCTYPE html>")]
    [InlineData("handout.html", "text/html", "<!DOCTYPE html>")]
    [InlineData("season.ics", "text/calendar", "BEGIN:VCALENDAR")]
    [InlineData("materials.csv", "text/csv", "\uFEFF")]
    [InlineData("plan.json", "application/json", "{")]
    public async Task Files_are_saved_under_their_own_name_and_run_nothing(string file, string type, string opening)
    {
        var lawn = DemoLawns.Mill;
        using var answer = await _app.Client.GetAsync($"{lawn}/take-away/{file}");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(type, answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition!.DispositionType);
        Assert.EndsWith("-2026-" + file, answer.Content.Headers.ContentDisposition.FileNameStar, StringComparison.Ordinal);
        Assert.StartsWith(opening, System.Text.Encoding.UTF8.GetString(await answer.Content.ReadAsByteArrayAsync()).TrimStart('\r', '\n'), StringComparison.Ordinal);
        if (type == "text/html")
        {
            Assert.Contains("sandbox", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task What_is_taken_away_is_the_plan_that_was_asked_for()
    {
        var lawn = DemoLawns.Mill;
        var json = JsonDocument.Parse(await _app.Get(lawn + "/take-away/plan.json?seedDown=2026-09-05")).RootElement;
        Assert.Contains("2026-09-05", json.GetProperty("timing").GetProperty("seedDown").GetRawText(), StringComparison.Ordinal);
        Assert.Contains("/take-away/plan.json?seedDown=2026-09-05", await _app.Get(lawn + "/take-away?seedDown=2026-09-05"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_weather_the_next_step_is_said()
    {
        var lawn = await _app.TakeOn();
        Assert.Contains("Give it weather", await _app.Get(lawn), StringComparison.Ordinal);
        Assert.Contains("no weather", await _app.Get(lawn + "/take-away"), StringComparison.Ordinal);
        Assert.Contains("No plan yet", await _app.Get(lawn + "/take-away/plan.json", HttpStatusCode.Conflict), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Three_lawns_three_verdicts_on_one_desk()
    {
        var words = App.Words(await _app.Get("/"));
        Assert.Contains("Recover", words, StringComparison.Ordinal);
        Assert.Contains("Water short", words, StringComparison.Ordinal);
        Assert.Contains("Wait", words, StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();
}
