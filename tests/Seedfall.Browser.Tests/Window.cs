using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>One browser window: what went wrong in it, and what a person does in it.</summary>
internal sealed class Window : IAsyncDisposable
{
    private static readonly string AxeSource = File.ReadAllText(Checkout.Axe);

    private readonly IBrowserContext _context;
    private readonly List<string> _faults = [];

    private Window(IBrowserContext context, IPage page, string size)
    {
        (_context, Page, Size) = (context, page, size);
        page.Console += (_, message) =>
        {
            // A refused form answers with status 422 or 409, which the browser notes by itself.
            if (message.Type is "error" or "warning" && !message.Text.Contains("status of 422", StringComparison.Ordinal) && !message.Text.Contains("status of 409", StringComparison.Ordinal))
            {
                _faults.Add($"{page.Url}: {message.Type}: {message.Text}");
            }
        };
        page.PageError += (_, error) => _faults.Add($"{page.Url}: {error}");
        page.RequestFailed += (_, request) =>
        {
            // A link that turns out to be a file to save is, to the page, a request broken off.
            if (!(request.Failure == "net::ERR_ABORTED" && request.Url.Contains("/take-away/", StringComparison.Ordinal)))
            {
                _faults.Add($"{request.Url}: {request.Failure}");
            }
        };
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith("http://127.0.0.1", StringComparison.Ordinal) && !request.Url.StartsWith("data:", StringComparison.Ordinal))
            {
                _faults.Add($"something was asked for elsewhere: {request.Url}");
            }
        };
    }

    public IPage Page { get; }

    public string Size { get; }

    public static async Task<Window> Open(RunningApp app, string size, bool script = true, bool touch = false)
    {
        var (width, height) = size == "phone" ? (390, 844) : (1280, 900);
        var context = await app.Browser.NewContextAsync(new()
        {
            BaseURL = app.Address,
            ViewportSize = new() { Width = width, Height = height },
            JavaScriptEnabled = script,
            HasTouch = touch,
            IsMobile = touch,
            AcceptDownloads = true,
            Locale = "en-US",
        });
        context.SetDefaultTimeout(120_000);
        return new Window(context, await context.NewPageAsync(), size);
    }

    public async Task Go(string path)
    {
        var answer = await Page.GotoAsync(path);
        Assert.True(answer!.Ok, $"{path}: {answer.Status}");
    }

    /// <summary>Takes on a lawn with one patch, a circle 50 ft across; its notes open.</summary>
    public async Task TakeOn(string name)
    {
        var page = Page;
        await Go("/lawns/new");
        await page.GetByLabel("Name of the lawn").FillAsync(name);
        await page.GetByLabel("Latitude", new() { Exact = false }).First.FillAsync("41.9");
        await page.GetByLabel("Longitude", new() { Exact = false }).First.FillAsync("87.6");
        await page.GetByLabel("Elevation above the sea", new() { Exact = false }).First.FillAsync("600");
        await page.GetByLabel("Name of the patch").FillAsync("Front");
        await page.GetByLabel("Turf-type tall fescue").CheckAsync();
        await page.GetByRole(AriaRole.Radio, new() { Name = "Circle" }).CheckAsync();
        await page.GetByLabel("Diameter", new() { Exact = true }).FillAsync("50");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it on" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync(name);
    }

    /// <summary>Nothing in the console, no broken policy, nothing fetched from elsewhere.</summary>
    public void NoFaults() => Assert.True(_faults.Count == 0, string.Join('\n', _faults));

    /// <summary>axe finds nothing, in WCAG 2.2 A and AA with 7:1 contrast, with everything that folds open; and nothing runs off the side.</summary>
    public async Task NothingBars()
    {
        var over = await Page.EvaluateAsync<string[]>(
            """
            () => {
              const root = document.documentElement;
              if (root.scrollWidth <= root.clientWidth) return [];
              const scrolls = e => e && (getComputedStyle(e).overflowX === 'auto' || scrolls(e.parentElement));
              return [...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > root.clientWidth + 0.5 && !scrolls(e.parentElement))
                .map(e => `${e.tagName} ${e.getAttribute('class')} ${Math.round(e.getBoundingClientRect().right - root.clientWidth)} px: ${e.textContent.trim().slice(0, 60)}`);
            }
            """);
        Assert.True(over.Length == 0, $"{Page.Url} at {Size}: runs off the side:\n{string.Join('\n', over)}");
        await Axe("as it opens");
        await Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");
        await Axe("with all unfolded");
    }

    /// <summary>Keeps a picture of the whole page where SEEDFALL_PICTURES names a folder.</summary>
    public async Task Picture(string name)
    {
        if (Environment.GetEnvironmentVariable("SEEDFALL_PICTURES") is { Length: > 0 } folder)
        {
            await Page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}-{Size}.png"), FullPage = true });
            if (name.StartsWith("plan", StringComparison.Ordinal))
            {
                await Page.EvaluateAsync("() => document.querySelectorAll('details.fold').forEach(d => d.open = true)");
                await Page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}-unfolded-{Size}.png"), FullPage = true });
            }
        }
    }

    public ValueTask DisposeAsync() => _context.DisposeAsync();

    private async Task Axe(string state)
    {
        await Page.EvaluateAsync(AxeSource);
        var found = await Page.EvaluateAsync<string[]>(
            """
            async () => {
              const result = await axe.run(document, {
                runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] },
                rules: { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } },
              });
              return result.violations.flatMap(v => v.nodes.slice(0, 5).map(n => `${v.id}: ${v.help}: ${n.target.join(' ')}: ${n.any.concat(n.all).map(c => c.message).join('; ')}`));
            }
            """);
        Assert.True(found.Length == 0, $"{Page.Url} at {Size}, {state}:\n{string.Join('\n', found)}");
    }
}
