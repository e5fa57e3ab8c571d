using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Seedfall.Web.Tests.Photos;

namespace Seedfall.Browser.Tests;

/// <summary>Photographs from the first spot to the thin places, on a phone and at a desk, with script and without.</summary>
public sealed class PhotoJourneyTests(RunningApp app)
{
    [Theory]
    [InlineData("phone", true)]
    [InlineData("desk", true)]
    [InlineData("phone", false)]
    [InlineData("desk", false)]
    public async Task A_spot_is_photographed_checked_and_compared(string size, bool script)
    {
        await using var window = await Window.Open(app, size, script);
        var (page, name) = (window.Page, $"Slab {size} {(script ? "with" : "without")} script");
        await page.Context.GrantPermissionsAsync(["camera"]);
        var photos = await Photos(window);
        await Look(window, "photos-empty", script);
        await NewSpot(page, name, overview: false);
        await Send(page, ComposedPhoto.Quadrat(0.45), "2026-08-01");
        await Assertions.Expect(page.Locator(".measured")).ToContainTextAsync("% green");
        await Look(window, "photo-measured", script);

        await page.GetByRole(AriaRole.Group, new() { Name = "Point 1", Exact = true }).GetByText("Green").ClickAsync();
        await page.GetByRole(AriaRole.Group, new() { Name = "Point 2", Exact = true }).GetByText("Not", new() { Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Measure again" }).First.ClickAsync();
        await Assertions.Expect(page.GetByText("2 answers count already.")).ToBeVisibleAsync();
        await TapOnPicture(page, script);
        await Assertions.Expect(page.GetByText("3 answers count already.")).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Link, new() { Name = name }).ClickAsync();
        await Look(window, "photo-spot", script);
        if (script)
        {
            await Ghost(page, window);
            await page.GetByRole(AriaRole.Link, new() { Name = name }).ClickAsync();
        }

        await Send(page, ComposedPhoto.Quadrat(0.7), "2026-08-13");
        await page.GetByRole(AriaRole.Link, new() { Name = name }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Before and after, side by side" }).ClickAsync();
        await Beside(page, script);
        await Look(window, "photo-beside", script);
        await window.Go(photos);
        await Assertions.Expect(page.Locator(".measured-curve .m-read").First).ToBeVisibleAsync();
        await Look(window, "photos-curve", script);
        window.NoFaults();
    }

    [Theory]
    [InlineData("phone", true)]
    [InlineData("desk", true)]
    [InlineData("phone", false)]
    [InlineData("desk", false)]
    public async Task An_overview_is_marked_and_its_thin_spots_are_found(string size, bool script)
    {
        await using var window = await Window.Open(app, size, script);
        var page = window.Page;
        await Photos(window);
        await NewSpot(page, $"Porch {size} {script}", overview: true);
        await Send(page, ComposedPhoto.Overview((2.5, 2.0, 0.8), (5.5, 3.0, 1.0)), "2026-08-02");
        foreach (var (corner, across, away) in ((string, double, double)[])[("near left", 0, 0), ("near right", 8, 0), ("far right", 8, 6), ("far left", 0, 6)])
        {
            await Assertions.Expect(page.GetByText(script ? $"Now the {corner} corner." : $"Next: {corner}.")).ToBeVisibleAsync();
            await Point(page, script, ComposedPhoto.Corner(across, away));
        }

        await Assertions.Expect(page.GetByText(script ? "Point beside one to move it." : "All four are marked.")).ToBeVisibleAsync();
        await page.Locator("[name=across]").FillAsync("8");
        await page.GetByLabel("Unit of Near side, from near left to near right").SelectOptionAsync("m");
        await page.Locator("[name=away]").FillAsync("6");
        await page.GetByLabel("Unit of Sides that run away from you").SelectOptionAsync("m");
        await Look(window, "overview-marks", script);
        await page.GetByRole(AriaRole.Button, new() { Name = "See it from above" }).ClickAsync();
        await Assertions.Expect(page.GetByText(new Regex("^2 places have less than 50 % green"))).ToBeVisibleAsync();
        var area = double.Parse(Regex.Match(await page.Locator(".thin .lede").InnerTextAsync(), "green: (\\d+) sq ft").Groups[1].Value, CultureInfo.InvariantCulture);

        // pi (0.8^2 + 1^2) m2 = 55.4 sq ft; the taps are right to a pixel of the screen.
        Assert.Equal(55.4, area, 5.0);
        await Look(window, "overview-thin", script);
        window.NoFaults();
    }

    private static async Task<string> Photos(Window window)
    {
        await window.Go("/");
        var lawn = Regex.Match(await window.Page.ContentAsync(), "href=\"(/lawns/mill-lane[^\"]*)\"").Groups[1].Value;
        await window.Go(lawn + "/photos");
        return lawn + "/photos";
    }

    private static async Task NewSpot(IPage page, string name, bool overview)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "Add a photo spot" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this spot" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Name of the spot: a name or a word is needed.");
        await page.GetByLabel("Name of the spot").FillAsync(name);
        await page.GetByLabel(overview ? "Overview of a whole patch" : "Straight down, about a square yard").CheckAsync();
        await page.GetByRole(AriaRole.Radio, new() { Name = "Front", Exact = false }).First.CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this spot" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync(name);
    }

    private static async Task Send(IPage page, byte[] picture, string day)
    {
        await page.GetByLabel("Picture", new() { Exact = true }).SetInputFilesAsync(new FilePayload { Name = "composed.jpg", MimeType = "image/jpeg", Buffer = picture });
        await page.GetByLabel("Taken on").FillAsync(day);
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep and measure it" }).ClickAsync();
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("/photos/[0-9a-f-]+/[0-9a-f-]+"), new() { Timeout = 60_000 });
    }

    private static async Task TapOnPicture(IPage page, bool script)
    {
        await page.GetByText("Or tap where it is wrong").ClickAsync();
        if (!script)
        {
            await page.Locator("#tap-yourself input[type=image]").ClickAsync(new() { Position = new() { X = 100, Y = 60 } });
            return;
        }

        // By keyboard alone: the cross to the right and down, Enter, and on to the button.
        var board = page.Locator("#tap-yourself .board");
        await board.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("Shift+ArrowDown");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.GetByText("1 of ten points.")).ToBeVisibleAsync();
        await page.Locator("#tap-yourself").GetByRole(AriaRole.Button, new() { Name = "Measure again" }).PressAsync("Enter");
    }

    private static async Task Ghost(IPage page, Window window)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Line up with the last picture" }).ClickAsync();
        var slider = page.GetByLabel("Ghost of the last picture");
        await slider.FocusAsync();
        await slider.PressAsync("ArrowLeft");
        Assert.Equal("0.49", await page.Locator(".ghost").EvaluateAsync<string>("g => g.style.opacity"));
        await page.WaitForFunctionAsync("() => document.querySelector('.viewfinder video').videoWidth > 0");
        await window.NothingBars();
        await window.Picture("photo-ghost");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it" }).ClickAsync();
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("/photos/[0-9a-f-]+/[0-9a-f-]+"), new() { Timeout = 60_000 });
        await Assertions.Expect(page.Locator(".measured")).ToContainTextAsync("% green");
    }

    private static async Task Beside(IPage page, bool script)
    {
        await Assertions.Expect(page.Locator("#beside img")).ToHaveCountAsync(2);
        if (script)
        {
            var slider = page.GetByLabel("Slide from before to after");
            await slider.FocusAsync();
            await slider.PressAsync("End");
            Assert.Equal("all after", await slider.GetAttributeAsync("aria-valuetext"));
            await slider.PressAsync("Home");
            Assert.Equal("all before", await slider.GetAttributeAsync("aria-valuetext"));
            await page.Locator(".wipe").ClickAsync(new() { Position = new() { X = 60, Y = 60 } });
            Assert.NotEqual("0", await slider.InputValueAsync());
        }

        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(page.Locator("#beside img").First).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("form").First).ToBeHiddenAsync();
        await page.EmulateMediaAsync(new() { Media = Media.Screen });
    }

    private static async Task Point(IPage page, bool script, (double X, double Y) at)
    {
        var target = page.Locator(script ? ".mark-ground .board" : ".mark-ground input[type=image]");
        await target.ScrollIntoViewIfNeededAsync();
        var box = (await target.BoundingBoxAsync())!;
        await target.ClickAsync(new() { Position = new() { X = (float)(at.X * box.Width), Y = (float)(at.Y * box.Height) } });
    }

    private static async Task Look(Window window, string name, bool script)
    {
        await window.Picture(name);
        if (script)
        {
            await window.NothingBars();
        }
    }
}
