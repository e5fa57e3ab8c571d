using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>A patch walked over in a browser, with script and without, every screen looked at by axe.</summary>
public sealed class WalkOverTests(RunningApp app)
{
    [Theory]
    [InlineData("phone", true)]
    [InlineData("desk", true)]
    [InlineData("phone", false)]
    public async Task A_patch_is_walked_and_summed_up(string size, bool script)
    {
        await using var window = await Window.Open(app, size, script);
        var page = window.Page;
        await window.TakeOn($"Sorrel Row {size} {(script ? "with" : "without")} script");
        await page.GetByRole(AriaRole.Link, new() { Name = "Walk-over" }).ClickAsync();
        await Look(window, "walk-list", script);
        await page.GetByRole(AriaRole.Link, new() { Name = "Walk Front" }).ClickAsync();

        await Look(window, "walk-1-arrive", script);
        await page.GetByLabel("Over some weeks").CheckAsync();
        await page.GetByLabel("Hot and dry for weeks").CheckAsync();
        await Next(page, "Save, then look from afar");

        await Look(window, "walk-2-afar", script);
        await page.GetByLabel("Birds, skunks or raccoons dig for something").CheckAsync();
        await Next(page, "Save, then count the living cover");

        await Throws(window, script);

        await Tug(window, script);
        await Next(page, "Save, then lift and count grubs");
        await Lift(window, script);

        await Look(window, "walk-6-push", script);
        await page.GetByRole(AriaRole.Link, new() { Name = "Skip to measure the thatch" }).ClickAsync();
        await Look(window, "walk-7-thatch", script);
        await page.GetByRole(AriaRole.Link, new() { Name = "Skip to feel the soil" }).ClickAsync();
        await Look(window, "walk-8-moisture", script);
        await page.GetByRole(AriaRole.Link, new() { Name = "Skip to look up close" }).ClickAsync();
        await Look(window, "walk-9-close", script);
        await Next(page, "Save, then name the weeds");
        await Look(window, "walk-10-weeds", script);
        await Next(page, "Save and sum up");

        await SumUp(window, script);
        window.NoFaults();
    }

    private static async Task Throws(Window window, bool script)
    {
        var page = window.Page;
        await Look(window, "walk-3-quadrats", script);
        if (script)
        {
            var tapper = page.GetByRole(AriaRole.Region, new() { Name = "Count by tapping" });
            for (var i = 0; i < 3; i++)
            {
                await tapper.GetByRole(AriaRole.Button, new() { Name = "Living turf" }).ClickAsync();
            }

            await tapper.GetByRole(AriaRole.Button, new() { Name = "Weed" }).ClickAsync();
            await tapper.GetByRole(AriaRole.Button, new() { Name = "Bare or dead" }).ClickAsync();
            await Assertions.Expect(tapper.GetByRole(AriaRole.Status)).ToHaveTextAsync("5 of 25 points, 3 alive.");
            await tapper.GetByRole(AriaRole.Button, new() { Name = "Take the last tap back" }).ClickAsync();
            Assert.Equal("3", await page.GetByLabel("Points on living turf", new() { Exact = true }).InputValueAsync());
            Assert.Equal("1", await page.GetByLabel("Points on weeds", new() { Exact = true }).InputValueAsync());
            await page.ReloadAsync();
            await Assertions.Expect(page.GetByRole(AriaRole.Region, new() { Name = "Count by tapping" }).GetByRole(AriaRole.Status)).ToHaveTextAsync("4 of 25 points, 3 alive.");
            await page.GetByRole(AriaRole.Button, new() { Name = "One more: Points on living turf" }).ClickAsync();
            Assert.Equal("4", await page.GetByLabel("Points on living turf", new() { Exact = true }).InputValueAsync());
        }

        await page.GetByLabel("Points on living turf", new() { Exact = true }).FillAsync("26");
        await Next(page, "Save, another throw");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("26 hits of 25 points cannot be.");
        await Look(window, "walk-3-refused", script);
        foreach (var living in (string[])["11", "14", "9"])
        {
            await page.GetByLabel("Points on living turf", new() { Exact = true }).FillAsync(living);
            await Next(page, "Save, another throw");
        }

        await Assertions.Expect(page.Locator(".sofar")).ToContainTextAsync("So far 45 % alive");
        await Look(window, "walk-3-throws", script);
        await page.GetByRole(AriaRole.Link, new() { Name = "Enough: on to tug brown tufts" }).ClickAsync();
    }

    private static async Task Tug(Window window, bool script)
    {
        await Look(window, "walk-4-tug", script);
        if (script)
        {
            for (var i = 0; i < 5; i++)
            {
                await window.Page.GetByRole(AriaRole.Button, new() { Name = "One more: Came up like a carpet" }).ClickAsync();
            }

            await window.Page.GetByRole(AriaRole.Button, new() { Name = "One less: Came up like a carpet" }).ClickAsync();
        }
        else
        {
            await window.Page.GetByLabel("Came up like a carpet", new() { Exact = true }).FillAsync("4");
        }
    }

    private static async Task Lift(Window window, bool script)
    {
        await Look(window, "walk-5-lift", script);
        foreach (var (lift, grubs) in ((int, string)[])[(1, "9"), (2, "12"), (3, "8")])
        {
            await window.Page.GetByLabel($"Grubs, lift {lift}", new() { Exact = true }).FillAsync(grubs);
        }

        await Next(window.Page, "Save, then push a screwdriver");
    }

    private static async Task SumUp(Window window, bool script)
    {
        var page = window.Page;
        await Assertions.Expect(page.GetByText("What was seen points strongly to white grubs.")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".next")).ToContainTextAsync("Do this next");
        await Look(window, "walk-sum-up", script);
        await page.GetByRole(AriaRole.Button, new() { Name = "Take white grubs as the cause" }).ClickAsync();
        await Assertions.Expect(page.Locator(".taken").First).ToContainTextAsync("The patch’s cause stands as grubs.");
        await page.GetByRole(AriaRole.Link, new() { Name = "Walk-over" }).ClickAsync();
        await Look(window, "walk-list-after", script);
    }

    private static Task Next(IPage page, string button) => page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).ClickAsync();

    /// <summary>Keeps a picture where asked, and lets axe look where script runs.</summary>
    private static async Task Look(Window window, string name, bool script)
    {
        if (script)
        {
            await window.Picture(name);
            await window.NothingBars();
        }
    }
}
