using System.Collections.Concurrent;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace Seedfall.Browser.Tests;

/// <summary>
/// A way to the app, as through a gateway, on which the answers of single pages can be held back or be the gateway's own. It stands
/// outside the browser, so that a page's and its service worker's requests alike go through it.
/// </summary>
internal sealed class WeakWay : IAsyncDisposable
{
    private static readonly string[] OfOneHop = ["Connection", "Keep-Alive", "Transfer-Encoding", "Upgrade", "Host"];

    private readonly ConcurrentDictionary<string, TaskCompletionSource> _held = new();
    private readonly ConcurrentDictionary<string, int> _broken = new();
    private readonly HttpClient _client;
    private readonly WebApplication _gateway;

    private WeakWay(string to)
    {
        _client = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false }) { BaseAddress = new Uri(to), Timeout = TimeSpan.FromMinutes(5) };
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        _gateway = builder.Build();
        _gateway.Run(Pass);
    }

    public string Address => _gateway.Urls.Single();

    public static async Task<WeakWay> Open(RunningApp app)
    {
        var way = new WeakWay(app.Address);
        await way._gateway.StartAsync();
        return way;
    }

    /// <summary>From now on answers of this path are on their way and do not arrive.</summary>
    public void Hold(string path) => _held[path] = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>What was held arrives.</summary>
    public void LetGo(string path)
    {
        if (_held.TryRemove(path, out var held))
        {
            held.SetResult();
        }
    }

    /// <summary>The gateway answers in the app's place.</summary>
    public void Break(string path, int status) => _broken[path] = status;

    public void Mend(string path) => _broken.TryRemove(path, out _);

    public async ValueTask DisposeAsync()
    {
        foreach (var path in _held.Keys)
        {
            LetGo(path);
        }

        await _gateway.DisposeAsync();
        _client.Dispose();
    }

    private async Task Pass(HttpContext http)
    {
        var path = http.Request.Path.Value!;
        if (_broken.TryGetValue(path, out var status))
        {
            http.Response.StatusCode = status;
            await http.Response.WriteAsync("the gateway does not reach the app");
            return;
        }

        using var answer = await _client.SendAsync(Asked(http.Request), HttpCompletionOption.ResponseContentRead, http.RequestAborted);
        if (_held.TryGetValue(path, out var held))
        {
            await held.Task.WaitAsync(http.RequestAborted);
        }

        http.Response.StatusCode = (int)answer.StatusCode;
        foreach (var (name, values) in answer.Headers.Concat(answer.Content.Headers).Where(h => !OfOneHop.Contains(h.Key)))
        {
            http.Response.Headers[name] = values.ToArray();
        }

        await answer.Content.CopyToAsync(http.Response.Body, http.RequestAborted);
    }

    private static HttpRequestMessage Asked(HttpRequest request)
    {
        var asked = new HttpRequestMessage(new HttpMethod(request.Method), request.Path + request.QueryString.Value);
        if (request.ContentLength > 0 || request.Headers.TransferEncoding.Count > 0)
        {
            asked.Content = new StreamContent(request.Body);
        }

        foreach (var (name, values) in request.Headers.Where(h => !OfOneHop.Contains(h.Key)))
        {
            if (!asked.Headers.TryAddWithoutValidation(name, values.ToArray()))
            {
                asked.Content?.Headers.TryAddWithoutValidation(name, values.ToArray());
            }
        }

        return asked;
    }
}
