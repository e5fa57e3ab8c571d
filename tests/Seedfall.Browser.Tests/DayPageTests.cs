using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>Every step of the day sheet at both widths: nothing bars anyone, nothing moves by itself.</summary>
[Collection(nameof(DayApp))]
public sealed class DayPageTests(DayApp day)
{
    private const string Lawn = DayApp.Mill;

    private RunningApp App => day.App;

    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task Every_step_is_open_to_everyone(string size)
    {
        await using var window = await Window.Open(App, size, touch: size == "phone");
        foreach (var (date, name) in new[] { ("2026-08-14", "day-seed-down"), ("2026-08-12", "day-soak"), ("2026-08-29", "day-15") })
        {
            await window.Go($"{Lawn}/day/{date}");
            await window.Page.Locator("#sheet[data-ready]").WaitForAsync();
            await window.Picture(name);
            await window.NothingBars();
            foreach (var step in size == "phone" && name == "day-seed-down" ? await Steps(window) : [])
            {
                await window.Page.EvaluateAsync("id => location.hash = id", step);
                await window.Picture($"{name}-{step}");
                await Tall(window);
                await window.NothingBars();
            }
        }

        await window.Go("/day");
        await window.Picture("on-this-phone");
        await window.NothingBars();
        window.NoFaults();
    }

    [Fact]
    public async Task On_a_phone_one_step_shows_at_a_time_and_the_thumb_finds_the_next()
    {
        await using var window = await Window.Open(App, "phone", touch: true);
        await window.Go($"{Lawn}/day/2026-08-14");
        await window.Page.Locator("#sheet[data-ready]").WaitForAsync();
        var steps = await Steps(window);
        for (var i = 0; i < steps.Count; i++)
        {
            await Assertions.Expect(window.Page.Locator("section.step:visible")).ToHaveCountAsync(1);
            var next = window.Page.Locator("section.step:visible .thumb .go");
            var box = (await next.BoundingBoxAsync())!;
            Assert.True(box is { Height: >= 56, Width: >= 180 } && box.Y + box.Height > 760, $"{box.Width} x {box.Height} at {box.Y}");
            await next.ClickAsync();
            await Assertions.Expect(window.Page.Locator($"#{steps[i]}")).ToBeVisibleAsync();
        }

        Assert.Equal(steps.Count - 1, await window.Page.EvaluateAsync<int>("() => document.querySelectorAll('.todo .done').length"));
    }

    [Fact]
    public async Task Without_script_the_whole_day_is_on_the_page()
    {
        await using var window = await Window.Open(App, "phone", script: false);
        await window.Go($"{Lawn}/day/2026-08-14");
        var steps = await window.Page.Locator("section[data-step]").AllAsync();
        Assert.InRange(steps.Count, 10, 20);
        foreach (var step in steps)
        {
            Assert.True(await step.IsVisibleAsync());
        }

        Assert.False(await window.Page.Locator("form.record").First.IsVisibleAsync());
        Assert.True(await window.Page.GetByText("Write it down: Seed is down").IsVisibleAsync());
        await window.Picture("day-without-script");
    }

    /// <summary>On a slow connection, where a late file would push what is read already.</summary>
    [Fact]
    public async Task Nothing_moves_while_it_loads()
    {
        await using var window = await Window.Open(App, "phone", touch: true);
        var wire = await window.Page.Context.NewCDPSessionAsync(window.Page);
        await wire.SendAsync("Network.enable");
        await wire.SendAsync("Network.emulateNetworkConditions", new() { ["offline"] = false, ["latency"] = 400, ["downloadThroughput"] = 50_000, ["uploadThroughput"] = 50_000 });
        foreach (var hash in new[] { "", "#do-seed-first-half" })
        {
            await window.Page.GotoAsync("about:blank");
            await window.Go($"{Lawn}/day/2026-08-14{hash}");
            await window.Page.Locator("#sheet[data-ready]").WaitForAsync();
            await Assertions.Expect(window.Page.Locator("#sent")).ToContainTextAsync("All sent");
            var moved = await window.Page.EvaluateAsync<double>(
                """
                () => new Promise(done => {
                  let sum = 0;
                  new PerformanceObserver(list => { for (const e of list.getEntries()) if (!e.hadRecentInput) sum += e.value; }).observe({ type: "layout-shift", buffered: true });
                  setTimeout(() => done(sum), 500);
                })
                """);
            Assert.Equal(0.0, moved);
        }

        window.NoFaults();
    }

    [Fact]
    public async Task The_measured_grass_picks_its_mowing_and_says_when_it_is_an_exception()
    {
        await using var window = await Window.Open(App, "phone", touch: true);
        await window.Go($"{Lawn}/day/2026-08-14#do-mow-seed-down");
        await window.Page.Locator("#sheet[data-ready]").WaitForAsync();
        var said = window.Page.Locator("#do-mow-seed-down .cut");
        foreach (var (stands, unit, words) in new[] { ("4", "in", "within a third"), ("5", "in", "Today is an exception"), ("12.7", "cm", "Today is an exception"), ("2.5", "in", "leave the mower"), ("9", "in", "Too tall for one day") })
        {
            await window.Page.Locator("#do-mow-seed-down .cuts select").SelectOptionAsync(new SelectOptionValue { Label = unit });
            await window.Page.Locator("#do-mow-seed-down [data-stands]").FillAsync(stands);
            await Assertions.Expect(said).ToContainTextAsync(words);
        }

        window.NoFaults();
    }

    /// <summary>A window as tall as the step, unfolded: what lies under the thumb's bar at one place of scrolling is no target too small.</summary>
    private static async Task Tall(Window window)
    {
        var height = await window.Page.EvaluateAsync<int>(
            """
            () => {
              const folded = [...document.querySelectorAll('details:not([open])')];
              folded.forEach(d => d.open = true);
              const height = document.documentElement.scrollHeight;
              folded.forEach(d => d.open = false);
              return height;
            }
            """);
        await window.Page.SetViewportSizeAsync(390, Math.Max(844, height));
    }

    private static async Task<IReadOnlyList<string>> Steps(Window window) => await window.Page.Locator("section[data-step]").EvaluateAllAsync<string[]>("all => all.map(s => s.id)");
}
