using System.Net;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

/// <summary>The watering run by run, on the demo: a lawn whose runs fit and one whose tap cannot do it.</summary>
public sealed class TimetableTests : IDisposable
{
    private readonly App _app = new(demo: true);

    [Fact]
    public async Task Runs_that_fit_are_listed_with_their_starts()
    {
        var page = await _app.Get(DemoLawns.Mill + "/timetable");
        var words = App.Words(page);
        Assert.Contains("Every run has its place", words, StringComparison.Ordinal);
        Assert.Contains("Front rotors", words, StringComparison.Ordinal);
        Assert.DoesNotContain("It cannot be", words, StringComparison.Ordinal);
        Assert.True(Regex.Count(page, "<th scope=\"row\">") > 10);
    }

    [Fact]
    public async Task What_cannot_be_says_what_binds_and_what_would_do()
    {
        var words = App.Words(await _app.Get(DemoLawns.Quarry + "/timetable"));
        Assert.Contains("It cannot be", words, StringComparison.Ordinal);
        Assert.Contains("would be enough", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lawn_without_weather_says_so()
    {
        var lawn = await _app.TakeOn();
        Assert.Contains("no weather yet", App.Words(await _app.Get(lawn + "/timetable")), StringComparison.Ordinal);
        Assert.Contains("No such lawn", await _app.Get("/lawns/none/timetable", HttpStatusCode.NotFound), StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();
}
