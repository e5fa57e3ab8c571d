using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Paper;
using Seedfall.Exchange.Print;
using Seedfall.Exchange.Tests.Logs;
using Seedfall.Planning.Records;
using UglyToad.PdfPig;

namespace Seedfall.Exchange.Tests.Print;

/// <summary>The record book, the notice and the marker on paper.</summary>
public sealed class RecordPrintTests
{
    private const double PointsPerInch = 72.0;

    [Theory]
    [InlineData(PaperSize.Letter, 792.0, 612.0)] // 11 by 8.5 in
    [InlineData(PaperSize.A4, 842.0, 595.0)] // ISO 216: 297 by 210 mm
    public async Task The_book_lies_on_its_side_and_holds_every_record_within_the_sheet(PaperSize size, double width, double height)
    {
        await using var printer = PdfPrinter.Start(PdfPrinterTests.Browser());
        using var pdf = PdfDocument.Open(await printer.Print(await PaperHtml.Records(DemoBook.Book, size)));
        Assert.All(pdf.GetPages(), page =>
        {
            Assert.Equal(width, page.Width, 1.0);
            Assert.Equal(height, page.Height, 1.0);
            Assert.All(page.Letters, letter => Assert.InRange(letter.Location.X, 20.0, width - 20.0));
        });
        var text = string.Join(' ', pdf.GetPages().Select(p => string.Join(' ', p.GetWords().Select(w => w.Text))));
        string[] expected = ["mesotrione 4 lb/gal", "0000-000", "Corrected because: the target was left out", "Struck: typed on the wrong lawn", "Disputed", "urea 46-0-0", "1 Invented Road", "3 years"];
        Assert.All(expected, words => Assert.Contains(words, text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_printed_marker_has_letters_as_high_as_the_rule_asks_and_is_as_wide()
    {
        await using var printer = PdfPrinter.Start(PdfPrinterTests.Browser());
        foreach (var pack in new[] { "us-in", "us-ny", "us-oh", "general" })
        {
            var flag = LawnFlag.Of(DemoBook.Lawn, DemoBook.Book.Find(DemoBook.Id(2))!.Entry, Trade.Tables.Pack(pack)!);
            using var pdf = PdfDocument.Open(await printer.Print(await PaperHtml.Flag("Demo", flag)));
            var page = pdf.GetPage(1);
            var big = page.Letters.Where(l => l.Value == "E" && l.PointSize > 30.0).ToList();
            Assert.NotEmpty(big);
            Assert.All(big, letter => Assert.True(letter.BoundingBox.Height >= flag.LetterInches * PointsPerInch, $"{pack}: {letter.BoundingBox.Height / PointsPerInch:0.000} in"));
            Assert.True(big.Max(l => l.BoundingBox.Right) - big.Min(l => l.BoundingBox.Left) <= flag.WidthInches * PointsPerInch);
        }
    }

    [Fact]
    public async Task The_notice_is_one_page()
    {
        await using var printer = PdfPrinter.Start(PdfPrinterTests.Browser());
        var notice = CustomerNotice.Of(DemoBook.Lawn, DemoBook.Book.Find(DemoBook.Id(2))!.Entry, Trade.Tables.Pack("us-oh")!, default);
        using var pdf = PdfDocument.Open(await printer.Print(await PaperHtml.Notice(notice)));
        Assert.Equal(1, pdf.NumberOfPages);
        Assert.DoesNotContain(pdf.GetPage(1).GetWords(), w => w.Text == "Neighbors.");
    }
}
