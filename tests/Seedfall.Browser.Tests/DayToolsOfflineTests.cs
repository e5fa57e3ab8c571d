using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>The pages the work is done by, on a kept lawn without a signal.</summary>
[Collection(nameof(DayApp))]
public sealed class DayToolsOfflineTests(DayApp day)
{
    [Fact]
    public async Task Without_a_signal_the_spray_step_leads_to_the_verdict_on_the_spot()
    {
        await using var phone = await Phone.Open(day.App);
        await phone.Keep(DayApp.Mill + "/day/2026-08-14");
        await phone.Signal(there: false);
        await phone.Page.Clock.SetFixedTimeAsync(new DateTime(2026, 8, 14, 17, 0, 0, DateTimeKind.Utc));
        await phone.Sheet(DayApp.Mill + "/day/2026-08-14#do-spray-pre-emergent");
        await phone.Page.Locator("#do-spray-pre-emergent").GetByRole(AriaRole.Link, new() { Name = "Judge the wind now" }).ClickAsync();
        await Assertions.Expect(phone.Page.Locator("h1")).ToHaveTextAsync("Spray now?");
        await Assertions.Expect(phone.Page.Locator(".no-signal")).ToContainTextAsync("as this phone kept it");
        Assert.Equal(0, await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Judge it" }).CountAsync());
        var (wind, verdict) = (phone.Page.GetByRole(AriaRole.Textbox, new() { Name = "Wind, by hand anemometer" }), phone.Page.Locator(".spray-live"));
        await phone.Page.GetByLabel("None in sight").CheckAsync();
        await wind.FillAsync("12");
        await Assertions.Expect(verdict).ToContainTextAsync("Stop");
        await Assertions.Expect(verdict).ToContainTextAsync("Wind 12 mph (5.4 m/s) is over the label’s 10 mph (4.5 m/s).");
        await wind.FillAsync("4");
        await Assertions.Expect(verdict).ToContainTextAsync("Go");
        await Assertions.Expect(verdict).Not.ToContainTextAsync("Wind");
        await phone.Look("kept-spray-now");
    }

    [Fact]
    public async Task Pace_tank_and_spreader_read_without_a_signal_and_say_what_needs_one()
    {
        await using var phone = await Phone.Open(day.App);
        await phone.Keep(DayApp.Mill + "/day/2026-08-14");
        await phone.Signal(there: false);
        foreach (var (path, title) in new[] { ("/sprayer/pace", "Walk a steady pace"), ("/tank", "Mix the tank"), ("/spreader", "Mill Lane corner lawn") })
        {
            await phone.Page.GotoAsync(DayApp.Mill + path);
            await Assertions.Expect(phone.Page.Locator("h1")).ToContainTextAsync(title);
            await Assertions.Expect(phone.Page.Locator(".no-signal")).ToBeVisibleAsync();
            Assert.Equal(0, await phone.Page.Locator("form:visible").CountAsync());
            if (await phone.Page.Locator("main form").CountAsync() > 0)
            {
                await Assertions.Expect(phone.Page.Locator(".needs-signal").First).ToContainTextAsync("needs a signal");
            }

            Assert.Equal("", await phone.Page.EvaluateAsync<string>("() => [...document.styleSheets].filter(s => { try { return s.cssRules.length === 0; } catch { return true; } }).map(s => s.href).join(' ')"));
            await phone.Look("kept" + path.Replace('/', '-'));
        }

        await phone.Page.GotoAsync(DayApp.Mill + "/sprayer/pace");
        if (await phone.Page.Locator("#pace").CountAsync() > 0)
        {
            await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Start the beat" }).ClickAsync();
            await Assertions.Expect(phone.Page.Locator(".beat [role=status]")).ToContainTextAsync("steps a minute");
        }

        // With a signal again the page is the server's own, and asks as before.
        await phone.Signal(there: true);
        await phone.Page.GotoAsync(DayApp.Mill + "/tank");
        await Assertions.Expect(phone.Page.Locator(".no-signal")).ToHaveCountAsync(0);
        await Assertions.Expect(phone.Page.GetByRole(AriaRole.Button, new() { Name = "Work it out again" })).ToBeVisibleAsync();

        // And goes while it is open: what is typed stays.
        await phone.Signal(there: false);
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Work it out again" }).ClickAsync();
        await Assertions.Expect(phone.Page.Locator(".needs-signal")).ToContainTextAsync("there is none");
    }

    [Fact]
    public async Task Kept_pages_go_with_the_sheets_after_seven_days_and_when_forgotten()
    {
        await using var phone = await Phone.Open(day.App);
        await phone.Keep(DayApp.Mill + "/day/2026-08-14");
        await phone.Page.EvaluateAsync(
            """
            async path => {
              const cache = await caches.open((await caches.keys())[0]);
              const kept = await cache.match(path);
              const headers = new Headers(kept.headers);
              headers.set("seedfall-kept", String(Date.now() - 8 * 86400000));
              await cache.put(path, new Response(await kept.text(), { headers }));
            }
            """,
            DayApp.Mill + "/tank");
        await phone.Signal(there: false);
        await phone.Page.GotoAsync(DayApp.Mill + "/tank");
        await Assertions.Expect(phone.Page.Locator("h1")).ToHaveTextAsync("On this phone");
        await phone.Page.GotoAsync(DayApp.Mill + "/sprayer/pace");
        await Assertions.Expect(phone.Page.Locator(".no-signal")).ToBeVisibleAsync();
        await phone.Signal(there: true);
        await phone.Page.GotoAsync("/day");
        await phone.Page.GetByText("Forget everything on this phone").ClickAsync();
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Forget on this phone" }).ClickAsync();
        await Assertions.Expect(phone.Page.Locator("#kept-none")).ToBeVisibleAsync();
        Assert.Equal(0, await phone.Page.EvaluateAsync<int>("async () => (await caches.keys()).length"));
    }
}
