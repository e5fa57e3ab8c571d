using Microsoft.AspNetCore.Mvc;
using Seedfall.Exchange.Ground;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Drawing;

/// <summary>The drawing of a lawn, the picture under it, and files in and out.</summary>
internal static class DrawEndpoints
{
    /// <summary>Largest picture taken.</summary>
    private const long PictureBytes = 25L << 20;

    /// <summary>Largest file of outlines taken, with the drawing sent beside it.</summary>
    private const long FileBytes = 18L << 20;

    public static void MapDrawing(this WebApplication app)
    {
        var draw = app.MapGroup("/lawns/{id}/draw");
        draw.MapGet("", Show);
        draw.MapPost("", Save);
        draw.MapPost("/picture", AddPicture).WithMetadata(new RequestSizeLimitAttribute(PictureBytes));
        draw.MapGet("/picture/{file}", Picture);
        draw.MapPost("/walk", Walked);
        draw.MapPost("/file", Import).WithMetadata(new RequestSizeLimitAttribute(FileBytes));
        draw.MapGet("/file/{name}", Export);
    }

    private static async Task<IResult> Show(string id, string? saved, DrawWork work, HttpContext http) =>
        await work.Open(id, Viewer.Of(http), http.RequestAborted) is { } open
            ? Page.Of<DrawPage>(new { Open = open with { Source = saved is null ? DrawSource.Stored : DrawSource.Saved } })
            : Page.NoSuchLawn();

    private static async Task<IResult> Save(string id, IFormCollection form, DrawWork work, HttpContext http)
    {
        if (await work.Open(id, Viewer.Of(http), http.RequestAborted) is not { } open)
        {
            return Page.NoSuchLawn();
        }

        var (result, shown) = await work.Save(open, form, http.RequestAborted);
        return result switch
        {
            SaveResult.Saved => Results.LocalRedirect($"/lawns/{id}/draw?saved=yes"),
            SaveResult.Gone => Page.NoSuchLawn(),
            SaveResult.Conflict => Page.Of<DrawPage>(new { Open = shown }, StatusCodes.Status409Conflict),
            _ => Page.Of<DrawPage>(new { Open = shown }, StatusCodes.Status422UnprocessableEntity),
        };
    }

    private static async Task<IResult> AddPicture(string id, IFormFileCollection files, LawnBook book, DrawWork work, SheetShelf shelf, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var problem = "Choose one picture: JPEG, PNG, WebP or HEIC.";
        if (files.Count == 1 && files[0].Length > 0)
        {
            problem = await shelf.Add(stored.Row, await files[0].Bytes(http.RequestAborted), http.RequestAborted);
        }

        if (problem is null)
        {
            return Results.LocalRedirect($"/lawns/{id}/draw#picture");
        }

        var open = await work.Open(id, Viewer.Of(http), http.RequestAborted);
        return open is null ? Page.NoSuchLawn() : Page.Of<DrawPage>(new { Open = open, FileProblems = (IReadOnlyList<string>)[problem] }, StatusCodes.Status422UnprocessableEntity);
    }

    /// <summary>Reads a file into the drawing as it lies open in the browser; nothing is saved.</summary>
    private static async Task<IResult> Import(string id, IFormCollection form, DrawWork work, HttpContext http)
    {
        if (await work.Open(id, Viewer.Of(http), http.RequestAborted) is not { } open)
        {
            return Page.NoSuchLawn();
        }

        if (form.Files.Count != 1 || form.Files[0].Length == 0)
        {
            return Page.Of<DrawPage>(new { Open = open, FileProblems = (IReadOnlyList<string>)["Choose one file: GeoJSON, GPX, KML or KMZ."] }, StatusCodes.Status422UnprocessableEntity);
        }

        var (shown, problem) = DrawWork.Import(open, form, await form.Files[0].Bytes(http.RequestAborted), form.Files[0].FileName);
        return problem is null
            ? Page.Of<DrawPage>(new { Open = shown })
            : Page.Of<DrawPage>(new { Open = open, FileProblems = (IReadOnlyList<string>)[problem] }, StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task<IResult> Export(string id, string name, DrawWork work, HttpContext http)
    {
        if (await work.Open(id, Viewer.Of(http), http.RequestAborted) is not { } open || OutlineFiles.KindOf(name) is not { } kind || open.Drawn.IsBlank)
        {
            return Results.NotFound();
        }

        var type = kind switch { OutlineFileKind.GeoJson => "application/geo+json", OutlineFileKind.Gpx => "application/gpx+xml", OutlineFileKind.Kml => "application/xml", _ => "application/zip" };
        return Results.File(GroundFiles.Write(kind, open.Drawn, open.Stored.Lawn), type, id + Path.GetExtension(name));
    }

    /// <summary>An outline of a walk. Works something out and changes nothing.</summary>
    private static IResult Walked(string id, WalkTrack track) => Results.Json(track.Outline());

    /// <summary>The picture under the sheet: a JPEG of our own making, shown to nobody but this page.</summary>
    private static async Task<IResult> Picture(string id, string file, LawnBook book, SheetShelf shelf, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored || shelf.PathOf(stored.Row, file) is not { } path)
        {
            return Results.NotFound();
        }

        http.Response.Headers.ContentSecurityPolicy = "default-src 'none'; sandbox";
        http.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return Results.File(path, "image/jpeg");
    }
}
