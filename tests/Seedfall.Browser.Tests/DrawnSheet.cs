using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>The drawing page as a person uses it: points of the sheet in meters, by finger, mouse or key.</summary>
internal sealed partial class DrawnSheet(Window window, bool touch)
{
    public IPage Page { get; } = window.Page;

    public ILocator Box => Page.Locator("#sheet");

    /// <summary>Takes a lawn with one patch on and opens its drawing. Returns its address.</summary>
    public async Task<string> Open(string name)
    {
        await window.Go("/lawns/new");
        await Page.GetByLabel("Name of the lawn").FillAsync(name);
        await Page.GetByLabel("Latitude", new() { Exact = false }).First.FillAsync("42.31");
        await Page.GetByLabel("Longitude", new() { Exact = false }).First.FillAsync("84.12");
        await Page.GetByLabel("Elevation above the sea", new() { Exact = false }).First.FillAsync("900");
        await Page.GetByLabel("Name of the patch").FillAsync("Front");
        await Page.GetByLabel("Turf-type tall fescue").CheckAsync();
        await Page.GetByRole(AriaRole.Radio, new() { Name = "Circle" }).CheckAsync();
        await Page.GetByLabel("Diameter", new() { Exact = true }).FillAsync("50");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Take it on" }).ClickAsync();
        await Page.GetByRole(AriaRole.Link, new() { Name = "Draw them on a sheet" }).ClickAsync();
        await Assertions.Expect(Box).ToBeVisibleAsync();
        return Page.Url[..^"/draw".Length];
    }

    /// <summary>Where a point of the sheet lies on the screen.</summary>
    public async Task<(float X, float Y)> At(double eastM, double northM)
    {
        await Box.ScrollIntoViewIfNeededAsync();
        var box = await Box.BoundingBoxAsync() ?? throw new InvalidOperationException("the sheet is not shown");
        var view = (await Box.GetAttributeAsync("data-view"))!.Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray();
        return ((float)(box.X + box.Width / 2.0 + (eastM - view[0]) / view[2]), (float)(box.Y + box.Height / 2.0 - (northM - view[1]) / view[2]));
    }

    /// <summary>A tap or click on each point in turn.</summary>
    public async Task Tap(params (double EastM, double NorthM)[] points)
    {
        foreach (var (east, north) in points)
        {
            var (x, y) = await At(east, north);
            if (touch)
            {
                await Page.Touchscreen.TapAsync(x, y);
            }
            else
            {
                await Page.Mouse.ClickAsync(x, y);
            }
        }
    }

    public async Task Drag((double EastM, double NorthM) from, (double EastM, double NorthM) to)
    {
        var ((x, y), (toX, toY)) = (await At(from.EastM, from.NorthM), await At(to.EastM, to.NorthM));
        await Page.Mouse.MoveAsync(x, y);
        await Page.Mouse.DownAsync();
        await Page.Mouse.MoveAsync((x + toX) / 2, (y + toY) / 2);
        await Page.Mouse.MoveAsync(toX, toY);
        await Page.Mouse.UpAsync();
    }

    public async Task Keys(params string[] keys)
    {
        foreach (var key in keys)
        {
            await Page.Keyboard.PressAsync(key);
        }
    }

    public async Task Hole(string kind)
    {
        await Page.EvaluateAsync("() => document.getElementById('holes').open = true");
        await Page.Locator("#holes-kinds").GetByRole(AriaRole.Button, new() { Name = kind, Exact = true }).ClickAsync();
    }

    public Task Choose(string shape) => Page.Locator("#draw-shape").SelectOptionAsync(new SelectOptionValue { Value = shape });

    public Task Press(string button) => Page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).ClickAsync();

    public async Task Save()
    {
        await Press("Save the drawing");
        await Assertions.Expect(Page.GetByText("Saved. The plan counts with these areas.")).ToBeVisibleAsync();
    }

    /// <summary>The row of a shape in the list of areas.</summary>
    public ILocator Row(string shape) => Page.Locator("#draw-table tbody tr").Filter(new() { HasTextRegex = new Regex("^\\s*" + Regex.Escape(shape)) });

    /// <summary>Square feet in a shape's row.</summary>
    public async Task<double> Grass(string shape) =>
        double.Parse(SquareFeet().Match(await Row(shape).InnerTextAsync()).Groups[1].Value, NumberStyles.AllowThousands, CultureInfo.InvariantCulture);

    public Task<int> Corners() => Page.Locator("#corners-list tbody tr").CountAsync();

    [GeneratedRegex(@"([\d,]+) sq ft")]
    private static partial Regex SquareFeet();
}
