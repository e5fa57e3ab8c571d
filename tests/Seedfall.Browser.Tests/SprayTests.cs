using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Microsoft.Playwright;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Field.SprayWeather;
using Seedfall.Web.Features.SprayWindow;

namespace Seedfall.Browser.Tests;

/// <summary>The spray window on phone and desk, and the phone's own judgment against the server's.</summary>
public sealed class SprayTests(RunningApp app)
{
    private const int Readings = 4_000;

    private static readonly JsonSerializerOptions Names = new(JsonSerializerDefaults.Web) { Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) } };

    private static readonly DateTimeOffset Day = new(2026, 9, 5, 0, 0, 0, TimeSpan.Zero);

    private static readonly Place Town = new(41.6, -89.9, 230.0);

    public static TheoryData<string> Labels => ["nothing", "entered", "strict"];

    [Theory]
    [MemberData(nameof(Labels))]
    public async Task The_phone_judges_as_the_server_does(string label)
    {
        await using var window = await Window.Open(app, "phone");
        await window.Go("/");
        var entered = Entered(label);
        var random = new SplitMix64(20260905);
        var (asked, expected) = (new JsonArray(), new List<string>());
        for (var i = 0; i < Readings; i++)
        {
            var (reading, at) = (Draw(random), Day.AddMinutes(random.NextDouble() * 1440.0));
            asked.Add(JsonNode.Parse(JsonSerializer.Serialize(new { reading = Flat(reading), at = at.ToUnixTimeMilliseconds() }, Names)));
            expected.Add(Said(reading, entered, DateTimeOffset.FromUnixTimeMilliseconds(at.ToUnixTimeMilliseconds())));
        }

        var data = new NowData(SprayLimits.For(entered), DaySun.At(Town, Day)).Json();
        var found = await window.Page.EvaluateAsync<string[]>(
            """
            async ([data, asked]) => {
              const { judge } = await import('/built/spray-now.js');
              const known = JSON.parse(data);
              return JSON.parse(asked).map(({ reading, at }) => {
                const j = judge(reading, known, at);
                return `${j.verdict}: ${j.reasons.map(r => `${r.id}=${r.weight}`).join(' ')}`;
              });
            }
            """,
            new[] { data, asked.ToJsonString() });
        Assert.Equal(Readings, found.Length);
        for (var i = 0; i < Readings; i++)
        {
            Assert.True(expected[i] == found[i], $"{asked[i]}\nserver: {expected[i]}\nphone:  {found[i]}");
        }

        Assert.Equal(3, expected.Select(e => e[..e.IndexOf(':', StringComparison.Ordinal)]).Distinct().Count());
        window.NoFaults();
    }

    [Theory]
    [InlineData("phone", true)]
    [InlineData("phone", false)]
    [InlineData("desk", true)]
    public async Task From_the_window_to_the_verdict(string size, bool script)
    {
        await using var window = await Window.Open(app, size, script);
        var page = window.Page;
        await window.Go("/");
        var lawn = await page.Locator("a[href*='mill-lane']").First.GetAttributeAsync("href");
        await window.Go(lawn!.Split('?')[0] + "/spray-window");
        await Look(window, "spray-window", script);
        await page.GetByRole(AriaRole.Button, new() { Name = "Find the stretches" }).ClickAsync();
        await page.Locator(".spray-day th a").First.ClickAsync();
        await Look(window, "spray-hour", script);
        await page.Locator(".trail a").Last.ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "On the lawn: judge this moment" }).ClickAsync();
        await Look(window, "spray-now", script);
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Wind, by hand anemometer" }).FillAsync("12");
        if (script)
        {
            await Assertions.Expect(page.Locator(".spray-live")).ToContainTextAsync("Wind 12 mph (5.4 m/s) is over the label’s 10 mph (4.5 m/s).");
            await page.Context.SetOfflineAsync(true);
            await page.GetByRole(AriaRole.Textbox, new() { Name = "Wind, by hand anemometer" }).FillAsync("6");
            await Assertions.Expect(page.Locator(".spray-live")).Not.ToContainTextAsync("over the label");
            await page.GetByRole(AriaRole.Textbox, new() { Name = "Wind, by hand anemometer" }).FillAsync("12");
            await page.Context.SetOfflineAsync(false);
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Judge it" }).ClickAsync();
        await Assertions.Expect(page.Locator("#judged .spray-verdict")).ToContainTextAsync("Stop");
        await Assertions.Expect(page.Locator("#judged")).ToContainTextAsync("Wind 12 mph (5.4 m/s) is over the label’s 10 mph (4.5 m/s).");
        await Look(window, "spray-judged", script);
        window.NoFaults();
    }

    private static async Task Look(Window window, string name, bool script)
    {
        await window.Picture(script ? name : name + "-plain");
        if (script)
        {
            await window.NothingBars();
        }
    }

    private static SprayLabel Entered(string label) => label switch
    {
        "nothing" => SprayLabel.NothingEntered,
        "entered" => new() { MaximumWind = Speed.FromMilesPerHour(10.0), RainFreeHours = 4.0 },
        _ => new() { MaximumWind = Speed.FromMilesPerHour(6.0), MinimumWind = Speed.FromMilesPerHour(2.0), RainFreeHours = 1.0, LowestAir = Temperature.FromFahrenheit(50.0), HighestAir = Temperature.FromFahrenheit(80.0) },
    };

    private static string Said(SprayReading reading, SprayLabel label, DateTimeOffset at)
    {
        var judged = SprayNow.Judge(reading, label, DaySun.At(Town, Day), at);
        return $"{judged.Verdict.ToString().ToLowerInvariant()}: {string.Join(' ', judged.Reasons.Select(r => $"{r.Id}={r.Weight.ToString().ToLowerInvariant()}"))}";
    }

    private static SprayReading Draw(SplitMix64 random)
    {
        double? Maybe(double share, double low, double high) => random.NextDouble() < share ? low + (random.NextDouble() * (high - low)) : null;
        return new SprayReading
        {
            Wind = Maybe(0.6, 0.0, 6.0) is { } wind ? Speed.FromMetersPerSecond(wind) : null,
            Held = random.NextDouble() < 0.5 ? WindHeld.AtNozzle : WindHeld.Overhead,
            Force = (int?)Maybe(0.8, 0.0, 5.999),
            Gust = Maybe(0.4, 0.0, 8.0) is { } gust ? Speed.FromMetersPerSecond(gust) : null,
            Air = Maybe(0.7, -5.0, 42.0) is { } air ? Temperature.FromCelsius(air) : null,
            Humidity = Maybe(0.6, 1.0, 100.0) is { } humidity ? Fraction.FromPercent(humidity) : null,
            MorningLow = Maybe(0.3, 5.0, 20.0) is { } low ? Temperature.FromCelsius(low) : null,
            Sky = (SkyCover?)(int?)Maybe(0.7, 0.0, 2.999),
            Hangs = random.NextDouble() < 0.03,
            WetLeaves = random.NextDouble() < 0.5 ? null : random.NextDouble() < 0.2,
            RainInMinutes = random.NextDouble() < 0.03 ? 0.0 : Maybe(0.3, 0.0, 600.0),
            NoRainInSight = random.NextDouble() < 0.7,
        };
    }

    /// <summary>As the phone has it: plain numbers.</summary>
    private static object Flat(SprayReading r) => new
    {
        WindMs = r.Wind?.MetersPerSecond,
        r.Held,
        r.Force,
        GustMs = r.Gust?.MetersPerSecond,
        AirC = r.Air?.Celsius,
        HumidityPct = r.Humidity?.Percent,
        MorningLowC = r.MorningLow?.Celsius,
        r.Sky,
        r.Hangs,
        r.WetLeaves,
        r.RainInMinutes,
        r.NoRainInSight,
    };
}
