using System.Text.RegularExpressions;

namespace Seedfall.Browser.Tests;

/// <summary>Every page, at both widths: nothing bars anyone, nothing is written to the console, nothing comes from elsewhere.</summary>
public sealed class EveryPageTests(RunningApp app)
{
    private static readonly string[] Plain = ["/", "/lawns/new", "/lawns/from-file", "/weather", "/weather/1", "/day", "/spreaders", "/spreaders/new", "/spreaders/pans", "/spreaders/bands"];

    private static readonly string[] OfALawn =
    [
        "", "/day", "/notes", "/draw", "/walk-over", "/site", "/water", "/spray-window", "/spray-window/now", "/timetable", "/coverage", "/photos", "/photos/new", "/weather", "/take-away", "/remove", "/log", "/log/write/reading", "/log/write/cover", "/log/write/watered", "/log/write/finger", "/log/write/mowed", "/records", "/records/write", "/records/write?task=feed.starter-1", "/notes/place", "/notes/patches/1", "/notes/patches/new", "/notes/soil", "/notes/sprayed/new", "/notes/tap", "/notes/taps/new", "/notes/house", "/notes/timers/new", "/notes/sets/1",
        "/notes/hours/new", "/notes/equipment", "/notes/seed/new", "/notes/starter", "/notes/late-feed", "/notes/pre-emergent", "/notes/partners/new", "/notes/cover", "/notes/prices", "/notes/meter", "/notes/rules",
        "/sprayer", "/sprayer/refill", "/sprayer/catch", "/sprayer/course", "/sprayer/pace", "/tank", "/spreader",
    ];

    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task Plain_pages(string size)
    {
        await using var window = await Window.Open(app, size);
        foreach (var path in Plain)
        {
            await Look(window, path, path == "/" ? "desk" : path.Trim('/').Replace('/', '-'));
        }

        window.NoFaults();
    }

    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task Pages_of_a_lawn(string size)
    {
        await using var window = await Window.Open(app, size);
        var lawns = await Lawns(window);
        foreach (var path in OfALawn)
        {
            await Look(window, lawns[0] + path, "lawn" + path.Replace('/', '-'));
        }

        window.NoFaults();
    }

    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task Plans_of_every_verdict_in_both_systems(string size)
    {
        await using var window = await Window.Open(app, size);
        var lawns = await Lawns(window);
        Assert.Equal(3, lawns.Count);
        foreach (var (lawn, number) in lawns.Select((l, i) => (l, i + 1)))
        {
            await Look(window, lawn, $"plan-{number}");
        }

        await window.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Show metric units first" }).ClickAsync();
        await Look(window, lawns[0], "plan-metric");
        await Look(window, lawns[0] + "?seedDown=2026-09-12", "plan-what-if");
        window.NoFaults();
    }

    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task Pages_with_something_to_put_right(string size)
    {
        await using var window = await Window.Open(app, size);
        await window.Go("/lawns/new");
        await window.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Take it on" }).ClickAsync();
        await window.Picture("new-refused");
        await window.NothingBars();
        var lawn = (await Lawns(window))[0];
        await window.Page.GotoAsync(lawn + "?seedDown=never");
        await window.Picture("what-if-refused");
        await window.NothingBars();
        window.NoFaults();
    }

    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task Watering_of_lawns_under_way(string size)
    {
        await using var window = await Window.Open(app, size);
        foreach (var (lawn, number) in (await Lawns(window)).Skip(1).Select((l, i) => (l, i + 1)))
        {
            await window.Go(lawn + "/log/write/seeded");
            await window.Page.GetByLabel("Day", new() { Exact = false }).First.FillAsync("2026-08-10");
            await window.Page.Locator("form.leaf button").ClickAsync();
            await window.Page.WaitForURLAsync("**/log");
            await Look(window, lawn + "/water", $"water-{number}");
        }

        window.NoFaults();
    }

    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task A_record_book_with_a_correction_and_a_mistake_in_the_form(string size)
    {
        await using var window = await Window.Open(app, size);
        var lawn = (await Lawns(window))[0];
        await window.Go(lawn + "/records/write?task=feed.starter-1");
        await window.Page.Locator("#f-day").FillAsync("2026-08-12");
        await window.Page.Locator("form.leaf button").ClickAsync();
        await window.Page.WaitForURLAsync("**/records#record-*");
        await window.Page.GetByRole(Microsoft.Playwright.AriaRole.Link, new() { Name = "Correct it" }).First.ClickAsync();
        await window.Page.Locator("#f-why").FillAsync("the bag was weighed again");
        await window.Page.Locator("#f-mass").FillAsync("27");
        await window.Page.Locator("form.leaf button").ClickAsync();
        await window.Page.WaitForURLAsync("**/records#record-*");
        await window.Picture("record-book");
        await window.NothingBars();
        await Look(window, lawn, "plan-with-a-task-done");
        await window.Go(lawn + "/records/write");
        await window.Page.Locator("form.leaf button").ClickAsync();
        await window.Page.GetByRole(Microsoft.Playwright.AriaRole.Alert).WaitForAsync();
        await window.Picture("record-refused");
        await window.NothingBars();
    }

    private static async Task Look(Window window, string path, string name)
    {
        await window.Go(path);
        await window.Picture(name);
        await window.NothingBars();
    }

    /// <summary>The demo's lawns, in the order of the desk.</summary>
    private static async Task<IReadOnlyList<string>> Lawns(Window window)
    {
        await window.Go("/");
        var desk = await window.Page.ContentAsync();
        return [.. Regex.Matches(desk, "href=\"(/lawns/[^\"]*invente[^\"]*)\"").Select(m => m.Groups[1].Value).Distinct()];
    }
}
