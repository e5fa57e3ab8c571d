using Seedfall.Planning.Ground;
using Seedfall.Weather.Soils;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Site;

/// <summary>The soil survey asked on request, its answer shown, and kept only where somebody says so.</summary>
internal static class SoilMapEndpoints
{
    private static readonly NumberField Ph = new("ph", "pH", 3.0, 10.0);
    private static readonly NumberField Organic = new("organic", "Organic matter", 0.0, 100.0, "%");

    public static void MapSoilMap(this RouteGroupBuilder site)
    {
        site.MapGet("/soil-map", (string id, LawnBook book, SiteWork work, HttpContext http) => Show(id, null, book, work, http));
        site.MapPost("/soil-map", async (string id, IFormCollection form, LawnBook book, SiteWork work, SoilSurvey survey, HttpContext http) =>
            await book.Find(id, http.RequestAborted) is { } stored ? await Show(id, await survey.Ask(stored.Lawn.Place, http.RequestAborted), book, work, http) : Page.NoSuchLawn());
        site.MapPost("/soil-map/keep", Keep);
    }

    private static async Task<IResult> Show(string id, SurveyAnswer? answer, LawnBook book, SiteWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        return Page.Of<SoilMapPage>(new { Stored = stored, Answer = answer, Surface = answer?.Answer?.Unit is { } unit ? SurfaceSoil.Of(unit) : null, work.LooksUp });
    }

    private static async Task<IResult> Keep(string id, IFormCollection form, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        var soil = stored.Lawn.Soil ?? new SoilFacts();
        if (entries.Text("take-texture") == "yes" && Answers.Textures.FirstOrDefault(a => a.Item2 == entries.Text("texture")) is { Item2: not null } texture)
        {
            soil = soil with { Texture = texture.Item1 };
        }

        soil = entries.Text("take-ph") == "yes" && Ph.Read(entries) is { } ph ? soil with { Ph = ph } : soil;
        soil = entries.Text("take-organic") == "yes" && Organic.ReadShare(entries) is { } organic ? soil with { OrganicMatter = organic } : soil;
        var lawn = stored.Lawn with { Soil = soil == new SoilFacts() ? null : soil };
        return entries.Sound && book.Problems(lawn).Count == 0
            ? SiteEndpoints.After(await book.Save(id, SiteEndpoints.Version(form), lawn, http.RequestAborted), $"/lawns/{id}/site#soil")
            : Page.Plain(StatusCodes.Status422UnprocessableEntity, "That cannot be kept", "A number of the survey's answer was changed on the way. Ask again.");
    }
}
