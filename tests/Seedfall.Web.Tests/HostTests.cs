using System.Net;
using System.Net.Http.Headers;
using System.Text;

namespace Seedfall.Web.Tests;

public sealed class HostTests : IDisposable
{
    private readonly App _app = new();

    [Theory]
    [InlineData("/")]
    [InlineData("/lawns/new")]
    [InlineData("/weather")]
    [InlineData("/nothing")]
    [InlineData("/notebook.css")]
    public async Task Every_answer_carries_the_strict_headers(string path)
    {
        using var answer = await _app.Client.GetAsync(path);
        Assert.Equal(
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; form-action 'self'; frame-ancestors 'none'; base-uri 'none'; connect-src 'self'; manifest-src 'self'; worker-src 'self'",
            Assert.Single(answer.Headers.GetValues("Content-Security-Policy")));
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("same-origin", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.False(answer.Headers.Contains("Server"));
    }

    [Fact]
    public async Task No_page_has_anything_inline()
    {
        using var demo = new App(demo: true);
        foreach (var path in (string[])["/", "/lawns/new", "/weather", "/weather/1", "/lawns/from-file"])
        {
            var body = await demo.Get(path);
            Assert.DoesNotContain("style=\"", body, StringComparison.Ordinal);
            Assert.DoesNotContain("<style", body, StringComparison.Ordinal);
            Assert.DoesNotContain("blazor.web.js", body, StringComparison.Ordinal);
            Assert.DoesNotMatch("\\son[a-z]+=", body);
            Assert.DoesNotMatch("<script(?![^>]*\\ssrc=)(?![^>]*type=\"application/json\")", body);
        }
    }

    [Fact]
    public async Task A_form_without_its_token_is_refused()
    {
        var answer = await _app.Send("/lawns/new", new FormUrlEncodedContent(App.SoundLawn().Select(f => KeyValuePair.Create(f.Name, f.Value))));
        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
        Assert.Contains("This form could not be taken", answer.Body, StringComparison.Ordinal);
        Assert.DoesNotContain("Ash Street", await _app.Get("/"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_token_of_another_browser_is_refused()
    {
        using var other = _app.NewClient();
        var token = System.Text.RegularExpressions.Regex.Match(await other.GetStringAsync("/lawns/new"), "name=\"form-token\" value=\"([^\"]+)\"").Groups[1].Value;
        await _app.Get("/");
        var answer = await _app.Send("/lawns/new", new FormUrlEncodedContent(App.SoundLawn(("form-token", token)).Select(f => KeyValuePair.Create(f.Name, f.Value))));
        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
    }

    [Fact]
    public async Task A_foreign_host_name_is_not_answered()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        request.Headers.Host = "rebound.example";
        using var answer = await _app.Client.SendAsync(request);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("/lawns/new", 2L << 20)]
    [InlineData("/weather", 65L << 20)]
    public async Task What_says_it_is_too_large_is_not_read(string path, long length)
    {
        var content = new StreamContent(new UnreadStream(length));
        content.Headers.ContentType = new MediaTypeHeaderValue("application/x-www-form-urlencoded");
        var answer = await _app.Send(path, content);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.Status);
        Assert.Contains("Too large", answer.Body, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Units_turn_over_and_the_way_back_stays_here()
    {
        Assert.Equal("/weather", (await _app.Post("/units", [("system", "metric"), ("back", "/weather")], "/")).Location);
        Assert.Contains("Show US units first", await _app.Get("/"), StringComparison.Ordinal);
        foreach (var elsewhere in (string[])["https://example.org/", "//example.org", "/\\example.org", "javascript:alert(1)", ""])
        {
            Assert.Equal("/", (await _app.Post("/units", [("system", "us"), ("back", elsewhere)], "/")).Location);
        }
    }

    [Fact]
    public async Task The_demo_is_there_and_said_to_be_invented()
    {
        using var demo = new App(demo: true);
        var words = App.Words(await demo.Get("/"));
        Assert.Equal(3, System.Text.RegularExpressions.Regex.Matches(words, "Invented, for trying out").Count);
    }

    [Fact]
    public async Task A_lawn_file_goes_out_and_comes_back_in()
    {
        using var demo = new App(demo: true);
        const string lawn = DemoLawns.Mill;
        var file = await demo.Get(lawn + "/lawn.json");
        var answer = await demo.Upload("/lawns/from-file", [("lawn.json", Encoding.UTF8.GetBytes(file))]);
        Assert.Equal(HttpStatusCode.Found, answer.Status);
        Assert.NotEqual(lawn + "/notes", answer.Location);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("not json")]
    [InlineData("")]
    [InlineData("{\"format\":\"seedfall-lawn/1\",\"id\":\"a\",\"name\":\"<b>\",\"place\":{\"latitude\":NaN}}")]
    public async Task A_bad_lawn_file_is_refused_with_its_place(string text)
    {
        var answer = await _app.Upload("/lawns/from-file", [("bad<i>.json", Encoding.UTF8.GetBytes(text))]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("The file was not taken", answer.Body, StringComparison.Ordinal);
        Assert.DoesNotContain("bad<i>", answer.Body, StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();

    /// <summary>A body that fails the test when anybody reads it.</summary>
    private sealed class UnreadStream(long length) : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => true;

        public override bool CanWrite => false;

        public override long Length { get; } = length;

        public override long Position { get; set; }

        public override void Flush()
        {
        }

        public override int Read(byte[] buffer, int offset, int count) => throw new IOException("the body was read");

        public override long Seek(long offset, SeekOrigin origin) => Position = offset;

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
