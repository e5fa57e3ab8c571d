using System.Text.Json;
using Seedfall.Cli.Tests.Support;

namespace Seedfall.Cli.Tests;

public sealed class PlanCommandTests
{
    [Fact]
    public async Task ThePlanOfTheOrdinaryLawnIsWrittenWhole()
    {
        using var bench = await Workbench.WithDemo();
        var run = await Run.Of("plan", bench.Lawn, "--weather", bench.Weather, "--season", "2026", "--today", "2026-08-25", "--out", bench.Out, "--no-pdf", "--json");
        Assert.Equal("", run.Remarks);
        Assert.Equal(0, run.ExitCode);
        Assert.Equal(["handout.html", "materials.csv", "plan.html", "plan.json", "season.ics"], Names(bench.Out));
        using var summary = JsonDocument.Parse(run.Results);
        Assert.Equal("Recover", summary.RootElement.GetProperty("verdict").GetString());
        Assert.Equal(5, summary.RootElement.GetProperty("files").GetArrayLength());
    }

    [Fact]
    public async Task TheSameInputsGiveTheSameFiles()
    {
        using var bench = await Workbench.WithDemo();
        string[] plan = ["plan", bench.Lawn, "--weather", bench.Weather, "--season", "2026", "--no-pdf", "--out"];
        Assert.Equal(0, (await Run.Of([.. plan, bench.Out + "1"])).ExitCode);
        Assert.Equal(0, (await Run.Of([.. plan, bench.Out + "2"])).ExitCode);
        Assert.All(Names(bench.Out + "1"), name => Assert.Equal(File.ReadAllBytes(Path.Combine(bench.Out + "1", name)), File.ReadAllBytes(Path.Combine(bench.Out + "2", name))));
    }

    [Theory]
    [InlineData("quarry-hill.json", 0)]
    [InlineData("ferry-landing.json", 3)]
    public async Task TheOtherDemoLawnsAreNotSeeded(string lawn, int exitCode)
    {
        using var bench = await Workbench.WithDemo();
        var run = await Run.Of("plan", Path.Combine(bench.Demo, lawn), "--weather", bench.Weather, "--season", "2026", "--today", "2026-08-25", "--out", bench.Out, "--no-pdf", "--json");
        Assert.Equal(exitCode, run.ExitCode);
        using var summary = JsonDocument.Parse(run.Results);
        Assert.Equal(JsonValueKind.Null, summary.RootElement.GetProperty("seedDown").ValueKind);
    }

    [Fact]
    public async Task RealDailyWeatherOfACityMakesAPlan()
    {
        // The Seattle daily set (NOAA, 2012 to 2015) as shipped in the npm package vega-datasets, BSD-3-Clause.
        var seattle = Path.Combine(Checkout.Root, "node_modules", "vega-datasets", "data", "seattle-weather.csv");
        Assert.True(File.Exists(seattle), $"{seattle} is missing: run ./dev setup");
        using var bench = await Workbench.WithDemo();
        var lawn = bench.Write("seattle.json", """
            { "format": "seedfall-lawn/1", "id": "invented-lawn", "name": "Invented lawn", "place": { "latitude": 47.6, "longitude": -122.3, "elevation": "50 m" },
              "patches": [ { "id": "all", "name": "All", "shape": { "rectangle": { "long": "20 m", "wide": "10 m" } }, "grasses": [ "perennial-ryegrass" ] } ] }
            """);
        var run = await Run.Of("plan", lawn, "--weather", seattle, "--season", "2015", "--out", bench.Out, "--no-pdf", "--json");
        Assert.True(run.ExitCode == 0, run.Remarks);
        using var plan = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(bench.Out, "plan.json")));
        Assert.Equal([2012, 2013, 2014], plan.RootElement.GetProperty("timing").GetProperty("seasons").EnumerateArray().Select(y => y.GetInt32()));
    }

    private static IEnumerable<string> Names(string folder) => Directory.EnumerateFiles(folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal);
}
