using System.Net;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>The field log: writing, sending twice, striking, and what the plan makes of it, on the demo.</summary>
public sealed class LogTests : IDisposable
{
    private readonly App _app = new(demo: true);

    [Fact]
    public async Task A_reading_written_down_moves_the_plan()
    {
        var lawn = DemoLawns.Mill;
        Assert.DoesNotContain("What the field taught", await _app.Get(lawn), StringComparison.Ordinal);
        var written = await Write(lawn, "reading", [("day", "2026-08-14"), ("hour", "08:00"), ("patch", "front"), ("read", "75"), ("read.unit", "F"), ("depth", "2"), ("depth.unit", "in"), ("remark", "in the shade")]);
        Assert.Equal(lawn + "/log", written.Location);
        Assert.Contains("Soil 75 °F at 2 in", App.Words(await _app.Get(lawn + "/log")), StringComparison.Ordinal);
        var plan = App.Words(await _app.Get(lawn));
        Assert.Contains("What the field taught", plan, StringComparison.Ordinal);
        Assert.Contains("Your soil warmer than computed", plan, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_entry_sent_twice_is_there_once()
    {
        var lawn = DemoLawns.Mill;
        var form = await _app.Get(lawn + "/log/write/green");
        var entry = Regex.Match(form, "name=\"entry\" value=\"([^\"]+)\"").Groups[1].Value;
        for (var i = 0; i < 2; i++)
        {
            Assert.Equal(lawn + "/log", (await _app.Post(lawn + "/log/write/green", [("entry", entry), ("day", "2026-08-10"), ("hour", "09:00"), ("patch", "front")])).Location);
        }

        Assert.Single(Regex.Matches(await _app.Get(lawn + "/log"), "id=\"entry-"));
    }

    [Theory]
    [InlineData("reading", "read", "87", "C", "Soil")]
    [InlineData("reading", "read", "", "F", "What it showed")]
    [InlineData("reading", "day", "2026-12-01", "F", "a day that has come")]
    public async Task What_cannot_be_is_refused_by_name_and_nothing_typed_is_lost(string kind, string field, string value, string unit, string expected)
    {
        var lawn = DemoLawns.Mill;
        (string, string)[] fields = [("day", "2026-08-14"), ("hour", "08:00"), ("patch", ""), ("read", "70"), ("read.unit", unit), ("depth", "2"), ("depth.unit", "in"), ("remark", "kept words")];
        var answer = await Write(lawn, kind, [.. fields.Where(f => f.Item1 != field), (field, value)]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(expected, App.Words(answer.Body), StringComparison.Ordinal);
        Assert.Contains("kept words", answer.Body, StringComparison.Ordinal);
        Assert.Contains("Nothing is written yet", await _app.Get(lawn + "/log"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_struck_entry_stays_in_the_log_and_leaves_the_plan()
    {
        var lawn = DemoLawns.Mill;
        await Write(lawn, "reading", [("day", "2026-08-14"), ("hour", "08:00"), ("patch", "front"), ("read", "75"), ("read.unit", "F"), ("depth", "2"), ("depth.unit", "in")]);
        var page = await _app.Get(lawn + "/log");
        var entry = Regex.Match(page, "id=\"entry-([^\"]+)\"").Groups[1].Value;
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await _app.Post($"{lawn}/log/{entry}/strike", [("why", "")], lawn + "/log")).Status);
        await _app.Post($"{lawn}/log/{entry}/strike", [("why", "held in the sun")], lawn + "/log");
        page = App.Words(await _app.Get(lawn + "/log"));
        Assert.Contains("held in the sun", page, StringComparison.Ordinal);
        Assert.Contains("Soil 75 °F at 2 in struck", page, StringComparison.Ordinal);
        Assert.DoesNotContain("What the field taught", await _app.Get(lawn), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_kind_can_be_written_and_the_log_taken_away()
    {
        var lawn = DemoLawns.Mill;
        foreach (var (kind, fields) in new (string, (string, string)[])[]
        {
            ("seeded", []), ("green", []), ("cover", [("cover", "40"), ("judged", "counted")]), ("note", [("text", "dew till ten")]),
        })
        {
            Assert.Equal(lawn + "/log", (await Write(lawn, kind, [("day", "2026-08-12"), ("hour", "10:00"), ("patch", "side"), .. fields])).Location);
        }

        var file = await _app.Get(lawn + "/log/log.json");
        foreach (var kind in new[] { "seededDown", "firstGreen", "coverSeen", "note" })
        {
            Assert.Contains($"\"{kind}\"", file, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Watering_can_be_tried_as_a_what_if()
    {
        var lawn = DemoLawns.Mill;
        var asked = App.Words(await _app.Get(lawn + "?rounds=4&round=0.1&round.unit=in"));
        Assert.Contains("What if: 4 rounds a day, 0.1 in of water a round", asked, StringComparison.Ordinal);
        Assert.Contains("4 times a day", asked, StringComparison.Ordinal);
        Assert.Contains("That what-if could not be planned", await _app.Get(lawn + "?rounds=9", HttpStatusCode.UnprocessableEntity), StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();

    private async Task<Answer> Write(string lawn, string kind, (string, string)[] fields) => await _app.Post($"{lawn}/log/write/{kind}", fields);
}
