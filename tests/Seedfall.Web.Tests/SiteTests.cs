using System.Net;
using System.Text.RegularExpressions;

namespace Seedfall.Web.Tests;

public sealed class SiteTests : IDisposable
{
    private static readonly (string Name, string Value)[] House =
        [("obstacle", "House & <shed>"), ("kind", "solid"), ("left", "90"), ("right", "270"), ("fists", "6"), ("height.unit", "ft"), ("distance.unit", "ft")];

    private readonly App _app = new();

    [Fact]
    public async Task What_stands_around_a_patch_gives_its_hours_of_sun()
    {
        var lawn = await _app.TakeOn();
        Assert.Contains("open sky", await _app.Get(lawn + "/site/sun/front"), StringComparison.Ordinal);
        await Add(lawn, House);
        var page = await _app.Get(lawn + "/site/sun/front");
        Assert.Contains("House &amp; &lt;shed&gt;", page, StringComparison.Ordinal);
        Assert.Contains("From 90° to 270°, up to 60°", App.Words(page), StringComparison.Ordinal);
        Assert.Contains("The plan uses this number", page, StringComparison.Ordinal);
        Assert.Contains("hours, reckoned from what stands around it.", await _app.Get(lawn + "/site"), StringComparison.Ordinal);
        Assert.Contains("\"heightAngle\": 60", await _app.Get(lawn + "/lawn.json"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_obstacle_is_changed_and_taken_away()
    {
        var lawn = await _app.TakeOn();
        await Add(lawn, House);
        Assert.Matches("name=\"angle\" value=\"60\"", await _app.Get(lawn + "/site/sun/front/1"));
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(lawn + "/site/sun/front/1", [.. House.Where(f => f.Name != "fists"), ("angle", "20"), Version(await _app.Get(lawn + "/site/sun/front/1"))])).Status);
        Assert.Contains("up to 20°", await _app.Get(lawn + "/site/sun/front"), StringComparison.Ordinal);
        await _app.Post(lawn + "/site/sun/front/1/remove", [Version(await _app.Get(lawn + "/site/sun/front/1"))], lawn + "/site/sun/front/1");
        Assert.Contains("open sky", await _app.Get(lawn + "/site/sun/front"), StringComparison.Ordinal);
        await _app.Get(lawn + "/site/sun/front/1", HttpStatusCode.NotFound);
        await _app.Get(lawn + "/site/sun/nowhere", HttpStatusCode.NotFound);
        await _app.Get("/lawns/nowhere/site", HttpStatusCode.NotFound);
    }

    [Theory]
    [InlineData("fists", "", "How high does it reach?")]
    [InlineData("fists", "12", "from 0 to 9 fists")]
    [InlineData("left", "400", "from 0 to 360")]
    [InlineData("right", "90", "must lie elsewhere")]
    [InlineData("kind", "glass", "choose one of the answers")]
    [InlineData("angle", "30", "not both")]
    public async Task A_wrong_obstacle_is_shown_again_with_what_was_typed(string name, string value, string says)
    {
        var lawn = await _app.TakeOn();
        var answer = await Send(lawn, [.. House.Where(f => f.Name != name), (name, value)]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(says, App.Words(answer.Body), StringComparison.Ordinal);
        Assert.Contains("House &amp; &lt;shed&gt;", answer.Body, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_page_left_open_does_not_undo_a_later_change()
    {
        var lawn = await _app.TakeOn();
        var old = Version(await _app.Get(lawn + "/site/sun/front/new"));
        await Add(lawn, House);
        Assert.Equal(HttpStatusCode.Conflict, (await _app.Post(lawn + "/site/sun/front/new", [.. House, old])).Status);
    }

    [Fact]
    public async Task Editing_the_patch_leaves_what_stands_around_it()
    {
        var lawn = await _app.TakeOn();
        await Add(lawn, House);
        var fields = FormFields.Of(await _app.Get(lawn + "/notes/patches/1")).ToArray();
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(lawn + "/notes/patches/1", fields)).Status);
        Assert.Contains("\"heightAngle\": 60", await _app.Get(lawn + "/lawn.json"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_jar_is_read_from_the_address_and_kept_only_when_told()
    {
        var lawn = await _app.TakeOn();
        var page = await _app.Get(lawn + "/site/jar?sand=40&sand.unit=mm&silt=80&silt.unit=mm&clay=100&clay.unit=mm");
        Assert.Contains("Loam, 100 % sure of the reading", App.Words(page), StringComparison.Ordinal);
        Assert.DoesNotContain("\"texture\"", await _app.Get(lawn + "/lawn.json"), StringComparison.Ordinal);
        await _app.Post(lawn + "/site/texture", [("texture", "loam"), Version(page)], lawn + "/site/jar?sand=40&sand.unit=mm&silt=80&silt.unit=mm&clay=100&clay.unit=mm");
        Assert.Contains("\"texture\": \"loam\"", await _app.Get(lawn + "/lawn.json"), StringComparison.Ordinal);
        Assert.Contains("The marks must rise", App.Words(await _app.Get(lawn + "/site/jar?sand=80&sand.unit=mm&silt=40&silt.unit=mm&clay=100&clay.unit=mm", HttpStatusCode.UnprocessableEntity)), StringComparison.Ordinal);
        Assert.Contains("All three marks are needed", App.Words(await _app.Get(lawn + "/site/jar?sand=2", HttpStatusCode.UnprocessableEntity)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_feel_key_leads_to_a_class_and_its_neighbors()
    {
        var lawn = await _app.TakeOn();
        var words = App.Words(await _app.Get(lawn + "/site/feel?ball=yes&ribbon=long&feel=gritty"));
        Assert.Contains("It feels like sandy clay", words, StringComparison.Ordinal);
        Assert.Contains("sandy clay loam", words, StringComparison.Ordinal);
        Assert.Contains("It feels like sand", App.Words(await _app.Get(lawn + "/site/feel?ball=no")), StringComparison.Ordinal);
        await _app.Get(lawn + "/site/feel?ball=yes", HttpStatusCode.UnprocessableEntity);
    }

    [Fact]
    public async Task A_report_in_pounds_of_phosphate_per_acre_is_read_as_ppm_of_phosphorus()
    {
        var lawn = await _app.TakeOn();
        await _app.Post(lawn + "/site/report", [("ph", "6.4"), ("extract", "bray"), ("phosphorus", "100"), ("phosphorus.unit", "lbAOx"), ("lime", "0"), ("lime.unit", "lbM"), Version(await _app.Get(lawn + "/site/report"))]);
        var words = App.Words(await _app.Get(lawn + "/site/report"));
        Assert.Contains("Soil phosphorus 21.8 ppm by Bray P-1", words, StringComparison.Ordinal); // 100 / 2 x 0.4364
        Assert.Contains("The lab recommends no lime.", words, StringComparison.Ordinal);
        var fields = FormFields.Of(await _app.Get(lawn + "/notes/soil")).ToArray();
        await _app.Post(lawn + "/notes/soil", fields);
        Assert.Contains("\"extract\": \"bray1\"", (await _app.Get(lawn + "/lawn.json")).Replace("bray-1", "bray1", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await _app.Post(lawn + "/site/report", [("ph", "64"), ("extract", "m3")])).Status);
    }

    [Fact]
    public async Task The_climate_comes_from_the_weather_file()
    {
        var lawn = await _app.TakeOn();
        Assert.Contains("no weather yet", await _app.Get(lawn + "/site/climate"), StringComparison.Ordinal);
        await _app.Upload("/weather", [("invented.csv", App.InventedWeather())], [("lawn", lawn["/lawns/".Length..])]);
        var words = App.Words(await _app.Get(lawn + "/site/climate"));
        Assert.Matches("Hardiness zone [0-9]+[ab], by 15 winters of the 30", words);
        Assert.Contains("First 32 °F night of autumn", words, StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();

    private async Task Add(string lawn, (string Name, string Value)[] fields) => Assert.Equal(HttpStatusCode.Found, (await Send(lawn, fields)).Status);

    private async Task<Answer> Send(string lawn, (string Name, string Value)[] fields) =>
        await _app.Post(lawn + "/site/sun/front/new", [.. fields, Version(await _app.Get(lawn + "/site/sun/front/new"))]);

    private static (string, string) Version(string page) => ("version", Regex.Match(page, "name=\"version\" value=\"([0-9]+)\"").Groups[1].Value);
}
