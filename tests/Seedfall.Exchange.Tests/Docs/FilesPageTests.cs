using System.Text;
using System.Text.RegularExpressions;
using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Lawns;
using Seedfall.Exchange.Tests.Support;
using Seedfall.Exchange.Units;

namespace Seedfall.Exchange.Tests.Docs;

public sealed class FilesPageTests
{
    private static readonly string Page = File.ReadAllText(Repository.PathOf("docs", "using", "files.md"));

    [Fact]
    public void The_lawn_file_on_the_page_is_sound()
    {
        var example = Regex.Match(Page, "```json\n(.*?)```", RegexOptions.Singleline).Groups[1].Value;
        var result = LawnFile.Read(Encoding.UTF8.GetBytes(example), "files.md", Trade.Tables);
        Assert.True(result.IsRead, string.Join('\n', result.Problems));
    }

    [Fact]
    public void The_units_on_the_page_are_those_the_reader_takes()
    {
        (string Name, IEnumerable<string> Units)[] all =
        [
            ("area", Quantities.Area.Units), ("length", Quantities.Length.Units), ("depth", Quantities.Depth.Units), ("weight", Quantities.Mass.Units),
            ("volume", Quantities.Volume.Units), ("flow", Quantities.Flow.Units), ("pressure", Quantities.Pressure.Units), ("precipitation rate", Quantities.PrecipitationRate.Units), ("speed", Quantities.Speed.Units),
            ("liquid rate", Quantities.LiquidRate.Units), ("dry rate", Quantities.DryRate.Units), ("share", Quantities.Share.Units), ("temperature", Quantities.Temperature.Units),
        ];
        Assert.All(all, q => Assert.Contains($"| {q.Name} | {string.Join(", ", q.Units.Select(u => $"`{u}`"))} |", Page));
    }
}
