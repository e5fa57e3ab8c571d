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
    private ICDPSession? _wire;

    private Phone(IPlaywright playwright, string address) => (_playwright, _address) = (playwright, address);

    public IPage Page { get; private set; } = null!;

    public ILocator Sign => Page.Locator("#sent");

    public static Task<Phone> Open(RunningApp app) => Open(app.Address);

    public static async Task<Phone> Open(string address)
    {
        var phone = new Phone(await Playwright.CreateAsync(), address);
        await phone.Start(signal: true);
        return phone;
    }

    public Task Signal(bool there) => _context.SetOfflineAsync(!there);

    /// <summary>How much the browser lets the app keep here: none more is a phone whose storage is full. Holds until it is lifted with null.</summary>
    public async Task Room(long? bytes)
    {
        _wire ??= await _context.NewCDPSessionAsync(Page);
        var asked = new Dictionary<string, object> { ["origin"] = _address };
        if (bytes is { } quota)
        {
            asked["quotaSize"] = quota;
        }

        await _wire.SendAsync("Storage.overrideQuotaForOrigin", asked);
    }

    /// <summary>
    /// The phone fills up: done when the storage itself refuses. Chromium asks for the room left no more than every half minute while a
    /// page writes, and grants the rest of what it found before.
    /// </summary>
    public async Task Fills()
    {
        await Room(1);
        await Until(
            """
            async () => {
              const db = await new Promise((done, failed) => { const r = indexedDB.open('seedfall-field'); r.onsuccess = () => done(r.result); r.onerror = () => failed(r.error); });
              const tx = db.transaction('marks', 'readwrite');
              tx.objectStore('marks').put({ value: 'x', at: 0 }, 'probe');
              const said = await new Promise(done => { tx.oncomplete = () => done('kept'); tx.onabort = () => done(tx.error.name); });
              db.close();
              return said === 'QuotaExceededError';
            }
            """);
    }

    /// <summary>Asks the page again and again until a script's promise holds true; the browser driver's own waiting takes the promise itself for it.</summary>
    public async Task Until(string script, object? argument = null)
    {
        for (var tries = 0; tries < 240; tries++)
        {
            if (await Page.EvaluateAsync<bool>(script, argument))
            {
                return;
            }

            await Task.Delay(500);
        }

        Assert.Fail("never came true: " + script);
    }

    /// <summary>Keeps the sheet of a lawn, and what is kept beside it.</summary>
    public async Task Keep(string sheet)
    {
        await Sheet(sheet);
        await Page.GetByRole(AriaRole.Button, new() { Name = "Keep on this phone" }).ClickAsync();
        await Assertions.Expect(Page.Locator("#kept")).ToContainTextAsync("Kept on this phone", new() { Timeout = 120_000 });
    }

    /// <summary>Leaves a picture where pictures are asked for, and holds the page to the phone's width.</summary>
    public async Task Look(string name)
    {
        Assert.True(await Page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), $"{name} is wider than the phone");
        if (Environment.GetEnvironmentVariable("SEEDFALL_PICTURES") is { Length: > 0 } folder)
        {
            await Page.ScreenshotAsync(new() { Path = Path.Combine(folder, name + ".png"), FullPage = true });
            await Page.SetViewportSizeAsync(1280, 900);
            await Page.ScreenshotAsync(new() { Path = Path.Combine(folder, name + "-desk.png"), FullPage = true });
            await Page.SetViewportSizeAsync(390, 844);
        }
    }

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
            Args = BrowserPath.Arguments,
            BaseURL = _address,
            ViewportSize = new() { Width = 390, Height = 844 },
            HasTouch = true,
            IsMobile = true,
            Locale = "en-US",
            Offline = !signal,
        });
        _context.SetDefaultTimeout(120_000);
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
