using Seedfall.Exchange.Logs;
using Seedfall.Planning.Field;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Log;

/// <summary>The field log of a lawn: reading it, writing into it, striking an entry.</summary>
internal static class LogEndpoints
{
    public static void MapLog(this WebApplication app)
    {
        var log = app.MapGroup("/lawns/{id}/log");
        log.MapGet("", Show);
        log.MapGet("/log.json", Download);
        log.MapGet("/write/{kind}", Blank);
        log.MapPost("/write/{kind}", Write);
        log.MapPost("/{entry:guid}/strike", Strike);
    }

    private static async Task<IResult> Show(string id, LawnBook book, LogBook log, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored
            ? Page.Of<LogPage>(new { Stored = stored, Log = await log.For(id, http.RequestAborted), System = Viewer.Of(http) })
            : Page.NoSuchLawn();

    private static async Task<IResult> Download(string id, LawnBook book, LogBook log, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is not null
            ? Results.File(FieldLogFile.Write(id, await log.For(id, http.RequestAborted)), "application/json", $"{id}.log.json")
            : Page.NoSuchLawn();

    private static async Task<IResult> Blank(string id, string kind, LawnBook book, TimeProvider clock, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored || LogKind.Find(kind) is not { } asked)
        {
            return Page.NoSuchLawn();
        }

        var blank = LogKind.Blank(Viewer.Of(http), LawnClock.Now(stored, clock));
        blank.Put(WateredSet.Name, http.Request.Query[WateredSet.Name]);
        return Page.Of<WritePage>(new { Stored = stored, Kind = asked, Entries = blank, Entry = Guid.CreateVersion7(clock.GetUtcNow()) });
    }

    private static async Task<IResult> Write(string id, string kind, IFormCollection form, LawnBook book, LogBook log, TimeProvider clock, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored || LogKind.Find(kind) is not { } asked)
        {
            return Page.NoSuchLawn();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        var entryId = Guid.TryParse(form["entry"], out var given) && given != Guid.Empty ? given : Guid.CreateVersion7(clock.GetUtcNow());
        var entry = asked.Read(entryId, stored.Lawn, entries, local => LawnClock.At(stored, local));
        foreach (var problem in entry is null ? [] : LogRules.Problems(stored.Lawn, entry))
        {
            entries.Wrong("", problem);
        }

        if (entry is not null && entry.Day > DateOnly.FromDateTime(LawnClock.Now(stored, clock).DateTime))
        {
            entries.Wrong(LogKind.Day.Name, "Day: the log keeps what has happened; a day that has come is needed.");
        }

        if (!entries.Sound || entry is null)
        {
            return Page.Of<WritePage>(new { Stored = stored, Kind = asked, Entries = entries, Entry = entryId }, StatusCodes.Status422UnprocessableEntity);
        }

        await log.Append(id, [entry], http.RequestAborted);
        return Results.LocalRedirect($"/lawns/{id}/log");
    }

    private static async Task<IResult> Strike(string id, Guid entry, IFormCollection form, LawnBook book, LogBook log, TimeProvider clock, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var written = await log.For(id, http.RequestAborted);
        var why = form["why"].ToString().Trim();
        if (why.Length is 0 or > 300 || written.Standing.All(e => e.Id != entry))
        {
            return Page.Of<LogPage>(new { Stored = stored, Log = written, System = Viewer.Of(http), Problem = why.Length == 0 ? "Say why the entry does not hold; it stays in the log, struck." : "That entry is struck already, or its reason is longer than 300 letters." }, StatusCodes.Status422UnprocessableEntity);
        }

        await log.Append(id, [new LogEntry.Struck(entry, why) { Id = Guid.CreateVersion7(clock.GetUtcNow()), At = LawnClock.Now(stored, clock) }], http.RequestAborted);
        return Results.LocalRedirect($"/lawns/{id}/log");
    }
}
