using System.Text.Json;
using Microsoft.Playwright;
using Seedfall.Web.Tests.Photos;

namespace Seedfall.Browser.Tests;

/// <summary>The day sheet on a phone without a signal: everything written arrives once.</summary>
[Collection(nameof(DayApp))]
public sealed class DayOfflineTests(DayApp day)
{
    [Fact]
    public async Task A_whole_seed_down_day_without_a_signal_and_a_dead_battery_in_the_middle_arrives_once()
    {
        await using var phone = await Phone.Open(day.App);
        await phone.Sheet(DayApp.Mill + "/day");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Keep on this phone" }).ClickAsync();
        await Assertions.Expect(phone.Page.Locator("#kept")).ToContainTextAsync("Kept on this phone: Fri, Aug 14, Sat, Aug 15");
        var before = (await day.Entries(DayApp.Mill)).Select(Id).ToHashSet();
        var pictures = await day.Pictures();

        await phone.Signal(there: false);
        await phone.Sheet(DayApp.Mill + "/day/2026-08-14");
        await Assertions.Expect(phone.Sign).ToContainTextAsync("No signal. All sent");
        var steps = await phone.Page.Locator("section[data-step]").EvaluateAllAsync<string[]>("all => all.map(s => s.id)");
        Assert.InRange(steps.Length, 10, 20);
        await phone.Page.Locator("#steps .thumb .go").ClickAsync();
        var written = 0;
        foreach (var step in steps[..(steps.Length / 2)])
        {
            written += await Work(phone, step);
        }

        await phone.Page.Locator($"#{steps[0]}").EvaluateAsync("s => location.hash = s.id");
        await phone.Page.Locator($"#{steps[0]} input[data-spot]").SetInputFilesAsync(new FilePayload { Name = "from-the-camera.jpg", MimeType = "image/jpeg", Buffer = ComposedPhoto.Quadrat(0.5) });
        await Assertions.Expect(phone.Page.Locator($"#{steps[0]} .spot .mine")).ToContainTextAsync("waiting to send");
        await Assertions.Expect(phone.Sign).ToContainTextAsync($"{written + 1} waiting to send");

        await phone.Dies();
        await phone.Sheet(DayApp.Mill + "/day");
        Assert.EndsWith("/day/2026-08-14", phone.Page.Url, StringComparison.Ordinal);
        await Assertions.Expect(phone.Sign).ToContainTextAsync($"No signal. {written + 1} waiting to send");
        var begin = phone.Page.Locator("#steps .thumb .go");
        await Assertions.Expect(begin).ToHaveTextAsync("Go on");
        await Assertions.Expect(begin).ToHaveAttributeAsync("href", $"#{steps[steps.Length / 2]}");
        await Assertions.Expect(phone.Page.Locator($"#{steps[0]} input[data-check]").First).ToBeCheckedAsync();
        await begin.ClickAsync();
        foreach (var step in steps[(steps.Length / 2)..])
        {
            written += await Work(phone, step);
        }

        await Assertions.Expect(phone.Sign).ToContainTextAsync($"{written + 1} waiting to send");
        await phone.Signal(there: true);
        await Assertions.Expect(phone.Sign).ToContainTextAsync("All sent", new() { Timeout = 120_000 });

        // One more than was written down: what the picture measured.
        var all = await day.Entries(DayApp.Mill);
        var entries = all.Where(e => !before.Contains(Id(e))).ToList();
        Assert.Equal(written + 1, entries.Count);
        Assert.Equal(all.Count, all.Select(Id).Distinct().Count());
        Assert.Single(entries, e => e.GetProperty("what").TryGetProperty("seededDown", out _));
        Assert.Single(entries, e => e.GetProperty("what").TryGetProperty("mowed", out _));
        var applied = entries.Where(e => e.GetProperty("what").TryGetProperty("applied", out _)).Select(e => e.GetProperty("what").GetProperty("applied")).ToList();
        Assert.Equal(applied.Count, applied.Select(a => a.GetProperty("product").GetString()).Distinct().Count());
        var sprayed = Assert.Single(applied, a => a.GetProperty("kind").GetString() == "pesticide");
        Assert.Equal("4 mph", sprayed.GetProperty("weatherAtStart").GetProperty("wind").GetString());
        Assert.All(entries, e => Assert.StartsWith("2026-08-14T", e.GetProperty("at").GetString(), StringComparison.Ordinal));
        Assert.Equal(pictures + 1, await day.Pictures());

        // Everything is sent a second time, as after an answer that got lost: nothing is added.
        await phone.Sheet(DayApp.Mill + "/day/2026-08-14");
        var again = await phone.Page.EvaluateAsync<string>(
            """
            async lawn => {
              const log = await (await fetch(`${lawn}/log/log.json`)).json();
              const answer = await fetch(`/api${lawn}/log`, { method: "POST", headers: { "X-Seedfall": "day-sheet", "Content-Type": "application/json" }, body: JSON.stringify(log.entries) });
              return (await answer.json()).results.map(r => r.result).filter(r => r !== "known").join(" ");
            }
            """,
            DayApp.Mill);
        Assert.Equal("", again);
        Assert.Equal(all.Count, (await day.Entries(DayApp.Mill)).Count);
    }

    [Fact]
    public async Task Two_phones_on_one_lawn_both_arrive_and_what_is_at_odds_is_shown()
    {
        var before = (await day.Entries(DayApp.Mill)).Select(Id).ToHashSet();
        await using var first = await Phone.Open(day.App);
        await using var second = await Phone.Open(day.App);
        foreach (var (phone, when) in new[] { (first, "2026-08-13T16:00"), (second, "2026-08-14T09:00") })
        {
            await phone.Sheet(DayApp.Mill + "/day/2026-08-14");
            await phone.Signal(there: false);
            var form = phone.Page.Locator("form[data-record='seed.down.day']");
            await Show(phone, form);
            await form.Locator("input[name=at]").FillAsync(when);
            await form.Locator("button.go").ClickAsync();
            await Assertions.Expect(phone.Sign).ToContainTextAsync("1 waiting to send");
        }

        await second.Signal(there: true);
        await Assertions.Expect(second.Sign).ToContainTextAsync("All sent");
        await first.Signal(there: true);
        await Assertions.Expect(first.Sign).ToContainTextAsync("All sent");
        Assert.Equal(2, (await day.Entries(DayApp.Mill)).Count(e => !before.Contains(Id(e)) && e.GetProperty("what").TryGetProperty("seededDown", out _)));
        await second.Sheet(DayApp.Mill + "/day/2026-08-14");
        await Assertions.Expect(second.Page.Locator(".conflicts")).ToContainTextAsync("Seed down is written for Aug 13 and Aug 14");
    }

    [Fact]
    public async Task What_is_refused_is_parked_with_its_reason_and_can_be_mended()
    {
        await using var phone = await Phone.Open(day.App);
        await phone.Sheet(DayApp.Mill + "/day/2026-08-14");
        var form = phone.Page.Locator("form[data-record^='water.first.watered']").First;
        await Show(phone, form);
        await form.Locator("input[name=time]").FillAsync("9999");
        await form.Locator("button.go").ClickAsync();
        await Assertions.Expect(phone.Sign).ToContainTextAsync("1 refused: look");
        await phone.Sign.Locator("a").ClickAsync();
        await Assertions.Expect(phone.Page.Locator("#queue .problem")).ToContainTextAsync("minutes from 0 to 1440");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Change it" }).ClickAsync();
        await form.Locator("input[name=time]").FillAsync("9");
        await form.Locator("button.go").ClickAsync();
        await Assertions.Expect(form.Locator(".mine li").First).ToContainTextAsync(": sent");
        await Assertions.Expect(phone.Sign).ToContainTextAsync("All sent");
        Assert.Single(await day.Entries(DayApp.Mill), e => e.GetProperty("what").TryGetProperty("watered", out var w) && w.GetProperty("time").GetString() == "9 min");
    }

    [Fact]
    public async Task A_browser_that_keeps_nothing_says_so_and_still_delivers()
    {
        await using var phone = await Phone.Open(day.App);
        await phone.Page.AddInitScriptAsync("IDBFactory.prototype.open = () => { throw new DOMException('private', 'SecurityError'); };");
        await phone.Sheet(DayApp.Quarry + "/day/2026-08-14#waiting");
        await Assertions.Expect(phone.Page.Locator("#lasting")).ToBeVisibleAsync();
        await phone.Page.EvaluateAsync("location.hash = 'written'");
        var form = phone.Page.Locator("form[data-record='free.note']");
        await form.Locator("input[name=text]").FillAsync("from a private window");
        await form.Locator("button.go").ClickAsync();
        await Assertions.Expect(form.Locator(".mine li").First).ToContainTextAsync(": sent");
        Assert.Single(await day.Entries(DayApp.Quarry), e => e.ToString().Contains("from a private window", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Forgetting_leaves_nothing_of_the_lawn_on_the_phone()
    {
        await using var phone = await Phone.Open(day.App);
        await phone.Sheet(DayApp.Quarry + "/day/2026-08-15");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Keep on this phone" }).ClickAsync();
        await Assertions.Expect(phone.Page.Locator("#kept")).ToContainTextAsync("Kept on this phone");
        await phone.Page.GotoAsync("/day");
        await Assertions.Expect(phone.Page.Locator("#kept-list li")).ToHaveCountAsync(2);
        await phone.Page.GetByText("Forget everything on this phone").ClickAsync();
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Forget on this phone" }).ClickAsync();
        await Assertions.Expect(phone.Page.Locator("#kept-none")).ToBeVisibleAsync();
        Assert.Equal("0 0", await phone.Page.EvaluateAsync<string>("async () => `${(await caches.keys()).length} ${(await navigator.serviceWorker.getRegistrations()).length}`"));
    }

    [Fact]
    public async Task A_sheet_kept_longer_than_seven_days_is_not_shown_and_other_pages_lead_to_what_is_kept()
    {
        await using var phone = await Phone.Open(day.App);
        await phone.Sheet(DayApp.Quarry + "/day/2026-08-14");
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Keep on this phone" }).ClickAsync();
        await Assertions.Expect(phone.Page.Locator("#kept")).ToContainTextAsync("Kept on this phone");
        await phone.Page.EvaluateAsync(
            """
            async () => {
              const cache = await caches.open((await caches.keys())[0]);
              const kept = await cache.match(location.pathname);
              const headers = new Headers(kept.headers);
              headers.set("seedfall-kept", String(Date.now() - 8 * 86400000));
              await cache.put(location.pathname, new Response(await kept.text(), { headers }));
            }
            """);
        await phone.Signal(there: false);
        foreach (var path in new[] { "/day/2026-08-14", "/notes" })
        {
            await phone.Page.GotoAsync(DayApp.Quarry + path);
            await Assertions.Expect(phone.Page.Locator("h1")).ToHaveTextAsync("On this phone");
        }

        await Assertions.Expect(phone.Page.Locator("#kept-list li")).ToHaveCountAsync(1);
    }

    /// <summary>The clock goes back an hour at two: half past one comes twice, an hour apart. The phone's own clock is set to that night.</summary>
    [Fact]
    public async Task The_hour_that_comes_twice_is_told_apart()
    {
        var lawn = await day.Clocked("Clock lawn");
        var today = DateTime.UtcNow.Date;
        var night = new[] { today.Year, today.Year - 1 }.Select(FirstSundayOfNovember).First(d => d < today.AddDays(-1));
        await using var phone = await Phone.Open(day.App);
        foreach (var (utcHour, note) in new[] { (6, "before"), (7, "after") })
        {
            await phone.Page.Clock.SetFixedTimeAsync(new DateTime(night.Year, night.Month, night.Day, utcHour, 30, 0, DateTimeKind.Utc));
            await phone.Sheet(FormattableString.Invariant($"{lawn}/day/{night:yyyy-MM-dd}#written"));
            await Free(phone, note);
        }

        var entries = await day.Entries(lawn);
        Assert.Equal(["before", "after"], entries.Select(e => e.GetProperty("what").GetProperty("note").GetProperty("text").GetString()));
        Assert.Equal(
            [FormattableString.Invariant($"{night:yyyy-MM-dd}T01:30:00-05:00"), FormattableString.Invariant($"{night:yyyy-MM-dd}T01:30:00-06:00")],
            entries.Select(e => e.GetProperty("at").GetString()));

        // A phone weeks behind the server says so, on the page and in the log.
        Assert.All(entries, e => Assert.Contains("behind the server's", e.GetProperty("remark").GetString(), StringComparison.Ordinal));
        await phone.Page.EvaluateAsync("location.hash = 'waiting'");
        await Assertions.Expect(phone.Page.Locator("#clock-off")).ToContainTextAsync("Look at this phone's clock");
    }

    private static string Id(JsonElement entry) => entry.GetProperty("id").GetString()!;

    private static DateTime FirstSundayOfNovember(int year) => Enumerable.Range(1, 7).Select(d => new DateTime(year, 11, d)).First(d => d.DayOfWeek == DayOfWeek.Sunday);

    /// <summary>Does a step as a person would, in a hurry: every box, every form with a double tap, then on. Returns how much was written down.</summary>
    private static async Task<int> Work(Phone phone, string step)
    {
        var section = phone.Page.Locator($"#{step}");
        await Assertions.Expect(section).ToBeVisibleAsync();
        foreach (var box in await section.Locator("input[data-check]").AllAsync())
        {
            await box.CheckAsync();
        }

        var forms = section.Locator("form.record");
        var (count, written) = (await forms.CountAsync(), 0);
        for (var i = 0; i < count; i++)
        {
            var form = forms.Nth(i);
            if (await form.GetAttributeAsync("data-record") is { } record && record.EndsWith(".note", StringComparison.Ordinal))
            {
                await section.Locator("details.aside-note > summary").ClickAsync();
                await form.Locator("input[name=text]").FillAsync($"note at {step}");
            }
            else if (await form.Locator("input[name=start-wind]").CountAsync() > 0 && await form.Locator("input[name=start-wind]").IsVisibleAsync())
            {
                await form.Locator("input[name=start-wind]").FillAsync("4");
                await form.Locator("select[name=start-from]").SelectOptionAsync("west");
                await form.Locator("input[name=end-wind]").FillAsync("5");
            }

            await form.Locator("button.go").DblClickAsync();
            await Assertions.Expect(form.Locator(".mine li").First).ToContainTextAsync("waiting to send");
            written++;
        }

        await section.Locator("[data-done]").ClickAsync();
        return written;
    }

    private static async Task Free(Phone phone, string text)
    {
        var form = phone.Page.Locator("form[data-record='free.note']");
        var another = form.GetByRole(AriaRole.Button, new() { Name = "Write another" });
        if (await another.CountAsync() > 0)
        {
            // Its guard against a second tap goes by the clock, which stands still here.
            await form.EvaluateAsync("f => { f.dataset.more = ''; f.classList.remove('done'); }");
        }

        await form.Locator("input[name=text]").FillAsync(text);
        await form.Locator("button.go").ClickAsync();
        await Assertions.Expect(form.Locator(".mine li", new() { HasText = text })).ToContainTextAsync(": sent");
    }

    private static async Task Show(Phone phone, ILocator form)
    {
        await form.EvaluateAsync("f => location.hash = f.closest('section').id");
        await Assertions.Expect(form).ToBeVisibleAsync();
    }
}
