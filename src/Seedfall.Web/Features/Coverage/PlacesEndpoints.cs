using Seedfall.Planning.Ground.Sheets;
using Seedfall.Web.Features.Site;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Coverage;

/// <summary>Places for a sprinkler moved by hand: suggested, and taken as heads.</summary>
internal static class PlacesEndpoints
{
    public static void MapPlaces(this RouteGroupBuilder coverage)
    {
        coverage.MapGet("/places", Show);
        coverage.MapPost("/places", Take);
    }

    private static async Task<IResult> Show(string id, LawnBook book, PlacesWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        if (DrawnPatches.Of(stored.Lawn).Count == 0)
        {
            return Results.LocalRedirect($"/lawns/{id}/coverage");
        }

        if (!http.Request.Query.ContainsKey("radius"))
        {
            var blank = new Entries(Viewer.Of(http));
            PlacesForm.Blank(stored.Lawn, blank);
            return Page.Of<PlacesPage>(new { Stored = stored, Entries = blank, System = Viewer.Of(http) });
        }

        var entries = Entries.From(new FormCollection(http.Request.Query.ToDictionary()), Viewer.Of(http));
        var found = await work.Of(stored.Lawn, entries, http.RequestAborted);
        return Page.Of<PlacesPage>(new { Stored = stored, Entries = entries, Found = found, System = Viewer.Of(http) }, found is null ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK);
    }

    private static async Task<IResult> Take(string id, IFormCollection form, LawnBook book, PlacesWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        if (await work.Of(stored.Lawn, entries, http.RequestAborted) is not { } found)
        {
            return Page.Of<PlacesPage>(new { Stored = stored, Entries = entries, System = Viewer.Of(http) }, StatusCodes.Status422UnprocessableEntity);
        }

        if (PlacesWork.Take(stored.Lawn, found, form["into"].ToString()) is not { } taken)
        {
            return HeadEndpoints.NoSuchHead();
        }

        if (book.Problems(taken.Lawn) is { Count: > 0 } problems)
        {
            return Page.Plain(StatusCodes.Status422UnprocessableEntity, "That cannot be kept", [.. problems.Select(HeadEndpoints.Sentence)]);
        }

        return SiteEndpoints.After(await book.Save(id, SiteEndpoints.Version(form), taken.Lawn, http.RequestAborted), FormattableString.Invariant($"/lawns/{id}/coverage?set={taken.Set}"));
    }
}
