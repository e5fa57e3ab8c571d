using Seedfall.Exchange.Print;

namespace Seedfall.Cli.Commands;

/// <summary>The browser that prints the PDFs, started early so that it is ready when the plan is; none where none is on the machine.</summary>
internal sealed class Printing : IAsyncDisposable
{
    private readonly PdfPrinter? _printer;

    private Printing(PdfPrinter? printer, string? why) => (_printer, Why) = (printer, why);

    /// <summary>Why there are no PDFs, in one line; null where there are, or none were wanted.</summary>
    internal string? Why { get; private set; }

    internal static Printing Start(bool wanted)
    {
        if (!wanted)
        {
            return new Printing(null, null);
        }

        if (BrowserSearch.Find() is not { } browser)
        {
            return new Printing(null, $"no Chromium-family browser was found ({BrowserSearch.Variable} may name one): the plan is there as HTML, print that");
        }

        try
        {
            return new Printing(PdfPrinter.Start(browser), null);
        }
        catch (PrintException e)
        {
            return new Printing(null, $"{e.Message}: the plan is there as HTML, print that");
        }
    }

    /// <summary>The pages as PDF in the order given, or none where printing is not possible.</summary>
    internal async Task<IReadOnlyList<byte[]>> Print(IReadOnlyList<string> pages, CancellationToken cancellation)
    {
        if (_printer is null)
        {
            return [];
        }

        try
        {
            return await Task.WhenAll(pages.Select(page => _printer.Print(page, cancellation)));
        }
        catch (PrintException e)
        {
            Why = $"{e.Message}: the plan is there as HTML, print that";
            return [];
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (_printer is not null)
        {
            await _printer.DisposeAsync();
        }
    }
}
