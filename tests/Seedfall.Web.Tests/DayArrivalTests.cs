using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Seedfall.Web.Tests.Photos;

namespace Seedfall.Web.Tests;

/// <summary>What phones deliver: once however often it is sent, refused by name, never from a foreign page. On the demo.</summary>
public sealed class DayArrivalTests : IDisposable
{
    private readonly App _app = new(demo: true);

    [Fact]
    public async Task Entries_sent_twice_are_there_once_and_answered_the_same_way()
    {
        var lawn = First();
        var (first, second) = (Mowed(Id(1)), Note(Id(2), "dew till ten"));
        var answer = await Send(lawn, $"[{first},{second}]");
        Assert.Equal((HttpStatusCode.OK, "added added"), (answer.Status, Results(answer)));
        Assert.Equal("known known", Results(await Send(lawn, $"[{first},{second}]")));
        Assert.Equal("known", Results(await Send(lawn, first)));
        Assert.Equal("known added", Results(await Send(lawn, $"[{first},{Note(Id(3), "sun")}]")));
        Assert.Equal(3, await Count(lawn));
    }

    [Fact]
    public async Task One_id_twice_in_one_delivery_is_there_once()
    {
        var lawn = First();
        Assert.Equal("added known", Results(await Send(lawn, $"[{Mowed(Id(1))},{Mowed(Id(1))}]")));
        Assert.Equal(1, await Count(lawn));
    }

    [Fact]
    public async Task Many_deliveries_at_once_add_nothing_twice()
    {
        var lawn = First();
        var sent = string.Join(',', Enumerable.Range(1, 12).Select(n => Note(Id(n), $"note {n}")));
        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Send(lawn, $"[{sent}]")));
        Assert.All(answers, a => Assert.Equal(HttpStatusCode.OK, a.Status));
        Assert.Equal(12, await Count(lawn));
    }

    [Theory]
    [InlineData("{\"id\":\"0192f0c4-7c1e-7b1a-9d0e-000000000001\",\"at\":\"2026-08-14T09:00:00-05:00\",\"what\":{\"watered\":{\"time\":\"9999 min\"}}}", "minutes from 0 to 1440")]
    [InlineData("{\"id\":\"0192f0c4-7c1e-7b1a-9d0e-000000000001\",\"at\":\"2026-08-14T09:00:00-05:00\",\"what\":{\"mowed\":{\"to\":\"3 ft\"}}}", "expected a depth with its unit")]
    [InlineData("{\"id\":\"0192f0c4-7c1e-7b1a-9d0e-000000000001\",\"at\":\"2026-08-14T09:00:00-05:00\",\"patch\":\"moon\",\"what\":{\"seededDown\":{}}}", "moon is none of this lawn")]
    [InlineData("{\"id\":\"0192f0c4-7c1e-7b1a-9d0e-000000000001\",\"at\":\"2026-08-15T09:00:00-05:00\",\"what\":{\"seededDown\":{}}}", "still to come by the lawn")]
    [InlineData("{\"at\":\"2026-08-14T09:00:00-05:00\",\"what\":{\"seededDown\":{}}}", "expected")]
    public async Task What_cannot_stand_is_refused_with_the_reason_and_keeps_no_other_out(string entry, string reason)
    {
        var lawn = First();
        var alone = await Send(lawn, entry);
        Assert.Equal((HttpStatusCode.UnprocessableEntity, "refused"), (alone.Status, Results(alone)));
        Assert.Contains(reason, Regex.Unescape(alone.Body), StringComparison.Ordinal);
        Assert.Equal("refused added", Results(await Send(lawn, $"[{entry},{Note(Id(9), "kept")}]")));
        Assert.Equal(1, await Count(lawn));
    }

    [Fact]
    public async Task One_id_saying_two_things_is_refused_and_the_first_stands()
    {
        var lawn = First();
        await Send(lawn, Note(Id(1), "first"));
        var answer = await Send(lawn, Note(Id(1), "second"));
        Assert.Equal("refused", Results(answer));
        Assert.Contains("says something else", answer.Body, StringComparison.Ordinal);
        Assert.Contains("first", await _app.Get(lawn + "/log"), StringComparison.Ordinal);
        Assert.DoesNotContain("second", await _app.Get(lawn + "/log"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_id_of_another_lawns_entry_is_never_taken_for_delivered()
    {
        var lawns = Lawns();
        await Send(lawns[0], Note(Id(1), "first"));
        var answer = await Send(lawns[1], Note(Id(1), "first"));
        Assert.Equal("refused", Results(answer));
        Assert.Contains("another lawn", answer.Body, StringComparison.Ordinal);
        Assert.Equal(0, await Count(lawns[1]));
    }

    [Theory]
    [InlineData("not json", HttpStatusCode.BadRequest)]
    [InlineData("7", HttpStatusCode.BadRequest)]
    [InlineData("[]", HttpStatusCode.BadRequest)]
    public async Task What_is_no_entry_at_all_is_refused_whole(string body, HttpStatusCode expected) => Assert.Equal(expected, (await Send(First(), body)).Status);

    [Fact]
    public async Task A_lawn_that_is_gone_is_said_to_be() => Assert.Equal(HttpStatusCode.NotFound, (await Send("/lawns/nowhere", Note(Id(1), "x"))).Status);

    [Theory]
    [InlineData(null, null, null, "application/json")]
    [InlineData("day-sheet", "cross-site", null, "application/json")]
    [InlineData("day-sheet", "same-site", null, "application/json")]
    [InlineData("day-sheet", null, "http://elsewhere.example", "application/json")]
    [InlineData("day-sheet", "same-origin", null, "text/plain")]
    public async Task Nothing_is_taken_from_a_foreign_page(string? header, string? site, string? origin, string type)
    {
        var lawn = First();
        using var request = Request(lawn, Note(Id(1), "x"), type);
        request.Headers.Remove("X-Seedfall");
        foreach (var (name, value) in new[] { ("X-Seedfall", header), ("Sec-Fetch-Site", site), ("Origin", origin) })
        {
            if (value is not null)
            {
                request.Headers.TryAddWithoutValidation(name, value);
            }
        }

        using var answer = await _app.Client.SendAsync(request);
        Assert.True(answer.StatusCode is HttpStatusCode.Forbidden or HttpStatusCode.UnsupportedMediaType, answer.StatusCode.ToString());
        Assert.Equal(0, await Count(lawn));
    }

    [Fact]
    public async Task A_correction_sent_before_what_it_corrects_has_arrived_is_refused_and_taken_after()
    {
        var lawn = First();
        string Fed(Guid id, string more) => $$$$"""{"id":"{{{{id}}}}","at":"2026-08-14T09:00:00-05:00","what":{"applied":{"kind":"fertilizer","product":"balanced 12-12-12 starter","amount":{"mass":"20 lb"},"area":"2000 sq ft"{{{{more}}}}}}}""";
        var correction = Fed(Id(2), $",\"replaces\":\"{Id(1)}\",\"why\":\"weighed again\"");
        Assert.Equal("refused", Results(await Send(lawn, correction)));
        Assert.Equal("added added", Results(await Send(lawn, $"[{Fed(Id(1), "")},{correction}]")));
    }

    [Fact]
    public async Task A_picture_sent_twice_is_there_once_with_its_cover_in_the_log_once()
    {
        var lawn = First();
        var spot = (await _app.Post(lawn + "/photos/new", [("spotname", "Front walk"), ("kind", "down"), ("spotpatch", "front"), ("stand", "")])).Location!.Split('/')[^1];
        var picture = ComposedPhoto.Quadrat(0.6);
        var answers = new List<Answer>();
        for (var i = 0; i < 3; i++)
        {
            answers.Add(await SendPicture(lawn, Id(5), spot, picture));
        }

        Assert.Equal(["added", "known", "known"], answers.Select(a => JsonDocument.Parse(a.Body).RootElement.GetProperty("result").GetString()));
        Assert.Single(answers.Select(a => JsonDocument.Parse(a.Body).RootElement.GetProperty("address").GetString()).Distinct());
        Assert.Equal(1, await Count(lawn));
        Assert.Single(Regex.Matches(await _app.Get($"{lawn}/photos/{spot}"), "class=\"pictures\"[\\s\\S]*?</ul>")[0].Value.Split("<li>")[1..]);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await SendPicture(lawn, Id(6), Guid.NewGuid().ToString(), picture)).Status);
        var broken = await SendPicture(lawn, Id(7), spot, "no picture"u8.ToArray());
        Assert.Equal(HttpStatusCode.UnprocessableEntity, broken.Status);
        Assert.Contains("problems", broken.Body, StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();

    private static Guid Id(int n) => Guid.Parse($"0192f0c4-7c1e-7b1a-9d0e-{n:000000000000}");

    private static string Mowed(Guid id) => $$$$"""{"id":"{{{{id}}}}","at":"2026-08-14T09:00:00-05:00","what":{"mowed":{"to":"2.875 in"}}}""";

    private static string Note(Guid id, string text) => $$$$"""{"id":"{{{{id}}}}","at":"2026-08-14T09:30:00-05:00","what":{"note":{"text":"{{{{text}}}}"}}}""";

    private static string Results(Answer answer) => string.Join(' ', JsonDocument.Parse(answer.Body).RootElement.GetProperty("results").EnumerateArray().Select(r => r.GetProperty("result").GetString()));

    private static HttpRequestMessage Request(string lawn, string body, string type = "application/json")
    {
        var request = new HttpRequestMessage(HttpMethod.Post, $"/api{lawn}/log") { Content = new StringContent(body, Encoding.UTF8, type) };
        request.Headers.Add("X-Seedfall", "day-sheet");
        return request;
    }

    private async Task<Answer> Send(string lawn, string body)
    {
        using var request = Request(lawn, body);
        using var answer = await _app.Client.SendAsync(request);
        return new(answer.StatusCode, null, await answer.Content.ReadAsStringAsync());
    }

    private async Task<Answer> SendPicture(string lawn, Guid id, string spot, byte[] picture)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, $"/api{lawn}/photos/{id}?spot={spot}&taken=2026-08-14") { Content = new ByteArrayContent(picture) };
        request.Headers.Add("X-Seedfall", "day-sheet");
        request.Content.Headers.ContentType = new("image/jpeg");
        using var answer = await _app.Client.SendAsync(request);
        return new(answer.StatusCode, null, await answer.Content.ReadAsStringAsync());
    }

    private async Task<int> Count(string lawn) => JsonDocument.Parse(await _app.Get(lawn + "/log/log.json")).RootElement.GetProperty("entries").GetArrayLength();

    /// <summary>By name: asking the desk for them would plan them all.</summary>
    private static string First() => Lawns()[0];

    private static IReadOnlyList<string> Lawns() => [DemoLawns.Mill, DemoLawns.Quarry];
}
