using Seedfall.Planning.Ground;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Site;

/// <summary>The soil by jar, by feel and by report. Nothing found is kept before somebody says so.</summary>
internal static class SoilEndpoints
{
    public static void MapSoil(this RouteGroupBuilder site)
    {
        site.MapGet("/jar", Jar);
        site.MapGet("/feel", Feel);
        site.MapPost("/texture", KeepTexture);
        site.MapGet("/report", ShowReport);
        site.MapPost("/report", SaveReport);
    }

    private static async Task<IResult> Jar(string id, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var entries = JarForm.From(http.Request.Query, Viewer.Of(http));
        var answer = JarForm.Read(entries);
        return Page.Of<JarPage>(new { Stored = stored, Entries = entries, Answer = answer, System = Viewer.Of(http) }, Status(entries));
    }

    private static async Task<IResult> Feel(string id, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var entries = FeelForm.From(http.Request.Query, Viewer.Of(http));
        var found = FeelForm.Read(entries);
        return Page.Of<FeelPage>(new { Stored = stored, Entries = entries, Found = found }, Status(entries));
    }

    private static async Task<IResult> KeepTexture(string id, IFormCollection form, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var key = form["texture"].ToString();
        foreach (var (texture, known, _) in Answers.Textures)
        {
            if (known == key)
            {
                var lawn = stored.Lawn with { Soil = (stored.Lawn.Soil ?? new SoilFacts()) with { Texture = texture } };
                return SiteEndpoints.After(await book.Save(id, SiteEndpoints.Version(form), lawn, http.RequestAborted), $"/lawns/{id}/site#soil");
            }
        }

        return Page.Plain(StatusCodes.Status422UnprocessableEntity, "Choose a texture", "Choose one of the twelve texture classes.");
    }

    private static async Task<IResult> ShowReport(string id, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var entries = new Entries(Viewer.Of(http));
        ReportForm.Fill(entries, stored.Lawn.Soil);
        return Page.Of<ReportPage>(new { Stored = stored, Entries = entries, System = Viewer.Of(http) });
    }

    private static async Task<IResult> SaveReport(string id, IFormCollection form, LawnBook book, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        var soil = ReportForm.Read(entries, stored.Lawn.Soil);
        var lawn = stored.Lawn with { Soil = soil == new SoilFacts() ? null : soil };
        foreach (var problem in entries.Sound ? book.Problems(lawn) : [])
        {
            entries.Wrong(problem.Path, LeafWork.Sentence(problem));
        }

        return entries.Sound
            ? SiteEndpoints.After(await book.Save(id, SiteEndpoints.Version(form), lawn, http.RequestAborted), $"/lawns/{id}/site/report#reading")
            : Page.Of<ReportPage>(new { Stored = stored, Entries = entries, System = Viewer.Of(http) }, StatusCodes.Status422UnprocessableEntity);
    }

    private static int Status(Entries entries) => entries.Sound ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity;
}
