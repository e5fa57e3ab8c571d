using System.Text.Json;
using Seedfall.Cli.Tests.Support;
using Seedfall.Photos.Pixels;
using Seedfall.Photos.Reading;

namespace Seedfall.Cli.Tests;

public sealed class CoverCommandTests
{
    [Fact]
    public async Task EachPhotographIsPrintedAsJsonInTheOrderGiven()
    {
        using var bench = new Workbench();
        var (half, bare) = (bench.Write("half.jpg", Striped(0.5)), bench.Write("bare.jpg", Striped(0.0)));

        var run = await Run.Of("cover", half, bare, "--json");

        Assert.Equal((0, ""), (run.ExitCode, run.Remarks));
        using var json = JsonDocument.Parse(run.Results);
        Assert.Equal([half, bare], json.RootElement.EnumerateArray().Select(row => row.GetProperty("file").GetString()));
        foreach (var row in json.RootElement.EnumerateArray())
        {
            var (low, cover, high) = (row.GetProperty("low").GetDouble(), row.GetProperty("cover").GetDouble(), row.GetProperty("high").GetDouble());
            Assert.True(low >= 0.0 && low <= cover && cover <= high && high <= 1.0);
            Assert.Equal(JsonValueKind.Array, row.GetProperty("flags").ValueKind);
        }

        Assert.InRange(json.RootElement[0].GetProperty("cover").GetDouble(), 0.4, 0.6);
        Assert.InRange(json.RootElement[1].GetProperty("cover").GetDouble(), 0.0, 0.05);
    }

    [Fact]
    public async Task ABadFileIsNamedAndTheOthersAreMeasured()
    {
        using var bench = new Workbench();
        var (good, bad) = (bench.Write("good.jpg", Striped(0.5)), bench.Write("bad.jpg", "no picture"));

        var run = await Run.Of("cover", bad, good);
        var missing = await Run.Of("cover", good, Path.Combine(bench.Out, "none.jpg"));

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("bad.jpg: expected a JPEG, PNG, WebP or HEIC picture", run.Remarks, StringComparison.Ordinal);
        Assert.Contains("good.jpg", run.Results, StringComparison.Ordinal);
        Assert.Equal(4, missing.ExitCode);
        Assert.Contains("none.jpg: there is no such file", missing.Remarks, StringComparison.Ordinal);
    }

    [Fact]
    public async Task OverlaysAreWrittenOneForEachPhotograph()
    {
        using var bench = new Workbench();
        var photo = bench.Write("half.jpg", Striped(0.5));

        var run = await Run.Of("cover", photo, photo, "--overlay", bench.Out);

        Assert.Equal(0, run.ExitCode);
        Assert.Equal(["half-cover-2.jpg", "half-cover.jpg"], Directory.EnumerateFiles(bench.Out).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.True(PhotoFile.Read(File.ReadAllBytes(Path.Combine(bench.Out, "half-cover.jpg"))).IsRead);
    }

    [Fact]
    public async Task AGrayCardThatIsNoRectangleIsRefused()
    {
        using var bench = new Workbench();
        var run = await Run.Of("cover", bench.Write("half.jpg", Striped(0.5)), "--gray-card", "0.5,0.5,0.4,0.6");

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("--gray-card: expected left,top,right,bottom", run.Remarks, StringComparison.Ordinal);
    }

    /// <summary>Green and brown stripes with a little noise; the share of green is exact.</summary>
    private static byte[] Striped(double green)
    {
        const int width = 320;
        const int height = 240;
        var random = new Random(1);
        var rgb = new byte[3 * width * height];
        for (var i = 0; i < width * height; i++)
        {
            var (light, isGreen) = (0.9 + (0.2 * random.NextDouble()), i % width % 20 < 20 * green);
            (rgb[3 * i], rgb[(3 * i) + 1], rgb[(3 * i) + 2]) = isGreen
                ? ((byte)(78 * light), (byte)(120 * light), (byte)(48 * light))
                : ((byte)(112 * light), (byte)(92 * light), (byte)(70 * light));
        }

        return PhotoFile.Store(new PixelImage(width, height, rgb));
    }
}
