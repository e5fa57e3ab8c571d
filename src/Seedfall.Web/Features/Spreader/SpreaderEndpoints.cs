using Microsoft.AspNetCore.Mvc;
using Seedfall.Exchange.Spreaders;
using Seedfall.Planning.Calibration.Spreader;
using Seedfall.Web.Forms;
using Seedfall.Web.Host;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Spreader;

/// <summary>The adviser's spreaders: list, card, history, tests, as a file and from one.</summary>
internal static class SpreaderEndpoints
{
    public static void MapSpreaders(this WebApplication app)
    {
        var all = app.MapGroup("/spreaders");
        all.MapGet("", async (SpreaderShelf shelf, HttpContext http) => Page.Of<SpreadersPage>(new { Spreaders = await shelf.All(http.RequestAborted), System = Viewer.Of(http) }));
        all.MapGet("/new", (HttpContext http) => Page.Of<NewSpreaderPage>(new { Entries = CardForm.Blank(Viewer.Of(http)) }));
        all.MapPost("/new", Add);
        all.MapPost("/from-file", FromFile).WithMetadata(new RequestSizeLimitAttribute(Settings.FormBytes));
        all.MapGet("/pans", Pans);
        all.MapGet("/bands", Bands);
        all.MapGet("/{id}", (string id, int? taken, SpreaderShelf shelf, HttpContext http) => Show(id, shelf, http, null, taken));
        all.MapGet("/{id}/spreader.json", async (string id, SpreaderShelf shelf, HttpContext http) => await shelf.Find(id, http.RequestAborted) is { } spreader
            ? Results.File(SpreaderFile.Write(spreader), "application/json", $"{id}.spreader.json")
            : NoSuch());
        all.MapGet("/{id}/test", (string id, SpreaderShelf shelf, TimeProvider clock, HttpContext http) => Test(id, shelf, RunForm.Blank(Viewer.Of(http)), Guid.CreateVersion7(clock.GetUtcNow()), StatusCodes.Status200OK, http));
        all.MapPost("/{id}/test", Tested);
        all.MapPost("/{id}/first-fall", FirstFall);
        all.MapPost("/{id}/{entry:guid}/strike", Strike);
        app.MapLawnSpreading();
    }

    internal static IResult NoSuch() => Page.Plain(StatusCodes.Status404NotFound, "No such spreader", "There is no spreader at this address.");

    /// <summary>The entry's id from the form it was made with.</summary>
    internal static Guid EntryId(IFormCollection form, TimeProvider clock) => Guid.TryParse(form["entry"], out var given) && given != Guid.Empty ? given : Guid.CreateVersion7(clock.GetUtcNow());

    /// <summary>Now, to the second, by this machine's clock: a spreader has no place of its own.</summary>
    internal static DateTimeOffset Now(TimeProvider clock)
    {
        var now = clock.GetLocalNow();
        return new(now.Year, now.Month, now.Day, now.Hour, now.Minute, now.Second, now.Offset);
    }

    private static async Task<IResult> Add(IFormCollection form, SpreaderShelf shelf, HttpContext http)
    {
        var entries = Entries.From(form, Viewer.Of(http));
        return CardForm.Read(entries) is { } spreader
            ? Results.LocalRedirect($"/spreaders/{await shelf.Add(spreader, http.RequestAborted)}")
            : Page.Of<NewSpreaderPage>(new { Entries = entries }, StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task<IResult> FromFile(IFormFileCollection files, SpreaderShelf shelf, HttpContext http)
    {
        IReadOnlyList<string> problems = ["Choose one spreader.json file."];
        if (files.Count == 1 && files[0].Length > 0)
        {
            var read = SpreaderFile.Read(await files[0].Bytes(http.RequestAborted), files[0].FileName);
            var take = read.IsRead ? await shelf.Take(read.Spreader, http.RequestAborted) : null;
            if (take?.Id is { } id)
            {
                return Results.LocalRedirect(FormattableString.Invariant($"/spreaders/{id}?taken={take.New}"));
            }

            problems = take?.Problem is { } problem ? [problem] : [.. read.Problems.Select(p => p.ToString())];
        }

        return Page.Of<SpreadersPage>(new { Spreaders = await shelf.All(http.RequestAborted), System = Viewer.Of(http), Problems = problems }, StatusCodes.Status422UnprocessableEntity);
    }

    private static IResult Pans(HttpContext http)
    {
        var entries = PanForm.From(http.Request.Query, Viewer.Of(http));
        var test = PanForm.Read(entries);
        return Page.Of<PansPage>(new { Entries = entries, Test = test, System = Viewer.Of(http) }, entries.Sound ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }

    private static IResult Bands(HttpContext http)
    {
        var entries = BandForm.From(http.Request.Query, Viewer.Of(http));
        var inside = BandForm.Read(entries);
        return Page.Of<BandsPage>(new { Entries = entries, Inside = inside, System = Viewer.Of(http) }, entries.Sound ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task<IResult> Show(string id, SpreaderShelf shelf, HttpContext http, string? problem, int? taken = null) => await shelf.Find(id, http.RequestAborted) is { } spreader
        ? Page.Of<SpreaderPage>(new { Spreader = spreader, System = Viewer.Of(http), Problem = problem, Taken = taken }, problem is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity)
        : NoSuch();

    private static async Task<IResult> Test(string id, SpreaderShelf shelf, Entries entries, Guid entry, int status, HttpContext http) => await shelf.Find(id, http.RequestAborted) is { } spreader
        ? Page.Of<TestRunPage>(new { Spreader = spreader, Entries = entries, Entry = entry, System = Viewer.Of(http) }, status)
        : NoSuch();

    private static async Task<IResult> Tested(string id, IFormCollection form, SpreaderShelf shelf, TimeProvider clock, HttpContext http)
    {
        if (await shelf.Find(id, http.RequestAborted) is not { } spreader)
        {
            return NoSuch();
        }

        var (entries, entry) = (Entries.From(form, Viewer.Of(http)), EntryId(form, clock));
        if (RunForm.ReadTest(entries, spreader, entry, Now(clock)) is not { } run)
        {
            return await Test(id, shelf, entries, entry, StatusCodes.Status422UnprocessableEntity, http);
        }

        await shelf.Append(id, run, http.RequestAborted);
        return Results.LocalRedirect($"/spreaders/{id}");
    }

    private static async Task<IResult> FirstFall(string id, IFormCollection form, SpreaderShelf shelf, TimeProvider clock, HttpContext http)
    {
        if (await shelf.Find(id, http.RequestAborted) is not { } spreader)
        {
            return NoSuch();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        if (RunForm.ReadOpening(entries, spreader.Scale) is not { } opening)
        {
            return await Show(id, shelf, http, entries.Problems[0].Message);
        }

        await shelf.Append(id, new SpreaderEntry.FirstFall(opening, SpreadMaterial.MixedSeed) { Id = EntryId(form, clock), At = Now(clock) }, http.RequestAborted);
        var back = form["back"].ToString();
        return Results.LocalRedirect(back.StartsWith("/lawns/", StringComparison.Ordinal) && !back.Contains("//", StringComparison.Ordinal) && !back.Contains('\\', StringComparison.Ordinal) ? back : $"/spreaders/{id}");
    }

    private static async Task<IResult> Strike(string id, Guid entry, IFormCollection form, SpreaderShelf shelf, TimeProvider clock, HttpContext http)
    {
        if (await shelf.Find(id, http.RequestAborted) is not { } spreader)
        {
            return NoSuch();
        }

        var why = form["why"].ToString().Trim();
        if (why.Length is 0 or > 300 || spreader.Entries.All(e => e.Id != entry))
        {
            return await Show(id, shelf, http, "Say why the entry does not hold, in at most 300 letters; it stays in the history, struck.");
        }

        await shelf.Append(id, new SpreaderEntry.Struck(entry, why) { Id = Guid.CreateVersion7(clock.GetUtcNow()), At = Now(clock) }, http.RequestAborted);
        return Results.LocalRedirect($"/spreaders/{id}");
    }
}
