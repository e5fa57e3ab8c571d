using System.Text;
using Microsoft.AspNetCore.Mvc;
using Seedfall.Exchange.Lawns;
using Seedfall.Web.Features.Drawing;
using Seedfall.Web.Features.Photos;
using Seedfall.Web.Features.SprayWindow;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Host;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Lawns;

/// <summary>The desk, and lawns in and out as files.</summary>
internal static class LawnEndpoints
{
    public static void MapLawns(this WebApplication app)
    {
        app.MapGet("/", async (Desk desk, HttpContext http) => Page.Of<DeskPage>(new { Entries = await desk.Look(http.RequestAborted), System = Viewer.Of(http) }));
        app.MapGet("/lawns/from-file", () => Page.Of<FromFilePage>());
        app.MapPost("/lawns/from-file", FromFile).WithMetadata(new RequestSizeLimitAttribute(Settings.FormBytes));
        app.MapGet("/lawns/{id}/lawn.json", Download);
        app.MapGet("/lawns/{id}/remove", async (string id, LawnBook book, HttpContext http) =>
            await book.Find(id, http.RequestAborted) is { } stored ? (IResult)Page.Of<RemovePage>(new { Stored = stored }) : Page.NoSuchLawn());
        app.MapPost("/lawns/{id}/remove", Remove);
    }

    private static async Task<IResult> Remove(string id, IFormCollection form, LawnBook book, SheetShelf shelf, PhotoShelf photos, ForecastShelf forecasts, HttpContext http)
    {
        var stored = await book.Find(id, http.RequestAborted);
        var pictures = await photos.Of(id, http.RequestAborted);
        if (stored is null || !await book.Remove(id, http.RequestAborted))
        {
            return Page.NoSuchLawn();
        }

        shelf.Keep(stored.Row, SheetNotes.None);
        photos.Forget(pictures);
        forecasts.Forget(stored.Row);
        return Results.LocalRedirect("/");
    }

    private static async Task<IResult> FromFile(IFormFileCollection files, LawnBook book, HttpContext http)
    {
        if (files.Count != 1 || files[0].Length == 0)
        {
            return Refused("Choose one lawn.json file.");
        }

        var read = LawnFile.Read(await files[0].Bytes(http.RequestAborted), files[0].FileName);
        if (!read.IsRead)
        {
            return Refused([.. read.Problems.Select(p => p.ToString())]);
        }

        var problems = book.Problems(read.Lawn);
        return problems.Count > 0
            ? Refused([.. problems.Select(LeafWork.Sentence)])
            : Results.LocalRedirect($"/lawns/{await book.Add(read.Lawn, weatherId: null, invented: false, http.RequestAborted)}/notes");
    }

    private static async Task<IResult> Download(string id, LawnBook book, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored
            ? Results.File(Encoding.UTF8.GetBytes(stored.Row.Document), "application/json", $"{id}.lawn.json")
            : Page.NoSuchLawn();

    private static IResult Refused(params string[] problems) =>
        Page.Of<FromFilePage>(new { Problems = (IReadOnlyList<string>)problems }, StatusCodes.Status422UnprocessableEntity);
}
