using System.Text;
using Seedfall.Exchange.Paper;
using Seedfall.Exchange.Print;
using Seedfall.Exchange.Tables;
using Seedfall.Planning.Field;
using Seedfall.Planning.Records;
using Seedfall.Web.Features.TakeAway;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Host;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Records;

/// <summary>The book on paper and as a table, the customer's notice and the lawn's marker.</summary>
internal static class RecordFiles
{
    public static void MapRecordFiles(this RouteGroupBuilder records)
    {
        records.MapGet("/records.csv", Csv);
        records.MapGet("/records.html", Sheet);
        records.MapGet("/records.pdf", Pdf);
        records.MapGet("/{entry:guid}/notice.html", (string id, Guid entry, LawnBook book, RecordWork work, HttpContext http) => OfOne(id, entry, book, work, http, (stored, applied) =>
            PaperHtml.Notice(CustomerNotice.Of(stored.Lawn, applied, work.Pack(stored), Viewer.Of(http)), Size(http))));
        records.MapGet("/{entry:guid}/flag.html", (string id, Guid entry, LawnBook book, RecordWork work, HttpContext http) => OfOne(id, entry, book, work, http, (stored, applied) =>
            PaperHtml.Flag(stored.Lawn.Name, LawnFlag.Of(stored.Lawn, applied, work.Pack(stored)), Size(http))));
    }

    private static async Task<IResult> Csv(string id, LawnBook book, RecordWork work, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored
            ? Results.File(Encoding.UTF8.GetBytes(RecordsCsv.Write(await work.Book(stored, http.RequestAborted))), "text/csv; charset=utf-8", $"{id}-records.csv")
            : Page.NoSuchLawn();

    private static async Task<IResult> Sheet(string id, LawnBook book, RecordWork work, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored
            ? Shown(http, await PaperHtml.Records(await work.Book(stored, http.RequestAborted), Size(http), Viewer.Of(http)))
            : Page.NoSuchLawn();

    private static async Task<IResult> Pdf(string id, LawnBook book, RecordWork work, PaperPrinting printing, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        try
        {
            var html = await PaperHtml.Records(await work.Book(stored, http.RequestAborted), Size(http), Viewer.Of(http));
            return Results.File(await printing.Print(html, http.RequestAborted), "application/pdf", $"{id}-records.pdf");
        }
        catch (PrintException e)
        {
            return Page.Plain(StatusCodes.Status503ServiceUnavailable, "No PDF", e.Message);
        }
    }

    private static async Task<IResult> OfOne(string id, Guid entry, LawnBook book, RecordWork work, HttpContext http, Func<StoredLawn, LogEntry.Applied, Task<string>> write)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        return await work.Standing(stored, entry, http.RequestAborted) is { } applied
            ? Shown(http, await write(stored, applied))
            : Page.Plain(StatusCodes.Status404NotFound, "No such record", "No record stands at this address. It may have been corrected or struck: look for it in the book.");
    }

    /// <summary>Shown in the browser, to print. It runs no script.</summary>
    private static IResult Shown(HttpContext http, string html)
    {
        http.Response.Headers.ContentSecurityPolicy = SecurityHeaders.PaperPolicy;
        return Results.Content(html, "text/html; charset=utf-8");
    }

    private static PaperSize Size(HttpContext http) => http.Request.Query["paper"] == "a4" ? PaperSize.A4 : PaperSize.Letter;
}
