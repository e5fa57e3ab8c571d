using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests.Photos;

/// <summary>Overviews made level by four marks, on pictures composed in code.</summary>
public sealed class OverviewTests : IDisposable
{
    private readonly App _app = PhotoSteps.Started();

    [Fact]
    public async Task Four_marks_on_an_overview_find_the_thin_spots_and_their_seed()
    {
        await _app.Upload("/weather", [("w.csv", App.InventedWeather())]);
        var spot = await _app.Spot("overview", weather: true);
        var photo = await _app.Kept(spot, ComposedPhoto.Overview((2.5, 2.0, 0.8), (5.5, 3.0, 1.0)));
        Assert.DoesNotContain("class=\"measured\"", await _app.Get(photo), StringComparison.Ordinal);
        Assert.Equal(photo + "#measure", (await _app.Post(photo + "/marks", Marks(), photo)).Location);
        var body = App.Words(await _app.Get(photo));

        // Two circles: pi (0.8^2 + 1^2) = 5.15 m2, 55 sq ft.
        var found = Regex.Match(body, "2 places have less than 50 % green: (\\d+) sq ft in all, likely between (\\d+) sq ft and (\\d+) sq ft");
        Assert.True(found.Success, body);
        Assert.Equal(55.4, double.Parse(found.Groups[1].Value, CultureInfo.InvariantCulture), 3.0);
        Assert.InRange(55.4, double.Parse(found.Groups[2].Value, CultureInfo.InvariantCulture), double.Parse(found.Groups[3].Value, CultureInfo.InvariantCulture));
        Assert.Contains("on the thin spots", body, StringComparison.Ordinal);
        Assert.Contains("extra seed to have at hand", body, StringComparison.Ordinal);

        // The next picture from the same spot has the same marks offered.
        var next = await _app.Get(await _app.Kept(spot, ComposedPhoto.Overview((2.5, 2.0, 0.3))));
        Assert.Contains("All four are marked.", next, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Marks_that_cannot_be_are_named_and_nothing_typed_is_lost()
    {
        var photo = await _app.Kept(await _app.Spot("overview"), ComposedPhoto.Overview());
        var crossed = Marks(order: [0, 1, 3, 2]);
        var answer = await _app.Post(photo + "/marks", crossed, photo);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("sides between the marks cross", answer.Body, StringComparison.Ordinal);
        Assert.Contains($"value=\"{crossed[0].Value}\"", answer.Body, StringComparison.Ordinal);
        var missing = await _app.Post(photo + "/marks", Marks()[2..], photo);
        Assert.Contains("near left is missing", missing.Body, StringComparison.Ordinal);
        var untaped = await _app.Post(photo + "/marks", [.. Marks(), ("tape-right", "20"), ("tape-right.unit", "ft")], photo);
        Assert.Contains("the diagonal are needed", untaped.Body, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"measured\"", await _app.Get(photo), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_script_each_tap_marks_the_next_corner()
    {
        var photo = await _app.Kept(await _app.Spot("overview"), ComposedPhoto.Overview());
        var first = await _app.Post(photo + "/marks", [("tap.x", "34"), ("tap.y", "204")], photo);
        Assert.Equal(HttpStatusCode.OK, first.Status);
        Assert.Contains("Next: near right.", first.Body, StringComparison.Ordinal);
        Assert.Contains("name=\"m1x\" value=\"10\"", first.Body, StringComparison.Ordinal);
        Assert.Contains("name=\"m1y\" value=\"80\"", first.Body, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tapes_round_the_ground_do_as_well_as_a_rectangle()
    {
        var photo = await _app.Kept(await _app.Spot("overview"), ComposedPhoto.Overview((4.0, 3.0, 1.0)));
        (string, string)[] tapes = [("tape-right", "6"), ("tape-right.unit", "m"), ("tape-far", "8"), ("tape-far.unit", "m"), ("tape-left", "6"), ("tape-left.unit", "m"), ("tape-diagonal", "10"), ("tape-diagonal.unit", "m")];
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(photo + "/marks", [.. Marks().Where(m => !m.Name.StartsWith("away", StringComparison.Ordinal)), .. tapes], photo)).Status);
        Assert.Matches("One place has less than 50 % green: (3[2-5]) sq ft", App.Words(await _app.Get(photo)));
    }

    public void Dispose() => _app.Dispose();

    private static (string Name, string Value)[] Marks(int[]? order = null)
    {
        (double, double)[] corners = [ComposedPhoto.Corner(0, 0), ComposedPhoto.Corner(8, 0), ComposedPhoto.Corner(8, 6), ComposedPhoto.Corner(0, 6)];
        return
        [
            .. (order ?? [0, 1, 2, 3]).Select(i => corners[i]).SelectMany((c, i) => new[] { ($"m{i + 1}x", Percent(c.Item1)), ($"m{i + 1}y", Percent(c.Item2)) }),
            ("across", "8"), ("across.unit", "m"), ("away", "6"), ("away.unit", "m"), ("thin", "50"),
        ];
    }

    private static string Percent(double share) => (100.0 * share).ToString("0.###", CultureInfo.InvariantCulture);
}
