using System.Diagnostics;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Seedfall.Browser.Tests.RunningApp))]

namespace Seedfall.Browser.Tests;

/// <summary>The app as it is served, in a process of its own on a free port and a fresh data folder, and one browser.</summary>
public sealed partial class RunningApp : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("seedfall-browser-").FullName;
    private readonly TaskCompletionSource<string> _address = new();
    private readonly List<string> _log = [];
    private Process? _process;
    private IPlaywright? _playwright;

    public string Address { get; private set; } = "";

    public IBrowser Browser { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        var browser = BrowserPath.Find();
        Start();
        Address = await _address.Task.WaitAsync(TimeSpan.FromMinutes(3));
        _playwright = await Playwright.CreateAsync();
        Browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = browser,
            Headless = true,
            Timeout = 120_000,
            Args = [.. BrowserPath.Arguments, "--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream"],
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (Browser is not null)
        {
            await Browser.CloseAsync();
        }

        _playwright?.Dispose();
        if (_process is { HasExited: false })
        {
            _process.Kill(entireProcessTree: true);
            await _process.WaitForExitAsync();
        }

        _process?.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private void Start()
    {
        var start = new ProcessStartInfo("dotnet")
        {
            ArgumentList = { Path.Combine(AppContext.BaseDirectory, "Seedfall.Web.dll"), "--port", "0", "--data", _folder, "--contentRoot", Checkout.Web },
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Checkout.Web,
        };
        _process = new Process { StartInfo = start, EnableRaisingEvents = true };
        _process.OutputDataReceived += (_, line) => Read(line.Data);
        _process.ErrorDataReceived += (_, line) => Read(line.Data);
        _process.Exited += (_, _) => _address.TrySetException(new InvalidOperationException("the app ended before it was open: " + string.Join('\n', _log)));
        _process.Start();
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
    }

    private void Read(string? line)
    {
        if (line is null)
        {
            return;
        }

        lock (_log)
        {
            _log.Add(line);
        }

        if (Open().Match(line) is { Success: true } open)
        {
            _address.TrySetResult(open.Groups[1].Value);
        }
    }

    [GeneratedRegex("open at (http://[0-9.:]+)")]
    private static partial Regex Open();
}
