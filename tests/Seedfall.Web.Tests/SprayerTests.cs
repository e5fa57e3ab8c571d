using System.Net;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>The sprayer's pages and the tank mix, on the demo, whose day is August 14.</summary>
public sealed class SprayerTests : IDisposable
{
    // Three refills of 1,000 sq ft at 5 ft and 3 mph, about 0.62 gal each.
    private const string Refill = "ground=1000&ground.unit=sqft&used1=0.62&used1.unit=gal&used2=0.65&used2.unit=gal&used3=0.59&used3.unit=gal&time1=45&time2=46&time3=45&width=5&width.unit=ft";

    private readonly App _app = new(demo: true);

    [Fact]
    public async Task A_refill_test_shows_the_rate_its_working_and_what_to_change()
    {
        var words = App.Words(await _app.Get($"{DemoLawns.Mill}/sprayer/refill?{Refill}&wanted=1&wanted.unit=galM"));
        Assert.Contains("It puts out 0.62 gal per 1,000 sq ft", words, StringComparison.Ordinal);
        Assert.Contains("rate = mean volume / area", words, StringComparison.Ordinal);
        Assert.Contains("Too little: 1 gal per 1,000 sq ft is wanted", words, StringComparison.Ordinal);
        Assert.Contains("Spray twice at right angles", words, StringComparison.Ordinal);
        Assert.Contains("2.53 L per 100 m", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Worn_nozzles_are_named()
    {
        var words = App.Words(await _app.Get($"{DemoLawns.Mill}/sprayer/course?spacing=20&spacing.unit=in&time1=46&nozzle1=31&nozzle1.unit=floz&nozzle2=36&nozzle2.unit=floz&nozzle3=31&nozzle3.unit=floz"));
        Assert.Contains("One is 10 % or more off", words, StringComparison.Ordinal);
        Assert.Matches("Nozzle 2 .*Replace it", words);
    }

    [Fact]
    public async Task The_spacing_alone_tells_the_course()
    {
        var words = App.Words(await _app.Get($"{DemoLawns.Mill}/sprayer/course?spacing=20&spacing.unit=in"));
        Assert.Matches(@"Course to mark 204\s*ft", words);
        Assert.DoesNotContain("put right", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("refill?ground=abc&used1=1", "Area sprayed each time: a number of sq ft is needed, not “abc”.")]
    [InlineData("refill?ground=1000&used1=", "Water to refill, first time: a number is needed.")]
    [InlineData("catch?ground=1000&time1=30&caught1=-2", "not -2")]
    [InlineData("course?spacing=20&time1=0&nozzle1=31", "Time of walk 1: a number from 1 to 3600 seconds is needed, not 0.")]
    [InlineData("course?spacing=20&time1=46&nozzle1=31&rated=0.3", "flow and pressure are needed together")]
    [InlineData("refill?ground=1000&used1=1&least=40&most=20", "a pressure above the lowest is needed")]
    [InlineData("pace?course=100&steps=5", "count again")]
    public async Task What_is_wrong_is_named_and_stays_in_its_field(string path, string said)
    {
        var page = await _app.Get($"{DemoLawns.Mill}/sprayer/{path}", HttpStatusCode.UnprocessableEntity);
        Assert.Contains(said, App.Words(page), StringComparison.Ordinal);
        foreach (Match field in Regex.Matches(path[(path.IndexOf('?', StringComparison.Ordinal) + 1)..], "([^=&]+)=([^&]+)"))
        {
            Assert.Matches($"name=\"{Regex.Escape(field.Groups[1].Value)}\"[^>]*value=\"{Regex.Escape(field.Groups[2].Value)}\"", page);
        }
    }

    [Fact]
    public async Task A_calibration_kept_is_in_the_notes_with_its_day_and_mixes_the_tank()
    {
        var lawn = DemoLawns.Mill;
        var page = $"{lawn}/sprayer/refill?{Refill}&wanted=0.7&wanted.unit=galM";
        var refused = await _app.Post(page, [Version(await _app.Get(page)), ("tank", "lots"), ("tank.unit", "gal")]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("What the tank holds: a number of gal is needed, not “lots”.", App.Words(refused.Body), StringComparison.Ordinal);
        Assert.Contains("It puts out 0.62", App.Words(refused.Body), StringComparison.Ordinal);

        var kept = await _app.Post(page, [Version(await _app.Get(page)), ("tank", "3"), ("tank.unit", "gal")]);
        Assert.Equal(HttpStatusCode.Found, kept.Status);
        var words = App.Words(await _app.Get(lawn + "/sprayer"));
        Assert.Contains("putting out 0.62 gal per 1,000 sq ft", words, StringComparison.Ordinal);
        Assert.Contains("tank 3 gal", words, StringComparison.Ordinal);
        Assert.Contains("Calibrated Aug 14, 2026, no spraying is recorded since.", words, StringComparison.Ordinal);
        Assert.Contains("\"calibrated\": \"2026-08-14\"", await _app.Get(lawn + "/lawn.json"), StringComparison.Ordinal);

        // The label of the demo asks 30 gal per acre, 0.69 per 1,000 sq ft: less is refused.
        var tank = App.Words(await _app.Get(lawn + "/tank"));
        Assert.Contains("The sprayer puts out 0.62 gal per 1,000 sq ft; the label asks at least 0.69.", tank, StringComparison.Ordinal);
        Assert.DoesNotContain("in a 10 mL syringe", tank, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_windows_do_not_overwrite_each_other()
    {
        var page = $"{DemoLawns.Mill}/sprayer/refill?{Refill}";
        var version = Version(await _app.Get(page));
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(page, [version, ("tank", "3"), ("tank.unit", "gal")])).Status);
        Assert.Equal(HttpStatusCode.Conflict, (await _app.Post(page, [version, ("tank", "5"), ("tank.unit", "gal")])).Status);
    }

    [Fact]
    public async Task The_tank_shows_cautions_first_then_doses_order_and_rinse()
    {
        var words = App.Words(await _app.Get(DemoLawns.Mill + "/tank"));
        Assert.True(words.IndexOf("The label is the law", StringComparison.Ordinal) < words.IndexOf("mesotrione : ", StringComparison.Ordinal), "cautions stand first");
        Assert.Matches("mesotrione : [0-9.]+ mL \\([0-9.]+ fl oz\\) in a 10*0 mL", words);
        Assert.Contains("Half the water, agitating Mesotrione (suspension) The rest of the water", words, StringComparison.Ordinal);
        Assert.Matches("Leave the last strip of the lawn, about [0-9]+ sq ft", words);
        Assert.DoesNotContain("is not mixed", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sprayer_of_the_moment_changes_the_page_only()
    {
        var lawn = DemoLawns.Mill;
        var words = App.Words(await _app.Get(lawn + "/tank?carrier=2&carrier.unit=galM&tank=2&tank.unit=gal"));
        Assert.Contains("Tank 4 of 4", words, StringComparison.Ordinal);
        Assert.Contains("One tank does it", App.Words(await _app.Get(lawn + "/tank")), StringComparison.Ordinal);
        Assert.Contains("Carrier it puts out", App.Words(await _app.Get(lawn + "/tank?carrier=much", HttpStatusCode.UnprocessableEntity)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rate", "9", "Highest rate in one application")]
    [InlineData("applied", "14", "Highest amount in one year")]
    [InlineData("interval", "60", "Interval before seeding")]
    [InlineData("safe", "tf", "Grasses the label names at seeding")]
    [InlineData("formulation", "df", "Dry product is weighed")]
    public async Task What_the_label_forbids_is_refused_by_name(string field, string value, string rule)
    {
        var lawn = DemoLawns.Mill;
        var leaf = lawn + "/notes/pre-emergent";
        var saved = await _app.Post(leaf, [.. FormFields.Of(await _app.Get(leaf)).Where(f => f.Name != field), (field, value)]);
        Assert.True(saved.Status == HttpStatusCode.Found, App.Words(saved.Body));
        var page = await _app.Get(lawn + "/tank");
        var words = App.Words(page);
        Assert.Contains("Mesotrione is not mixed", words, StringComparison.Ordinal);
        Assert.Contains(rule, words, StringComparison.Ordinal);
        Assert.Contains("Instead:", words, StringComparison.Ordinal);
        Assert.DoesNotContain("mesotrione : ", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_weighed_label_is_entered_shown_as_entered_and_mixed_by_the_scale()
    {
        var lawn = DemoLawns.Mill;
        var leaf = lawn + "/notes/pre-emergent";
        (string, string)[] dry =
        [
            ("active", "siduron"), ("formulation", "wp"), ("rate", "8"), ("rate.unit", "lbA"), ("maxrate", "12"), ("maxrate.unit", "lbA"),
            ("maxyear", "24"), ("maxyear.unit", "lbA"), ("applied", ""), ("strength", "50"), ("strength.unit", "pct"), ("mowings", "3"),
        ];
        async Task<(HttpStatusCode Status, string Words)> Save(params (string Name, string Value)[] changed)
        {
            var names = dry.Concat(changed).Select(f => f.Item1).ToHashSet();
            var answer = await _app.Post(leaf, [.. FormFields.Of(await _app.Get(leaf)).Where(f => !names.Contains(f.Name)), .. dry.Concat(changed).GroupBy(f => f.Item1).Select(g => g.Last())]);
            return (answer.Status, App.Words(answer.Body));
        }

        var mixed = await Save(("maxrate", "12"), ("maxrate.unit", "flozA"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, mixed.Status);
        Assert.Contains("a weight is needed, as the rate to apply is", mixed.Words, StringComparison.Ordinal);
        Assert.Contains("percent by weight is needed", (await Save(("strength", "4"), ("strength.unit", "lbgal"))).Words, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Save(("strength", "150"))).Status);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Save(("mowings", "2.5"))).Status);
        Assert.Equal(HttpStatusCode.Found, (await Save()).Status);

        var file = await _app.Get(lawn + "/lawn.json");
        foreach (var said in (string[])["\"rate\": \"8 lb/acre\"", "\"maximumPerYear\": \"24 lb/acre\"", "\"strength\": \"50 %\"", "\"mowingsBeforeSeedlings\": 3", "\"wettable-powder\""])
        {
            Assert.Contains(said, file, StringComparison.Ordinal);
        }

        var again = await _app.Post(leaf, [.. FormFields.Of(await _app.Get(leaf))]);
        Assert.Equal(HttpStatusCode.Found, again.Status);
        Assert.Equal(file, await _app.Get(lawn + "/lawn.json"));

        var words = App.Words(await _app.Get(lawn + "/tank"));
        Assert.Matches("siduron : [0-9,.]+ g \\([0-9.]+ dry oz\\) on a scale that shows (0\\.1|1) g", words);
        Assert.Contains("Weighing powder and granules", words, StringComparison.Ordinal);
        Assert.Contains("the mask or respirator the label names", words, StringComparison.Ordinal);
        Assert.Contains("Siduron (wettable powder)", words, StringComparison.Ordinal);
        Assert.DoesNotContain("syringe", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_pace_is_steps_and_seconds_without_script()
    {
        var page = await _app.Get(DemoLawns.Mill + "/sprayer/pace?speed=3&speed.unit=mph&course=88&course.unit=ft&steps=40");
        var words = App.Words(page);
        Assert.Contains("Take 120 steps a minute. 88 ft then take 20 s.", words, StringComparison.Ordinal);
        Assert.Contains("data-steps=\"120\"", page, StringComparison.Ordinal);
        Assert.Contains("most people walk evenly", App.Words(await _app.Get(DemoLawns.Mill + "/sprayer/pace?speed=5&speed.unit=mph")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/lawns/none/sprayer")]
    [InlineData("/lawns/none/sprayer/pace")]
    [InlineData("/lawns/none/sprayer/refill")]
    [InlineData("/lawns/none/tank")]
    public async Task A_lawn_that_is_not_there_says_so(string path) => await _app.Get(path, HttpStatusCode.NotFound);

    [Fact]
    public async Task A_lawn_with_nothing_to_spray_says_so()
    {
        var lawn = await _app.TakeOn();
        Assert.Contains("Nothing is sprayed on this lawn", App.Words(await _app.Get(lawn + "/tank")), StringComparison.Ordinal);
        Assert.Contains("Nothing is known of the sprayer yet", App.Words(await _app.Get(lawn + "/sprayer")), StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();

    private static (string Name, string Value) Version(string page) => ("version", Regex.Match(page, "name=\"version\" value=\"([0-9]+)\"").Groups[1].Value);
}
