using System.Globalization;
using Seedfall.Planning.Ground;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Site;

/// <summary>What stands around a patch: seen, added, changed, taken away.</summary>
internal static class SunEndpoints
{
    public static void MapSun(this RouteGroupBuilder site)
    {
        site.MapGet("/sun/{patch}", Show);
        site.MapPost("/sun/{patch}/faces", Face);
        site.MapGet("/sun/{patch}/{item}", ShowObstacle);
        site.MapPost("/sun/{patch}/{item}", Save);
        site.MapPost("/sun/{patch}/{item}/remove", Remove);
    }

    private static async Task<IResult> Show(string id, string patch, LawnBook book, SiteWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        return Find(stored, patch) is { } found ? SunOf(stored, found, work, http, null) : SiteEndpoints.NoSuchPatch();
    }

    private static IResult SunOf(StoredLawn stored, Patch patch, SiteWork work, HttpContext http, Entries? posted)
    {
        var entries = posted ?? new Entries(Viewer.Of(http));
        if (posted is null)
        {
            SunForm.Faces.Fill(entries, patch.AspectDeg);
        }

        return Page.Of<SunPage>(new { Stored = stored, View = work.Sun(stored, patch), Entries = entries, System = Viewer.Of(http) }, posted is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task<IResult> Face(string id, string patch, IFormCollection form, LawnBook book, SiteWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        if (Find(stored, patch) is not { } found)
        {
            return SiteEndpoints.NoSuchPatch();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        var faces = SunForm.Faces.Read(entries);
        return entries.Sound
            ? await Keep(stored, found with { AspectDeg = faces }, form, book, http)
            : SunOf(stored, found, work, http, entries);
    }

    private static async Task<IResult> ShowObstacle(string id, string patch, string item, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        if (Find(stored, patch) is not { } found || Position(item, found) is not { } position)
        {
            return SiteEndpoints.NoSuchPatch();
        }

        var entries = new Entries(Viewer.Of(http));
        SunForm.Fill(entries, found.Obstacles.ElementAtOrDefault(position));
        return Page.Of<ObstaclePage>(new { Stored = stored, Patch = found, Item = item, Entries = entries });
    }

    private static async Task<IResult> Save(string id, string patch, string item, IFormCollection form, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        if (Find(stored, patch) is not { } found || Position(item, found) is not { } position)
        {
            return SiteEndpoints.NoSuchPatch();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        if (SunForm.Read(entries) is not { } obstacle)
        {
            return Page.Of<ObstaclePage>(new { Stored = stored, Patch = found, Item = item, Entries = entries }, StatusCodes.Status422UnprocessableEntity);
        }

        return await Keep(stored, found with { Obstacles = [.. found.Obstacles.Take(position), obstacle, .. found.Obstacles.Skip(position + 1)] }, form, book, http);
    }

    private static async Task<IResult> Remove(string id, string patch, string item, IFormCollection form, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        return Find(stored, patch) is { } found && Position(item, found) is { } position && position < found.Obstacles.Count
            ? await Keep(stored, found with { Obstacles = [.. found.Obstacles.Where((_, i) => i != position)] }, form, book, http)
            : SiteEndpoints.NoSuchPatch();
    }

    private static async Task<IResult> Keep(StoredLawn stored, Patch changed, IFormCollection form, LawnBook book, HttpContext http)
    {
        var lawn = stored.Lawn with { Patches = [.. stored.Lawn.Patches.Select(p => p.Id == changed.Id ? changed : p)] };
        if (book.Problems(lawn) is { Count: > 0 } problems)
        {
            return Page.Plain(StatusCodes.Status422UnprocessableEntity, "That cannot be kept", [.. problems.Select(LeafWork.Sentence)]);
        }

        var result = await book.Save(stored.Row.Id, SiteEndpoints.Version(form), lawn, http.RequestAborted);
        return SiteEndpoints.After(result, $"/lawns/{stored.Row.Id}/site/sun/{changed.Id}");
    }

    private static Patch? Find(StoredLawn stored, string patch) => stored.Lawn.Patches.FirstOrDefault(p => p.Id == patch);

    /// <summary>Position of an obstacle numbered from 1, the place after the last for a new one; null where there is none.</summary>
    private static int? Position(string item, Patch patch) => item == "new"
        ? patch.Obstacles.Count
        : int.TryParse(item, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= patch.Obstacles.Count ? number - 1 : null;
}
