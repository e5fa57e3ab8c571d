using Microsoft.AspNetCore.Mvc;
using Seedfall.Exchange.Logs;
using Seedfall.Web.Features.Photos;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Host;

namespace Seedfall.Web.Features.DaySheet;

/// <summary>Where phones deliver what was written without a signal.</summary>
internal static class ArrivalEndpoints
{
    public static void MapArrivals(this WebApplication app)
    {
        var api = app.MapGroup("/api").Guarded();
        api.MapGet("/now", (TimeProvider clock) => Results.Json(new { now = clock.GetUtcNow().ToUnixTimeMilliseconds() }));
        api.MapPost("/lawns/{id}/log", Entries);
        api.MapPost("/lawns/{id}/photos/{photo:guid}", Photo).WithMetadata(new RequestSizeLimitAttribute(Settings.PhotoBytes));
    }

    private static async Task<IResult> Entries(string id, LawnBook book, EntryArrivals arrivals, HttpContext http)
    {
        if (!http.Request.HasJsonContentType())
        {
            return ApiAnswer.Refused(StatusCodes.Status415UnsupportedMediaType, "JSON is needed");
        }

        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return NoSuchLawn;
        }

        if (SentEntries.Read(await Body(http), out var problem) is not { } sent)
        {
            return ApiAnswer.Refused(StatusCodes.Status400BadRequest, problem);
        }

        var results = await arrivals.Take(stored, sent, http.RequestAborted);
        return Results.Json(new { results }, statusCode: results is [{ Result: ArrivedEntry.Refused }] ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK);
    }

    private static async Task<IResult> Photo(string id, Guid photo, Guid spot, DateOnly? taken, LawnBook book, PhotoShelf shelf, PhotoTaking taking, TimeProvider clock, HttpContext http)
    {
        if (http.Request.ContentType?.StartsWith("image/", StringComparison.OrdinalIgnoreCase) != true)
        {
            return ApiAnswer.Refused(StatusCodes.Status415UnsupportedMediaType, "a picture is needed");
        }

        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return NoSuchLawn;
        }

        if (photo == Guid.Empty || taken > PhotoProgress.Today(stored, clock).AddDays(1))
        {
            return ApiAnswer.Refused(StatusCodes.Status422UnprocessableEntity, photo == Guid.Empty ? "id: an id of its own is needed" : "taken: that day is still to come");
        }

        if (await shelf.Spot(id, spot, http.RequestAborted) is not { } found)
        {
            return ApiAnswer.Refused(StatusCodes.Status422UnprocessableEntity, "this photo spot is no longer there");
        }

        switch (await taking.Take(stored, found, photo, await Body(http), taken, http.RequestAborted))
        {
            case PhotoTaken.Kept kept:
                return Results.Json(new { id = photo, result = kept.Before ? ArrivedEntry.Known : ArrivedEntry.Added, address = $"/lawns/{id}/photos/{kept.Row.SpotId}/{photo}" });
            case PhotoTaken.Refused refused:
                return ApiAnswer.Refused(StatusCodes.Status422UnprocessableEntity, refused.Why);
            case PhotoTaken.NoRoom:
                return ApiAnswer.Refused(StatusCodes.Status409Conflict, PhotoTaking.NoRoom);
            default:
                http.Response.Headers.RetryAfter = "10";
                return ApiAnswer.Refused(StatusCodes.Status503ServiceUnavailable, "other pictures are being measured");
        }
    }

    private static IResult NoSuchLawn => ApiAnswer.Refused(StatusCodes.Status404NotFound, "there is no such lawn; it may have been removed");

    private static async Task<byte[]> Body(HttpContext http)
    {
        using var body = new MemoryStream();
        await http.Request.Body.CopyToAsync(body, http.RequestAborted);
        return body.ToArray();
    }
}
