using Seedfall.Planning.Field;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Records;

/// <summary>The record book of a lawn: reading it, writing into it, correcting, taking it away.</summary>
internal static class RecordEndpoints
{
    public static void MapRecords(this WebApplication app)
    {
        app.MapGet("/lawns/{id}/records", Show);
        var records = app.MapGroup("/lawns/{id}/records");
        records.MapGet("/write", Blank);
        records.MapPost("/write", (string id, IFormCollection form, LawnBook book, RecordWork work, HttpContext http) => Write(id, null, form, book, work, http));
        records.MapGet("/{entry:guid}/correct", Correction);
        records.MapPost("/{entry:guid}/correct", (string id, Guid entry, IFormCollection form, LawnBook book, RecordWork work, HttpContext http) => Write(id, entry, form, book, work, http));
        records.MapRecordFiles();
    }

    private static async Task<IResult> Show(string id, LawnBook book, RecordWork work, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored
            ? Page.Of<RecordsPage>(new { Stored = stored, Book = await work.Book(stored, http.RequestAborted), System = Viewer.Of(http), CanPrint = TakeAway.PaperPrinting.Browser is not null })
            : Page.NoSuchLawn();

    private static async Task<IResult> Blank(string id, string? task, int? product, LawnBook book, RecordWork work, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored
            ? Page.Of<WriteRecordPage>(new { Draft = await work.New(stored, task, product ?? 1, Viewer.Of(http), http.RequestAborted) })
            : Page.NoSuchLawn();

    private static async Task<IResult> Correction(string id, Guid entry, LawnBook book, RecordWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        return await work.Correction(stored, entry, Viewer.Of(http), http.RequestAborted) is { } draft
            ? Page.Of<WriteRecordPage>(new { Draft = draft })
            : NoSuchRecord();
    }

    private static async Task<IResult> Write(string id, Guid? corrects, IFormCollection form, LawnBook book, RecordWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        LogEntry.Applied? before = null;
        if (corrects is { } earlier && (before = await work.Find(stored, earlier, http.RequestAborted)) is null)
        {
            return NoSuchRecord();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        var entryId = Guid.TryParse(form["entry"], out var given) && given != Guid.Empty ? given : Guid.CreateVersion7();
        return await work.Write(stored, entries, entryId, corrects, http.RequestAborted) is { } written
            ? Results.LocalRedirect($"/lawns/{id}/records#record-{written.Id:D}")
            : Page.Of<WriteRecordPage>(new { Draft = new RecordDraft(stored, entries, entryId, before, null, []) }, StatusCodes.Status422UnprocessableEntity);
    }

    private static IResult NoSuchRecord() =>
        Page.Plain(StatusCodes.Status404NotFound, "No such record", "No record stands at this address. It may have been corrected or struck: look for it in the book.");
}
