using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.TakeAway;

/// <summary>The plan as paper, calendar, list and data: the same plan the address shows on the screen.</summary>
internal static class TakeAwayEndpoints
{
    public static void MapTakeAway(this WebApplication app)
    {
        app.MapGet("/lawns/{id}/take-away", ShowPage);
        var files = app.MapGroup("/lawns/{id}/take-away");
        files.MapGet("/plan.html", (string id, Taking taking, HttpContext http) => taking.PlanPage(id, http));
        files.MapGet("/handout.html", (string id, Taking taking, HttpContext http) => taking.HandoutPage(id, http));
        files.MapGet("/plan.pdf", (string id, Taking taking, HttpContext http) => taking.PlanPdf(id, http));
        files.MapGet("/handout.pdf", (string id, Taking taking, HttpContext http) => taking.HandoutPdf(id, http));
        files.MapGet("/season.ics", (string id, Taking taking, HttpContext http) => taking.Calendar(id, http));
        files.MapGet("/materials.csv", (string id, Taking taking, HttpContext http) => taking.Materials(id, http));
        files.MapGet("/plan.json", (string id, Taking taking, HttpContext http) => taking.Json(id, http));
    }

    private static async Task<IResult> ShowPage(string id, LawnBook book, PlanWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var (planned, entries) = await PlanEndpoints.Asked(stored, http.Request.Query, work, http);
        return Page.Of<TakeAwayPage>(new { Planned = planned, Query = entries.Sound ? http.Request.QueryString.Value : "", CanPrint = PaperPrinting.Browser is not null });
    }
}
