using System.Text;
using System.Text.RegularExpressions;
using Seedfall.Exchange.Lawns;
using Seedfall.Exchange.Tests.Support;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Tests.Docs;

public sealed class OutlinesPageTests
{
    private static readonly string Page = File.ReadAllText(Repository.PathOf("docs", "using", "outlines.md"));

    [Fact]
    public void The_figure_on_the_page_is_a_sound_shape()
    {
        var shape = Regex.Match(Page, "```json\n(.*?)```", RegexOptions.Singleline).Groups[1].Value;
        var lawn = LawnText.Least.Replace("\"shape\": { \"area\": \"2400 sq ft\" }", shape.Trim(), StringComparison.Ordinal);
        Assert.NotEqual(LawnText.Least, lawn);
        var read = LawnFile.Read(Encoding.UTF8.GetBytes(lawn), "outlines.md");
        Assert.True(read.IsRead, string.Join('\n', read.Problems));
        Assert.Equal(1500.0 + 0.5 * Math.PI * 12.5 * 12.5 - Math.PI * 16.0, PatchArea.Of(read.Lawn.Patches[0].Shape).SquareFeet, 6);
    }

    [Fact]
    public void The_page_names_every_shape_and_every_way_of_measuring()
    {
        Assert.All(
            (string[])["rectangle", "circle", "triangle", "sides", "slice", "bow", "strip", "offsets", "pieces", "taped", "outline", "area"],
            name => Assert.Contains($"| `{name}` |", Page));
        Assert.All(Exchange.Json.NamesOf<MeasuredBy>.All, name => Assert.Contains($"`{name}`", Page));
        Assert.All(Exchange.Json.NamesOf<FeatureKind>.All, name => Assert.Contains($"`{name}`", Page));
    }
}
