using Seedfall.Exchange.Paper;
using Seedfall.Exchange.Print;
using Seedfall.Exchange.Tests.Support;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Seedfall.Exchange.Tests.Print;

public sealed class PdfPrinterTests
{
    private const double LetterWidth = 612.0;
    private const double A4Width = 595.0;

    [Theory]
    [InlineData("ordinary", PaperSize.Letter, LetterWidth)]
    [InlineData("ordinary", PaperSize.A4, A4Width)]
    [InlineData("dry", PaperSize.Letter, LetterWidth)]
    [InlineData("waiting", PaperSize.A4, A4Width)]
    public async Task Plan_and_handout_are_printed_whole_tagged_and_within_their_sheets(string lawn, PaperSize size, double width)
    {
        var plan = Paper.PaperHtmlTests.Plan(lawn);
        await using var printer = PdfPrinter.Start(Browser());
        var pages = await Task.WhenAll(PaperHtml.FullPlan(plan, size), PaperHtml.Handout(plan, size));
        var printed = await Task.WhenAll(printer.Print(pages[0]), printer.Print(pages[1]));
        foreach (var bytes in printed)
        {
            using var pdf = PdfDocument.Open(bytes);
            Assert.Contains(plan.LawnName, pdf.Information.Title);
            Assert.True(pdf.Structure.Catalog.CatalogDictionary.TryGet(UglyToad.PdfPig.Tokens.NameToken.Create("StructTreeRoot"), out _), "the PDF is not tagged");
            Assert.All(pdf.GetPages(), page => WithinSheet(page, width));
            Assert.All(pdf.GetPages(), NoHeadingLeftAlone);
        }

        using var handout = PdfDocument.Open(printed[1]);
        Assert.InRange(handout.NumberOfPages, 1, 3);
        Assert.All(plan.Tasks, t => Assert.Contains(t.Title.Split(' ')[0], Text(handout)));
    }

    [Fact]
    public async Task The_workings_are_printed()
    {
        await using var printer = PdfPrinter.Start(Browser());
        using var pdf = PdfDocument.Open(await printer.Print(await PaperHtml.FullPlan(DemoPlan.Waiting)));
        Assert.Contains("Workings", Text(pdf));
        Assert.Contains("common practice", Text(pdf));
    }

    [Fact]
    public async Task A_browser_that_is_none_is_told_in_one_line()
    {
        await using var printer = PdfPrinter.Start("/bin/true");
        var fault = await Assert.ThrowsAsync<PrintException>(() => printer.Print("<p>x</p>"));
        Assert.DoesNotContain('\n', fault.Message);
    }

    [Fact]
    public async Task Printing_can_be_stopped()
    {
        await using var printer = PdfPrinter.Start(Browser());
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => printer.Print("<p>x</p>", new CancellationToken(canceled: true)));
    }

    [Fact]
    public void The_named_browser_comes_before_those_on_the_path()
    {
        Assert.Equal("/x/mine", BrowserSearch.Find(v => v == "SEEDFALL_BROWSER" ? "/x/mine" : "/usr/bin", _ => true));
        Assert.Equal("/b/chromium", BrowserSearch.Find(v => v == "PATH" ? "/a:/b" : null, f => f is "/b/chromium" or "/a/google-chrome"));
    }

    [Fact]
    public void Without_a_browser_there_is_none()
    {
        Assert.Null(BrowserSearch.Find(v => v == "PATH" ? "/a:/b" : null, _ => false));
        Assert.Null(BrowserSearch.Find(v => v == "SEEDFALL_BROWSER" ? "/gone" : "/a", f => f != "/gone"));
    }

    internal static string Browser() => BrowserSearch.Find() ?? Skipped();

    private static string Skipped()
    {
        Assert.Skip("no Chromium-family browser on this machine: ./dev test installs one");
        return "";
    }

    private static string Text(PdfDocument pdf) => string.Join(' ', pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));

    /// <summary>Nothing is cut off: every letter lies inside the margins, and the sheet has its size.</summary>
    private static void WithinSheet(Page page, double width)
    {
        Assert.Equal(width, page.Width, 1.0);
        Assert.All(page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)), l => Assert.InRange(l.BoundingBox.Left, 30.0, page.Width - 30.0));
        Assert.All(page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)), l => Assert.InRange(l.BoundingBox.Right, 30.0, page.Width - 30.0));
        Assert.All(page.Letters, l => Assert.InRange(l.PointSize, 4.5, 30.0));
    }

    /// <summary>No heading is the last line of a page (the page number below it aside).</summary>
    private static void NoHeadingLeftAlone(Page page)
    {
        var body = page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value) && l.BoundingBox.Bottom > 40.0).ToList();
        var last = body.Min(l => l.StartBaseLine.Y);
        var line = body.Where(l => l.StartBaseLine.Y < last + 2.0).ToList();
        Assert.False(line.TrueForAll(l => l.PointSize > 12.5), $"page {page.Number} ends with the heading \"{string.Concat(line.Select(l => l.Value))}\"");
    }
}
