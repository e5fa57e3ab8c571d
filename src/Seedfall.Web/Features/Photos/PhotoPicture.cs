using Seedfall.Web.Data;
using Seedfall.Web.Host;

namespace Seedfall.Web.Features.Photos;

/// <summary>Pictures as files: to this browser only, of a fixed kind, and able to do nothing.</summary>
internal static class PhotoPicture
{
    public static void MapPictures(this RouteGroupBuilder photos) => photos.MapGet("/{spot:guid}/{photo:guid}/{part}.jpg", Show);

    /// <summary>The address of a part, with the version it was drawn from.</summary>
    public static string Address(PhotoRow photo, PicturePart part) =>
        FormattableString.Invariant($"/lawns/{photo.LawnId}/photos/{photo.SpotId}/{photo.Id}/{PhotoFolder.NameOf(part)}.jpg?v={photo.Version}");

    private static async Task<IResult> Show(string id, Guid spot, Guid photo, string part, PhotoShelf shelf, PhotoFolder folder, HttpContext http)
    {
        var known = Enum.GetValues<PicturePart>().Where(p => PhotoFolder.NameOf(p) == part).ToList();
        if (known.Count == 0 || await shelf.Spot(id, spot, http.RequestAborted) is not { } found || found.Photos.All(p => p.Id != photo) || folder.PathOf(photo, known[0]) is var path && !File.Exists(path))
        {
            return Results.NotFound();
        }

        var headers = http.Response.Headers;
        headers.ContentSecurityPolicy = SecurityHeaders.PicturePolicy;
        headers.CacheControl = http.Request.Query.ContainsKey("v") ? "private, max-age=31536000, immutable" : "private, no-cache";
        return Results.File(path, "image/jpeg", enableRangeProcessing: false);
    }
}
