using Seedfall.Exchange.Print;

namespace Seedfall.Web.Features.TakeAway;

/// <summary>Prints paper to PDF with the browser of this machine, one at a time.</summary>
internal sealed class PaperPrinting : IDisposable
{
    private readonly SemaphoreSlim _one = new(1, 1);

    /// <summary>What is said where there is no browser.</summary>
    public const string NoBrowser = "PDF needs a Chromium-family browser on the machine Seedfall runs on, and none was found. Print the web page instead, or install Chromium.";

    /// <summary>Null where the machine has none; SEEDFALL_BROWSER may name one.</summary>
    public static string? Browser => BrowserSearch.Find();

    /// <summary>The page as tagged PDF.</summary>
    /// <exception cref="PrintException">It could not be printed; the message says why.</exception>
    public async Task<byte[]> Print(string html, CancellationToken cancellation)
    {
        var browser = Browser ?? throw new PrintException(NoBrowser);
        await _one.WaitAsync(cancellation);
        try
        {
            await using var printer = PdfPrinter.Start(browser);
            return await printer.Print(html, cancellation);
        }
        finally
        {
            _one.Release();
        }
    }

    public void Dispose() => _one.Dispose();
}
