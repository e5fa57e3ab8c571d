using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>The day's watering on its page and in its files, on the demo, whose day is August 14.</summary>
public sealed class WaterTests : IDisposable
{
    private readonly App _app = new(demo: true);

    [Fact]
    public async Task Before_seed_is_down_it_says_so_and_there_is_nothing_to_take_away()
    {
        var lawn = DemoLawns.Mill;
        var words = App.Words(await _app.Get(lawn + "/water"));
        Assert.Contains("Seed is not down here yet", words, StringComparison.Ordinal);
        Assert.Contains("The plan has seed-down on", words, StringComparison.Ordinal);
        Assert.DoesNotContain("Set the timer", words, StringComparison.Ordinal);
        foreach (var file in (string[])["tap.html", "week.csv", "week.ics"])
        {
            Assert.Contains("No watering yet", await _app.Get($"{lawn}/water/{file}", HttpStatusCode.Conflict), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Without_weather_that_is_said()
    {
        var lawn = await _app.TakeOn();
        var page = await _app.Get(lawn + "/water");
        Assert.Contains("One thing is missing: weather.", App.Words(page), StringComparison.Ordinal);
        Assert.Contains($"href=\"{lawn}/weather\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lawn_under_way_shows_todays_minutes_with_their_working_and_where_to_write()
    {
        var lawn = await Seeded();
        Assert.Contains("Nothing is written of water given since seed-down", App.Words(await _app.Get(lawn + "/water")), StringComparison.Ordinal);
        await Sprinkled(lawn);
        var page = await _app.Get(lawn + "/water");
        var words = App.Words(page);
        Assert.Matches("Water (once|twice|[34] times) today: 0[5-9]:[0-5][0-9] ", words);
        Assert.Matches(@"Front rotors: minutes [1-9][0-9]*\s*min", words);
        Assert.Contains("t = 60 d RTM / PR, rounded up to whole minutes", words, StringComparison.Ordinal);
        Assert.Contains("Yesterday brought", words, StringComparison.Ordinal);
        Assert.DoesNotContain("Nothing is written of water given since seed-down", words, StringComparison.Ordinal);
        foreach (var kind in (string[])["watered", "rain", "finger"])
        {
            Assert.Matches($"href=\"{lawn}/log/write/{kind}[?\"]", page);
        }
    }

    [Fact]
    public async Task A_patch_that_is_not_seeded_waits_while_the_others_are_watered()
    {
        var lawn = DemoLawns.Mill;
        await Write(lawn, "seeded", "2026-08-04", "10:00", ("patch", "front"));
        await Sprinkled(lawn);
        var words = App.Words(await _app.Get(lawn + "/water"));
        Assert.Contains("Front rotors: minutes", words, StringComparison.Ordinal);
        Assert.Contains("Seed is not down here yet", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-08-13", "18:00")]
    [InlineData("2026-08-14", "06:00")]
    public async Task Rain_in_the_gauge_leaves_rounds_out(string day, string hour)
    {
        var lawn = await Seeded();
        var before = await Minutes(lawn);
        await Write(lawn, "rain", day, hour, ("caught", "0.8"), ("caught.unit", "in"));
        Assert.Equal(0, await Minutes(lawn, on: "2026-08-14"));
        Assert.True(await Minutes(lawn) < before, "more rain must not mean more water");
        Assert.Contains("Rain has done today's watering", WebUtility.HtmlDecode(await _app.Get(lawn + "/water")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("too-dry", 1)]
    [InlineData("soggy", -1)]
    public async Task A_finger_test_moves_the_minutes_its_own_way(string felt, int sign)
    {
        var lawn = await Seeded();
        var before = await Minutes(lawn);
        await Write(lawn, "finger", "2026-08-12", "06:00", ("felt", felt));
        await Write(lawn, "finger", "2026-08-14", "06:00", ("felt", felt));
        Assert.Equal(sign, Math.Sign(await Minutes(lawn) - before));
        var words = App.Words(await _app.Get(lawn + "/water"));
        Assert.Contains("By 2 finger tests", words, StringComparison.Ordinal);
        Assert.Equal(felt == "soggy", words.Contains("The seedbed is too wet", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Watering_missed_says_what_to_do_now()
    {
        var lawn = await Seeded();
        await Write(lawn, "watered", "2026-08-04", "12:00", ("given", "0.1"), ("given.unit", "in"), ("minutes", ""));
        foreach (var day in Enumerable.Range(4, 10))
        {
            await Write(lawn, "rain", string.Create(CultureInfo.InvariantCulture, $"2026-08-{day:00}"), "23:00", ("caught", "0"), ("caught.unit", "in"));
        }

        var words = App.Words(await _app.Get(lawn + "/water"));
        Assert.Matches("The ground at the seed has been dry for [0-9]+ hours. .*(W|w)ater now", words);
        Assert.Contains("It is dry at the seed now.", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Files_hold_the_rounds_of_the_page()
    {
        var lawn = await Seeded();
        await Sprinkled(lawn);
        var csv = await Table(lawn);
        Assert.Equal("day,start,set,patches,minutes_each_position,positions,minutes,weather,in_allowed_hours", csv[0]);
        Assert.Equal(7, csv.Skip(1).Select(row => row.Split(',')[0]).Distinct().Count());
        var first = csv[1].Split(',');
        Assert.Equal(["2026-08-14", "Front rotors"], [first[0], first[2]]);
        Assert.Matches("^0[5-9]:[0-5][0-9]$", first[1]);
        Assert.Matches($@"Front rotors: minutes {first[4]}\s*min", App.Words(await _app.Get(lawn + "/water")));

        var tap = await _app.Get(lawn + "/water/tap.html?paper=a4");
        Assert.Contains("size:A4", tap, StringComparison.Ordinal);
        Assert.Contains($"{first[1].TrimStart('0').Replace(":00", "", StringComparison.Ordinal)} am Front rotors {first[4]} min", App.Words(tap), StringComparison.Ordinal);
        Assert.DoesNotContain("<script", tap, StringComparison.Ordinal);

        var calendar = await _app.Get(lawn + "/water/week.ics");
        Assert.Equal(csv.Skip(1).Count(row => row.Split(',')[1].Length > 0), Regex.Count(calendar, "BEGIN:VEVENT"));
        Assert.Contains($"DTSTART;TZID=America/Chicago:20260814T{first[1].Replace(":", "", StringComparison.Ordinal)}00", calendar, StringComparison.Ordinal);
    }

    [Fact]
    public async Task On_one_tap_no_run_begins_before_the_last_has_ended()
    {
        var rows = (await Table(await Seeded())).Skip(1).Select(row => row.Split(',')).Where(row => row[1].Length > 0).ToList();
        Assert.True(rows.Count > 7, "a seedbed in August asks for more than a round a day");
        foreach (var (earlier, later) in rows.Zip(rows.Skip(1)).Where(pair => pair.First[0] == pair.Second[0]))
        {
            Assert.True(Time(earlier).AddMinutes(int.Parse(earlier[6], CultureInfo.InvariantCulture)) <= Time(later), $"{string.Join(' ', earlier)} then {string.Join(' ', later)}");
        }
    }

    public void Dispose() => _app.Dispose();

    private static TimeOnly Time(string[] row) => TimeOnly.ParseExact(row[1], "HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Minutes of the week, or of one day of it.</summary>
    private async Task<int> Minutes(string lawn, string? on = null) =>
        (await Table(lawn)).Skip(1).Select(row => row.Split(',')).Where(row => on is null || row[0] == on).Sum(row => int.Parse(row[6], CultureInfo.InvariantCulture));

    private async Task<string[]> Table(string lawn) => (await _app.Get(lawn + "/water/week.csv")).TrimStart('\uFEFF').Split("\r\n", StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The demo's first lawn with seed down ten days ago on all of it.</summary>
    private async Task<string> Seeded()
    {
        var lawn = DemoLawns.Mill;
        await Write(lawn, "seeded", "2026-08-04", "10:00");
        return lawn;
    }

    /// <summary>Two days ago the ground got its last water: a light round everywhere.</summary>
    private Task Sprinkled(string lawn) => Write(lawn, "watered", "2026-08-12", "07:00", ("given", "0.05"), ("given.unit", "in"));

    private async Task Write(string lawn, string kind, string day, string hour, params (string, string)[] fields)
    {
        (string, string)[] patch = fields.Any(f => f.Item1 == "patch") ? [] : [("patch", "")];
        var answer = await _app.Post($"{lawn}/log/write/{kind}", [("day", day), ("hour", hour), .. patch, .. fields]);
        Assert.True(answer.Status == HttpStatusCode.Found, App.Words(answer.Body));
    }
}
