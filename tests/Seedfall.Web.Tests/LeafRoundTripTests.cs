using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Seedfall.Exchange.Demo;
using Seedfall.Exchange.Lawns;

namespace Seedfall.Web.Tests;

/// <summary>Every leaf of the fullest lawns, opened and saved again untouched, leaves the lawn as it was, whichever units it was shown in.</summary>
public sealed partial class LeafRoundTripTests : IDisposable
{
    private readonly App _app = new(demo: true);

    public static TheoryData<string, string> LawnsAndSystems()
    {
        var data = new TheoryData<string, string>();
        foreach (var name in DemoTown.Names)
        {
            data.Add(name, "us");
            data.Add(name, "metric");
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(LawnsAndSystems))]
    public Task Saving_what_is_shown_changes_nothing(string name, string system) => Unchanged(DemoLawns.Of(name), name, system);

    [Theory]
    [InlineData("us")]
    [InlineData("metric")]
    public async Task Saving_a_whole_water_supply_as_shown_changes_nothing(string system)
    {
        var answer = await _app.Upload("/lawns/from-file", [("lawn.json", Encoding.UTF8.GetBytes(SupplyText.Lawn))]);
        Assert.True(answer.Status == HttpStatusCode.Found, App.Words(answer.Body));
        var address = Regex.Match(answer.Location!, "^/lawns/[^/?#]+").Value;
        var file = await _app.Get(address + "/lawn.json");
        foreach (var said in (string[])["\"still\": \"61.5 psi\"", "\"together\"", "\"stored\"", "\"06:30\"", "\"startsPerDay\": 4", "\"upTo\"", "3.1031", "\"bore\"", "\"timer\": \"box\"", "\"tap\": \"garage\""])
        {
            Assert.Contains(said, file, StringComparison.Ordinal);
        }

        await Unchanged(address, "supply", system);
    }

    private async Task Unchanged(string address, string name, string system)
    {
        await _app.Post("/units", [("system", system), ("back", "/")], "/weather");
        var before = await _app.Get(address + "/lawn.json");

        var leaves = Regex.Matches(await _app.Get(address + "/notes"), $"href=\"({address}/notes/[^\"]+)\"").Select(m => m.Groups[1].Value).Where(l => !l.EndsWith("/new", StringComparison.Ordinal)).Distinct().ToList();
        Assert.True(leaves.Count > 12, $"only {leaves.Count} leaves");
        foreach (var leaf in leaves)
        {
            var answer = await _app.Post(leaf, [.. FormFields.Of(await _app.Get(leaf))]);
            Assert.True(answer.Status == HttpStatusCode.Found, $"{leaf}: {App.Words(answer.Body)}");
            var after = await _app.Get(address + "/lawn.json");
            Assert.Equal(before, after);
        }

        Assert.True(LawnFile.Read(Encoding.UTF8.GetBytes(before), name).IsRead);
    }

    public void Dispose() => _app.Dispose();
}
