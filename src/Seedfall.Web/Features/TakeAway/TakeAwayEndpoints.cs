using System.Text;
using Seedfall.Exchange.Paper;
using Seedfall.Exchange.Plans;
using Seedfall.Planning.Plan;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Host;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.TakeAway;

/// <summary>The plan as paper, calendar, list and data: the same plan the address shows on the screen.</summary>
internal static class TakeAwayEndpoints
{
    public static void MapTakeAway(this WebApplication app)
    {
        app.MapGet("/lawns/{id}/take-away", ShowPage);
        var plan = app.MapGroup("/lawns/{id}/take-away");
        plan.MapGet("/plan.html", (string id, Taking taking, HttpContext http) => taking.Take(id, http, async p => Paper(http, await PaperHtml.FullPlan(p, Size(http), Viewer.Of(http)), Name(id, p, "plan.html"))));
        plan.MapGet("/handout.html", (string id, Taking taking, HttpContext http) => taking.Take(id, http, async p => Paper(http, await PaperHtml.Handout(p, Size(http), Viewer.Of(http)), Name(id, p, "handout.html"))));
        plan.MapGet("/plan.json", (string id, Taking taking, HttpContext http) => taking.Take(id, http, p => Task.FromResult(Results.File(PlanJson.Write(p), "application/json", Name(id, p, "plan.json")))));
    }

    private static async Task<IResult> ShowPage(string id, LawnBook book, PlanWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var (planned, entries) = await PlanEndpoints.Asked(stored, http.Request.Query, work, http);
        return Page.Of<TakeAwayPage>(new { Planned = planned, Query = entries.Sound ? http.Request.QueryString.Value : "" });
    }

    /// <summary>Shown in the browser where asked for with <c>view</c>, else saved as a file. It runs no script either way.</summary>
    private static IResult Paper(HttpContext http, string html, string name)
    {
        http.Response.Headers.ContentSecurityPolicy = SecurityHeaders.PaperPolicy;
        var bytes = Encoding.UTF8.GetBytes(html);
        return http.Request.Query.ContainsKey("view") ? Results.Bytes(bytes, "text/html; charset=utf-8") : Results.File(bytes, "text/html; charset=utf-8", name);
    }

    private static PaperSize Size(HttpContext http) => http.Request.Query["paper"] == "a4" ? PaperSize.A4 : PaperSize.Letter;

    private static string Name(string id, RecoveryPlan plan, string kind) => FormattableString.Invariant($"{id}-{plan.Season}-{kind}");
}
