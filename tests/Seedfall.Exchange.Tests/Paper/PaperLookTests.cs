using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Seedfall.Exchange.Paper;
using Seedfall.Exchange.Tests.Support;

namespace Seedfall.Exchange.Tests.Paper;

public sealed partial class PaperLookTests
{
    [Theory]
    [InlineData("ink")]
    [InlineData("soft")]
    [InlineData("spruce")]
    [InlineData("soil")]
    [InlineData("water")]
    [InlineData("stop")]
    public void Text_has_a_contrast_of_seven_to_one_on_every_ground(string color)
    {
        // WCAG 2.2 success criterion 1.4.6 (AAA): 7:1, by the relative luminance of its definition.
        foreach (var ground in new[] { "paper", "leaf", "shade" })
        {
            Assert.InRange(Contrast(Color(color), Color(ground)), 7.0, 21.0);
        }

        Assert.InRange(Contrast(Color(color), "#ffffff"), 7.0, 21.0);
    }

    [Fact]
    public void One_blue_and_one_red_and_no_others()
    {
        var colors = Hex().Matches(PaperCss.Text).Select(m => m.Value.ToLowerInvariant()).Distinct().ToList();
        var blues = colors.Where(c => Hue(c) is > 180.0 and < 260.0).ToList();
        var reds = colors.Where(c => Hue(c) is < 15.0 or > 330.0).ToList();
        Assert.Equal(["#134b7a", "#9dbad3", "#dfe9f2"], blues.Order());
        Assert.Equal(["#86210f"], reds);
    }

    [Theory]
    [InlineData("ordinary")]
    [InlineData("dry")]
    [InlineData("waiting")]
    public async Task The_ribbon_has_words_and_all_of_them_lie_within_the_picture(string lawn)
    {
        foreach (var svg in await Ribbons(lawn))
        {
            var box = svg.Attribute("viewBox")!.Value.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();
            Assert.Equal("img", svg.Attribute("role")!.Value);
            Assert.NotEmpty(Named(svg, "title").First().Value);
            Assert.Contains("The window runs", Named(svg, "desc").Single().Value);
            var texts = Named(svg, "text").ToList();
            Assert.InRange(texts.Count, 20, 80);
            foreach (var text in texts)
            {
                var (from, to) = Extent(text, double.Parse(svg.Attribute("font-size")!.Value, CultureInfo.InvariantCulture));
                Assert.True(from >= 0.0 && to <= box[2], $"\"{text.Value}\" from {from:0} to {to:0} of {box[2]:0}");
                Assert.InRange(double.Parse(text.Attribute("y")!.Value, CultureInfo.InvariantCulture), 10.0, box[3]);
            }
        }
    }

    [Fact]
    public async Task The_phones_ribbon_is_as_wide_as_a_phone_and_its_letters_stay_legible()
    {
        var narrow = (await Ribbons("ordinary"))[1];
        Assert.StartsWith("0 0 360 ", narrow.Attribute("viewBox")!.Value, StringComparison.Ordinal);
        Assert.Equal("14", narrow.Attribute("font-size")!.Value);
    }

    [Fact]
    public async Task Work_is_told_apart_by_shape_and_phases_by_number()
    {
        var wide = (await Ribbons("ordinary"))[0];
        var shapes = Named(wide, "path").Where(p => (string?)p.Attribute("class") == "r-sign").Select(p => Digits().Replace(p.Attribute("d")!.Value, "")).Distinct();
        Assert.Equal(6, shapes.Count());
        var labels = Named(wide, "text").Select(t => t.Value).ToList();
        Assert.All(DemoPlan.Ordinary.Timing.Phases.Select((_, i) => i + 1), n => Assert.Contains(labels, l => l.StartsWith(n.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)));
    }

    [Fact]
    public async Task The_ribbon_stands_as_a_table_too()
    {
        var html = await PaperHtml.FullPlan(DemoPlan.Ordinary);
        var table = html[html.IndexOf("class=\"wide ribbon-table", StringComparison.Ordinal)..];
        var rows = table[..table.IndexOf("</table>", StringComparison.Ordinal)].Split("<tr>").Length - 2;
        Assert.InRange(rows, 15, 30);
    }

    private static async Task<List<XElement>> Ribbons(string lawn)
    {
        var html = await PaperHtml.FullPlan(PaperHtmlTests.Plan(lawn));
        return [.. Svg().Matches(html).Select(m => XElement.Parse(m.Value.Replace("&nbsp;", " ", StringComparison.Ordinal)))];
    }

    private static IEnumerable<XElement> Named(XElement svg, string name) => svg.Descendants().Where(e => e.Name.LocalName == name);

    /// <summary>Where a text begins and ends, at six tenths of its size a letter.</summary>
    private static (double From, double To) Extent(XElement text, double size)
    {
        var x = double.Parse(text.Attribute("x")!.Value, CultureInfo.InvariantCulture);
        var width = text.Value.Length * size * 0.6;
        return (string?)text.Attribute("text-anchor") switch
        {
            "end" => (x - width, x),
            "middle" => (x - (0.5 * width), x + (0.5 * width)),
            _ => (x, x + width),
        };
    }

    private static string Color(string name) => Regex.Match(PaperCss.Text, $"--{name}: (#[0-9a-f]{{6}});").Groups[1].Value;

    private static double Contrast(string a, string b)
    {
        var (x, y) = (Luminance(a), Luminance(b));
        return (Math.Max(x, y) + 0.05) / (Math.Min(x, y) + 0.05);
    }

    private static double Luminance(string hex)
    {
        var linear = Channels(hex).Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4)).ToArray();
        return (0.2126 * linear[0]) + (0.7152 * linear[1]) + (0.0722 * linear[2]);
    }

    /// <summary>Hue in degrees; null for near-grays.</summary>
    private static double? Hue(string hex)
    {
        var c = Channels(hex);
        var (most, least) = (c.Max(), c.Min());
        if (most - least < 0.06)
        {
            return null;
        }

        var hue = most == c[0] ? (c[1] - c[2]) / (most - least) : most == c[1] ? 2.0 + ((c[2] - c[0]) / (most - least)) : 4.0 + ((c[0] - c[1]) / (most - least));
        return ((hue * 60.0) + 360.0) % 360.0;
    }

    private static double[] Channels(string hex) => [.. new[] { 1, 3, 5 }.Select(i => int.Parse(hex.AsSpan(i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)];

    [GeneratedRegex("#[0-9a-fA-F]{6}")]
    private static partial Regex Hex();

    [GeneratedRegex("<svg class=\"ribbon-svg.*?</svg>", RegexOptions.Singleline)]
    private static partial Regex Svg();

    [GeneratedRegex("[-0-9. ]+")]
    private static partial Regex Digits();
}
