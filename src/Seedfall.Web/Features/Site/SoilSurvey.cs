using System.Net;
using System.Net.Http.Headers;
using System.Reflection;
using Seedfall.Engine.Weather;
using Seedfall.Weather.Soils;
using Seedfall.Web.Host;

namespace Seedfall.Web.Features.Site;

/// <summary>An answer of the soil survey, or the trouble that kept it away, in one sentence.</summary>
public sealed record SurveyAnswer(SoilMapAnswer? Answer, string? Trouble);

/// <summary>
/// Asks the public soil survey of the United States for one place. Off unless the operator gave a mail address to be reached at;
/// one address compiled in, no redirects, one try, a bound on time and size.
/// </summary>
internal sealed class SoilSurvey(HttpClient http, Settings settings, ILogger<SoilSurvey> log)
{
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    /// <summary>How the service is reached where no test stands in for it.</summary>
    public static HttpMessageHandler Wire() => new SocketsHttpHandler
    {
        AllowAutoRedirect = false,
        AutomaticDecompression = DecompressionMethods.GZip,
        PooledConnectionLifetime = TimeSpan.FromMinutes(5),
        UseCookies = false,
    };

    /// <summary>What the survey says of a place. Never throws for what the network or the service does.</summary>
    public async Task<SurveyAnswer> Ask(Place place, CancellationToken cancellation)
    {
        if (settings.SoilSurveyMail is not { } mail)
        {
            return new(null, "The lookup is off: whoever runs this Seedfall has not turned it on.");
        }

        if (!SoilDataQuery.MayKnow(place))
        {
            return new(null, "The survey covers the United States and its islands; this place lies outside.");
        }

        using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        patience.CancelAfter(Patience);
        try
        {
            using var request = Request(place, mail);
            using var answer = await http.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, patience.Token);
            return answer.StatusCode == HttpStatusCode.OK
                ? new(SoilDataReader.Read(await Body(answer.Content, patience.Token)), null)
                : new(null, $"The survey answered {(int)answer.StatusCode}: {(answer.StatusCode is HttpStatusCode.BadRequest ? "it did not take the question" : "it may be closed for its daily upkeep")}. Try later, or use the jar.");
        }
        catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
        {
            return new(null, $"The survey did not answer within {Patience.TotalSeconds:0} seconds. Try later, or use the jar.");
        }
        catch (Exception e) when (e is HttpRequestException or IOException)
        {
            log.LogWarning(e, "The soil survey could not be reached");
            return new(null, "The survey could not be reached. Try later, or use the jar.");
        }
    }

    private static HttpRequestMessage Request(Place place, string mail)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, SoilDataQuery.Address) { Content = new ByteArrayContent(SoilDataQuery.Body(place)) };
        request.Content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        request.Headers.Accept.ParseAdd("application/json");
        request.Headers.TryAddWithoutValidation("User-Agent", $"Seedfall/{Assembly.GetExecutingAssembly().GetName().Version?.ToString(2)} ({mail})");
        return request;
    }

    /// <summary>The body up to one byte more than is read, so that the reader can say it is too long.</summary>
    private static async Task<byte[]> Body(HttpContent content, CancellationToken cancellation)
    {
        await using var stream = await content.ReadAsStreamAsync(cancellation);
        using var kept = new MemoryStream();
        var buffer = new byte[16384];
        while (kept.Length <= SoilDataReader.MostBytes && await stream.ReadAsync(buffer, cancellation) is > 0 and var count)
        {
            kept.Write(buffer, 0, count);
        }

        return kept.ToArray();
    }
}
