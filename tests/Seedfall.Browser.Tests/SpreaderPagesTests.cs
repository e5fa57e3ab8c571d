using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>A spreader from its scale to the second half, as its owner goes through it; pans and bands with their results.</summary>
public sealed class SpreaderPagesTests(RunningApp app)
{
    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task From_the_scale_to_the_second_half(string size)
    {
        await using var window = await Window.Open(app, size);
        var page = window.Page;
        await window.Go("/spreaders/new");
        await page.GetByLabel("What you call it", new() { Exact = false }).FillAsync($"Green {size}");
        await page.GetByLabel("Reading with the gate shut", new() { Exact = false }).FillAsync("0");
        await page.GetByLabel("Reading with the gate wide open", new() { Exact = false }).FillAsync("10");
        await page.GetByLabel("Smallest step", new() { Exact = false }).FillAsync("0.25");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await page.WaitForURLAsync($"**/spreaders/green-{size}");
        await Look(window, "spreader-card-unknown");
        var lawn = await page.Context.NewPageAsync() is { } other ? await Demo(other) : "";
        await window.Go($"{lawn}/spreader?with=green-{size}");
        await Look(window, "spreader-lawn-unknown");
        await page.Locator("#first").FillAsync("1.25");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
        await page.GetByRole(AriaRole.Heading, new() { Name = "First half" }).WaitForAsync();
        await Look(window, "spreader-lawn-first");
        await page.Locator("#f-opening").FillAsync("3");
        await page.Locator("#f-put").FillAsync("6");
        await page.Locator("#f-left").FillAsync("0.2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down and correct" }).ClickAsync();
        await page.GetByText("Rate of the last run", new() { Exact = true }).First.WaitForAsync();
        await Look(window, "spreader-lawn-second");
        await window.Go($"/spreaders/green-{size}");
        await Look(window, "spreader-card");
        await window.Go($"/spreaders/green-{size}/test");
        await Look(window, "spreader-test");
        await window.Go("/spreaders");
        await Look(window, "spreader-list");
        window.NoFaults();
    }

    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task Pans_and_bands_read(string size)
    {
        await using var window = await Window.Open(app, size);
        await window.Go("/spreaders/pans?pans=0+1+2+4+5+6+7+7+6+5+3+2+1+0+0&apart=1&apart.unit=ft");
        await Look(window, "spreader-pans-read");
        await window.Go("/spreaders/bands?holes=22&holes.unit=in&track=24.5&track.unit=in");
        await Look(window, "spreader-bands-read");
        window.NoFaults();
    }

    private static async Task Look(Window window, string name)
    {
        await window.Picture(name);
        await window.NothingBars();
    }

    /// <summary>A demo lawn whose plan has something to spread.</summary>
    private static async Task<string> Demo(IPage page)
    {
        await page.GotoAsync("/");
        var address = await page.Locator("a[href^='/lawns/mill-lane']").First.GetAttributeAsync("href");
        await page.CloseAsync();
        return address!;
    }
}
