using System.Data.Common;
using System.Diagnostics;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Seedfall.Web.Tests;

/// <summary>Fertilizer in the record: shown against the state's rules in book, table and plan, and in the feedings to come.</summary>
public sealed class RecordedFeedTests : IDisposable
{
    private const string Id = "0192f0c4-7c1e-7b1a-9d0e-0000000000a";

    private readonly App _app = new(demo: true);

    [Fact]
    public async Task Phosphate_against_the_states_rule_is_shown_and_never_altered()
    {
        var lawn = await First("ferry");
        await Ruled(lawn, "us-ny");
        await Send(lawn, $"[{Seeded("2026-08-13")},{Fed("2026-08-13", "6.5", "6.5")}]");
        var book = await _app.Get(lawn + "/records");

        // New York ECL 17-2103: none but for newly established lawns or a soil test; this is overseeding.
        Assert.Contains("Against New York: phosphorus rule.", App.Words(book), StringComparison.Ordinal);
        Assert.Contains("One record is against a nitrogen or phosphorus rule.", App.Words(book), StringComparison.Ordinal);
        Assert.Contains("12-12-12 starter, 54.2 lb", App.Words(book), StringComparison.Ordinal);
        Assert.Contains("New York: phosphorus rule:", await _app.Get(lawn + "/records/records.csv"), StringComparison.Ordinal);
        Assert.Contains("Against New York: phosphorus rule", App.Words(await _app.Get(lawn + "/records/records.html")), StringComparison.Ordinal);
        Assert.Contains("Put on against a rule", App.Words(await _app.Get(lawn)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_went_on_stands_beside_what_was_planned_and_lowers_what_follows()
    {
        var lawn = await First("mill");
        await Ruled(lawn, "us-nj");
        await Send(lawn, $"[{Seeded("2026-08-13")}]");
        Assert.DoesNotContain("What went on, and what that leaves", App.Words(await _app.Get(lawn)), StringComparison.Ordinal);
        await Send(lawn, $"[{Fed("2026-08-13", "12", "0.1", "4000")}]");
        var plan = App.Words(await _app.Get(lawn));

        // New Jersey: 3.2 lb N a year, as its pack has it; 3 lb went on, 0.9 were planned.
        Assert.Contains("3 lb per 1,000 sq ft (1.46 kg per 100 m2) in the place of 0.9 lb", plan, StringComparison.Ordinal);
        Assert.Contains("Late-fall feed is left out: New Jersey allows no more this year.", plan, StringComparison.Ordinal);
        Assert.Contains("New Jersey: nitrogen in one application", plan, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_day_sheet_reads_the_log_once()
    {
        var lawn = await First("mill");
        await Send(lawn, $"[{Seeded("2026-08-13")}]");
        await _app.Get(lawn + "/day/2026-08-20");
        using var reads = new LogReads(_app.Folder);
        await _app.Get(lawn + "/day/2026-08-20");
        Assert.Equal(1, reads.Count);
    }

    public void Dispose() => _app.Dispose();

    private static string Seeded(string day) => $$$$"""{"id":"{{{{Id}}}}1","at":"{{{{day}}}}T00:05:00-05:00","what":{"seededDown":{}}}""";

    private static string Fed(string day, string nitrogen, string phosphate, string area = "6500") =>
        $$$$"""{"id":"{{{{Id}}}}2","at":"{{{{day}}}}T00:10:00-05:00","what":{"applied":{"kind":"fertilizer","product":"12-12-12 starter","amount":{"mass":"54.2 lb"},"area":"{{{{area}}}} sq ft","actives":[{"name":"nitrogen","amount":"{{{{nitrogen}}}} lb"},{"name":"phosphate","amount":"{{{{phosphate}}}} lb"}]}}}""";

    private async Task<string> First(string name) => Regex.Match(await _app.Get("/"), $"href=\"(/lawns/{name}[a-z0-9-]*)\"").Groups[1].Value;

    private async Task Ruled(string lawn, string pack)
    {
        var leaf = lawn + "/notes/rules";
        var answer = await _app.Post(leaf, [.. FormFields.Of(await _app.Get(leaf)).Where(f => f.Name != "pack"), ("pack", pack)]);
        Assert.Equal(HttpStatusCode.Found, answer.Status);
    }

    private async Task Send(string lawn, string entries)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, $"/api{lawn}/log") { Content = new StringContent(entries, Encoding.UTF8, "application/json") };
        request.Headers.Add("X-Seedfall", "day-sheet");
        using var answer = await _app.Client.SendAsync(request);
        Assert.DoesNotContain("refused", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    /// <summary>Counts how often the database of one data folder gives log entries out.</summary>
    private sealed class LogReads : IObserver<DiagnosticListener>, IObserver<KeyValuePair<string, object?>>, IDisposable
    {
        private readonly string _folder;
        private readonly List<IDisposable> _subscribed = [];
        private int _count;

        public LogReads(string folder)
        {
            _folder = folder;
            _subscribed.Add(DiagnosticListener.AllListeners.Subscribe(this));
        }

        public int Count => _count;

        public void OnNext(DiagnosticListener value)
        {
            if (value.Name == "Microsoft.EntityFrameworkCore")
            {
                _subscribed.Add(value.Subscribe(this));
            }
        }

        public void OnNext(KeyValuePair<string, object?> value)
        {
            if (value.Key == RelationalEventId.CommandExecuted.Name && value.Value is CommandExecutedEventData { Command: DbCommand command } && command.CommandText is var text
                && command.Connection?.ConnectionString.Contains(_folder, StringComparison.Ordinal) == true
                && text.Contains("FROM \"Log\"", StringComparison.Ordinal) && text.Contains("\"Document\"", StringComparison.Ordinal))
            {
                Interlocked.Increment(ref _count);
            }
        }

        public void OnCompleted()
        {
        }

        public void OnError(Exception error)
        {
        }

        public void Dispose() => _subscribed.ForEach(subscription => subscription.Dispose());
    }
}
