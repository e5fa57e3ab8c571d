using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>The water supply by its leaves, and the log that names the set.</summary>
public sealed class SupplyTests : IDisposable
{
    private readonly App _app = new();

    [Fact]
    public async Task Every_part_can_be_typed_in_and_is_stored()
    {
        var lawn = await _app.TakeOn();
        await Save(lawn + "/notes/tap", ("bucket", "5"), ("seconds", "60"), ("still", "60"), ("running", "35"), ("runningflow", "4"));
        await Save(lawn + "/notes/taps/new", ("tapname", "garage"), ("tapflow", "4.5"), ("together", "8"));
        await Save(lawn + "/notes/house", ("reserved", "1"), ("from1", "06:30"), ("to1", "07:30"), ("draws1", "2"), ("stored", "80"), ("recovery", "3"));
        await Save(lawn + "/notes/timers/new", ("timername", "box"), ("programs", "3"), ("starts", "4"));
        await Save(lawn + "/notes/sets/new", ("set", "Front"), ("wets", "front"), ("tap", "garage"), ("settimer", "box"), ("hose", "75"), ("bore", "5/8"), ("rated", "3"), ("ratedat", "40"));
        await Save(lawn + "/notes/meter", ("priceper", "kgal"), ("household", "6000"), ("upto1", "4000"), ("stepprice1", "3.10"), ("stepprice2", "7.25"));
        var water = (await Document(lawn)).GetProperty("water");
        Assert.Equal("60 psi", water.GetProperty("pressure").GetProperty("still").GetString());
        Assert.Equal("garage", water.GetProperty("otherTaps")[0].GetProperty("name").GetString());
        Assert.Equal("8 gpm", water.GetProperty("together").GetString());
        Assert.Equal("07:30", water.GetProperty("household")[0].GetProperty("to").GetString());
        Assert.Equal("80 gal", water.GetProperty("well").GetProperty("stored").GetString());
        Assert.Equal(4, water.GetProperty("timers")[0].GetProperty("startsPerDay").GetInt32());
        Assert.True(water.GetProperty("timer").GetBoolean());
        var set = water.GetProperty("sets")[0];
        Assert.Equal(("garage", "box", "0.625 in"), (set.GetProperty("tap").GetString(), set.GetProperty("timer").GetString(), set.GetProperty("hose").GetProperty("bore").GetString()));
        Assert.Equal("40 psi", set.GetProperty("nozzle").GetProperty("at").GetString());
        Assert.Equal("3.10", water.GetProperty("meter")[0].GetProperty("perThousandGallons").GetRawText());
        Assert.False(water.GetProperty("meter")[1].TryGetProperty("upTo", out _));
        var notes = App.Words(await _app.Get(lawn + "/notes"));
        Assert.Contains("5 gal/min by the bucket, 60 psi, timer", notes.Replace("gpm", "gal/min", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("box: 3 programs, 4 starts a day", notes, StringComparison.Ordinal);
        Assert.Contains("2 steps, 3.10 to 7.25 per 1,000 gal", notes, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tap", "Pressure while it runs: less than with nothing running is needed.", "bucket=5&seconds=60&still=40&running=45&runningflow=4")]
    [InlineData("tap", "both are needed, or neither", "still=40&running=35")]
    [InlineData("tap", "needed beside the running pressure", "running=35&runningflow=4")]
    [InlineData("taps/new", "What it gives alone: more than 0", "tapname=garage&tapflow=0")]
    [InlineData("taps/new", "no less than the strongest tap alone", "tapname=garage&tapflow=5&together=2")]
    [InlineData("house", "A well needs both", "stored=80")]
    [InlineData("house", "a time later than “from” is needed", "from1=08:00&to1=07:00&draws1=2")]
    [InlineData("house", "The house draws: a number is needed", "from1=07:00&to1=08:00")]
    [InlineData("timers/new", "Programs: a whole number from 1 to 100", "timername=box&programs=0&starts=4")]
    [InlineData("sets/new", "inner diameter go together", "set=Front&wets=front&hose=75")]
    [InlineData("sets/new", "Inner diameter of the hose: more than 0", "set=Front&wets=front&hose=75&bore=0")]
    [InlineData("sets/new", "Length of hose from the tap: a number from 0 to 1640.42 ft", "set=Front&wets=front&hose=1700&bore=0.5")]
    [InlineData("sets/new", "goes with the pressure", "set=Front&wets=front&rated=3")]
    [InlineData("sets/new", "check depths, their unit and the minutes", "set=Front&wets=front&cans=8 9 7&cans.unit=in&minutes=10")]
    [InlineData("meter", "the last step has no end", "upto1=4000&stepprice1=3&upto2=9000&stepprice2=4")]
    [InlineData("meter", "more than in the step before", "upto1=4000&stepprice1=3&upto2=3000&stepprice2=4&stepprice3=5")]
    [InlineData("meter", "Price: a number is needed", "upto1=4000&stepprice2=4")]
    public async Task What_cannot_be_is_said_and_nothing_typed_is_lost(string leaf, string expected, string typed)
    {
        var lawn = await _app.TakeOn();
        var before = await _app.Get(lawn + "/lawn.json");
        (string Name, string Value)[] fields = [.. typed.Split('&').Select(f => (f.Split('=')[0], f.Split('=')[1]))];
        var answer = await _app.Post($"{lawn}/notes/{leaf}", fields);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.True(App.Words(answer.Body).Contains(expected, StringComparison.Ordinal), App.Words(answer.Body));
        Assert.All(fields.Where(f => f.Name is not ("wets" or "cans.unit")), f => Assert.Contains($"name=\"{f.Name}\" value=\"{f.Value}\"", answer.Body, StringComparison.Ordinal));
        Assert.Equal(before, await _app.Get(lawn + "/lawn.json"));
    }

    [Fact]
    public async Task Sets_keep_their_tap_and_timer_under_a_new_name_and_a_tap_in_use_is_not_removed()
    {
        var lawn = await Whole();
        await Resave(lawn + "/notes/taps/1", ("tapname", "shed"));
        await Resave(lawn + "/notes/timers/1", ("timername", "wall box"));
        var set = (await Document(lawn)).GetProperty("water").GetProperty("sets")[0];
        Assert.Equal(("shed", "wall box"), (set.GetProperty("tap").GetString(), set.GetProperty("timer").GetString()));
        var refused = await _app.Post(lawn + "/notes/taps/1/remove", [], lawn + "/notes/taps/1");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("the name of a tap: back wall is expected, not 'shed'", App.Words(refused.Body), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(lawn + "/notes/taps/2/remove", [], lawn + "/notes/taps/2")).Status);
    }

    [Fact]
    public async Task Prices_per_cubic_meter_come_back_as_they_were_typed()
    {
        var lawn = await _app.TakeOn();
        await _app.Post("/units", [("system", "metric"), ("back", "/")], "/weather");
        await Save(lawn + "/notes/meter", ("priceper", "m3"), ("upto1", "15"), ("upto1.unit", "m3"), ("stepprice1", "1.27"), ("stepprice2", "2.4"));
        var page = await _app.Get(lawn + "/notes/meter");
        Assert.Contains("name=\"stepprice1\" value=\"1.27\"", page, StringComparison.Ordinal);
        Assert.Contains("name=\"stepprice2\" value=\"2.40\"", page, StringComparison.Ordinal);

        // 1.27 per m3, and 3.785411784 L in a gallon by definition.
        Assert.Equal(4.80747297m, (await Document(lawn)).GetProperty("water").GetProperty("meter")[0].GetProperty("perThousandGallons").GetDecimal());
    }

    [Fact]
    public async Task Cans_say_how_sure_they_are_beside_the_set_in_the_notes_and_on_the_coverage_page()
    {
        var lawn = await Whole();

        // 0.21 0.18 0.25 0.12: mean 0.19 in 15 min is 0.76 in/h; s = 0.0548, t (3) = 2.353, so t s / (mean 2) = 34 %; 6 cans give 24 %.
        Assert.Contains("4 catch cans, 0.76 in/h ± 34 %", App.Words(await _app.Get(lawn + "/notes")), StringComparison.Ordinal);
        foreach (var page in (string[])[lawn + "/notes/sets/2", lawn + "/coverage"])
        {
            var words = App.Words(await _app.Get(page));
            Assert.Contains("4 cans: 0.76 in/h on average, right to 34 % nine times in ten. Set out 2 more for an average good to a quarter.", words, StringComparison.Ordinal);
            foreach (var figure in (string[])["low quarter", "low half", "Coefficient of uniformity", "How far off the mean may be"])
            {
                Assert.Contains(figure, words, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public async Task Overlapping_hours_are_kept_and_remarked()
    {
        var lawn = await _app.TakeOn();
        await Save(lawn + "/notes/hours/new", ("days", "mon"), ("from", "05:00"), ("to", "09:00"));
        await Save(lawn + "/notes/hours/new", ("days", "mon"), ("from", "06:00"), ("to", "07:00"));
        Assert.Contains("06:00 to 07:00 on Mon lie wholly inside 05:00 to 09:00 on Mon and add nothing", App.Words(await _app.Get(lawn + "/notes/hours/2")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Watering_names_its_set_and_a_set_of_one_patch_names_the_patch()
    {
        var lawn = await Whole();
        var form = await _app.Get(lawn + "/log/write/watered?set=Back");
        Assert.Matches("value=\"Back\" checked", form);
        await Save(lawn + "/log/write/watered", ("day", "2026-08-10"), ("hour", "06:00"), ("patch", ""), ("set", "Back"), ("minutes", "12"));
        var entry = JsonDocument.Parse(await _app.Get(lawn + "/log/log.json")).RootElement.GetProperty("entries")[0];
        Assert.Equal("back", entry.GetProperty("patch").GetString());
        Assert.Contains("\"Back\"", entry.GetRawText(), StringComparison.Ordinal);
        Assert.Contains("Watered 12 min, Back", App.Words(await _app.Get(lawn + "/log")), StringComparison.Ordinal);
        var answer = await _app.Post(lawn + "/log/write/watered", [("day", "2026-08-10"), ("patch", "front"), ("set", "Back"), ("minutes", "12")]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("Back does not wet Front", App.Words(answer.Body), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_sprinkler_assumed_for_a_dry_patch_can_be_named_and_one_set_alone_is_not_asked_for()
    {
        var lawn = await Add(SupplyText.Lawn.Replace("\"patches\": [\"back\"]", "\"patches\": [\"front\"]", StringComparison.Ordinal));
        await Save(lawn + "/log/write/watered", ("day", "2026-08-10"), ("hour", "06:00"), ("patch", "back"), ("set", "moved sprinkler"), ("minutes", "20"));
        Assert.Contains("Watered 20 min, moved sprinkler", App.Words(await _app.Get(lawn + "/log")), StringComparison.Ordinal);
        Assert.DoesNotContain("Set that ran", App.Words(await _app.Get(await _app.TakeOn() + "/log/write/watered")), StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();

    private Task<string> Whole() => Add(SupplyText.Lawn);

    private async Task<string> Add(string file)
    {
        var answer = await _app.Upload("/lawns/from-file", [("lawn.json", Encoding.UTF8.GetBytes(file))]);
        Assert.True(answer.Status == HttpStatusCode.Found, App.Words(answer.Body));
        return Regex.Match(answer.Location!, "^/lawns/[^/?#]+").Value;
    }

    private async Task Save(string leaf, params (string Name, string Value)[] fields)
    {
        var answer = await _app.Post(leaf, fields);
        Assert.True(answer.Status == HttpStatusCode.Found, $"{leaf}: {App.Words(answer.Body)}");
    }

    /// <summary>What is shown, with some fields changed.</summary>
    private async Task Resave(string leaf, params (string Name, string Value)[] instead) =>
        await Save(leaf, [.. FormFields.Of(await _app.Get(leaf)).Where(f => instead.All(i => i.Name != f.Name)), .. instead]);

    private async Task<JsonElement> Document(string lawn) => JsonDocument.Parse(await _app.Get(lawn + "/lawn.json")).RootElement;
}
