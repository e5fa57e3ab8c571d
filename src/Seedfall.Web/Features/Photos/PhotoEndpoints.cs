using Microsoft.AspNetCore.Mvc;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Host;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Photos;

/// <summary>Photo spots, their pictures, and how the lawn comes on.</summary>
internal static class PhotoEndpoints
{
    public static void MapPhotos(this WebApplication app)
    {
        var photos = app.MapGroup("/lawns/{id}/photos");
        photos.MapGet("", All);
        photos.MapGet("/new", (string id, LawnBook book, HttpContext http) => New(id, null, StatusCodes.Status200OK, book, http));
        photos.MapPost("/new", AddSpot);
        photos.MapGet("/{spot:guid}", (string id, Guid spot, LawnBook book, PhotoShelf shelf, TimeProvider clock, HttpContext http) => Spot(id, spot, [], StatusCodes.Status200OK, book, shelf, clock, http));
        photos.MapPost("/{spot:guid}", Take).WithMetadata(new RequestSizeLimitAttribute(Settings.PhotoBytes));
        photos.MapPost("/{spot:guid}/remove", RemoveSpot);
        photos.MapGet("/{spot:guid}/beside", Beside);
        photos.MapPictures();
        photos.MapOnePhoto();
    }

    private static async Task<IResult> All(string id, LawnBook book, PhotoShelf shelf, PlanWork work, TimeProvider clock, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var spots = await shelf.Spots(id, http.RequestAborted);
        var planned = await work.Plan(stored, await work.Kept(stored, null, http.RequestAborted), null, http.RequestAborted, beforeCovers: true);
        var today = PhotoProgress.Today(stored, clock);
        return Page.Of<PhotosPage>(new { Stored = stored, Spots = spots, planned.Plan, Progress = PhotoProgress.Of(stored, planned.Plan, spots, today), Today = today, System = Viewer.Of(http) });
    }

    private static async Task<IResult> New(string id, Entries? entries, int status, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        if (entries is null)
        {
            entries = new Entries(Viewer.Of(http));
            SpotForm.Fill(stored.Lawn, entries);
        }

        return Page.Of<NewSpotPage>(new { Stored = stored, Entries = entries }, status);
    }

    private static async Task<IResult> AddSpot(string id, IFormCollection form, LawnBook book, PhotoShelf shelf, TimeProvider clock, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        var spot = SpotForm.Read(id, stored.Lawn, entries, clock.GetUtcNow());
        if (entries.Sound && !await shelf.Add(spot, http.RequestAborted))
        {
            entries.Wrong("", FormattableString.Invariant($"A lawn keeps at most {PhotoShelf.MostSpots} photo spots. Remove one that is no longer used."));
        }

        return entries.Sound ? Results.LocalRedirect($"/lawns/{id}/photos/{spot.Id}") : await New(id, entries, StatusCodes.Status422UnprocessableEntity, book, http);
    }

    private static async Task<IResult> Spot(string id, Guid spot, IReadOnlyList<string> problems, int status, LawnBook book, PhotoShelf shelf, TimeProvider clock, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is not { } stored ? Page.NoSuchLawn()
        : await shelf.Spot(id, spot, http.RequestAborted) is not { } found ? NoSuchSpot()
        : Page.Of<SpotPage>(new { Stored = stored, Spot = found, Problems = problems, Today = PhotoProgress.Today(stored, clock), System = Viewer.Of(http) }, status);

    private static async Task<IResult> Take(string id, Guid spot, IFormCollection form, LawnBook book, PhotoShelf shelf, PhotoTaking taking, TimeProvider clock, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored || await shelf.Spot(id, spot, http.RequestAborted) is not { } found)
        {
            return NoSuchSpot();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        var said = SpotPage.Taken.Read(entries);
        var today = PhotoProgress.Today(stored, clock);
        if (said > today.AddDays(1) && !stored.Row.Invented)
        {
            entries.Wrong(SpotPage.Taken.Name, "Taken on: that day is still to come.");
        }

        var files = form.Files.Where(f => f.Length > 0).ToList();
        if (files.Count != 1)
        {
            entries.Wrong("photo", files.Count == 0 ? "Take or choose a picture." : "Send one picture at a time.");
        }

        if (!entries.Sound)
        {
            return await Spot(id, spot, [.. entries.Problems.Select(p => p.Message)], StatusCodes.Status422UnprocessableEntity, book, shelf, clock, http);
        }

        var bytes = await files[0].Bytes(http.RequestAborted);
        return await taking.Take(stored, found, Guid.NewGuid(), bytes, said, http.RequestAborted) switch
        {
            PhotoTaken.Kept kept => Results.LocalRedirect($"/lawns/{id}/photos/{spot}/{kept.Row.Id}"),
            PhotoTaken.Refused refused => await Spot(id, spot, [$"The picture was not taken: {refused.Why}."], StatusCodes.Status422UnprocessableEntity, book, shelf, clock, http),
            PhotoTaken.NoRoom => Page.Plain(StatusCodes.Status409Conflict, "Not kept", PhotoTaking.NoRoom),
            _ => Busy(http),
        };
    }

    private static async Task<IResult> RemoveSpot(string id, Guid spot, IFormCollection form, LawnBook book, PhotoShelf shelf, PhotoLogging logging, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored || await shelf.Spot(id, spot, http.RequestAborted) is not { } found || !await shelf.RemoveSpot(id, spot, http.RequestAborted))
        {
            return NoSuchSpot();
        }

        foreach (var photo in found.Photos)
        {
            await logging.Write(stored, null, photo.LogEntryId, "the picture was removed", http.RequestAborted);
        }

        return Results.LocalRedirect($"/lawns/{id}/photos");
    }

    private static async Task<IResult> Beside(string id, Guid spot, Guid? before, Guid? after, LawnBook book, PhotoShelf shelf, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored || await shelf.Spot(id, spot, http.RequestAborted) is not { Photos.Count: > 1 } found)
        {
            return NoSuchSpot();
        }

        return Page.Of<BesidePage>(new
        {
            Stored = stored,
            Spot = found,
            Before = found.Photos.FirstOrDefault(p => p.Id == before) ?? found.Photos[0],
            After = found.Photos.FirstOrDefault(p => p.Id == after) ?? found.Photos[^1],
            System = Viewer.Of(http),
        });
    }

    public static IResult NoSuchSpot() => Page.Plain(StatusCodes.Status404NotFound, "No such photograph", "There is no such photo spot, or no such picture, on this lawn. It may have been removed.");

    public static IResult Busy(HttpContext http)
    {
        http.Response.Headers.RetryAfter = "10";
        return Page.Plain(StatusCodes.Status503ServiceUnavailable, "Other pictures are being measured", "Nothing was saved. Wait a few seconds and send it again.");
    }
}
