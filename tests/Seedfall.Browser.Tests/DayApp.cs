using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Seedfall.Web.Tests;

namespace Seedfall.Browser.Tests;

/// <summary>Tests that share <see cref="DayApp"/>; they run one after another.</summary>
[CollectionDefinition(nameof(DayApp))]
public sealed class DayAppTests : ICollectionFixture<DayApp>;

/// <summary>The app once more, with a lawn whose seed-down day is the day the demo stands still on: what is written there must disturb no other test.</summary>
public sealed class DayApp : IAsyncLifetime
{
    public const string Mill = DemoLawns.Mill;

    public const string Quarry = DemoLawns.Quarry;

    private static PageAssertionsToHaveURLOptions Patient { get; } = new() { Timeout = 120_000 };

    /// <summary>Photo spot of <see cref="Mill"/> that looks straight down.</summary>
    public string Spot { get; private set; } = "";

    public RunningApp App { get; } = new();

    public async ValueTask InitializeAsync()
    {
        Assertions.SetDefaultExpectTimeout(60_000);
        await App.InitializeAsync();
        await using var window = await Window.Open(App, "desk");
        await window.Go(Mill + "?seedDown=2026-08-14");
        await window.Page.GetByRole(AriaRole.Button, new() { Name = "Keep this" }).ClickAsync();
        await Assertions.Expect(window.Page).ToHaveURLAsync(new Regex("season=2026$"), Patient);
        await window.Go(Mill + "/photos/new");
        await window.Page.GetByLabel("Name of the spot").FillAsync("Front walk");
        await window.Page.Locator("form.leaf button.go").ClickAsync();
        await Assertions.Expect(window.Page).ToHaveURLAsync(new Regex("/photos/[0-9a-f-]{36}$"), Patient);
        Spot = window.Page.Url.Split('/')[^1];
    }

    /// <summary>A lawn whose clock goes by the phone's day, in Chicago's zone, not the demo's.</summary>
    public async Task<string> Clocked(string name)
    {
        var file = File.ReadAllText(Path.Combine(Checkout.Root, "data", "demo", "mill-lane-corner.json")).Replace("Mill Lane corner lawn, Tansy Ford (invented)", name, StringComparison.Ordinal).Replace("mill-lane-corner", name.ToLowerInvariant().Replace(' ', '-'), StringComparison.Ordinal);
        await using var window = await Window.Open(App, "desk");
        await window.Go("/lawns/from-file");
        await window.Page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "clock-lawn.json", MimeType = "application/json", Buffer = global::System.Text.Encoding.UTF8.GetBytes(file) });
        await window.Page.Locator("form button.go").ClickAsync();
        await Assertions.Expect(window.Page).ToHaveURLAsync(new Regex("/lawns/" + name.ToLowerInvariant().Replace(' ', '-')), Patient);
        return "/lawns/" + new Uri(window.Page.Url).Segments[2].TrimEnd('/');
    }

    /// <summary>What the server's log of a lawn holds.</summary>
    public async Task<IReadOnlyList<JsonElement>> Entries(string lawn)
    {
        using var client = new HttpClient { BaseAddress = new Uri(App.Address) };
        using var log = JsonDocument.Parse(await client.GetStringAsync(lawn + "/log/log.json"));
        return [.. log.RootElement.GetProperty("entries").EnumerateArray().Select(e => e.Clone())];
    }

    /// <summary>Pictures the server has of the spot.</summary>
    public async Task<int> Pictures()
    {
        await using var window = await Window.Open(App, "desk");
        await window.Go($"{Mill}/photos/{Spot}");
        return await window.Page.Locator(".pictures li").CountAsync();
    }

    public ValueTask DisposeAsync() => App.DisposeAsync();
}
