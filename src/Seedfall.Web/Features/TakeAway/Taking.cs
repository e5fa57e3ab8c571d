using System.Text;
using Seedfall.Exchange.Calendar;
using Seedfall.Exchange.Paper;
using Seedfall.Exchange.Plans;
using Seedfall.Exchange.Print;
using Seedfall.Exchange.Tables;
using Seedfall.Planning.Plan;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Host;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.TakeAway;

/// <summary>Makes the plan an address asks for and turns it into a file.</summary>
internal sealed class Taking(LawnBook book, PlanWork work, PaperPrinting printing, TimeProvider clock)
{
    private static readonly byte[] ByteOrderMark = Encoding.UTF8.GetPreamble();

    public Task<IResult> PlanPage(string id, HttpContext http) => Page(id, http, PaperHtml.FullPlan, "plan.html");

    public Task<IResult> HandoutPage(string id, HttpContext http) => Page(id, http, PaperHtml.Handout, "handout.html");

    public Task<IResult> PlanPdf(string id, HttpContext http) => Pdf(id, http, PaperHtml.FullPlan, "plan.pdf");

    public Task<IResult> HandoutPdf(string id, HttpContext http) => Pdf(id, http, PaperHtml.Handout, "handout.pdf");

    public Task<IResult> Json(string id, HttpContext http) =>
        Take(id, http, plan => Task.FromResult(Results.File(PlanJson.Write(plan), "application/json", Name(id, plan, "plan.json"))));

    /// <summary>The calendar. Its sequence rises with every change kept, so that a calendar taking it in again sees what moved.</summary>
    public Task<IResult> Calendar(string id, HttpContext http) => Take(id, http, async plan =>
    {
        var sequence = await work.Sequence(id, plan.Season, http.RequestAborted);
        return Results.File(Encoding.UTF8.GetBytes(SeasonCalendar.Write(plan, clock.GetUtcNow(), sequence)), "text/calendar; charset=utf-8", Name(id, plan, "season.ics"));
    });

    /// <summary>The shopping list, with the mark by which spreadsheets know UTF-8.</summary>
    public Task<IResult> Materials(string id, HttpContext http) => Take(id, http, plan =>
    {
        var text = Encoding.UTF8.GetBytes(MaterialsCsv.Write(plan));
        byte[] file = text.AsSpan().StartsWith(ByteOrderMark) ? text : [.. ByteOrderMark, .. text];
        return Task.FromResult(Results.File(file, "text/csv; charset=utf-8", Name(id, plan, "materials.csv")));
    });

    /// <summary>Shown in the browser where the address says <c>view</c>, else saved as a file. It runs no script either way.</summary>
    private Task<IResult> Page(string id, HttpContext http, PaperWriter write, string kind) => Take(id, http, async plan =>
    {
        var html = Encoding.UTF8.GetBytes(await write(plan, Size(http), Viewer.Of(http)));
        http.Response.Headers.ContentSecurityPolicy = SecurityHeaders.PaperPolicy;
        return Results.File(html, "text/html; charset=utf-8", http.Request.Query.ContainsKey("view") ? null : Name(id, plan, kind));
    });

    private Task<IResult> Pdf(string id, HttpContext http, PaperWriter write, string kind) => Take(id, http, async plan =>
    {
        try
        {
            var pdf = await printing.Print(await write(plan, Size(http), Viewer.Of(http)), http.RequestAborted);
            return Results.File(pdf, "application/pdf", Name(id, plan, kind));
        }
        catch (PrintException e)
        {
            return Layout.Page.Plain(StatusCodes.Status503ServiceUnavailable, "No PDF", e.Message);
        }
    });

    /// <summary>The file, or a page that says why there is none.</summary>
    private async Task<IResult> Take(string id, HttpContext http, Func<RecoveryPlan, Task<IResult>> write)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Layout.Page.NoSuchLawn();
        }

        var (planned, entries) = await PlanEndpoints.Asked(stored, http.Request.Query, work, http);
        if (!entries.Sound)
        {
            return Layout.Page.Plain(StatusCodes.Status422UnprocessableEntity, "No such plan", [.. entries.Problems.Select(p => p.Message)]);
        }

        return planned.Plan is { } plan
            ? await write(plan)
            : Layout.Page.Plain(StatusCodes.Status409Conflict, "No plan yet", planned.Refusal ?? "This lawn has no weather yet. Give it weather, then take the plan away.");
    }

    private static PaperSize Size(HttpContext http) => http.Request.Query["paper"] == "a4" ? PaperSize.A4 : PaperSize.Letter;

    private static string Name(string id, RecoveryPlan plan, string kind) => FormattableString.Invariant($"{id}-{plan.Season}-{kind}");

    private delegate Task<string> PaperWriter(RecoveryPlan plan, PaperSize size, Engine.Workings.UnitSystem first);
}
