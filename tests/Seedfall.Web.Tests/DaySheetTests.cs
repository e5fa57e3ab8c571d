using System.Net;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>The day sheet as a page: complete without script, small, and what a phone needs beside it.</summary>
public sealed class DaySheetTests : IDisposable
{
    private readonly App _app = new(demo: true);

    [Fact]
    public async Task The_bare_address_leads_to_the_lawns_own_day()
    {
        var lawn = DemoLawns.Mill;
        using var answer = await _app.Client.GetAsync(lawn + "/day");
        Assert.Equal(lawn + "/day/2026-08-14", answer.Headers.Location?.OriginalString);
        Assert.Contains("days before seed-down", await _app.Get(lawn + "/day/2026-08-14"), StringComparison.Ordinal);
        foreach (var wrong in new[] { "/day/soon", "/day/2026-02-30", "/day/1999-01-01" })
        {
            Assert.Contains("No such day", await _app.Get(lawn + wrong, HttpStatusCode.NotFound), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Seed_down_day_reads_whole_without_script()
    {
        var page = await Page();
        foreach (Match link in Regex.Matches(page, "href=\"#([^\"]+)\""))
        {
            Assert.Contains($"id=\"{link.Groups[1].Value}\"", page, StringComparison.Ordinal);
        }

        var words = Regex.Replace(App.Words(page), "\\s+", " ");
        foreach (var said in new[] { "bulk seed in all 12.5 lb 5.66 kg", "First half, one way", "Second half, across", "water as carrier 3.35 gal", "Wind 5 mph or less at the nozzle", "Never less than long sleeves", "The bag runs out", "Today is an exception", "The label is the law", "Write it down: Seed is down" })
        {
            Assert.Contains(said, words, StringComparison.Ordinal);
        }

        // Each form for the phone has a way for a browser without script.
        Assert.Equal(Regex.Count(page, "<form class=\"record"), Regex.Count(page, "Write it down: "));
        Assert.DoesNotContain("form-token", page, StringComparison.Ordinal);
    }

    /// <summary>The budget of issue 6: 60 kB for the first view, as it goes over the wire.</summary>
    [Theory]
    [InlineData("br")]
    [InlineData("gzip")]
    public async Task The_first_view_stays_within_sixty_kilobytes(string encoding)
    {
        var lawn = DemoLawns.Mill;
        var page = await Page();
        var files = Regex.Matches(page, "(?:src|href)=\"(/[^\"]+(?:\\.css|\\.js|\\.svg|\\.webmanifest)[^\"]*)\"").Select(m => WebUtility.HtmlDecode(m.Groups[1].Value)).Distinct().ToList();
        Assert.Contains(files, f => f.Contains("/built/day.js", StringComparison.Ordinal));
        var total = 0;
        foreach (var path in files.Prepend(lawn + "/day/2026-08-27"))
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, path);
            request.Headers.AcceptEncoding.ParseAdd(encoding);
            using var answer = await _app.Client.SendAsync(request);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            total += (await answer.Content.ReadAsByteArrayAsync()).Length;
        }

        Assert.InRange(total, 1000, 60_000);
    }

    [Fact]
    public async Task The_worker_is_asked_for_anew_each_time_and_names_files_that_are_there()
    {
        using var answer = await _app.Client.GetAsync("/sw.js");
        Assert.Equal("text/javascript", answer.Content.Headers.ContentType?.MediaType);
        Assert.Contains("no-cache", answer.Headers.CacheControl?.ToString(), StringComparison.Ordinal);
        var worker = await answer.Content.ReadAsStringAsync();
        var shell = Regex.Matches(worker.Split('\n')[0], "\"(/[^\"]+)\"").Select(m => Regex.Unescape(m.Groups[1].Value)).ToList();
        Assert.Equal(4, shell.Count);
        foreach (var path in shell)
        {
            Assert.Matches("\\?v=[0-9a-f]{12}$", path);
            await _app.Get(path);
        }

        var page = await Page();
        Assert.All(shell, path => Assert.Contains(path, page, StringComparison.Ordinal));
        Assert.Contains("\"/day\"", await _app.Get("/manifest.webmanifest"), StringComparison.Ordinal);
        Assert.Contains("On this phone", await _app.Get("/day"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_the_day_sheet_may_listen()
    {
        using var sheet = await _app.Client.GetAsync(DemoLawns.Mill + "/day/2026-08-27");
        Assert.Contains("microphone=(self)", Assert.Single(sheet.Headers.GetValues("Permissions-Policy")), StringComparison.Ordinal);
        using var desk = await _app.Client.GetAsync("/");
        Assert.Contains("microphone=()", Assert.Single(desk.Headers.GetValues("Permissions-Policy")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_days_for_one_seed_down_are_shown_on_sheet_and_log_until_one_is_struck()
    {
        var lawn = DemoLawns.Mill;
        foreach (var day in new[] { "2026-08-12", "2026-08-13" })
        {
            await _app.Post(lawn + "/log/write/seeded", [("day", day), ("hour", "10:00"), ("patch", "")]);
        }

        const string Sentence = "Seed down is written for Aug 12 and Aug 13";
        Assert.Contains(Sentence, await _app.Get(lawn + "/day/2026-08-13"), StringComparison.Ordinal);
        var log = await _app.Get(lawn + "/log");
        Assert.Contains(Sentence, log, StringComparison.Ordinal);
        var entry = Regex.Match(log, "id=\"entry-([^\"]+)\"").Groups[1].Value;
        await _app.Post($"{lawn}/log/{entry}/strike", [("why", "only planned")], lawn + "/log");
        Assert.DoesNotContain(Sentence, await _app.Get(lawn + "/log"), StringComparison.Ordinal);
        Assert.Contains("<s>Seed went down</s>, struck", Regex.Replace(await _app.Get(lawn + "/day/2026-08-13"), "\\s+", " "), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_weather_there_is_no_plan_but_a_place_to_write()
    {
        var lawn = await _app.TakeOn();
        using var bare = await _app.Client.GetAsync(lawn + "/day");
        var page = await _app.Get(bare.Headers.Location!.OriginalString);
        Assert.Contains("There is no plan to work from", page, StringComparison.Ordinal);
        Assert.Contains("data-record=\"free.note\"", page, StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();

    /// <summary>Seed-down day, kept for a day of its own so that better weather rules do not move it.</summary>
    private async Task<string> Page()
    {
        var kept = await _app.Post(DemoLawns.Mill + "/season", [("season", "2026"), ("seedDown", "2026-08-27")], DemoLawns.Mill + "?seedDown=2026-08-27");
        Assert.Equal(HttpStatusCode.Found, kept.Status);
        return await _app.Get(DemoLawns.Mill + "/day/2026-08-27");
    }
}
