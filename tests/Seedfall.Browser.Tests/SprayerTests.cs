using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>The sprayer calibrated, kept and its tank mixed as somebody does it; the beat of the pace with the network cut.</summary>
public sealed class SprayerTests(RunningApp app)
{
    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task Calibrated_by_nozzles_kept_and_mixed(string size)
    {
        await using var window = await Window.Open(app, size);
        var page = window.Page;
        await window.TakeOn($"Sprayer {size}");
        var lawn = new Uri(page.Url).AbsolutePath[..^"/notes".Length];
        await window.Go(lawn + "/sprayer");
        await page.GetByRole(AriaRole.Link, new() { Name = "Catch each nozzle", Exact = false }).ClickAsync();
        await page.GetByLabel("Distance between nozzles", new() { Exact = false }).First.FillAsync("20");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show the course", Exact = false }).ClickAsync();
        await Assertions.Expect(page.GetByText("Course to mark", new() { Exact = true })).ToBeVisibleAsync();
        await page.GetByLabel("Time of walk 1").FillAsync("46");
        await page.GetByLabel("Time of walk 2").FillAsync("47");
        await page.GetByLabel("Nozzle 1 gave", new() { Exact = false }).First.FillAsync("31");
        await page.GetByLabel("Nozzle 2 gave", new() { Exact = false }).First.FillAsync("36");
        await page.GetByLabel("Carrier you want", new() { Exact = false }).First.FillAsync("1.2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
        await Assertions.Expect(page.GetByText("10 % or more off", new() { Exact = false }).First).ToBeVisibleAsync();
        await Look(window, "sprayer-result");
        await page.GetByLabel("What the tank holds", new() { Exact = false }).First.FillAsync("4");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep", Exact = false }).ClickAsync();
        await page.WaitForURLAsync("**/sprayer#kept");
        await Assertions.Expect(page.GetByText("tank 4 gal", new() { Exact = false })).ToBeVisibleAsync();
        await Look(window, "sprayer-kept");
        window.NoFaults();
    }

    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task The_demos_tank_opens_every_fold(string size)
    {
        await using var window = await Window.Open(app, size);
        await window.Go(await Demo(window) + "/tank");
        await window.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");
        await Look(window, "tank");
        window.NoFaults();
    }

    [Fact]
    public async Task The_beat_goes_on_without_a_network_and_stops_when_told()
    {
        await using var window = await Window.Open(app, "phone");
        var page = window.Page;
        await window.Go(await Demo(window) + "/sprayer/pace?speed=3.4&speed.unit=mph");
        await page.Context.SetOfflineAsync(true);
        await page.GetByRole(AriaRole.Button, new() { Name = "Start the beat" }).ClickAsync();
        await Assertions.Expect(page.Locator(".feet .on")).ToHaveTextAsync("Left");
        await Assertions.Expect(page.Locator(".feet .on")).ToHaveTextAsync("Right");
        await Assertions.Expect(page.GetByText("steps a minute. A higher tone", new() { Exact = false })).ToBeVisibleAsync();
        await Look(window, "pace-beating");
        await page.GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync();
        await Assertions.Expect(page.Locator(".feet .on")).ToHaveCountAsync(0);
        await page.Context.SetOfflineAsync(false);
        window.NoFaults();
    }

    [Fact]
    public async Task Without_script_the_steps_and_seconds_stand_there()
    {
        await using var window = await Window.Open(app, "phone", script: false);
        await window.Go(await Demo(window) + "/sprayer/pace?speed=3&speed.unit=mph");
        await Assertions.Expect(window.Page.GetByText("steps a minute", new() { Exact = false })).ToBeVisibleAsync();
        await Assertions.Expect(window.Page.GetByRole(AriaRole.Button, new() { Name = "Start the beat" })).ToHaveCountAsync(0);
    }

    private static async Task Look(Window window, string name)
    {
        await window.Picture(name);
        await window.NothingBars();
    }

    private static async Task<string> Demo(Window window)
    {
        await window.Go("/");
        return Regex.Match(await window.Page.ContentAsync(), "href=\"(/lawns/mill-lane[^\"]*)\"").Groups[1].Value;
    }
}
