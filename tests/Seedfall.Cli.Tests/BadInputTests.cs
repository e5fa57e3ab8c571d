using System.IO.Compression;
using Seedfall.Cli.Tests.Support;

namespace Seedfall.Cli.Tests;

/// <summary>Bad input gives a clear error, one line for each thing, and nothing is written.</summary>
public sealed class BadInputTests
{
    [Theory]
    [InlineData("\"60 ft\"", "\"-60 ft\"", "long")]
    [InlineData("\"60 ft\"", "60", "long")]
    [InlineData("\"60 ft\"", "\"60 furlongs\"", "long")]
    [InlineData("\"55 %\"", "\"155 %\"", "livingCover")]
    [InlineData("\"55 %\"", "NaN", "")]
    [InlineData("41.6", "1e999", "")]
    [InlineData("41.6", "Infinity", "")]
    [InlineData("\"latitude\": 41.6", "\"latitude\": -89.9", "place")]
    [InlineData("\"id\": \"side\"", "\"id\": \"front\"", "patches")]
    [InlineData("\"sun\": \"8 h\"", "\"sunshine\": \"8 h\"", "sunshine")]
    [InlineData("\"name\": \"Front lawn\"", "\"name\": \"Front lawn\", \"name\": \"Again\"", "name")]
    public async Task ABadLawnIsRefusedByName(string old, string changed, string named)
    {
        using var bench = await Workbench.WithDemo();
        var lawn = bench.LawnWith(old, changed);
        if (changed == "\"latitude\": -89.9")
        {
            lawn = bench.Write("reversed.json", File.ReadAllText(lawn).Replace("\"longitude\": -89.9", "\"longitude\": 43.2", StringComparison.Ordinal));
        }

        await RefusedAsync(bench, 2, named, "plan", lawn, "--weather", bench.Weather, "--season", "2026", "--out", bench.Out, "--no-pdf");
        Assert.Equal(2, (await Run.Of("check", lawn)).ExitCode);
    }

    [Fact]
    public async Task ASelfCrossingOutlineIsRefused()
    {
        using var bench = await Workbench.WithDemo();
        var lawn = bench.LawnWith(
            "\"rectangle\": {\n          \"long\": \"60 ft\",\n          \"wide\": \"40 ft\"\n        }",
            "\"outline\": { \"ring\": [ { \"east\": \"0 m\", \"north\": \"0 m\" }, { \"east\": \"10 m\", \"north\": \"10 m\" }, { \"east\": \"10 m\", \"north\": \"0 m\" }, { \"east\": \"0 m\", \"north\": \"10 m\" } ] }");
        await RefusedAsync(bench, 2, "outline", "plan", lawn, "--weather", bench.Weather, "--season", "2026", "--out", bench.Out, "--no-pdf");
    }

    [Fact]
    public async Task TwoSeedLotsOfOneNumberAreRefused()
    {
        using var bench = await Workbench.WithDemo();
        const string Lot = "{ \"lotNumber\": \"A-1\", \"components\": [ { \"species\": \"tall-fescue\", \"purity\": \"98 %\", \"germination\": \"85 %\" } ] }";
        var lawn = bench.Write("lots.json", $$"""
            { "format": "seedfall-lawn/1", "id": "l", "name": "L", "place": { "latitude": 43.2, "longitude": -89.9, "elevation": "280 m" },
              "patches": [ { "id": "all", "name": "All", "shape": { "area": "200 m2" }, "grasses": [ "tall-fescue" ] } ],
              "seedLots": [ {{Lot}}, {{Lot}} ] }
            """);
        await RefusedAsync(bench, 2, "A-1", "plan", lawn, "--weather", bench.Weather, "--season", "2026", "--out", bench.Out, "--no-pdf");
    }

    [Theory]
    [InlineData("date,tmax_c,tmin_c,rain_mm\n2024-08-01,25.0,12.0\n2024-08-02,25")]
    [InlineData("date,tmax_c,tmin_c,rain_mm\n2024-08-01,250,120,0\n2024-08-02,260,130,0\n")]
    [InlineData("")]
    public async Task BrokenWeatherTextIsRefused(string text)
    {
        using var bench = await Workbench.WithDemo();
        var weather = bench.Write("broken.csv", text);
        await RefusedAsync(bench, 2, "broken.csv", "plan", bench.Lawn, "--weather", weather, "--season", "2024", "--out", bench.Out, "--no-pdf");
    }

    [Fact]
    public async Task BinaryAndTruncatedWeatherAreRefused()
    {
        using var bench = await Workbench.WithDemo();
        var binary = bench.Write("binary.csv", [.. Enumerable.Range(0, 4096).Select(i => (byte)((i * 7919) % 251))]);
        await RefusedAsync(bench, 2, "binary.csv", "plan", bench.Lawn, "--weather", binary, "--season", "2024", "--out", bench.Out, "--no-pdf");
        var packed = Packed(File.ReadAllBytes(bench.Weather));
        var cut = bench.Write("cut.csv.gz", packed[..(packed.Length / 2)]);
        await RefusedAsync(bench, 2, "cut.csv.gz", "plan", bench.Lawn, "--weather", cut, "--season", "2024", "--out", bench.Out, "--no-pdf");
    }

    [Theory]
    [InlineData("--season", "1950", "--season")]
    [InlineData("--season", "2099", "--season")]
    [InlineData("--season", "soon", "soon")]
    public async Task SeasonsTheWeatherCannotSpeakOfAreRefused(string option, string value, string named)
    {
        using var bench = await Workbench.WithDemo();
        await RefusedAsync(bench, 2, named, "plan", bench.Lawn, "--weather", bench.Weather, option, value, "--out", bench.Out, "--no-pdf");
    }

    [Fact]
    public async Task ADayOutsideTheSeasonIsRefused()
    {
        using var bench = await Workbench.WithDemo();
        await RefusedAsync(bench, 2, "--seed-down", "plan", bench.Lawn, "--weather", bench.Weather, "--season", "2026", "--seed-down", "2019-09-01", "--out", bench.Out, "--no-pdf");
    }

    [Fact]
    public async Task MissingFilesAreToldApartFromBadOnes()
    {
        using var bench = await Workbench.WithDemo();
        await RefusedAsync(bench, 4, "nowhere.json", "plan", Path.Combine(bench.Demo, "nowhere.json"), "--weather", bench.Weather, "--season", "2026", "--out", bench.Out);
        await RefusedAsync(bench, 4, "nowhere.csv", "plan", bench.Lawn, "--weather", Path.Combine(bench.Demo, "nowhere.csv"), "--season", "2026", "--out", bench.Out, "--no-pdf");
    }

    [Fact]
    public async Task AnUnknownOptionIsRefused()
    {
        using var bench = await Workbench.WithDemo();
        await RefusedAsync(bench, 2, "--season", "plan", bench.Lawn, "--weather", bench.Weather, "--seasons", "2026", "--out", bench.Out);
    }

    private static async Task RefusedAsync(Workbench bench, int exitCode, string named, params string[] args)
    {
        var run = await Run.Of(args);
        Assert.Equal(exitCode, run.ExitCode);
        Assert.Contains(named, run.Remarks, StringComparison.Ordinal);
        Assert.All(run.Remarks.Split('\n', StringSplitOptions.RemoveEmptyEntries), line => Assert.StartsWith("seedfall: ", line, StringComparison.Ordinal));
        Assert.Equal("", run.Results);
        Assert.False(Directory.Exists(bench.Out) && Directory.EnumerateFileSystemEntries(bench.Out).Any(), "something was written");
    }

    private static byte[] Packed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            gzip.Write(bytes);
        }

        return packed.ToArray();
    }
}
