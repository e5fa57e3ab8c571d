using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using Seedfall.Engine.Weather;
using Seedfall.Web.Data;
using Seedfall.Web.Features.Site;
using Seedfall.Web.Host;

namespace Seedfall.Web.Tests;

/// <summary>The lookup with a stand-in for the service: nothing here goes over the network.</summary>
public sealed class SoilSurveyTests
{
    // Composed by hand after the documented form; the soil is invented.
    private const string Table = """
        {"Table":[
          ["mukey","muname","cokey","compname","comppct_r","drainagecl","hydgrp","hzdept_r","hzdepb_r","sandtotal_r","claytotal_r","om_r","ph1to1h2o_r","ksat_r"],
          ["m","m","m","m","m","m","m","m","m","m","m","m","m","m"],
          ["9990001","Example-Urban land complex","1","Urban land","55",null,null,null,null,null,null,null,null,null],
          ["9990001","Example-Urban land complex","2","Example","45","Well drained","B","0","25","40","18","3.2","6.6","9"]]}
        """;

    private static readonly Place Here = new(42.312345, -84.123456, 280);

    [Fact]
    public async Task One_request_in_the_documented_form_goes_to_the_one_address()
    {
        var wire = new Wire(_ => Answered(Table));
        var answer = await Survey(wire).Ask(Here, TestContext.Current.CancellationToken);
        Assert.Equal("9990001", answer.Answer!.Unit!.Key);
        var (request, body) = Assert.Single(wire.Sent);
        Assert.Equal((HttpMethod.Post, "https://sdmdataaccess.sc.egov.usda.gov/tabular/post.rest"), (request.Method, request.RequestUri!.ToString()));
        Assert.Contains("ops@example.org", string.Join(" ", request.Headers.GetValues("User-Agent")), StringComparison.Ordinal);
        using var sent = JsonDocument.Parse(body);
        Assert.Contains("point(-84.1235 42.3123)", sent.RootElement.GetProperty("query").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Off_nothing_is_sent()
    {
        var wire = new Wire(_ => Answered(Table));
        Assert.Contains("off", (await Survey(wire, mail: null).Ask(Here, TestContext.Current.CancellationToken)).Trouble, StringComparison.Ordinal);
        Assert.Contains("outside", (await Survey(wire).Ask(new Place(50.1, 8.7, 100), TestContext.Current.CancellationToken)).Trouble, StringComparison.Ordinal);
        Assert.Empty(wire.Sent);
    }

    [Fact]
    public async Task Trouble_is_told_in_a_sentence_and_the_question_is_not_repeated()
    {
        (Func<HttpRequestMessage, HttpResponseMessage> Does, string Says)[] cases =
        [
            (_ => new HttpResponseMessage(HttpStatusCode.ServiceUnavailable), "503"),
            (_ => new HttpResponseMessage(HttpStatusCode.BadRequest), "did not take the question"),
            (_ => new HttpResponseMessage(HttpStatusCode.Redirect), "302"),
            (_ => throw new HttpRequestException("no route"), "could not be reached"),
            (_ => throw new TaskCanceledException("slow"), "did not answer within 20 seconds"),
        ];
        foreach (var (does, says) in cases)
        {
            var wire = new Wire(does);
            var answer = await Survey(wire).Ask(Here, TestContext.Current.CancellationToken);
            Assert.Contains(says, answer.Trouble, StringComparison.Ordinal);
            Assert.Single(wire.Sent);
        }
    }

    [Fact]
    public async Task An_endless_answer_is_cut_off()
    {
        var answer = await Survey(new Wire(_ => new HttpResponseMessage(HttpStatusCode.OK) { Content = new ByteArrayContent(new byte[8 << 20]) })).Ask(Here, TestContext.Current.CancellationToken);
        Assert.Contains("at most 2 MB", answer.Answer!.Problem!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_survey_says_is_offered_and_kept_only_where_ticked()
    {
        using var asked = new WebApplicationFactory<Program>().WithWebHostBuilder(host =>
        {
            host.UseSetting("data", Directory.CreateTempSubdirectory("seedfall-web-").FullName);
            host.UseSetting("demo", "true");
            host.UseSetting("soilmail", "ops@example.org");
            host.ConfigureServices(services => services.AddHttpClient<SoilSurvey>().ConfigurePrimaryHttpMessageHandler(() => new Wire(_ => Answered(Table))));
        });
        using var client = asked.CreateClient(new() { AllowAutoRedirect = false, BaseAddress = new Uri("http://localhost") });
        var lawn = Regex.Match(await client.GetStringAsync("/", TestContext.Current.CancellationToken), "href=\"(/lawns/[^\"]*invente[^\"]*)\"").Groups[1].Value;
        var before = await client.GetStringAsync(lawn + "/lawn.json", TestContext.Current.CancellationToken);
        var shown = await Post(client, lawn + "/site/soil-map", await client.GetStringAsync(lawn + "/site/soil-map", TestContext.Current.CancellationToken), []);
        Assert.Contains("urban land", shown.Body, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(before, await client.GetStringAsync(lawn + "/lawn.json", TestContext.Current.CancellationToken));

        var kept = await Post(client, lawn + "/site/soil-map/keep", shown.Body, [("take-organic", "yes"), ("organic", "3.2"), ("texture", "clay")]);
        Assert.Equal(HttpStatusCode.Found, kept.Status);
        var after = await client.GetStringAsync(lawn + "/lawn.json", TestContext.Current.CancellationToken);
        Assert.Contains("\"organicMatter\": \"3.2 %\"", after, StringComparison.Ordinal);
        Assert.DoesNotContain("\"texture\": \"clay\"", after, StringComparison.Ordinal);
    }

    private static async Task<Answer> Post(HttpClient client, string path, string page, (string Name, string Value)[] fields)
    {
        string Hidden(string name) => WebUtility.HtmlDecode(Regex.Match(page, $"name=\"{name}\" value=\"([^\"]*)\"").Groups[1].Value);
        using var content = new FormUrlEncodedContent([.. fields.Select(f => KeyValuePair.Create(f.Name, f.Value)), KeyValuePair.Create("form-token", Hidden("form-token")), KeyValuePair.Create("version", Hidden("version"))]);
        using var answer = await client.PostAsync(path, content);
        return new(answer.StatusCode, answer.Headers.Location?.OriginalString, await answer.Content.ReadAsStringAsync());
    }

    private static SoilSurvey Survey(Wire wire, string? mail = "ops@example.org") =>
        new(new HttpClient(wire), new Settings(new DataFolder("/nowhere"), 0, IPAddress.Loopback, Demo: false, [], mail), NullLogger<SoilSurvey>.Instance);

    private static HttpResponseMessage Answered(string json) => new(HttpStatusCode.OK) { Content = new StringContent(json, Encoding.UTF8, "application/json") };

    private sealed class Wire(Func<HttpRequestMessage, HttpResponseMessage> answer) : HttpMessageHandler
    {
        public List<(HttpRequestMessage Request, string Body)> Sent { get; } = [];

        protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            Sent.Add((request, await request.Content!.ReadAsStringAsync(cancellationToken)));
            return answer(request);
        }
    }
}
