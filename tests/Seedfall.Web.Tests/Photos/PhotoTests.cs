using System.Globalization;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Seedfall.Photos.Reading;
using Seedfall.Web.Data;

namespace Seedfall.Web.Tests.Photos;

/// <summary>Photographs from upload to thin spots, on pictures composed in code.</summary>
public sealed class PhotoTests : IDisposable
{
    private readonly App _app = PhotoSteps.Started();

    [Fact]
    public async Task A_picture_is_measured_on_arrival_and_shown_with_what_was_counted()
    {
        var spot = await _app.Spot("down");
        var body = await _app.Get(await _app.Kept(spot, ComposedPhoto.Quadrat(0.6)));
        var cover = double.Parse(Regex.Match(body, "class=\"measured\">(\\d+) % green").Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.Equal(60.0, cover, 8.0);
        foreach (Match picture in Regex.Matches(body, "src=\"(/lawns/[^\"]+\\.jpg\\?v=1)\""))
        {
            using var answer = await _app.Client.GetAsync(picture.Groups[1].Value);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.Equal("image/jpeg", answer.Content.Headers.ContentType!.MediaType);
            Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
            Assert.Contains("sandbox", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
            Assert.True(answer.Headers.CacheControl!.Private);
        }
    }

    [Fact]
    public async Task A_measured_cover_can_be_taken_as_a_throw_of_the_walk_over()
    {
        var body = await _app.Get(await _app.Kept(await _app.Spot("down"), ComposedPhoto.Quadrat(0.6)));
        var step = WebUtility.HtmlDecode(Regex.Match(body, "href=\"([^\"]+/quadrats\\?photo=[0-9.]+)\"").Groups[1].Value);
        var form = await _app.Get(step);
        var percent = Regex.Match(step, "photo=([0-9.]+)").Groups[1].Value;
        Assert.Contains($"name=\"photo\" value=\"{percent}\"", form, StringComparison.Ordinal);
        var saved = await _app.Post(step.Split('?')[0], [("points", ""), ("living", ""), ("weeds", ""), ("photo", percent)], step);
        Assert.Equal(HttpStatusCode.Found, saved.Status);
        Assert.Contains("from 1 throw", App.Words(await _app.Get(step.Split("/quadrats")[0] + "/sum-up")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_gray_card_is_kept_with_the_picture_and_can_be_taken_back()
    {
        var photo = await _app.Kept(await _app.Spot("down"), ComposedPhoto.Quadrat(0.5));
        var wrong = await _app.Post(photo + "/card", [("card-left", "30"), ("card-right", "20"), ("card-top", "5"), ("card-bottom", "15")], photo);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.Status);
        Assert.Contains("right of its left edge", App.Words(wrong.Body), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Found, (await _app.Post(photo + "/card", [("card-left", "5"), ("card-right", "20"), ("card-top", "5"), ("card-bottom", "15")], photo)).Status);
        Assert.Contains("A gray card sets the white balance", await _app.Get(photo), StringComparison.Ordinal);
        await _app.Post(photo + "/card", [("forget", "yes")], photo);
        Assert.Contains("A gray card lies in the picture", await _app.Get(photo), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_of_the_place_is_kept_but_the_day_is()
    {
        var sent = ComposedPhoto.WithPlace(ComposedPhoto.Quadrat(0.5));
        Assert.True(PhotoFile.Read(sent).Photo!.HadLocation, "the test's own picture must carry a place");
        var page = await _app.Get(await _app.Kept(await _app.Spot("down"), sent));
        Assert.Contains("Sep 20, 2026", page, StringComparison.Ordinal);
        var files = Directory.GetFiles(Path.Combine(_app.Folder, "photos"));
        Assert.Equal(3, files.Length);
        Assert.All(files, file =>
        {
            var bytes = File.ReadAllBytes(file);
            Assert.Equal(-1, bytes.AsSpan().IndexOf("Exif"u8));
            var kept = PhotoFile.Read(bytes).Photo!;
            Assert.False(kept.HadLocation);
            Assert.Null(kept.TakenAt);
            Assert.Matches("^[0-9a-f]{32}(-(small|overlay))?\\.jpg$", Path.GetFileName(file));
        });
    }

    [Theory]
    [InlineData("not a picture at all", "something else")]
    [InlineData("", "Take or choose a picture")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\"/>", "something else")]
    public async Task What_is_no_picture_is_refused_and_nothing_is_kept(string content, string said)
    {
        var spot = await _app.Spot("down");
        var answer = await _app.Upload(spot, [("<b>x.jpg", Encoding.UTF8.GetBytes(content))], field: "photo");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(said, WebUtility.HtmlDecode(answer.Body), StringComparison.Ordinal);
        Assert.DoesNotContain("<b>x", answer.Body, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(Path.Combine(_app.Folder, "photos")));
    }

    [Fact]
    public async Task A_cut_off_picture_is_refused()
    {
        var whole = ComposedPhoto.Quadrat(0.5);
        var answer = await _app.Upload(await _app.Spot("down"), [("a.jpg", whole[..(whole.Length / 3)])], field: "photo");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Empty(Directory.GetFiles(Path.Combine(_app.Folder, "photos")));
    }

    [Fact]
    public async Task An_upload_too_large_or_without_its_token_is_refused_unread()
    {
        var spot = await _app.Spot("down");
        using var content = new MultipartFormDataContent { { new ByteArrayContent(ComposedPhoto.Quadrat(0.5)), "photo", "a.jpg" } };
        Assert.Equal(HttpStatusCode.BadRequest, (await _app.Send(spot, content)).Status);
        var large = new StreamContent(Stream.Null);
        large.Headers.ContentLength = 42L << 20;
        large.Headers.ContentType = new("multipart/form-data");
        using var request = new HttpRequestMessage(HttpMethod.Post, spot) { Content = large };
        try
        {
            using var answer = await _app.Client.SendAsync(request);
            Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
        }
        catch (HttpRequestException)
        {
            // The test's own client may notice first that its stream is shorter than it said.
        }

        Assert.Empty(Directory.GetFiles(Path.Combine(_app.Folder, "photos")));
    }

    [Fact]
    public async Task Answers_to_ten_points_are_kept_and_the_picture_is_measured_again()
    {
        var photo = await _app.Kept(await _app.Spot("down"), ComposedPhoto.Quadrat(0.5));
        var form = await _app.Get(photo);
        var points = Regex.Matches(form, "name=\"at\\.(\\d+)\" value=\"([^\"]+)\"");
        Assert.Equal(10, points.Count);
        var answer = await _app.Post(photo + "/taps", [.. points.SelectMany(p => new[] { ("at." + p.Groups[1].Value, p.Groups[2].Value), ("answer." + p.Groups[1].Value, int.Parse(p.Groups[1].Value, CultureInfo.InvariantCulture) % 2 == 0 ? "green" : "not") })], photo);
        Assert.Equal(photo + "#measure", answer.Location);
        var after = await _app.Get(photo);
        Assert.Contains("10 answers count already", after, StringComparison.Ordinal);
        Assert.Contains("overlay.jpg?v=2", after, StringComparison.Ordinal);
        Assert.Empty(Points(after).Intersect(points.Select(p => p.Groups[2].Value)));
        await _app.Post(photo + "/taps", [("forget", "yes")], photo);
        Assert.DoesNotContain("count already", await _app.Get(photo), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_script_a_tap_on_the_picture_is_one_answer_and_nonsense_is_none()
    {
        var photo = await _app.Kept(await _app.Spot("down"), ComposedPhoto.Quadrat(0.5));
        await _app.Post(photo + "/taps", [("tapped", "green"), ("tap.x", "170"), ("tap.y", "100")], photo);
        Assert.Contains("1 answer counts already", await _app.Get(photo), StringComparison.Ordinal);
        await _app.Post(photo + "/taps", [("tapped", "green"), ("tap.x", "9999"), ("tap.y", "5"), ("at.1", "NaN 0.5"), ("answer.1", "green"), ("at.2", "0.5"), ("answer.2", "not"), ("at.3", "0.4 -1"), ("answer.3", "not")], photo);
        Assert.Contains("1 answer counts already", await _app.Get(photo), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_measured_is_written_in_the_log_and_struck_when_it_changes()
    {
        var photo = await _app.Kept(await _app.Spot("down"), ComposedPhoto.Quadrat(0.6));
        var lawn = photo[..photo.IndexOf("/photos", StringComparison.Ordinal)];
        Assert.Contains("from a photograph", await _app.Get(lawn + "/log"), StringComparison.Ordinal);
        await _app.Post(photo + "/taken", [("taken", "2026-09-22")], photo);
        Assert.Contains("Sep 22, 2026", await _app.Get(photo), StringComparison.Ordinal);
        var log = System.Text.Json.JsonDocument.Parse(await _app.Get(lawn + "/log/log.json")).RootElement.GetProperty("entries");
        Assert.Equal(3, log.GetArrayLength());
        await _app.Post(photo + "/remove", [], photo);
        Assert.Contains("the picture was removed", await _app.Get(lawn + "/log"), StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(Path.Combine(_app.Folder, "photos")));
    }

    [Fact]
    public async Task Before_and_after_stand_side_by_side_and_the_curve_is_drawn()
    {
        await _app.Upload("/weather", [("w.csv", App.InventedWeather())]);
        var spot = await _app.Spot("down", weather: true);
        await _app.Kept(spot, ComposedPhoto.Quadrat(0.4), "2026-08-20");
        await _app.Kept(spot, ComposedPhoto.Quadrat(0.7), "2026-09-24");
        var beside = await _app.Get(spot + "/beside");
        Assert.Matches("From \\d+ % to \\d+ % green in 35 days", App.Words(beside));
        Assert.Equal(2, Regex.Count(beside, "picture\\.jpg\\?v="));
        var photos = await _app.Get(spot[..spot.LastIndexOf('/')]);
        Assert.Contains("measured-curve", photos, StringComparison.Ordinal);
        Assert.Contains("How it comes on", photos, StringComparison.Ordinal);
        Assert.True(Regex.Count(photos, "class=\"m-read\"") >= 1);
    }

    [Fact]
    public async Task Another_lawns_address_shows_nothing_and_removing_a_lawn_removes_its_files()
    {
        var photo = await _app.Kept(await _app.Spot("down"), ComposedPhoto.Quadrat(0.5));
        var other = await _app.TakeOn(("name", "Elsewhere"));
        var (tail, lawn) = (photo[photo.IndexOf("/photos", StringComparison.Ordinal)..], photo[..photo.IndexOf("/photos", StringComparison.Ordinal)]);
        await _app.Get(other + tail, HttpStatusCode.NotFound);
        await _app.Get(other + tail + "/picture.jpg", HttpStatusCode.NotFound);
        await _app.Get(photo + "/nothing.jpg", HttpStatusCode.NotFound);
        await _app.Get(photo + "/..%2f..%2fseedfall.db", HttpStatusCode.NotFound);
        await _app.Post(lawn + "/remove", []);
        Assert.Empty(Directory.GetFiles(Path.Combine(_app.Folder, "photos")));
        await using var db = await _app.Services.GetRequiredService<IDbContextFactory<SeedfallDb>>().CreateDbContextAsync();
        Assert.Equal(0, await db.Photos.CountAsync());
    }

    [Fact]
    public async Task The_camera_may_be_asked_for_by_this_app_only()
    {
        using var answer = await _app.Client.GetAsync("/");
        Assert.Contains("camera=(self)", Assert.Single(answer.Headers.GetValues("Permissions-Policy")), StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();

    private static IEnumerable<string> Points(string page) => Regex.Matches(page, "name=\"at\\.\\d+\" value=\"([^\"]+)\"").Select(m => m.Groups[1].Value);
}
