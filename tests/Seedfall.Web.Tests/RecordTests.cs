using System.Net;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>The record book on the demo: written from the plan, sent twice, corrected, disputed, taken away.</summary>
public sealed partial class RecordTests : IDisposable
{
    private static readonly (string, string)[] Spray =
    [
        ("kind", "pesticide"), ("product", "mesotrione 4 lb/gal"), ("volume", "0.6"), ("volume.unit", "floz"), ("day", "2026-08-10"), ("start", "09:10"), ("end", "09:50"),
        ("area", "3000"), ("area.unit", "sqft"), ("active-1", "mesotrione"), ("active-1-mass", "8.5"), ("active-1-mass.unit", "g"), ("wind-start", "3"), ("wind-start.unit", "mph"),
    ];

    private readonly App _app = new(demo: true);

    [Fact]
    public async Task A_record_filled_from_the_plan_lands_in_the_book_and_marks_the_task()
    {
        var lawn = DemoLawns.Mill;
        Assert.Contains("Nothing was put on this lawn yet", App.Words(await _app.Get(lawn + "/records")), StringComparison.Ordinal);
        var task = SprayTask().Match(await _app.Get(lawn)).Groups[1].Value;
        Assert.StartsWith("spray.", task, StringComparison.Ordinal);
        foreach (var id in new[] { "seed.down", "feed.starter-1", task })
        {
            var form = await _app.Get($"{lawn}/records/write?task={id}");
            Assert.Contains("Filled in as planned", form, StringComparison.Ordinal);
            var answer = await _app.Post(lawn + "/records/write", [.. FormFields.Of(form).Where(f => f.Name != "day"), ("day", "2026-08-12"), ("entry", Entry(form))], $"{lawn}/records/write?task={id}");
            Assert.Equal(HttpStatusCode.Found, answer.Status);
        }

        var book = App.Words(await _app.Get(lawn + "/records"));
        Assert.Contains("3 applications in the book", book, StringComparison.Ordinal);
        Assert.Contains("Nitrogen, most on one piece of ground", book, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(3, RecordIds(await _app.Get(lawn + "/records")).Count);
        Assert.Contains("Put on", App.Words(await _app.Get(lawn + "/log")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_record_sent_twice_is_there_once()
    {
        var lawn = DemoLawns.Mill;
        var entry = ("entry", Entry(await _app.Get(lawn + "/records/write")));
        for (var i = 0; i < 2; i++)
        {
            Assert.Equal($"{lawn}/records#record-{entry.Item2}", (await _app.Post(lawn + "/records/write", [.. Spray, entry])).Location);
        }

        Assert.Single(RecordIds(await _app.Get(lawn + "/records")));
    }

    [Fact]
    public async Task A_correction_keeps_both_versions_and_needs_a_reason()
    {
        var lawn = DemoLawns.Mill;
        await _app.Post(lawn + "/records/write", Spray);
        var first = RecordIds(await _app.Get(lawn + "/records"))[0];
        var correct = $"{lawn}/records/{first}/correct";
        var form = await _app.Get(correct);
        (string, string)[] changed = [.. FormFields.Of(form).Where(f => f.Name is not ("volume" or "why")), ("volume", "0.57"), ("entry", Entry(form))];
        var refused = await _app.Post(correct, [.. changed, ("why", "")]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("0.57", refused.Body, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(correct, [.. changed, ("why", "the measure was misread")])).Status);
        var page = await _app.Get(lawn + "/records");
        Assert.Single(RecordIds(page));
        Assert.Contains("0.57 fl oz", App.Words(page), StringComparison.Ordinal);
        Assert.Contains("Corrected: the measure was misread", App.Words(page), StringComparison.Ordinal);
        Assert.Contains("0.6 fl oz", App.Words(page), StringComparison.Ordinal);
        await _app.Get(correct, HttpStatusCode.NotFound);
        var late = await _app.Post(correct, [.. changed.Where(f => f.Item1 != "entry"), ("why", "another view"), ("entry", Guid.NewGuid().ToString())], lawn + "/records/write");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, late.Status);
        Assert.Contains("corrected or struck meanwhile", App.Words(late.Body), StringComparison.Ordinal);
        Assert.Contains("another view", late.Body, StringComparison.Ordinal);
        Assert.Contains("corrected by a later record", App.Words(await _app.Get(lawn + "/log")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("volume", "", "a weight or a volume")]
    [InlineData("mass", "2", "a weight or a volume")]
    [InlineData("area", "900000", "check the unit or the outline")]
    [InlineData("day", "2026-12-01", "a day that has come")]
    [InlineData("product", "", "Product")]
    [InlineData("active-1-mass", "", "the weight of mesotrione")]
    [InlineData("wind-start", "90", "Wind")]
    [InlineData("start", "", "Begun at")]
    public async Task What_cannot_be_is_refused_by_name_and_nothing_typed_is_lost(string field, string value, string expected)
    {
        var lawn = DemoLawns.Mill;
        var answer = await _app.Post(lawn + "/records/write", [.. Spray.Where(f => f.Item1 != field), (field, value), ("remark", "kept words")]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(expected, App.Words(answer.Body), StringComparison.Ordinal);
        Assert.Contains("kept words", answer.Body, StringComparison.Ordinal);
        Assert.Empty(RecordIds(await _app.Get(lawn + "/records")));
    }

    [Fact]
    public async Task The_book_the_notice_and_the_marker_can_be_taken_away()
    {
        var lawn = DemoLawns.Mill;
        await _app.Post(lawn + "/records/write", Spray);
        var record = RecordIds(await _app.Get(lawn + "/records"))[0];
        using var csv = await _app.Client.GetAsync(lawn + "/records/records.csv");
        Assert.Equal("text/csv", csv.Content.Headers.ContentType!.MediaType);
        Assert.Contains("mesotrione 8.5", await csv.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Contains("size:A4 landscape", await _app.Get(lawn + "/records/records.html?paper=a4"), StringComparison.Ordinal);
        Assert.Contains("Keep off until", App.Words(await _app.Get($"{lawn}/records/{record}/notice.html")), StringComparison.Ordinal);
        Assert.Contains("DO NOT ENTER", App.Words(await _app.Get($"{lawn}/records/{record}/flag.html")), StringComparison.Ordinal);
        await _app.Get($"{lawn}/records/{Guid.NewGuid()}/flag.html", HttpStatusCode.NotFound);
        await _app.Get("/lawns/none/records", HttpStatusCode.NotFound);
    }

    [Fact]
    public async Task Two_corrections_of_one_record_are_both_shown_until_one_is_struck()
    {
        var lawn = DemoLawns.Mill;
        await _app.Post(lawn + "/records/write", Spray);
        var first = RecordIds(await _app.Get(lawn + "/records"))[0];
        var logs = (Features.Log.LogBook)_app.Services.GetService(typeof(Features.Log.LogBook))!;
        var id = lawn["/lawns/".Length..];
        var written = (await logs.For(id, TestContext.Current.CancellationToken)).Standing.OfType<Planning.Field.LogEntry.Applied>().Single();
        var rivals = Enumerable.Range(0, 2).Select(i => written with { Id = Guid.NewGuid(), What = written.What with { Replaces = written.Id, Why = $"phone {i} says so" } }).ToList();
        await logs.Append(id, rivals, TestContext.Current.CancellationToken);
        var page = App.Words(await _app.Get(lawn + "/records"));
        Assert.Contains("Two records of one application", page, StringComparison.Ordinal);
        Assert.Equal(2, RecordIds(await _app.Get(lawn + "/records")).Count);
        await _app.Post($"{lawn}/log/{rivals[0].Id}/strike", [("why", "the other phone was right")], lawn + "/log");
        page = App.Words(await _app.Get(lawn + "/records"));
        Assert.DoesNotContain("Two records of one application", page, StringComparison.Ordinal);
        Assert.Contains("Struck: the other phone was right", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_mowing_is_written_and_counted()
    {
        var lawn = DemoLawns.Mill;
        Assert.Equal(lawn + "/log", (await _app.Post(lawn + "/log/write/mowed", [("day", "2026-08-12"), ("hour", "10:00"), ("mowed-to", "3"), ("mowed-to.unit", "in")])).Location);
        Assert.Contains("Mowed to 3 in", App.Words(await _app.Get(lawn + "/log")), StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();

    private static string Entry(string form) => Regex.Match(form, "name=\"entry\" value=\"([^\"]+)\"").Groups[1].Value;

    private static IReadOnlyList<string> RecordIds(string page) => [.. Regex.Matches(page, "id=\"record-([0-9a-f-]{36})\"").Select(m => m.Groups[1].Value)];


    [GeneratedRegex("records/write\\?task=(spray\\.[a-z-]+)")]
    private static partial Regex SprayTask();
}
