using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>A lawn from the first screen to the paper in hand, on a phone and at a desk, with script and without.</summary>
public sealed class JourneyTests(RunningApp app)
{
    [Theory]
    [InlineData("phone", true)]
    [InlineData("desk", true)]
    [InlineData("phone", false)]
    [InlineData("desk", false)]
    public async Task A_lawn_is_taken_on_planned_and_taken_away(string size, bool script)
    {
        await using var window = await Window.Open(app, size, script);
        var page = window.Page;
        var name = $"Alder Way {size} {(script ? "with" : "without")} script";

        await window.Go("/");
        await page.GetByRole(AriaRole.Link, new() { Name = "Take on a lawn" }).ClickAsync();
        await FirstScreen(page, name, script);
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync(name);

        await Soil(page);
        await Tap(page);
        await Weather(page);
        await WhatIf(page, script);
        await TakeAway(page);
        window.NoFaults();
    }

    private static async Task FirstScreen(IPage page, string name, bool script)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it on" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Name of the lawn: a name or a word is needed.");

        await page.GetByLabel("Name of the lawn").FillAsync(name);
        await page.GetByLabel("Latitude", new() { Exact = false }).First.FillAsync("41.9");
        await page.GetByLabel("Longitude", new() { Exact = false }).First.FillAsync("87.6");
        await page.GetByLabel("Elevation above the sea", new() { Exact = false }).First.FillAsync("600");
        await page.GetByLabel("Name of the patch").FillAsync("Front");
        await page.GetByLabel("Turf-type tall fescue").CheckAsync();
        await page.GetByLabel("Living cover").FillAsync("55");
        await page.GetByRole(AriaRole.Radio, new() { Name = "Circle" }).CheckAsync();
        await Assertions.Expect(page.GetByLabel("Length", new() { Exact = true })).ToBeHiddenAsync();
        await page.GetByLabel("Diameter", new() { Exact = true }).FillAsync("50");
        if (script)
        {
            // pi / 4 x 50 ft x 50 ft = 1,963 sq ft
            await Assertions.Expect(page.GetByText("That is 1,963 sq ft (182 m²)")).ToBeVisibleAsync();
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Take it on" }).ClickAsync();
    }

    private static async Task Soil(IPage page)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "Soil", Exact = true }).ClickAsync();
        await page.GetByLabel("Texture").SelectOptionAsync("Silt loam");
        await page.GetByLabel("pH in water").FillAsync("61");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save, back to the notes" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("pH in water: a number from 3 to 10 is needed, not 61.");
        await page.GetByLabel("pH in water").FillAsync("6.1");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save, back to the notes" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Silt loam, pH 6.1")).ToBeVisibleAsync();
    }

    private static async Task Tap(IPage page)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "The tap" }).ClickAsync();
        await page.GetByLabel("Bucket", new() { Exact = true }).FillAsync("5");
        await page.GetByLabel("Filled in").FillAsync("38");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save, then more taps" }).ClickAsync();
        foreach (var next in (string[])["household and well", "timers", "sprinkler sets"])
        {
            await page.GetByRole(AriaRole.Link, new() { Name = $"Skip to {next}" }).ClickAsync();
        }

        await page.GetByLabel("Name of the set").FillAsync("Oscillator");
        await page.GetByLabel("Kind of sprinkler").SelectOptionAsync("Oscillating, on a hose");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save, back to the notes" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Oscillator, oscillating, on a hose")).ToBeVisibleAsync();
    }

    private static async Task Weather(IPage page)
    {
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Alder Way" }).GetByRole(AriaRole.Link, new() { Name = "Weather" }).ClickAsync();
        await page.GetByLabel("Weather files for this lawn").SetInputFilesAsync(new FilePayload { Name = "invented.csv", MimeType = "text/csv", Buffer = InventedWeather() });
        await page.GetByRole(AriaRole.Button, new() { Name = "Read the files" }).ClickAsync();
        await Assertions.Expect(page.GetByText("5,844 days can be used")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { NameRegex = new Regex("See the plan of") }).ClickAsync();
        await Assertions.Expect(page.Locator(".ribbon-svg:visible")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator("#verdict")).ToBeVisibleAsync();
    }

    private static async Task WhatIf(IPage page, bool script)
    {
        var day = page.Locator("#what-if [name=seedDown]");
        if (script)
        {
            var slider = page.GetByLabel("Slide to another day");
            await slider.FocusAsync();
            await slider.PressAsync("ArrowRight");
            await Assertions.Expect(page.Locator(".slide output")).ToContainTextAsync("chance of a stand");
        }
        else
        {
            var season = await page.Locator("#what-if [name=season]").InputValueAsync();
            await day.FillAsync($"{season}-09-03");
        }

        var chosen = await day.InputValueAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan it so" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Nothing is kept yet.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Nothing is kept yet.")).ToHaveCountAsync(0);
        Assert.Equal(chosen, await day.InputValueAsync());
    }

    private static async Task TakeAway(IPage page)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "Take away" }).ClickAsync();
        foreach (var (link, opening) in ((string, string)[])[("The plan as data (JSON)", "{"), ("The season as a calendar", "BEGIN:VCALENDAR"), ("What to buy, as a table", ""), ("PDF of the handout on A4", "%PDF-"), ("Save the plan as a web page", "<!DOCTYPE html>")])
        {
            var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = link }).ClickAsync());
            using var content = new StreamReader(await download.CreateReadStreamAsync());
            var text = await content.ReadToEndAsync();
            Assert.StartsWith(opening, text.TrimStart('\uFEFF'), StringComparison.Ordinal);
            Assert.True(text.Length > 100, $"{link} is empty");
        }

        await page.GetByRole(AriaRole.Link, new() { Name = "Read or print the handout" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Alder Way").First).ToBeVisibleAsync();
        Assert.Contains("handout.html", page.Url, StringComparison.Ordinal);
    }

    /// <summary>Sixteen years from a sine and a seeded generator: invented, measured nowhere.</summary>
    private static byte[] InventedWeather()
    {
        var (csv, random) = (new StringBuilder("DATE,TMAX,TMIN,PRCP\n"), new Random(7));
        for (var day = new DateOnly(2010, 1, 1); day.Year < 2026; day = day.AddDays(1))
        {
            var mean = 10.0 - 14.0 * Math.Cos(2.0 * Math.PI * (day.DayOfYear - 20) / 365.25) + 5.0 * (random.NextDouble() - 0.5);
            var rain = random.NextDouble() < 0.3 ? 8.0 * random.NextDouble() : 0.0;
            csv.Append(CultureInfo.InvariantCulture, $"{day:yyyy-MM-dd},{mean + 6.0:0.0},{mean - 6.0:0.0},{rain:0.0}\n");
        }

        return Encoding.UTF8.GetBytes(csv.ToString());
    }
}
