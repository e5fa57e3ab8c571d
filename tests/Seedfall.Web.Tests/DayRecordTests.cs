using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Seedfall.Exchange.Logs;
using Seedfall.Planning.Field;
using Seedfall.Planning.Records;

namespace Seedfall.Web.Tests;

/// <summary>The day sheet, the plan, the log and the record book about one application: they say the same.</summary>
public sealed partial class DayRecordTests : IDisposable
{
    private const string Lawn = DemoLawns.Mill;

    private readonly App _app = new(demo: true);

    [Fact]
    public async Task A_record_from_the_sheet_and_one_from_the_record_book_say_the_same()
    {
        await Kept();
        var sheet = await _app.Get(Lawn + "/day/2026-08-14");
        var asked = Templates().Matches(sheet).Select(m => WebUtility.HtmlDecode(m.Groups[1].Value)).Where(t => t.Contains("\"applied\"", StringComparison.Ordinal)).Select(t => FieldLogFile.ReadEntry(Encoding.UTF8.GetBytes(t))).OfType<LogEntry.Applied>().Select(e => e.What)

            // The covering is neither fed, seeded nor sprayed: the record book has no form for it.
            .Where(what => what.Kind != ApplicationKind.Other || what.Carrier is not null)
            .OrderBy(what => what.Product, StringComparer.Ordinal)
            .ToList();
        Assert.Equal(4, asked.Count);
        foreach (var task in new[] { "seed.down", "feed.starter-1", "spray.pre-emergent", "spray.conditioner" })
        {
            var address = $"{Lawn}/records/write?task={task}";
            var form = await _app.Get(address);
            var answer = await _app.Post(Lawn + "/records/write", [.. FormFields.Of(form), ("entry", Guid.NewGuid().ToString())], address);
            Assert.Equal(HttpStatusCode.Found, answer.Status);
        }

        var written = (await Log()).Select(e => e.What).OrderBy(what => what.Product, StringComparer.Ordinal).ToList();
        Assert.Equal(asked.Select(a => a.Product), written.Select(w => w.Product));
        foreach (var (a, w) in asked.Zip(written))
        {
            Assert.Equal((a.Kind, a.RegistrationNumber, a.Target, a.Method, a.Reentry), (w.Kind, w.RegistrationNumber, w.Target, w.Method, w.Reentry));
            Near(a.Amount.Mass?.Kilograms, w.Amount.Mass?.Kilograms);
            Near(a.Amount.Volume?.Liters, w.Amount.Volume?.Liters);
            Near(a.Area.SquareMeters, w.Area.SquareMeters);
            Near(a.Carrier?.Liters, w.Carrier?.Liters);
            Assert.Equal(a.Actives.Select(x => x.Name), w.Actives.Select(x => x.Name));
            Assert.All(a.Actives.Zip(w.Actives), x => Near(x.First.Amount.Kilograms, x.Second.Amount.Kilograms));
        }

        // And the sheet then has them as done.
        Assert.Equal(4, Regex.Count(await _app.Get(Lawn + "/day/2026-08-14"), "In the log: Put on"));
    }

    [Fact]
    public async Task Two_corrections_of_one_record_are_shown_on_sheet_and_log_until_one_is_struck()
    {
        var ids = Enumerable.Range(1, 3).Select(n => $"0192f0c4-7c1e-7b1a-9d0e-00000000000{n}").ToArray();
        string Record(int n, string amount, string more) => $"{{\"id\":\"{ids[n]}\",\"at\":\"2026-08-14T00:0{n}:00-05:00\",\"what\":{{\"applied\":{{\"kind\":\"fertilizer\",\"product\":\"12-12-12 starter\",\"amount\":{{\"mass\":\"{amount}\"}},\"area\":\"2000 sq ft\"{more}}}}}}}";
        string Corrects(string why) => $",\"replaces\":\"{ids[0]}\",\"why\":\"{why}\"";
        using var request = new HttpRequestMessage(HttpMethod.Post, $"/api{Lawn}/log") { Content = new StringContent($"[{Record(0, "10 lb", "")},{Record(1, "9 lb", Corrects("weighed"))},{Record(2, "8 lb", Corrects("read again"))}]", Encoding.UTF8, "application/json") };
        request.Headers.Add("X-Seedfall", "day-sheet");
        using var answer = await _app.Client.SendAsync(request);
        Assert.Equal(3, Regex.Count(await answer.Content.ReadAsStringAsync(), "\"added\""));
        const string Sentence = "2 records correct one and the same application";
        Assert.Contains(Sentence, await _app.Get(Lawn + "/day/2026-08-14"), StringComparison.Ordinal);
        Assert.Contains(Sentence, await _app.Get(Lawn + "/log"), StringComparison.Ordinal);
        await _app.Post($"{Lawn}/log/{ids[1]}/strike", [("why", "the other scale was right")], Lawn + "/log");
        Assert.DoesNotContain(Sentence, await _app.Get(Lawn + "/log"), StringComparison.Ordinal);
        Assert.DoesNotContain(Sentence, await _app.Get(Lawn + "/day/2026-08-14"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Over_the_yearly_maximum_the_sheet_refuses_and_has_no_form_for_it()
    {
        await Kept();
        Assert.Contains("data-record=\"spray.pre-emergent.applied-1\"", await _app.Get(Lawn + "/day/2026-08-14"), StringComparison.Ordinal);
        var leaf = await _app.Get(Lawn + "/notes/pre-emergent");
        var saved = await _app.Post(Lawn + "/notes/pre-emergent", [.. FormFields.Of(leaf).Where(f => !f.Name.StartsWith("applied", StringComparison.Ordinal)), ("applied", "14"), ("applied.unit", "floz")]);
        Assert.True(saved.Status is HttpStatusCode.Found, App.Words(saved.Body));
        var sheet = await _app.Get(Lawn + "/day/2026-08-14");
        Assert.DoesNotContain("data-record=\"spray.pre-emergent", Regex.Replace(sheet, "data-record=\"[^\"]+\\.note\"", ""), StringComparison.Ordinal);
        var refused = Regex.Match(sheet, "<div class=\"refused\">(.*?)</div>", RegexOptions.Singleline).Value;
        Assert.Contains("Highest amount in one year", refused, StringComparison.Ordinal);
        Assert.Contains("Instead:", refused, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_way_on_from_the_plans_work_and_from_the_log_leads_somewhere()
    {
        await Kept();
        await _app.Post(Lawn + "/records/write", [("kind", "fertilizer"), ("product", "12-12-12 starter"), ("mass", "9"), ("mass.unit", "lb"), ("day", "2026-08-14"), ("area", "3000"), ("area.unit", "sqft")]);
        var plan = await _app.Get(Lawn);
        Assert.Matches("id=\"task-spray-pre-emergent\"(?:(?!</li>).)*href=\"[^\"]+/spray-window\"", plan.ReplaceLineEndings(" "));
        var log = await _app.Get(Lawn + "/log");
        foreach (var path in Regex.Matches(plan + log, "href=\"(/lawns/[^\"#]+)(?:#[^\"]*)?\"").Select(m => WebUtility.HtmlDecode(m.Groups[1].Value)).Where(p => !p.EndsWith(".pdf", StringComparison.Ordinal)).Distinct())
        {
            using var answer = await _app.Client.GetAsync(path);
            Assert.True(answer.StatusCode is HttpStatusCode.OK or HttpStatusCode.Found, $"{path}: {answer.StatusCode}");
        }

        foreach (Match link in Regex.Matches(plan, "href=\"/lawns/[^\"]+/log#(entry-[^\"]+)\""))
        {
            Assert.Contains($"id=\"{link.Groups[1].Value}\"", log, StringComparison.Ordinal);
        }
    }

    public void Dispose() => _app.Dispose();

    /// <summary>Both round to four figures, in units of their own.</summary>
    private static void Near(double? expected, double? found)
    {
        Assert.Equal(expected is null, found is null);
        Assert.InRange(found ?? 0.0, (expected ?? 0.0) * 0.999, (expected ?? 0.0) * 1.001);
    }

    private async Task Kept()
    {
        var kept = await _app.Post(Lawn + "/season", [("season", "2026"), ("seedDown", "2026-08-14")], Lawn + "?seedDown=2026-08-14");
        Assert.Equal(HttpStatusCode.Found, kept.Status);
    }

    private async Task<IReadOnlyList<LogEntry.Applied>> Log()
    {
        using var log = System.Text.Json.JsonDocument.Parse(await _app.Get(Lawn + "/log/log.json"));
        return [.. log.RootElement.GetProperty("entries").EnumerateArray().Select(e => FieldLogFile.ReadEntry(Encoding.UTF8.GetBytes(e.GetRawText()))).OfType<LogEntry.Applied>()];
    }

    [GeneratedRegex("data-entry=\"([^\"]+)\"")]
    private static partial Regex Templates();
}
