using System.Globalization;
using System.Text;
using System.Text.Json;
using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>A signal that is there and of little use: answers that come too late, a gateway without its app, a page that is gone.</summary>
[Collection(nameof(DayApp))]
public sealed class WeakSignalTests(DayApp day)
{
    private const string Fit = "The soonest";

    private const string Unfit = "No stretch of 1 hour is fit";

    [Fact]
    public async Task A_late_answer_gives_way_to_what_is_kept_and_renews_it()
    {
        await using var way = await WeakWay.Open(day.App);
        await using var phone = await Phone.Open(way.Address);
        var (lawn, window) = await Fitting(phone, "Slow lawn");
        await BroughtForecast.Bring(day.App, lawn, _ => 19);
        way.Hold(window);
        await phone.Page.GotoAsync(window);
        await Assertions.Expect(phone.Page.Locator(".lede")).ToContainTextAsync(Fit);
        await Assertions.Expect(phone.Page.Locator(".no-signal")).ToContainTextAsync("as this phone kept it");
        await phone.Look("weak-spray-window");

        // It arrives after all: the page stays as it is read, what is kept is the new one, with the hours it leads to.
        way.LetGo(window);
        await Renewed(phone, window, Unfit);
        await Assertions.Expect(phone.Page.Locator(".lede")).ToContainTextAsync(Fit);
        await phone.Signal(there: false);
        await phone.Page.GotoAsync(window);
        await Assertions.Expect(phone.Page.Locator(".lede")).ToContainTextAsync(Unfit);
        await Assertions.Expect(phone.Page.Locator(".no-signal")).ToContainTextAsync("as this phone kept it");
    }

    [Fact]
    public async Task A_sheet_that_is_slow_to_come_is_shown_as_kept_and_says_so_on_every_step()
    {
        await using var way = await WeakWay.Open(day.App);
        await using var phone = await Phone.Open(way.Address);
        var lawn = await day.Clocked("Slow sheet lawn");
        await phone.Keep(lawn + "/day");
        var sheet = new Uri(phone.Page.Url).AbsolutePath;
        await Assertions.Expect(phone.Page.Locator("#as-kept")).ToBeHiddenAsync();
        await Write(lawn, "written by the other phone");
        way.Hold(sheet);
        await phone.Page.GotoAsync("about:blank");
        await phone.Sheet(sheet + "#written");
        await Assertions.Expect(phone.Page.Locator("#as-kept")).ToContainTextAsync("As kept on");
        await Assertions.Expect(phone.Page.Locator("#as-kept")).ToBeVisibleAsync();
        await Assertions.Expect(phone.Page.Locator(".written")).Not.ToContainTextAsync("written by the other phone");
        await phone.Look("weak-sheet");
        way.LetGo(sheet);
        await Renewed(phone, sheet, "written by the other phone");
        await phone.Signal(there: false);
        await phone.Sheet(sheet);
        await Assertions.Expect(phone.Page.Locator(".written")).ToContainTextAsync("written by the other phone");
        await phone.Look("weak-sheet-steps");
    }

    [Theory]
    [InlineData(500)]
    [InlineData(502)]
    [InlineData(503)]
    public async Task Where_the_gateway_does_not_reach_the_app_what_is_kept_is_shown_and_stays(int status)
    {
        await using var way = await WeakWay.Open(day.App);
        await using var phone = await Phone.Open(way.Address);
        var (lawn, window) = await Fitting(phone, FormattableString.Invariant($"Gateway lawn {status}"));
        way.Break(window, status);
        await phone.Page.GotoAsync(window);
        await Assertions.Expect(phone.Page.Locator(".lede")).ToContainTextAsync(Fit);
        await Assertions.Expect(phone.Page.Locator(".no-signal")).ToBeVisibleAsync();

        // A second time: what was shown in its place is still there, and goes when the app is back.
        await phone.Page.GotoAsync(window);
        await Assertions.Expect(phone.Page.Locator(".no-signal")).ToBeVisibleAsync();
        way.Mend(window);
        await BroughtForecast.Bring(day.App, lawn, _ => 19);
        await phone.Page.GotoAsync(window);
        await Assertions.Expect(phone.Page.Locator(".lede")).ToContainTextAsync(Unfit);
        await Assertions.Expect(phone.Page.Locator(".no-signal")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_page_that_is_gone_is_said_to_be_and_is_kept_no_longer()
    {
        await using var way = await WeakWay.Open(day.App);
        await using var phone = await Phone.Open(way.Address);
        var (lawn, window) = await Fitting(phone, "Gone lawn");
        await using (var desk = await Window.Open(day.App, "desk"))
        {
            await desk.Go(lawn + "/remove");
            await desk.Page.Locator("main form button").ClickAsync();
            await Assertions.Expect(desk.Page).ToHaveURLAsync(day.App.Address + "/");
        }

        await phone.Page.GotoAsync(window);
        await Assertions.Expect(phone.Page.Locator("h1")).ToContainTextAsync("No such lawn");
        await phone.Signal(there: false);
        await phone.Page.GotoAsync(window);
        await Assertions.Expect(phone.Page.Locator("h1")).ToHaveTextAsync("On this phone");

        // Late, too: the page that is shown in the meantime is not kept for another time.
        await phone.Signal(there: true);
        way.Hold(lawn + "/tank");
        await phone.Page.GotoAsync(lawn + "/tank");
        await Assertions.Expect(phone.Page.Locator(".no-signal")).ToBeVisibleAsync();
        way.LetGo(lawn + "/tank");
        await phone.Until("async path => !(await caches.match(path))", lawn + "/tank");
    }

    /// <summary>A lawn kept with an hour fit for spraying in sight.</summary>
    private async Task<(string Lawn, string Window)> Fitting(Phone phone, string name)
    {
        var lawn = await day.Clocked(name);
        await BroughtForecast.Bring(day.App, lawn, _ => 5);
        await phone.Keep(lawn + "/day");
        return (lawn, lawn + "/spray-window");
    }

    private static Task Renewed(Phone phone, string path, string words) =>
        phone.Until("async ([path, words]) => (await (await caches.match(path))?.text() ?? '').includes(words)", new[] { path, words });

    private async Task Write(string lawn, string text)
    {
        using var client = new HttpClient { BaseAddress = new Uri(day.App.Address) };
        client.DefaultRequestHeaders.Add("X-Seedfall", "test");
        var note = new { id = Guid.CreateVersion7(), at = DateTimeOffset.UtcNow.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture), what = new { note = new { text } } };
        using var entry = new StringContent(JsonSerializer.Serialize(note), Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync($"/api{lawn}/log", entry);
        Assert.True(answer.IsSuccessStatusCode, await answer.Content.ReadAsStringAsync());
    }
}
