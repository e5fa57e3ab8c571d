using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>The spray window by a forecast brought as a file, by days alone, and the judgment on the spot.</summary>
public sealed class SprayWindowTests : IDisposable
{
    // Friday, September 4, 2026, 7 am in Chicago.
    private static readonly DateTimeOffset Morning = new(2026, 9, 4, 12, 0, 0, TimeSpan.Zero);

    private readonly App _app = new(clock: new StandingClock(Morning));

    [Fact]
    public async Task Without_a_forecast_it_says_what_is_missing_and_how_to_bring_it()
    {
        var lawn = await _app.TakeOn();
        var words = App.Words(await _app.Get(lawn + "/spray-window"));
        Assert.Contains("One thing is missing: a forecast by the hour.", words, StringComparison.Ordinal);
        Assert.Contains("https://api.weather.gov/points/42.31,-84.12", words, StringComparison.Ordinal);
        Assert.Contains("never above the label's wind", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_forecast_brought_is_judged_hour_by_hour()
    {
        var lawn = await Forecast(6.0);
        var page = await _app.Get(lawn + "/spray-window");
        var words = App.Words(page);
        Assert.Contains("The soonest and longest stretch: Fri, Sep 4,", words, StringComparison.Ordinal);
        Assert.DoesNotContain("Rough", words, StringComparison.Ordinal);
        Assert.Contains("The label’s highest wind was not entered: 8 mph", words, StringComparison.Ordinal);
        Assert.Contains("US National Weather Service, hourly forecast", words, StringComparison.Ordinal);

        var hour = Regex.Match(page, "href=\"([^\"]*/spray-window/hour/[^\"]*)\"").Groups[1].Value;
        var behind = App.Words(await _app.Get(hour));
        Assert.Contains("un = f u2", behind, StringComparison.Ordinal);
        Assert.Contains("forecast wind at 10 m, brought down by FAO-56 eq. 47", behind, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Wind_over_the_label_stops_the_hours_that_the_usual_limit_would_not()
    {
        var lawn = await Forecast(9.0);
        Assert.DoesNotContain("✕ Stop: too windy", App.Words(await _app.Get(lawn + "/spray-window")), StringComparison.Ordinal);
        await Label(lawn, ("maxwind", "6"), ("maxwind.unit", "mph"));
        var words = App.Words(await _app.Get(lawn + "/spray-window"));
        Assert.Contains("✕ Stop : wind over the label", words, StringComparison.Ordinal);
        Assert.Contains("No stretch of 1 hour is fit", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_longer_work_finds_fewer_stretches()
    {
        var lawn = await Forecast(6.0);
        Assert.Contains("The soonest", App.Words(await _app.Get(lawn + "/spray-window?hours=4")), StringComparison.Ordinal);
        Assert.Contains("selected>4 hours", await _app.Get(lawn + "/spray-window?hours=4"), StringComparison.Ordinal);
        Assert.Contains("selected>1 hour", await _app.Get(lawn + "/spray-window?hours=never"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_no_forecast_is_refused_by_name_and_what_was_there_stays()
    {
        var lawn = await Forecast(6.0);
        var refused = await _app.Upload(lawn + "/spray-window/forecast", [("plan.json", "{}"u8.ToArray())], page: lawn + "/spray-window", field: "file");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("plan.json: expected hours of a forecast", App.Words(refused.Body), StringComparison.Ordinal);
        Assert.Contains("The soonest", App.Words(await _app.Get(lawn + "/spray-window")), StringComparison.Ordinal);

        var forgotten = await _app.Post(lawn + "/spray-window/forecast/forget", [], page: lawn + "/spray-window");
        Assert.Equal(HttpStatusCode.Found, forgotten.Status);
        Assert.Contains("One thing is missing", App.Words(await _app.Get(lawn + "/spray-window")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_forecast_that_is_over_is_said_to_be()
    {
        var lawn = await Forecast(6.0, from: Morning.AddDays(-9));
        Assert.Contains("The forecast brought is over.", App.Words(await _app.Get(lawn + "/spray-window")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_removed_lawn_takes_its_forecast_along()
    {
        var lawn = await Forecast(6.0);
        Assert.Single(Directory.GetFiles(Path.Combine(_app.Folder, "forecasts")));
        await _app.Post(lawn + "/remove", []);
        Assert.Empty(Directory.GetFiles(Path.Combine(_app.Folder, "forecasts")));
    }

    [Fact]
    public async Task The_demo_draws_rough_hours_out_of_its_days()
    {
        using var demo = new App(demo: true, clock: new StandingClock(Morning));
        const string lawn = DemoLawns.Mill;
        var words = App.Words(await demo.Get(lawn + "/spray-window"));
        Assert.Contains("Rough: only whole days are known", words, StringComparison.Ordinal);
        Assert.Contains("Fri, Aug 14", words, StringComparison.Ordinal);
        Assert.Contains("invented weather of an invented town", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task On_the_spot_the_label_refuses_and_says_what_would_change_it()
    {
        var lawn = await _app.TakeOn();
        await Label(lawn, ("maxwind", "10"), ("maxwind.unit", "mph"));
        var words = App.Words((await Judge(lawn, ("wind", "11"), ("rain", "none"))).Body);
        Assert.Contains("✕ Stop", words, StringComparison.Ordinal);
        Assert.Contains("Wind 11 mph (4.9 m/s) is over the label’s 10 mph (4.5 m/s).", words, StringComparison.Ordinal);
        Assert.Contains("no shield, pressure or nozzle changes it", words, StringComparison.Ordinal);
        Assert.DoesNotContain("Holding and walking", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_go_comes_with_how_to_hold_and_where_to_begin()
    {
        using var noon = new App(clock: new StandingClock(Morning.AddHours(4)));
        var lawn = await noon.TakeOn();
        var answer = await noon.Post(lawn + "/spray-window/now", Fields(("wind", "4"), ("gust", "5"), ("rain", "none"), ("wet", "dry"), ("from", "w"), ("sky", "broken")));
        var words = App.Words(answer.Body);
        Assert.Contains("● Go", words, StringComparison.Ordinal);
        Assert.Contains("Begin along the east edge and work toward the west", words, StringComparison.Ordinal);
        Assert.Contains("Hours without rain afterward", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Something_wrong_is_named_and_nothing_typed_is_lost()
    {
        var lawn = await _app.TakeOn();
        var answer = await Judge(lawn, ("wind", "a breeze"), ("gust", "7"), ("rain", "later"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        var words = App.Words(answer.Body);
        Assert.Contains("Wind, by hand anemometer: a number of mph is needed, not “a breeze”.", words, StringComparison.Ordinal);
        Assert.Contains("Minutes until rain: a number is needed where rain is on its way.", words, StringComparison.Ordinal);
        Assert.Contains("value=\"7\"", answer.Body, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/spray-window/hour/nonsense")]
    [InlineData("/spray-window/hour/20200101T00Z")]
    public async Task An_hour_that_is_not_there_is_said_so(string path) =>
        Assert.Contains("No such hour", await _app.Get(await _app.TakeOn() + path, HttpStatusCode.NotFound), StringComparison.Ordinal);

    public void Dispose() => _app.Dispose();

    private static (string, string)[] Fields(params (string, string)[] fields) => [("wind.unit", "mph"), ("gust.unit", "mph"), ("held", "nozzle"), .. fields];

    private Task<Answer> Judge(string lawn, params (string, string)[] fields) => _app.Post(lawn + "/spray-window/now", Fields(fields));

    private async Task Label(string lawn, params (string, string)[] fields)
    {
        var answer = await _app.Post(lawn + "/notes/pre-emergent", [("active", "mesotrione"), ("formulation", "sc"), ("rate", "5"), ("rate.unit", "flozA"), .. fields]);
        Assert.True(answer.Status == HttpStatusCode.Found, App.Words(answer.Body));
    }

    /// <summary>A lawn with three fair days of steady wind brought for it.</summary>
    private async Task<string> Forecast(double mph, DateTimeOffset? from = null)
    {
        var lawn = await _app.TakeOn();
        var start = from ?? Morning.AddHours(-6);
        var periods = Enumerable.Range(0, 72).Select(i => JsonSerializer.Serialize(new
        {
            startTime = Stamp(start.AddHours(i)),
            endTime = Stamp(start.AddHours(i + 1)),
            temperature = Math.Round(68.0 + (10.0 * Math.Sin((i - 9) * Math.PI / 12.0))),
            temperatureUnit = "F",
            windSpeed = string.Create(CultureInfo.InvariantCulture, $"{mph:0} mph"),
            relativeHumidity = new { unitCode = "wmoUnit:percent", value = 60 },
            probabilityOfPrecipitation = new { unitCode = "wmoUnit:percent", value = 5 },
        }));
        var json = Encoding.UTF8.GetBytes($"{{\"properties\":{{\"updateTime\":\"{Stamp(Morning)}\",\"periods\":[{string.Join(',', periods)}]}}}}");
        var answer = await _app.Upload(lawn + "/spray-window/forecast", [("forecast.json", json)], page: lawn + "/spray-window", field: "file");
        Assert.True(answer.Status == HttpStatusCode.Found, App.Words(answer.Body));
        return lawn;
    }

    private static string Stamp(DateTimeOffset at) => at.ToString("yyyy-MM-dd'T'HH:mm:ssK", CultureInfo.InvariantCulture);

    private sealed class StandingClock(DateTimeOffset at) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => at;
    }
}
