using Seedfall.Photos.Cover;
using Seedfall.Photos.Overview;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Photos;

/// <summary>One picture: its measure, answers to points of it, and the marks of an overview.</summary>
internal static class OnePhoto
{
    public static void MapOnePhoto(this RouteGroupBuilder photos)
    {
        var photo = photos.MapGroup("/{spot:guid}/{photo:guid}");
        photo.MapGet("", (string id, Guid spot, Guid photo, OnePhotoScene scene, HttpContext http) => Show(id, spot, photo, null, StatusCodes.Status200OK, scene, http));
        photo.MapPost("/taps", Tap);
        photo.MapPost("/card", Card);
        photo.MapPost("/marks", Mark);
        photo.MapPost("/taken", ChangeDay);
        photo.MapPost("/remove", Remove);
    }

    private static async Task<IResult> Show(string id, Guid spot, Guid photo, Entries? marks, int status, OnePhotoScene scene, HttpContext http)
    {
        if (await scene.Find(id, spot, photo, http.RequestAborted) is not var (stored, found, row))
        {
            return PhotoEndpoints.NoSuchSpot();
        }

        var entries = marks ?? scene.MarksOf(found, row, Viewer.Of(http));
        var planned = row.Found is null ? null : await scene.Plan(stored, http.RequestAborted);
        return Page.Of<PhotoPage>(new { Stored = stored, Spot = found, Photo = row, Marks = entries, Seed = planned is null ? null : ThinSpotPlan.Of(planned, found, row.Found()!), planned?.Plan, System = Viewer.Of(http) }, status);
    }

    private static async Task<IResult> Tap(string id, Guid spot, Guid photo, IFormCollection form, OnePhotoScene scene, HttpContext http)
    {
        if (await scene.Find(id, spot, photo, http.RequestAborted) is not var (stored, found, row) || scene.Measurable(row) is not { } size)
        {
            return PhotoEndpoints.NoSuchSpot();
        }

        IReadOnlyList<CoverTap> taps = form["forget"] == "yes" ? [] : [.. row.Taps().Concat(TapForm.Read(form, size)).TakeLast(TapForm.Most)];
        return await scene.Measure(stored, found, row, row.Marks(), taps, row.Card(), http.RequestAborted) switch
        {
            MeasureResult.Done or MeasureResult.Refused => Results.LocalRedirect($"/lawns/{id}/photos/{spot}/{photo}#measure"),
            MeasureResult.Busy => PhotoEndpoints.Busy(http),
            _ => Met(),
        };
    }

    private static async Task<IResult> Card(string id, Guid spot, Guid photo, IFormCollection form, OnePhotoScene scene, HttpContext http)
    {
        if (await scene.Find(id, spot, photo, http.RequestAborted) is not var (stored, found, row) || found.IsOverview || row.Cover is null)
        {
            return PhotoEndpoints.NoSuchSpot();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        var card = form["forget"] == "yes" ? null : CardForm.Read(entries);
        if (!entries.Sound)
        {
            return Page.Of<PhotoPage>(new { Stored = stored, Spot = found, Photo = row, Marks = scene.MarksOf(found, row, Viewer.Of(http)), Card = entries, System = Viewer.Of(http) }, StatusCodes.Status422UnprocessableEntity);
        }

        return await scene.Measure(stored, found, row, null, row.Taps(), card, http.RequestAborted) switch
        {
            MeasureResult.Done => Results.LocalRedirect($"/lawns/{id}/photos/{spot}/{photo}#measure"),
            MeasureResult.Busy => PhotoEndpoints.Busy(http),
            _ => Met(),
        };
    }

    private static async Task<IResult> Mark(string id, Guid spot, Guid photo, IFormCollection form, OnePhotoScene scene, HttpContext http)
    {
        if (await scene.Find(id, spot, photo, http.RequestAborted) is not var (stored, found, row) || !found.IsOverview)
        {
            return PhotoEndpoints.NoSuchSpot();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        if (TapForm.OnPicture(form, (double)row.Width / row.Height) is { } point)
        {
            MarksForm.PutNext(entries, point);
            return await Show(id, spot, photo, entries, StatusCodes.Status200OK, scene, http);
        }

        if (MarksForm.Read(entries) is not var (note, frame))
        {
            return await Show(id, spot, photo, entries, StatusCodes.Status422UnprocessableEntity, scene, http);
        }

        if (MarkedView.Of(row.Width, row.Height, [.. note.Points.Select(p => new ImagePoint(p.X * row.Width, p.Y * row.Height))], frame).Problem is { } problem)
        {
            entries.Wrong("", PhotoWords.Of(problem));
            return await Show(id, spot, photo, entries, StatusCodes.Status422UnprocessableEntity, scene, http);
        }

        return await scene.Measure(stored, found, row, note, row.Marks() is null ? [] : row.Taps(), null, http.RequestAborted) switch
        {
            MeasureResult.Done => Results.LocalRedirect($"/lawns/{id}/photos/{spot}/{photo}#measure"),
            MeasureResult.Busy => PhotoEndpoints.Busy(http),
            _ => Met(),
        };
    }

    private static async Task<IResult> ChangeDay(string id, Guid spot, Guid photo, IFormCollection form, OnePhotoScene scene, HttpContext http)
    {
        if (await scene.Find(id, spot, photo, http.RequestAborted) is not var (stored, found, row))
        {
            return PhotoEndpoints.NoSuchSpot();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        return SpotPage.Taken.Read(entries) is { } day && !await scene.Date(stored, found, row, day, http.RequestAborted)
            ? Met()
            : Results.LocalRedirect($"/lawns/{id}/photos/{spot}/{photo}");
    }

    private static async Task<IResult> Remove(string id, Guid spot, Guid photo, IFormCollection form, OnePhotoScene scene, HttpContext http)
    {
        if (await scene.Find(id, spot, photo, http.RequestAborted) is not var (stored, _, row))
        {
            return PhotoEndpoints.NoSuchSpot();
        }

        await scene.Remove(stored, row, http.RequestAborted);
        return Results.LocalRedirect($"/lawns/{id}/photos/{spot}");
    }

    private static IResult Met() => Page.Plain(StatusCodes.Status409Conflict, "Changed meanwhile", "Another window measured or removed this picture meanwhile. Go back, reload and do it again.");
}
