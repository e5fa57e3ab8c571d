using System.Text.Json;
using Seedfall.Cli.Tests.Support;

namespace Seedfall.Cli.Tests;

public sealed class OtherCommandTests
{
    [Fact]
    public async Task TheDemoSaysThatItIsInventedAndChecksSound()
    {
        using var bench = await Workbench.WithDemo();
        Assert.Equal(3, Directory.EnumerateFiles(bench.Demo, "*.json").Count());
        foreach (var lawn in Directory.EnumerateFiles(bench.Demo, "*.json"))
        {
            Assert.Equal(0, (await Run.Of("check", lawn)).ExitCode);
            Assert.Contains("invented", File.ReadAllText(lawn), StringComparison.OrdinalIgnoreCase);
        }

        Assert.Contains("INVENTED", string.Concat(File.ReadLines(bench.Weather).Take(5)), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task WeatherIsToldInWordsAndAsJson()
    {
        using var bench = await Workbench.WithDemo();
        var words = await Run.Of("weather", bench.Weather);
        Assert.Equal(0, words.ExitCode);
        Assert.Contains("degC", words.Results, StringComparison.Ordinal);
        using var json = JsonDocument.Parse((await Run.Of("weather", bench.Weather, "--json")).Results);
        Assert.True(json.RootElement.GetProperty("dayCount").GetInt32() > 9000);
    }

    [Fact]
    public async Task SiteFactsAreToldInWordsAndAsJson()
    {
        using var bench = await Workbench.WithDemo();
        var lawn = Directory.EnumerateFiles(bench.Demo, "*.json").Order(StringComparer.Ordinal).First();
        var words = await Run.Of("site", lawn, bench.Weather, "--season", "2026");
        Assert.Equal(0, words.ExitCode);
        Assert.Contains("Hardiness zone", words.Results, StringComparison.Ordinal);
        Assert.Contains("First 32 degF night of autumn", words.Results, StringComparison.Ordinal);
        using var json = JsonDocument.Parse((await Run.Of("site", lawn, "--json")).Results);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("climate").ValueKind);
        Assert.True(json.RootElement.GetProperty("sun").GetArrayLength() > 0);
        Assert.Equal(2, (await Run.Of("site", lawn, "--season", "3000")).ExitCode);
    }

    [Fact]
    public async Task ABadLawnChecksAsJsonWithEveryProblem()
    {
        using var bench = await Workbench.WithDemo();
        var run = await Run.Of("check", bench.LawnWith("\"55 %\"", "\"155 %\""), "--json");
        Assert.Equal(2, run.ExitCode);
        using var json = JsonDocument.Parse(run.Results);
        Assert.False(json.RootElement.GetProperty("sound").GetBoolean());
        Assert.NotEqual(0, json.RootElement.GetProperty("problems").GetArrayLength());
    }

    [Fact]
    public async Task SoilValidationScoresTheShippedModelOnMeasuredStations()
    {
        // U.S. Climate Reference Network daily01 product (Diamond et al. 2013, Bell et al. 2013), public domain.
        var data = Environment.GetEnvironmentVariable("SEEDFALL_DATA");
        if (string.IsNullOrEmpty(data))
        {
            Assert.Skip("SEEDFALL_DATA is not set: measured stations are not there");
        }

        var run = await Run.Of("validate", "soil", Path.Combine(data, "uscrn_daily"), "--json");
        Assert.Equal(0, run.ExitCode);
        using var json = JsonDocument.Parse(run.Results);
        var pooled = json.RootElement.GetProperty("pooled").GetProperty("methods");
        Assert.All(new[] { "column", "product", "regression", "air7", "climatology" }, method => Assert.True(pooled.GetProperty(method).GetProperty("n").GetInt32() > 20000));
        Assert.True(pooled.GetProperty("product").GetProperty("rmse").GetDouble() <= 1.35);
        Assert.True(pooled.GetProperty("product").GetProperty("rmse").GetDouble() <= pooled.GetProperty("regression").GetProperty("rmse").GetDouble());
    }

    [Fact]
    public async Task ValidateChoiceComparesRulesByStationAndPooled()
    {
        var data = Environment.GetEnvironmentVariable("SEEDFALL_DATA");
        if (string.IsNullOrEmpty(data))
        {
            Assert.Skip("SEEDFALL_DATA is not set: measured stations are not there");
        }

        var run = await Run.Of("validate", "choice", Path.Combine(data, "uscrn_daily"), "--json");
        Assert.Equal(0, run.ExitCode);
        using var json = JsonDocument.Parse(run.Results);
        Assert.Equal(["three-rounds", "one-round", "rain-only"], json.RootElement.EnumerateArray().Select(r => r.GetProperty("scene").GetString()));
        var rules = json.RootElement[2].GetProperty("pooled").GetProperty("rules");
        Assert.All(new[] { "seedfall", "soil70", "calendar", "hindsight" }, rule => Assert.InRange(rules.GetProperty(rule).GetProperty("success").GetDouble(), 0.3, 1.0));
        Assert.Equal(20, json.RootElement[2].GetProperty("stations").GetArrayLength());

        var words = await Run.Of("validate", "choice", Path.Combine(data, "uscrn_daily"));
        Assert.Contains("rain-only: never watered", words.Results, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ValidateChoiceWithoutItsFolderSaysSo()
    {
        var run = await Run.Of("validate", "choice", Path.Combine(Path.GetTempPath(), "there-is-no-such-folder"));
        Assert.Equal(4, run.ExitCode);
        Assert.Contains("no such folder", run.Remarks, StringComparison.Ordinal);
    }
}
