using System.Text.Json.Nodes;

namespace Seedfall.Exchange.Print;

/// <summary>The PDF could not be printed; the message says why in one line.</summary>
public sealed class PrintException(string message, Exception? inner = null) : Exception(message, inner);

/// <summary>
/// Prints self-contained HTML to tagged PDF with a Chromium-family browser of the machine. The browser runs with a fresh
/// profile, without scripts and without a network, and is ended with this object. Pages may be printed side by side.
/// </summary>
public sealed class PdfPrinter : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly BrowserPipe _browser;

    private PdfPrinter(BrowserPipe browser) => _browser = browser;

    /// <summary>Starts the browser and returns at once: it gets ready while the plan is made.</summary>
    /// <param name="browser">Its path, from <see cref="BrowserSearch.Find()"/>.</param>
    /// <exception cref="PrintException">It could not be started.</exception>
    public static PdfPrinter Start(string browser)
    {
        ArgumentException.ThrowIfNullOrEmpty(browser);
        return new PdfPrinter(BrowserPipe.Start(browser));
    }

    /// <summary>One page as PDF, sheet size and margins as its style sheet says.</summary>
    /// <exception cref="PrintException">The browser refused, ended or took longer than half a minute.</exception>
    public async Task<byte[]> Print(string html, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(html);
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        limit.CancelAfter(Patience);
        try
        {
            return await PrintWithin(html, limit.Token);
        }
        catch (OperationCanceledException e) when (!cancellation.IsCancellationRequested)
        {
            throw new PrintException($"the browser took longer than {Patience.TotalSeconds} seconds", e);
        }
    }

    public ValueTask DisposeAsync() => _browser.DisposeAsync();

    private async Task<byte[]> PrintWithin(string html, CancellationToken cancellation)
    {
        var target = (await _browser.Send("Target.createTarget", new JsonObject { ["url"] = "about:blank" }, null, cancellation)).GetProperty("targetId").GetString();
        var attached = await _browser.Send("Target.attachToTarget", new JsonObject { ["targetId"] = target, ["flatten"] = true }, null, cancellation);
        var session = attached.GetProperty("sessionId").GetString();
        await _browser.Send("Emulation.setScriptExecutionDisabled", new JsonObject { ["value"] = true }, session, cancellation);
        var tree = await _browser.Send("Page.getFrameTree", [], session, cancellation);
        var frame = tree.GetProperty("frameTree").GetProperty("frame").GetProperty("id").GetString();
        await _browser.Send("Page.setDocumentContent", new JsonObject { ["frameId"] = frame, ["html"] = html }, session, cancellation);
        var printed = await _browser.Send("Page.printToPDF", Settings(), session, cancellation);
        return printed.GetProperty("data").GetBytesFromBase64();
    }

    private static JsonObject Settings() => new()
    {
        ["preferCSSPageSize"] = true,
        ["printBackground"] = true,
        ["generateTaggedPDF"] = true,
        ["generateDocumentOutline"] = true,
    };
}
