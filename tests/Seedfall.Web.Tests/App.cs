using System.Globalization;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace Seedfall.Web.Tests;

/// <summary>The app in memory on a data folder of its own, and a browser of sorts: it keeps cookies and sends form tokens.</summary>
public sealed partial class App : IDisposable
{
    private static readonly (string Name, string Value)[] Sound =
    [
        ("name", "Ash Street"), ("latitude", "42.31"), ("latitude.unit", "N"), ("longitude", "84.12"), ("longitude.unit", "W"), ("elevation", "920"), ("elevation.unit", "ft"),
        ("patch", "Front"), ("grasses", "tf"), ("cover", "55"), ("shape", "rectangle"), ("long", "60"), ("long.unit", "ft"), ("wide", "40"), ("wide.unit", "ft"),
    ];

    private readonly WebApplicationFactory<Program> _factory;

    public App(bool demo = false, TimeProvider? clock = null)
    {
        Folder = Directory.CreateTempSubdirectory("seedfall-web-").FullName;
        _factory = new WebApplicationFactory<Program>().WithWebHostBuilder(host =>
        {
            host.UseSetting("data", Folder);
            host.UseSetting("demo", demo ? "true" : "false");
            host.ConfigureServices(services =>
            {
                if (clock is not null)
                {
                    services.Replace(ServiceDescriptor.Singleton(clock));
                }
            });
        });
        Client = NewClient();
    }

    public string Folder { get; }

    public HttpClient Client { get; }

    public IServiceProvider Services => _factory.Services;

    /// <summary>Another browser: no cookies of the first.</summary>
    public HttpClient NewClient() => _factory.CreateClient(new() { AllowAutoRedirect = false, BaseAddress = new Uri("http://localhost") });

    public async Task<string> Get(string path, HttpStatusCode expected = HttpStatusCode.OK)
    {
        using var answer = await Client.GetAsync(path);
        var body = await answer.Content.ReadAsStringAsync();
        Assert.True(expected == answer.StatusCode, $"GET {path}: {answer.StatusCode}\n{Words(body)}");
        return body;
    }

    /// <summary>Posts a form with the token (and, where the page has one, the stamp) of the page it stands on.</summary>
    public async Task<Answer> Post(string path, (string Name, string Value)[] fields, string? page = null)
    {
        var form = await Get(page ?? path);
        return await Send(path, new FormUrlEncodedContent(WithHidden(form, fields).Select(f => KeyValuePair.Create(f.Name, f.Value))));
    }

    public async Task<Answer> Upload(string path, (string Name, byte[] Bytes)[] files, (string Name, string Value)[]? fields = null, string? page = null, string field = "files")
    {
        using var content = new MultipartFormDataContent();
        foreach (var (name, value) in WithHidden(await Get(page ?? path), fields ?? []))
        {
            content.Add(new StringContent(value), name);
        }

        foreach (var (name, bytes) in files)
        {
            content.Add(new ByteArrayContent(bytes), field, name);
        }

        return await Send(path, content);
    }

    public async Task<Answer> Send(string path, HttpContent content)
    {
        using var answer = await Client.PostAsync(path, content);
        return new(answer.StatusCode, answer.Headers.Location?.OriginalString, await answer.Content.ReadAsStringAsync());
    }

    /// <summary>A first screen filled in as it should be; later fields win.</summary>
    public static (string Name, string Value)[] SoundLawn(params (string Name, string Value)[] instead) =>
        [.. Sound.Where(f => instead.All(i => i.Name != f.Name)), .. instead];

    /// <summary>Takes a lawn on and returns its address.</summary>
    public async Task<string> TakeOn(params (string Name, string Value)[] instead)
    {
        var answer = await Post("/lawns/new", SoundLawn(instead));
        Assert.True(answer.Status == HttpStatusCode.Found, Words(answer.Body));
        return answer.Location![..^"/notes".Length];
    }

    /// <summary>Sixteen years of weather made from a sine and a seeded generator: invented, measured nowhere.</summary>
    public static byte[] InventedWeather(int years = 16)
    {
        var (csv, random) = (new StringBuilder("DATE,TMAX,TMIN,PRCP\n"), new Random(7));
        for (var day = new DateOnly(2010, 1, 1); day.Year < 2010 + years; day = day.AddDays(1))
        {
            var mean = 9.5 - 13.5 * Math.Cos(2.0 * Math.PI * (day.DayOfYear - 20) / 365.25) + 4.0 * (random.NextDouble() - 0.5);
            var rain = random.NextDouble() < 0.3 ? 8.0 * random.NextDouble() : 0.0;
            csv.Append(CultureInfo.InvariantCulture, $"{day:yyyy-MM-dd},{mean + 6.0:0.0},{mean - 6.0:0.0},{rain:0.0}\n");
        }

        return Encoding.UTF8.GetBytes(csv.ToString());
    }

    /// <summary>A page's text without its tags, for messages.</summary>
    public static string Words(string html) => WebUtility.HtmlDecode(Blanks().Replace(Tags().Replace(html, " "), " ")).Trim();

    public void Dispose()
    {
        Client.Dispose();
        _factory.Dispose();
        Directory.Delete(Folder, recursive: true);
    }

    private static IEnumerable<(string Name, string Value)> WithHidden(string page, (string Name, string Value)[] fields)
    {
        foreach (var name in (string[])["form-token", "stamp"])
        {
            if (fields.All(f => f.Name != name) && Regex.Match(page, $"name=\"{name}\" value=\"([^\"]*)\"") is { Success: true } hidden)
            {
                yield return (name, WebUtility.HtmlDecode(hidden.Groups[1].Value));
            }
        }

        foreach (var field in fields)
        {
            yield return field;
        }
    }

    [GeneratedRegex("<(style|script)[\\s\\S]*?</\\1>|<[^>]+>")]
    private static partial Regex Tags();

    [GeneratedRegex("\\s+")]
    private static partial Regex Blanks();
}

public sealed record Answer(HttpStatusCode Status, string? Location, string Body);
