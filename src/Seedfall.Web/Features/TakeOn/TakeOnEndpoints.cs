using Microsoft.AspNetCore.Http.HttpResults;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.TakeOn;

/// <summary>The notes of a lawn: taking it on, leaf by leaf.</summary>
internal static class TakeOnEndpoints
{
    public static void MapTakeOn(this WebApplication app)
    {
        app.MapGet("/lawns/new", (HttpContext http) => Page.Of<NewLawnPage>(new { Entries = NewLawn.Blank(Viewer.Of(http)) }));
        app.MapPost("/lawns/new", TakeOn);
        var notes = app.MapGroup("/lawns/{id}/notes");
        notes.MapGet("", Overview);
        notes.MapGet("/{leaf}", (string id, string leaf, LeafWork work, HttpContext http) => Show(id, leaf, null, work, http));
        notes.MapGet("/{leaf}/{item}", Show);
        notes.MapPost("/{leaf}", (string id, string leaf, IFormCollection form, LeafWork work, HttpContext http) => Save(id, leaf, null, form, work, http));
        notes.MapPost("/{leaf}/{item}", Save);
        notes.MapPost("/{leaf}/{item}/remove", Remove);
    }

    private static async Task<IResult> TakeOn(IFormCollection form, LawnBook book, HttpContext http)
    {
        var entries = Entries.From(form, Viewer.Of(http));
        var lawn = NewLawn.Read(entries);
        foreach (var problem in entries.Sound ? book.Problems(lawn) : [])
        {
            entries.Wrong(problem.Path, LeafWork.Sentence(problem));
        }

        if (!entries.Sound)
        {
            return Page.Of<NewLawnPage>(new { Entries = entries }, StatusCodes.Status422UnprocessableEntity);
        }

        var id = await book.Add(lawn, weatherId: null, invented: false, http.RequestAborted);
        return Results.LocalRedirect($"/lawns/{id}/notes");
    }

    private static async Task<IResult> Overview(string id, LawnBook book, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored ? Page.Of<NotesPage>(new { Stored = stored, System = Viewer.Of(http) }) : Page.NoSuchLawn();

    private static async Task<IResult> Show(string id, string leaf, string? item, LeafWork work, HttpContext http) =>
        await work.Open(id, leaf, item, Viewer.Of(http), http.RequestAborted) is { } open ? Page.Of<LeafPage>(new { Open = open }) : NoSuchLeaf();

    private static async Task<IResult> Save(string id, string leaf, string? item, IFormCollection form, LeafWork work, HttpContext http)
    {
        if (await work.Open(id, leaf, item, Viewer.Of(http), http.RequestAborted) is not { } open)
        {
            return NoSuchLeaf();
        }

        var (result, shown) = await work.Save(open, Entries.From(form, Viewer.Of(http)), form["stamp"].ToString(), http.RequestAborted);
        return result switch
        {
            SaveResult.Saved => Results.LocalRedirect(Next(shown, form["then"].ToString())),
            SaveResult.Gone => Page.NoSuchLawn(),
            SaveResult.Conflict => Page.Of<LeafPage>(new { Open = shown }, StatusCodes.Status409Conflict),
            _ => Page.Of<LeafPage>(new { Open = shown }, StatusCodes.Status422UnprocessableEntity),
        };
    }

    private static async Task<IResult> Remove(string id, string leaf, string item, IFormCollection form, LeafWork work, HttpContext http)
    {
        if (await work.Open(id, leaf, item, Viewer.Of(http), http.RequestAborted) is not { IsNew: false } open)
        {
            return NoSuchLeaf();
        }

        var (result, shown) = await work.Remove(open, form["stamp"].ToString(), http.RequestAborted);
        return result switch
        {
            SaveResult.Saved => Results.LocalRedirect($"/lawns/{id}/notes#{open.Leaf.Id}"),
            SaveResult.Gone => Page.NoSuchLawn(),
            SaveResult.Conflict => Page.Of<LeafPage>(new { Open = shown }, StatusCodes.Status409Conflict),
            _ => Page.Of<LeafPage>(new { Open = shown }, StatusCodes.Status422UnprocessableEntity),
        };
    }

    /// <summary>Where the button pressed leads: the next leaf, another item, or the notes.</summary>
    private static string Next(OpenLeaf open, string then) => then switch
    {
        "another" when open.Leaf.Each is not null => Notebook.ItemAddress(open.Leaf, open.Id, null),
        "next" when Notebook.After(open.Leaf) is { } next => Notebook.Address(next, open.Id, open.Lawn),
        "plan" => $"/lawns/{open.Id}",
        _ => $"/lawns/{open.Id}/notes#{open.Leaf.Id}",
    };

    private static RazorComponentResult<PlainPage> NoSuchLeaf() =>
        Page.Plain(StatusCodes.Status404NotFound, "No such leaf", "There is no such leaf in this lawn’s notes. It may have been removed.");
}
