using System.Net;
using System.Text;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>Spreaders kept across lawns, half-correct-half on the demo, and the pan test.</summary>
public sealed class SpreaderTests : IDisposable
{
    private static readonly (string, string)[] Green = [("name", "The green one"), ("kind", "rotary"), ("letters", "numbers"), ("least", "0"), ("greatest", "10"), ("step", "0.25"), ("swath", ""), ("walk", "")];

    private readonly App _app = new(demo: true);

    [Fact]
    public async Task Half_correct_half_goes_from_the_first_run_to_the_second_opening()
    {
        await Add();
        await FirstGrains();
        var page = await _app.Get(DemoLawns.Mill + "/spreader");
        Assert.Contains("First half", App.Words(page), StringComparison.Ordinal);
        Assert.DoesNotContain("second half", App.Words(page), StringComparison.OrdinalIgnoreCase);
        var (put, job) = (PutIn(page), Job(page));
        var written = await _app.Post(DemoLawns.Mill + "/spreader", [("with", "the-green-one"), ("job", job), ("opening", "3"), ("put", put), ("put.unit", "lb"), ("left", "0.2"), ("left.unit", "lb"), ("covered", "")]);
        Assert.Equal($"{DemoLawns.Mill}/spreader?with=the-green-one&job={job}#next", written.Location);
        var next = App.Words(await _app.Get(DemoLawns.Mill + "/spreader"));
        Assert.Contains("second half", next, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Rate of the last run", next, StringComparison.Ordinal);
        Assert.Contains("At 3:", App.Words(await _app.Get("/spreaders/the-green-one")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_run_sent_twice_is_there_once()
    {
        await Add();
        await FirstGrains();
        var page = await _app.Get(DemoLawns.Mill + "/spreader");
        var entry = Regex.Match(page, "name=\"entry\" value=\"([^\"]+)\"").Groups[1].Value;
        for (var i = 0; i < 2; i++)
        {
            Assert.Equal(HttpStatusCode.Redirect, (await _app.Post(DemoLawns.Mill + "/spreader", [("entry", entry), ("with", "the-green-one"), ("job", Job(page)), ("opening", "3"), ("put", "4"), ("put.unit", "lb"), ("left", "1"), ("left.unit", "lb"), ("covered", "")])).Status);
        }

        Assert.Single(Regex.Matches(App.Words(await _app.Get("/spreaders/the-green-one")), "At 3: "));
    }

    [Theory]
    [InlineData("opening", "11", "a reading from 0 to 10 is needed")]
    [InlineData("left", "9", "no more can be left than was put in")]
    [InlineData("left", "", "what was left, or the ground it covered")]
    [InlineData("put", "lots", "a number of lb is needed")]
    public async Task What_cannot_be_is_named_and_nothing_typed_is_lost(string field, string value, string expected)
    {
        await Add();
        await FirstGrains();
        var job = Job(await _app.Get(DemoLawns.Mill + "/spreader"));
        (string, string)[] fields = [("with", "the-green-one"), ("job", job), ("opening", "3.25"), ("put", "4"), ("put.unit", "lb"), ("left", "1"), ("left.unit", "lb"), ("covered", "")];
        var answer = await _app.Post(DemoLawns.Mill + "/spreader", [.. fields.Where(f => f.Item1 != field), (field, value)]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(expected, App.Words(answer.Body), StringComparison.Ordinal);
        Assert.Contains(field == "opening" ? "value=\"4\"" : "value=\"3.25\"", answer.Body, StringComparison.Ordinal);
        Assert.Contains("Nothing has been weighed yet", await _app.Get("/spreaders/the-green-one"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("greatest", "0", "a greatest opening above the least")]
    [InlineData("least", "shut", "a number such as 0 is needed")]
    [InlineData("step", "0", "Smallest step")]
    public async Task A_scale_that_is_none_is_refused(string field, string value, string expected)
    {
        var answer = await _app.Post("/spreaders/new", [.. Green.Where(f => f.Item1 != field), (field, value)]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(expected, App.Words(answer.Body), StringComparison.Ordinal);
        Assert.Contains("The green one", answer.Body, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_test_and_the_first_grains_are_learned_and_can_be_struck()
    {
        await Add();
        await _app.Post("/spreaders/the-green-one/first-fall", [("opening", "1.25")], "/spreaders/the-green-one");
        await _app.Post("/spreaders/the-green-one/test", [("material", "granules"), ("what", "12-12-12"), ("opening", "4"), ("put", "5"), ("put.unit", "lb"), ("left", "8"), ("left.unit", "oz"), ("covered", "1000"), ("covered.unit", "sqft")]);
        var page = await _app.Get("/spreaders/the-green-one");
        Assert.Contains("First grains fell at 1.25", App.Words(page), StringComparison.Ordinal);
        Assert.Contains("At 4: 4.5 lb per 1,000 sq ft of 12-12-12", App.Words(page), StringComparison.Ordinal);
        var entry = Regex.Match(page, "id=\"entry-([^\"]+)\"").Groups[1].Value;
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await _app.Post($"/spreaders/the-green-one/{entry}/strike", [("why", "")], "/spreaders/the-green-one")).Status);
        await _app.Post($"/spreaders/the-green-one/{entry}/strike", [("why", "a bridge of damp grains")], "/spreaders/the-green-one");
        Assert.Contains("Struck: a bridge of damp grains", App.Words(await _app.Get("/spreaders/the-green-one")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_spreader_goes_out_as_a_file_and_comes_in_again()
    {
        await Add();
        await _app.Post("/spreaders/the-green-one/first-fall", [("opening", "1.25")], "/spreaders/the-green-one");
        var file = Encoding.UTF8.GetBytes(await _app.Get("/spreaders/the-green-one/spreader.json"));
        using var other = new App();
        var answer = await other.Upload("/spreaders/from-file", [("spreader.json", file)], page: "/spreaders", field: "file");
        Assert.Equal("/spreaders/the-green-one?taken=1", answer.Location);
        Assert.Contains("First grains fell at 1.25", App.Words(await other.Get("/spreaders/the-green-one")), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await other.Upload("/spreaders/from-file", [("x.json", "{}"u8.ToArray())], page: "/spreaders", field: "file")).Status);
    }

    [Fact]
    public async Task Without_the_first_grains_nothing_is_known_and_they_are_asked_for()
    {
        await Add();
        foreach (var path in new[] { DemoLawns.Mill + "/spreader", "/spreaders/the-green-one" })
        {
            var page = await _app.Get(path);
            Assert.Contains("Nothing is known of", App.Words(page), StringComparison.Ordinal);
            Assert.Contains("Where do the first grains fall?", App.Words(page), StringComparison.Ordinal);
            Assert.DoesNotContain("to expect", App.Words(page), StringComparison.Ordinal);
            Assert.DoesNotContain("<svg viewBox=\"0 0 360", page, StringComparison.Ordinal);
        }

        await FirstGrains();
        var known = App.Words(await _app.Get(DemoLawns.Mill + "/spreader"));
        Assert.Contains("First half", known, StringComparison.Ordinal);
        Assert.Contains("hardly known yet", known, StringComparison.Ordinal);
        Assert.DoesNotContain("Rate to expect", known, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_of_a_spreader_that_is_here_brings_the_entries_it_lacks()
    {
        await Add();
        await FirstGrains();
        using var other = new App();
        Assert.Equal("/spreaders/the-green-one?taken=1", (await Take(other, await Kept(_app))).Location);
        await Test(other, "4");
        await Test(_app, "6");
        Assert.Equal("/spreaders/the-green-one?taken=1", (await Take(_app, await Kept(other))).Location);
        var page = App.Words(await _app.Get("/spreaders/the-green-one?taken=1"));
        Assert.All(["1 entry of the file was new here", "First grains fell at 1.25", "At 4:", "At 6:"], expected => Assert.Contains(expected, page, StringComparison.Ordinal));
        Assert.Equal("/spreaders/the-green-one?taken=0", (await Take(_app, await Kept(other))).Location);
        Assert.Equal(3, Regex.Matches(await _app.Get("/spreaders/the-green-one"), "id=\"entry-").Count);
        Assert.Single(Regex.Matches(await _app.Get("/spreaders"), "href=\"/spreaders/the-green-one"));
    }

    [Fact]
    public async Task A_file_whose_entries_are_here_with_another_scale_is_refused_and_another_spreader_is_added()
    {
        await Add();
        await FirstGrains();
        var file = await Kept(_app);
        var answer = await Take(_app, file.Replace("\"greatest\": 10", "\"greatest\": 20", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("whose scale is another", App.Words(answer.Body), StringComparison.Ordinal);
        await _app.Post("/spreaders/new", [.. Green.Where(f => f.Item1 != "name"), ("name", "Pans")]);
        Assert.Contains("scale 0 to 10", App.Words(await _app.Get("/spreaders/pans-2")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("holes=22&holes.unit=in&track=24&track.unit=in", "run 2 in (5.1 cm) inside its last track")]
    [InlineData("holes=60&holes.unit=cm&track=55&track.unit=cm", "run 2 in (5 cm) outside its last track")]
    [InlineData("holes=22&holes.unit=in&track=22&track.unit=in", "run in its own last track")]
    public async Task Bands_meet_where_the_near_wheel_is_told_to_run(string query, string expected) =>
        Assert.Contains(expected, App.Words(await _app.Get("/spreaders/bands?" + query)), StringComparison.Ordinal);

    [Fact]
    public async Task Bands_name_the_width_that_lacks_and_lose_nothing()
    {
        var page = await _app.Get("/spreaders/bands?holes=22&holes.unit=in&track=", HttpStatusCode.UnprocessableEntity);
        Assert.Contains("Distance between the wheels", App.Words(page), StringComparison.Ordinal);
        Assert.Contains("value=\"22\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pans_give_swath_spacing_and_sides()
    {
        var page = App.Words(await _app.Get("/spreaders/pans?pans=0+1+2+3+4+5+6+7+6+5+4+3+2+1+0&apart=1&apart.unit=ft"));
        Assert.Contains("The effective swath is 7 ft", page, StringComparison.Ordinal);
        Assert.Contains("50 % fell left of you", page, StringComparison.Ordinal);
        Assert.Contains("Up to 9 ft", page, StringComparison.Ordinal);
        Assert.Contains("an odd number of pans", App.Words(await _app.Get("/spreaders/pans?pans=1+2+3+4", HttpStatusCode.UnprocessableEntity)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_spreader_the_lawn_asks_for_one() =>
        Assert.Contains("Which spreader?", App.Words(await _app.Get(DemoLawns.Mill + "/spreader")), StringComparison.Ordinal);

    public void Dispose() => _app.Dispose();

    private async Task FirstGrains() => await _app.Post("/spreaders/the-green-one/first-fall", [("opening", "1.25")], "/spreaders/the-green-one");

    private static async Task Test(App app, string opening) => await app.Post("/spreaders/the-green-one/test", [("material", "granules"), ("what", "12-12-12"), ("opening", opening), ("put", "5"), ("put.unit", "lb"), ("left", "8"), ("left.unit", "oz"), ("covered", "1000"), ("covered.unit", "sqft")]);

    private static async Task<string> Kept(App app) => await app.Get("/spreaders/the-green-one/spreader.json");

    private static async Task<Answer> Take(App app, string file) => await app.Upload("/spreaders/from-file", [("spreader.json", Encoding.UTF8.GetBytes(file))], page: "/spreaders", field: "file");

    private async Task Add() => Assert.Equal("/spreaders/the-green-one", (await _app.Post("/spreaders/new", Green)).Location);

    private static string Job(string page) => Regex.Match(page, "name=\"job\" value=\"([^\"]+)\"").Groups[1].Value;

    private static string PutIn(string page) => Regex.Match(App.Words(page), @"Put in ([\d.]+) lb").Groups[1].Value;
}
