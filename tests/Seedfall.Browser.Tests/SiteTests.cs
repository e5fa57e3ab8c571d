using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>Sun, soil and climate of one lawn, found out on a phone and at a desk, with script and without.</summary>
public sealed class SiteTests(RunningApp app)
{
    [Theory]
    [InlineData("phone", true)]
    [InlineData("phone", false)]
    [InlineData("desk", true)]
    public async Task A_site_is_found_out(string size, bool script)
    {
        await using var window = await Window.Open(app, size, script);
        var page = window.Page;
        await window.TakeOn($"Elder Row {size} {(script ? "with" : "without")} script");
        await page.GetByRole(AriaRole.Link, new() { Name = "Site", Exact = true }).ClickAsync();
        await Look(window, "site", script);

        await page.GetByRole(AriaRole.Link, new() { Name = "Front", Exact = true }).ClickAsync();
        await Look(window, "site-sun-open", script);
        await Obstacle(window, script);
        await Assertions.Expect(page.GetByText("The plan uses this number")).ToBeVisibleAsync();
        await Look(window, "site-sun", script);

        await Jar(window, script);
        await Feel(window, script);
        await Report(window, script);
        await page.Locator(".trail a").Last.ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Winters, frost, rain and warmth by month" }).ClickAsync();
        await Assertions.Expect(page.GetByText("This lawn has no weather yet.")).ToBeVisibleAsync();
        await Look(window, "site-no-climate", script);
        window.NoFaults();
    }

    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task The_demo_has_a_climate_and_the_survey_is_off(string size)
    {
        await using var window = await Window.Open(app, size);
        await window.Go("/");
        var lawn = await window.Page.Locator("a[href*='invente']").First.GetAttributeAsync("href");
        await window.Go(lawn + "/site/climate");
        await Assertions.Expect(window.Page.GetByText("Hardiness zone").First).ToBeVisibleAsync();
        await Look(window, "site-climate", true);
        await window.Go(lawn + "/site/soil-map");
        await Assertions.Expect(window.Page.GetByText("The lookup is off")).ToBeVisibleAsync();
        await Look(window, "site-soil-map", true);
        window.NoFaults();
    }

    private static async Task Obstacle(Window window, bool script)
    {
        var page = window.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "Add an obstacle" }).ClickAsync();
        await Look(window, "site-obstacle", script);
        await page.GetByLabel("What it is").FillAsync("Maple");
        await page.GetByLabel("More once its leaves are down").CheckAsync();
        await page.GetByLabel("Its left edge lies toward").FillAsync("100");
        await page.GetByLabel("Its right edge lies toward").FillAsync("200");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save, see the sun" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("How high does it reach?");
        await page.GetByLabel("Its top, in fists above eye level").FillAsync("5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save, see the sun" }).ClickAsync();
        await Assertions.Expect(page.GetByText("From 100° to 200°, up to 50°")).ToBeVisibleAsync();
    }

    private static async Task Jar(Window window, bool script)
    {
        var page = window.Page;
        await page.Locator(".trail a").Last.ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Texture from a jar of shaken soil" }).ClickAsync();
        foreach (var (label, inches) in (IEnumerable<(string, string)>)[("Top of the sand", "0.8"), ("Top of the silt", "1.6"), ("Top of the clay", "2")])
        {
            await page.GetByLabel(label, new() { Exact = true }).FillAsync(inches);
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Read the jar" }).ClickAsync();
        await Assertions.Expect(page.Locator("#answer")).ToContainTextAsync("Loam");
        await Look(window, "site-jar", script);
        await page.GetByRole(AriaRole.Button, new() { Name = "Take loam into the notes" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Loam, pH not known.")).ToBeVisibleAsync();
    }

    private static async Task Feel(Window window, bool script)
    {
        var page = window.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "Texture by feel" }).ClickAsync();
        await page.GetByLabel("It makes a ball").CheckAsync();
        await page.GetByLabel("1 to 2 in (2.5 to 5 cm)").CheckAsync();
        await page.GetByLabel("Mostly smooth, like flour").CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Read the feel" }).ClickAsync();
        await Assertions.Expect(page.Locator("#answer")).ToHaveTextAsync("It feels like silty clay loam");
        await Look(window, "site-feel", script);
        await page.Locator(".trail a").Last.ClickAsync();
    }

    private static async Task Report(Window window, bool script)
    {
        var page = window.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "A laboratory’s soil report, entered and read" }).ClickAsync();
        await page.GetByLabel("pH in water").FillAsync("5.6");
        await page.GetByLabel("Buffer pH").FillAsync("6.5");
        await page.GetByLabel("Lime the lab recommends", new() { Exact = true }).FillAsync("80");
        await page.GetByLabel("Bray P-1").CheckAsync();
        await page.GetByLabel("Phosphorus", new() { Exact = true }).FillAsync("26");
        await page.GetByLabel("Unit of Phosphorus").SelectOptionAsync("lbA");
        await page.GetByLabel("Potassium", new() { Exact = true }).FillAsync("90");
        await page.GetByLabel("Organic matter").FillAsync("2.4");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save and read it" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Soil phosphorus 13 ppm by Bray P-1 is low")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText("2 applications, half a year apart")).ToBeVisibleAsync();
        await Look(window, "site-report", script);
    }

    private static async Task Look(Window window, string name, bool script)
    {
        if (script)
        {
            await window.Picture(name);
            await window.NothingBars();
        }
    }
}
