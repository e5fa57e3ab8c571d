using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>The hours ahead on a kept lawn without a signal, and what they weigh.</summary>
[Collection(nameof(DayApp))]
public sealed class SprayWindowOfflineTests(DayApp day)
{
    /// <summary>Hours kept beside a window at most, as the worker has it.</summary>
    private const int MostHours = 24;

    [Fact]
    public async Task The_hours_ahead_read_without_a_signal_and_say_how_old_their_forecast_is()
    {
        var lawn = await day.Clocked("Hours lawn");
        await BroughtForecast.Bring(day.App, lawn, _ => 5);
        await using var phone = await Phone.Open(day.App);
        var now = DateTime.UtcNow;
        await phone.Page.Clock.SetFixedTimeAsync(now);
        await phone.Keep(lawn + "/day");
        await phone.Signal(there: false);
        await phone.Page.GotoAsync(lawn + "/spray-window");
        var note = phone.Page.Locator(".no-signal");
        await Assertions.Expect(note).ToContainTextAsync("as this phone kept it");
        await Assertions.Expect(note).ToContainTextAsync("Its forecast was made 5 h ago.");
        await Assertions.Expect(note).Not.ToContainTextAsync("too old");
        await Assertions.Expect(phone.Page.Locator(".gone-by")).ToHaveCountAsync(0);
        Assert.Equal(0, await phone.Page.Locator("form:visible").CountAsync());
        await Assertions.Expect(phone.Page.GetByText("Bringing a forecast needs a signal.")).ToBeVisibleAsync();
        await phone.Look("kept-spray-window");

        // Every hour it leads to opens here, and leads on to nothing that does not.
        var hours = await phone.Page.Locator("a[data-hour]").EvaluateAllAsync<string[]>("all => all.map(a => a.getAttribute('href'))");
        Assert.NotEmpty(hours);
        foreach (var hour in hours)
        {
            await phone.Page.GotoAsync(hour);
            await Assertions.Expect(note).ToContainTextAsync("Its forecast was made 5 h ago.");
            await Assertions.Expect(phone.Page.Locator(".spray-verdict")).ToBeVisibleAsync();
            await Assertions.Expect(phone.Page.Locator("nav[aria-label=Hours]")).ToContainTextAsync("needs a signal");
            Assert.Equal("", await phone.Page.EvaluateAsync<string>("async () => { const dead = []; for (const a of document.querySelectorAll('a[data-hour]')) if (!await caches.match(a.pathname)) dead.push(a.pathname); return dead.join(' '); }"));
        }

        await phone.Look("kept-spray-hour");

        // Two days on: old, the first stretches over, and said to be.
        await phone.Page.Clock.SetFixedTimeAsync(now.AddHours(44.0));
        await phone.Page.GotoAsync(lawn + "/spray-window");
        await Assertions.Expect(note).ToContainTextAsync("Its forecast was made 2 days ago. That is too old to mix by: judge the moment on the lawn.");
        await Assertions.Expect(phone.Page.Locator(".lede")).ToContainTextAsync("By now the soonest is over.");
        await Assertions.Expect(phone.Page.Locator("tr .gone-by").First).ToHaveTextAsync("over");
        await phone.Look("kept-spray-window-old");
        await phone.Page.GotoAsync(hours[0]);
        await Assertions.Expect(phone.Page.Locator("h1 .gone-by")).ToHaveTextAsync("over");

        // With a signal the page is the server's own.
        await phone.Signal(there: true);
        await phone.Page.GotoAsync(lawn + "/spray-window");
        await Assertions.Expect(note).ToHaveCountAsync(0);
        await Assertions.Expect(phone.Page.Locator(".gone-by")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task However_restless_the_forecast_what_is_kept_stays_light_and_goes_with_the_forecast()
    {
        var lawn = await day.Clocked("Restless lawn");
        await BroughtForecast.Bring(day.App, lawn, i => i % 2 == 0 ? 4 : 19, hours: 122);
        await using var phone = await Phone.Open(day.App);
        await phone.Keep(lawn + "/day");
        var (many, bytes) = await Kept(phone, lawn);
        Assert.Equal(MostHours, many);
        Assert.InRange(bytes, 1, 500_000);

        await phone.Signal(there: false);
        await phone.Page.GotoAsync(lawn + "/spray-window");
        await Assertions.Expect(phone.Page.Locator("a[data-hour]")).ToHaveCountAsync(MostHours);
        await Assertions.Expect(phone.Page.Locator(".spray-day th", new() { HasText = "needs a signal" })).Not.ToHaveCountAsync(0);
        await phone.Look("kept-spray-window-restless");

        // Another forecast: the hours of the first are gone, those of the second are there.
        await phone.Signal(there: true);
        await BroughtForecast.Bring(day.App, lawn, _ => 19);
        await phone.Page.GotoAsync(lawn + "/spray-window");
        await Assertions.Expect(phone.Page.Locator(".lede")).ToContainTextAsync("No stretch of 1 hour is fit");
        await phone.Until(
            """
            async ([lawn, words]) => {
              const cache = await caches.open((await caches.keys())[0]);
              const hours = (await cache.keys()).filter(r => r.url.includes(`${lawn}/spray-window/hour/`));
              const texts = await Promise.all(hours.map(async r => (await cache.match(r)).text()));
              return texts.length === [...new Set([...document.querySelectorAll('a[data-hour]')].map(a => a.pathname))].length && texts.every(t => t.includes(words));
            }
            """,
            new[] { lawn, "over the label" });
        await phone.Signal(there: false);
        await phone.Page.Locator("a[data-hour]").First.ClickAsync();
        await Assertions.Expect(phone.Page.Locator(".spray-verdict")).ToContainTextAsync("Stop");
    }

    /// <summary>Hours kept of a lawn, and characters of all its pages kept together.</summary>
    private static async Task<(int Hours, int Bytes)> Kept(Phone phone, string lawn)
    {
        var found = await phone.Page.EvaluateAsync<int[]>(
            """
            async lawn => {
              let [hours, bytes] = [0, 0];
              const cache = await caches.open((await caches.keys())[0]);
              for (const request of await cache.keys()) {
                if (!request.url.includes(`${lawn}/`)) continue;
                if (request.url.includes('/hour/')) hours++;
                bytes += (await (await cache.match(request)).text()).length;
              }
              return [hours, bytes];
            }
            """,
            lawn);
        return (found[0], found[1]);
    }
}
