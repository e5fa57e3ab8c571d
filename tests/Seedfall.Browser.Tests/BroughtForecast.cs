using System.Globalization;
using System.Text;
using System.Text.Json;
using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>A forecast by the hour brought to a lawn's spray window, in the shape the United States' service gives.</summary>
internal static class BroughtForecast
{
    /// <summary>Mild and dry, from two hours ago on.</summary>
    /// <param name="mph">Wind at 10 m in each hour.</param>
    /// <param name="madeHoursAgo">When it was made.</param>
    public static async Task Bring(RunningApp app, string lawn, Func<int, int> mph, int hours = 72, double madeHoursAgo = 5.0)
    {
        await using var window = await Window.Open(app, "desk");
        await window.Go(lawn + "/spray-window");
        await window.Page.GetByLabel("Saved forecast (JSON)").SetInputFilesAsync(new FilePayload { Name = "forecast.json", MimeType = "application/json", Buffer = File(mph, hours, madeHoursAgo) });
        await window.Page.GetByRole(AriaRole.Button, new() { Name = "Read the forecast" }).ClickAsync();
        await Assertions.Expect(window.Page.Locator(".spray-day").First).ToBeVisibleAsync();
        await Assertions.Expect(window.Page.Locator("#forecast + p")).ToContainTextAsync("made");
    }

    private static byte[] File(Func<int, int> mph, int hours, double madeHoursAgo)
    {
        var now = DateTimeOffset.UtcNow;
        var start = new DateTimeOffset(now.Year, now.Month, now.Day, now.Hour, 0, 0, TimeSpan.Zero).AddHours(-2.0);
        var periods = Enumerable.Range(0, hours).Select(i => new
        {
            startTime = Stamp(start.AddHours(i)),
            endTime = Stamp(start.AddHours(i + 1)),
            temperature = 68,
            temperatureUnit = "F",
            windSpeed = string.Create(CultureInfo.InvariantCulture, $"{mph(i)} mph"),
            relativeHumidity = new { unitCode = "wmoUnit:percent", value = 60 },
            probabilityOfPrecipitation = new { unitCode = "wmoUnit:percent", value = 5 },
        });
        return Encoding.UTF8.GetBytes(JsonSerializer.Serialize(new { properties = new { updateTime = Stamp(now.AddHours(-madeHoursAgo)), periods } }));
    }

    private static string Stamp(DateTimeOffset at) => at.ToString("yyyy-MM-dd'T'HH:mm:ssK", CultureInfo.InvariantCulture);
}
