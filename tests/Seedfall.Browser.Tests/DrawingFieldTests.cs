using System.Text;
using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>Drawing from the field: walking the edge, a picture underneath, files, and no script at all.</summary>
public sealed class DrawingFieldTests(RunningApp app)
{
    /// <summary>
    /// A phone carried round a 20 m x 12 m rectangle, a position a second at 1.2 m/s, each off by up to 1 m by a sine, the
    /// screen asleep for 20 s on the way. Invented, measured nowhere.
    /// </summary>
    private const string Phone =
        """
        (() => {
          const [lat, lon] = [42.31, -84.12];
          const way = 64, at = d => { d %= way; return d < 20 ? [d, 0] : d < 32 ? [20, d - 20] : d < 52 ? [52 - d, 12] : [0, 64 - d]; };
          let timer = 0;
          navigator.geolocation.watchPosition = ok => {
            let i = window.walked ?? 0;
            const fix = () => {
              const [e, n] = at(i * 1.2), slept = i > 30 ? 20 : 0;
              ok({ timestamp: 1790000000000 + (i + slept) * 1000, coords: { latitude: lat + (n + Math.sin(i / 9)) / 111070, longitude: lon + (e + Math.cos(i / 7)) / 82360, accuracy: 3 } });
              window.walked = ++i;
            };
            timer = setInterval(() => { if (i < 55) fix(); }, 5);
            return 1;
          };
          navigator.geolocation.clearWatch = () => clearInterval(timer);
        })();
        """;

    [Theory]
    [InlineData("phone", true)]
    [InlineData("desk", false)]
    public async Task The_edge_is_walked_and_says_how_far_off_it_may_be(string size, bool touch)
    {
        await using var window = await Window.Open(app, size, touch: touch);
        await window.Page.AddInitScriptAsync(Phone);
        var sheet = new DrawnSheet(window, touch);
        await sheet.Open($"Walked Green {size}");
        await sheet.Page.EvaluateAsync("() => document.getElementById('walk').open = true");
        await sheet.Press("Start walking round: Edge of the lawn");
        await Assertions.Expect(sheet.Page.Locator(".walk-state")).ToContainTextAsync("55 positions");
        await window.Picture("draw-walking");

        // What was walked outlives the page.
        await sheet.Page.ReloadAsync();
        await Assertions.Expect(sheet.Page.Locator(".walk-state")).ToContainTextAsync("positions");
        await window.NothingBars();
        await sheet.Press("Make it the outline of: Edge of the lawn");
        await Assertions.Expect(sheet.Page.Locator("#walk-body [role=status]")).ToContainTextAsync("nine times in ten");
        var grass = await sheet.Grass("Edge of the lawn");

        // 240 m2, and a phone.
        Assert.InRange(grass, 0.8 * 2583.0, 1.2 * 2583.0);
        await Assertions.Expect(sheet.Page.Locator("#draw-area .off")).ToContainTextAsync("±");
        await window.Picture("draw-walked");
        await sheet.Press("Front is the whole lawn");
        await sheet.Save();
        Assert.Equal(grass, await sheet.Grass("Front"));
        window.NoFaults();
    }

    [Theory]
    [InlineData("phone", true)]
    [InlineData("desk", false)]
    public async Task A_picture_is_scaled_by_two_points_and_drawn_over(string size, bool touch)
    {
        await using var window = await Window.Open(app, size, touch: touch);
        var sheet = new DrawnSheet(window, touch);
        await sheet.Open($"Picture Place {size}");
        await sheet.Page.EvaluateAsync("() => document.getElementById('picture').open = true");
        await sheet.Page.GetByLabel("A plan, a survey or a picture from above").SetInputFilesAsync(new FilePayload { Name = "plan.png", MimeType = "image/png", Buffer = Convert.FromBase64String(await Plan(sheet.Page)) });
        await sheet.Press("Lay it under the sheet");
        await Assertions.Expect(sheet.Page.GetByText("Not scaled yet: its size is a guess")).ToBeVisibleAsync();

        // The picture is 300 px wide and lies 30 m wide: its lawn runs from 50 to 250 px across and 40 to 140 px down.
        await sheet.Press("Pick two points");
        await sheet.Tap((-10, -4), (10, -4));
        await sheet.Page.GetByLabel("Distance between A and B").FillAsync("60");
        await sheet.Press("Scale it");
        await Assertions.Expect(sheet.Page.GetByText("Scaled by 60 ft (18.3 m)")).ToBeVisibleAsync();
        await Assertions.Expect(sheet.Box).ToHaveAttributeAsync("data-tool", "add");

        // 20 m of the guess are 60 ft now; the first point stayed where it was.
        const double m = 18.288 / 20.0;
        await sheet.Tap((-10, -4), (-10 + 20 * m, -4), (-10 + 20 * m, -4 + 10 * m), (-10, -4 + 10 * m));
        Assert.InRange(await sheet.Grass("Edge of the lawn"), 0.95 * 1800.0, 1.05 * 1800.0);
        await window.Picture("draw-picture");
        await window.NothingBars();
        await sheet.Press("Front is the whole lawn");
        var off = await sheet.Page.Locator("#draw-area .off").TextContentAsync();
        await sheet.Save();
        Assert.Equal(off, await sheet.Page.Locator("#draw-area .off").TextContentAsync());
        await Assertions.Expect(sheet.Page.GetByText("Scaled by 60 ft (18.3 m)")).ToBeVisibleAsync();

        // The range on the page is the one the plan counts with.
        var document = await (await sheet.Page.Context.APIRequest.GetAsync(sheet.Page.Url.Replace("/draw", "/lawn.json", StringComparison.Ordinal))).JsonAsync();
        var band = document!.Value.GetProperty("patches")[0].GetProperty("measured").GetProperty("areaBand").GetString()!;
        var share = double.Parse(band.TrimEnd('%', ' '), System.Globalization.CultureInfo.InvariantCulture) / 100.0;
        Assert.Equal(Math.Round(share * await sheet.Grass("Front")), double.Parse(off!.Replace("±", "", StringComparison.Ordinal).Replace("sq ft", "", StringComparison.Ordinal).Trim(), System.Globalization.CultureInfo.InvariantCulture), 1.0);
        window.NoFaults();
    }

    [Fact]
    public async Task A_file_comes_on_top_of_what_is_drawn_and_undo_leads_back()
    {
        await using var window = await Window.Open(app, "desk");
        var sheet = new DrawnSheet(window, touch: false);
        await sheet.Open("File Field");
        await sheet.Tap((-10, -8), (10, -8), (10, 8), (-10, 8));
        var drawn = await sheet.Grass("Edge of the lawn");
        await sheet.Page.EvaluateAsync("() => document.getElementById('files').open = true");
        const string file = """{"type":"Feature","properties":{"name":"Front"},"geometry":{"type":"Polygon","coordinates":[[[-84.12,42.31],[-84.1199,42.31],[-84.1199,42.3101],[-84.12,42.3101],[-84.12,42.31]]]}}""";
        await sheet.Page.GetByLabel("Take outlines or a walk from a file").SetInputFilesAsync(new FilePayload { Name = "front.geojson", MimeType = "application/geo+json", Buffer = Encoding.UTF8.GetBytes(file) });
        await sheet.Press("Read the file");
        await Assertions.Expect(sheet.Page.GetByText("Read from the file and not saved yet.")).ToBeVisibleAsync();
        Assert.Equal(drawn, await sheet.Grass("Edge of the lawn"));

        // 0.0001 degrees by 0.0001 degrees at 42.31 north: 8.24 m x 11.11 m on WGS 84.
        Assert.InRange(await sheet.Grass("Front"), 980.0, 990.0);
        await window.NothingBars();
        await sheet.Press("Undo");
        await Assertions.Expect(sheet.Row("Front")).ToContainTextAsync("not drawn");
        Assert.Equal(drawn, await sheet.Grass("Edge of the lawn"));
        await sheet.Press("Redo");
        await sheet.Save();
        foreach (var name in (string[])["lawn.geojson", "lawn.kml", "lawn.gpx"])
        {
            var answer = await sheet.Page.Context.APIRequest.GetAsync(sheet.Page.Url.Split('?')[0] + "/file/" + name);
            Assert.True(answer.Ok && (await answer.BodyAsync()).Length > 300, name);
        }

        window.NoFaults();
    }

    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task Without_script_corners_are_typed_and_the_picture_shows_what_crosses(string size)
    {
        await using var window = await Window.Open(app, size, script: false);
        var page = window.Page;
        var lawn = await Quiet(window, $"Plain Yard {size}");
        await page.GetByText("Type the corners").ClickAsync();
        await page.GetByLabel("Corners of Edge of the lawn").FillAsync("0 0\n60 40\n60 0\n0 40");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the corners typed" }).ClickAsync();
        await Assertions.Expect(page.GetByText("side 1 crosses or touches side 3 at 30.0 ft east, 20.0 ft north.").First).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("svg.still .crossing")).ToHaveCountAsync(1);
        await window.Picture("draw-plain-crossing");
        if (!await page.GetByLabel("Corners of Edge of the lawn").IsVisibleAsync())
        {
            await page.GetByText("Type the corners").ClickAsync();
        }

        await page.GetByLabel("Corners of Edge of the lawn").FillAsync("0 0\n60 0\n60 40\n0 40");
        await page.GetByLabel("Corners of Front").FillAsync("0 0\n60 0\n60 40\n0 40");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the drawing" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Saved.")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#draw-table")).ToContainTextAsync("2,400 sq ft");
        await window.Picture("draw-plain");
        Assert.Contains(lawn, page.Url, StringComparison.Ordinal);
        window.NoFaults();
    }

    private static async Task<string> Quiet(Window window, string name)
    {
        var page = window.Page;
        await window.Go("/lawns/new");
        await page.GetByLabel("Name of the lawn").FillAsync(name);
        await page.GetByLabel("Latitude", new() { Exact = false }).First.FillAsync("42.31");
        await page.GetByLabel("Longitude", new() { Exact = false }).First.FillAsync("84.12");
        await page.GetByLabel("Elevation above the sea", new() { Exact = false }).First.FillAsync("900");
        await page.GetByLabel("Name of the patch").FillAsync("Front");
        await page.GetByLabel("Turf-type tall fescue").CheckAsync();
        await page.GetByRole(AriaRole.Radio, new() { Name = "Circle" }).CheckAsync();
        await page.GetByLabel("Diameter", new() { Exact = true }).FillAsync("50");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it on" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Draw them on a sheet" }).ClickAsync();
        return new Uri(page.Url).AbsolutePath;
    }

    /// <summary>A plan of a lawn made in the page: 300 x 200 px.</summary>
    private static Task<string> Plan(IPage page) => page.EvaluateAsync<string>(
        """
        () => {
          const c = Object.assign(document.createElement('canvas'), { width: 300, height: 200 });
          const g = c.getContext('2d');
          g.fillStyle = '#d8cfb4'; g.fillRect(0, 0, 300, 200);
          g.fillStyle = '#7f9c5b'; g.fillRect(50, 40, 200, 100);
          g.fillStyle = '#8d7a63'; g.fillRect(120, 145, 80, 50);
          return c.toDataURL('image/png').split(',')[1];
        }
        """);
}
