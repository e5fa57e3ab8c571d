using System.Net;
using System.Text;

namespace Seedfall.Web.Tests;

public sealed class WeatherTests : IDisposable
{
    private readonly App _app = new();

    [Fact]
    public async Task Files_are_read_reported_and_picked_for_a_lawn()
    {
        var lawn = await _app.TakeOn();
        var answer = await _app.Upload("/weather", [("invented.csv", App.InventedWeather())], [("lawn", lawn["/lawns/".Length..]), ("weathername", "Invented & <station>")]);
        Assert.Equal(HttpStatusCode.Found, answer.Status);
        var report = App.Words(await _app.Get(answer.Location!));
        Assert.Contains("Invented & <station>", report, StringComparison.Ordinal);
        Assert.Contains("5,844 days can be used, from 2010-01-01 to 2025-12-31", report, StringComparison.Ordinal);
        Assert.Contains("One lawn is planned with it.", App.Words(await _app.Get("/weather")), StringComparison.Ordinal);
        Assert.Matches("value=\"1\"[^>]* checked", await _app.Get(lawn + "/weather"));
    }

    [Theory]
    [InlineData("DATE,TMAX,TMIN,PRCP\n2020-01-01,abc,1,0\n")]
    [InlineData("no weather at all")]
    [InlineData("\0\u0001\u0002binary")]
    public async Task A_bad_file_is_refused_whole_with_its_place(string text)
    {
        var answer = await _app.Upload("/weather", [("bad.csv", Encoding.UTF8.GetBytes(text))]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("The files were not taken", answer.Body, StringComparison.Ordinal);
        Assert.Contains("bad.csv", answer.Body, StringComparison.Ordinal);
        Assert.Contains("None yet.", await _app.Get("/weather"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_file_is_said()
    {
        var answer = await _app.Upload("/weather", []);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("Choose at least one weather file.", answer.Body, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Weather_in_use_stays()
    {
        var lawn = await _app.TakeOn();
        var report = (await _app.Upload("/weather", [("invented.csv", App.InventedWeather())])).Location!;
        await _app.Post(lawn + "/weather", [("weather", report["/weather/".Length..])]);
        var refused = await _app.Post(report + "/remove", [], "/weather");
        Assert.Equal(HttpStatusCode.Conflict, refused.Status);

        await _app.Post(lawn + "/remove", []);
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(report + "/remove", [], report)).Status);
        await _app.Get(report, HttpStatusCode.NotFound);
    }

    public void Dispose() => _app.Dispose();
}
