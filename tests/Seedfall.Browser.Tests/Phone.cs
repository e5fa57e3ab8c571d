using System.Diagnostics;
using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>A phone: a browser with storage of its own that outlives it, a signal that comes and goes, and a battery that dies.</summary>
internal sealed class Phone : IAsyncDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("seedfall-phone-").FullName;
    private readonly IPlaywright _playwright;
    private readonly string _address;
    private IBrowserContext _context = null!;

    private Phone(IPlaywright playwright, string address) => (_playwright, _address) = (playwright, address);

    public IPage Page { get; private set; } = null!;

    public ILocator Sign => Page.Locator("#sent");

    public static async Task<Phone> Open(RunningApp app)
    {
        var phone = new Phone(await Playwright.CreateAsync(), app.Address);
        await phone.Start(signal: true);
        return phone;
    }

    public Task Signal(bool there) => _context.SetOfflineAsync(!there);

    /// <summary>The battery dies: the browser gets no chance to put anything away. It is started again without a signal.</summary>
    public async Task Dies()
    {
        foreach (var process in Mine())
        {
            process.Kill();
            await process.WaitForExitAsync();
        }

        await Start(signal: false);
    }

    /// <summary>Opens a lawn's sheet and waits until its script has taken over.</summary>
    public async Task Sheet(string address, bool script = true)
    {
        await Page.GotoAsync(address);
        if (script)
        {
            await Page.Locator("#sheet[data-ready]").WaitForAsync();
        }
    }

    public async ValueTask DisposeAsync()
    {
        await _context.CloseAsync();
        _playwright.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private async Task Start(bool signal)
    {
        _context = await _playwright.Chromium.LaunchPersistentContextAsync(_folder, new()
        {
            ExecutablePath = BrowserPath.Find(),
            Headless = true,
            Timeout = 120_000,
            Args = [.. Environment.UserName == "root" ? (string[])["--no-sandbox"] : [], "--disable-quic", "--no-first-run", "--disable-background-networking"],
            BaseURL = _address,
            ViewportSize = new() { Width = 390, Height = 844 },
            HasTouch = true,
            IsMobile = true,
            Locale = "en-US",
            Offline = !signal,
        });
        _context.SetDefaultTimeout(60_000);
        Page = _context.Pages.Count > 0 ? _context.Pages[0] : await _context.NewPageAsync();
    }

    /// <summary>The main process of this phone's browser, by the folder only it was started with.</summary>
    private List<Process> Mine()
    {
        var found = new List<Process>();
        foreach (var folder in Directory.EnumerateDirectories("/proc").Where(f => int.TryParse(Path.GetFileName(f), out _)))
        {
            try
            {
                var words = File.ReadAllText(Path.Combine(folder, "cmdline"));
                if (words.Contains($"--user-data-dir={_folder}", StringComparison.Ordinal) && !words.Contains("--type=", StringComparison.Ordinal))
                {
                    found.Add(Process.GetProcessById(int.Parse(Path.GetFileName(folder), System.Globalization.CultureInfo.InvariantCulture)));
                }
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
            {
                // It ended while it was looked at.
            }
        }

        return found.Count > 0 ? found : throw new InvalidOperationException("this phone's browser was not found among the running processes");
    }
}
