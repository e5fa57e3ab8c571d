using System.Globalization;
using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>Heads placed on a lawn drawn without script, on a phone and at a desk: the map, a head off the lawn, places suggested.</summary>
public sealed class CoverageTests(RunningApp app)
{
    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task Heads_are_placed_and_their_water_seen(string size)
    {
        var lawn = await Drawn($"Alder Row {size}");
        await using var window = await Window.Open(app, size);
        var page = window.Page;
        await window.Go(lawn + "/draw");
        await page.GetByRole(AriaRole.Link, new() { Name = "Place sprinkler heads", Exact = false }).ClickAsync();
        await Assertions.Expect(page.GetByText("This lawn has no sprinkler set")).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Link, new() { Name = "Suggest places for a sprinkler moved by hand" }).ClickAsync();
        await Look(window, "coverage-places-blank");
        await page.GetByLabel("Radius it reaches", new() { Exact = false }).First.FillAsync("24");
        await page.GetByLabel("What it puts out", new() { Exact = false }).First.FillAsync("5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Suggest places" }).ClickAsync();
        await Assertions.Expect(page.GetByText("on the grid tried", new() { Exact = false }).First).ToBeVisibleAsync();
        await Look(window, "coverage-places");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take these places" }).ClickAsync();
        await Assertions.Expect(page.GetByText("on average over Front in still air", new() { Exact = false }).First).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Link, new() { Name = "Add a head to Moved over Front" }).ClickAsync();
        await Fill(page, 500, 500);
        await Assertions.Expect(page.GetByText("off the nearest patch", new() { Exact = false }).First).ToBeVisibleAsync();
        await Look(window, "coverage-head-refused");
        await Fill(page, 6, 6);
        await page.GetByLabel("Wind").SelectOptionAsync("10");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText("in a wind of 10 mph", new() { Exact = false }).First).ToBeVisibleAsync();
        await Look(window, "coverage");
        window.NoFaults();
    }

    /// <summary>A lawn round the corner of a house, a drive beside it; its corners typed. Returns its address.</summary>
    private async Task<string> Drawn(string name)
    {
        await using var window = await Window.Open(app, "desk", script: false);
        var page = window.Page;
        await window.TakeOn(name);
        var lawn = new Uri(page.Url).AbsolutePath[..^"/notes".Length];
        await page.GotoAsync(lawn + "/coverage");
        await Assertions.Expect(page.GetByText("Nothing is drawn yet")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Draw the lawn" }).ClickAsync();
        await page.Locator("#typed > summary").ClickAsync();
        await page.Locator("textarea[name=edge]").FillAsync("0 0\n70 0\n70 25\n40 25\n40 50\n0 50");
        await page.Locator("textarea[name=patch-front]").FillAsync("0 0\n70 0\n70 25\n40 25\n40 50\n0 50");
        await page.Locator("input[name='hole-1.name']").FillAsync("Drive");
        await page.Locator("select[name='hole-1.kind']").SelectOptionAsync("drive");
        await page.Locator("textarea[name=hole-1]").FillAsync("72 0\n84 0\n84 40\n72 40");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the corners typed" }).ClickAsync();
        await Assertions.Expect(page).ToHaveURLAsync($"{app.Address}{lawn}/draw?saved=yes");
        return lawn;
    }

    private static async Task Fill(IPage page, int east, int north)
    {
        await page.Locator("input[name=east]").FillAsync(east.ToString(CultureInfo.InvariantCulture));
        await page.Locator("input[name=north]").FillAsync(north.ToString(CultureInfo.InvariantCulture));
        await page.Locator("input[name=radius]").FillAsync("15");
        await page.Locator("input[name=flow]").FillAsync("2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save, see its water" }).ClickAsync();
    }

    private static async Task Look(Window window, string name)
    {
        await window.Picture(name);
        await window.NothingBars();
    }
}
