using Microsoft.AspNetCore.Http.HttpResults;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Features.Weather;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Site;

/// <summary>What the place gives a lawn: sun, soil, climate.</summary>
internal static class SiteEndpoints
{
    public static void MapSite(this WebApplication app)
    {
        var site = app.MapGroup("/lawns/{id}/site");
        site.MapGet("", Overview);
        site.MapGet("/climate", Climate);
        site.MapSun();
        site.MapSoil();
        site.MapSoilMap();
    }

    /// <summary>The answer to a change, wherever it came from.</summary>
    internal static IResult After(SaveResult result, string address) => result switch
    {
        SaveResult.Saved => Results.LocalRedirect(address),
        SaveResult.Gone => Page.NoSuchLawn(),
        _ => Page.Plain(StatusCodes.Status409Conflict, "Changed meanwhile", "Another window changed this lawn while the page was open. Go back, load the page again and repeat what you did."),
    };

    /// <summary>The version of the lawn a form was made from.</summary>
    internal static int Version(IFormCollection form) => int.TryParse(form["version"], out var version) ? version : -1;

    private static async Task<IResult> Overview(string id, LawnBook book, WeatherShelf shelf, SiteWork work, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored
            ? Page.Of<SitePage>(new { Stored = stored, Suns = work.Suns(stored), Climate = await Facts(stored, shelf, http), System = Viewer.Of(http), LooksUp = work.LooksUp })
            : Page.NoSuchLawn();

    private static async Task<IResult> Climate(string id, LawnBook book, WeatherShelf shelf, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored
            ? Page.Of<ClimatePage>(new { Stored = stored, Climate = await Facts(stored, shelf, http), System = Viewer.Of(http) })
            : Page.NoSuchLawn();

    private static async Task<Planning.Ground.ClimateFacts?> Facts(StoredLawn stored, WeatherShelf shelf, HttpContext http) =>
        stored.Row.WeatherId is { } weather && await shelf.History(weather, http.RequestAborted) is { } history
            ? Planning.Ground.ClimateFacts.Of(history, stored.Lawn.Place.LatitudeDeg < 0.0)
            : null;

    internal static RazorComponentResult<PlainPage> NoSuchPatch() =>
        Page.Plain(StatusCodes.Status404NotFound, "No such patch", "There is no such patch in this lawn’s notes. It may have been removed.");
}
