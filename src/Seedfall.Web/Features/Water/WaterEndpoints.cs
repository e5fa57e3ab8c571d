using System.Text;
using Seedfall.Exchange.Calendar;
using Seedfall.Exchange.Paper;
using Seedfall.Exchange.Tables;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Water;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Host;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Water;

/// <summary>The day's watering on a page, and what is taken of it to the tap, the timer and the calendar.</summary>
internal static class WaterEndpoints
{
    public static void MapWater(this WebApplication app)
    {
        var water = app.MapGroup("/lawns/{id}/water");
        water.MapGet("", Show);
        water.MapGet("/tap.html", (string id, LawnBook book, WaterWork work, HttpContext http) => Take(id, book, work, http, (plan, watering) => Tap(plan, watering, http)));
        water.MapGet("/week.csv", (string id, LawnBook book, WaterWork work, HttpContext http) => Take(id, book, work, http, (_, watering) =>
            File(WateringCsv.Write(watering), "text/csv", id, watering, "water.csv")));
        water.MapGet("/week.ics", (string id, LawnBook book, WaterWork work, TimeProvider clock, HttpContext http) => Take(id, book, work, http, (plan, watering) =>
            File(WateringCalendar.Write(plan, watering, clock.GetUtcNow()), "text/calendar", id, watering, "water.ics")));
    }

    private static async Task<IResult> Show(string id, LawnBook book, WaterWork work, HttpContext http) =>
        await book.Find(id, http.RequestAborted) is { } stored
            ? Page.Of<WaterPage>(new { Lawn = await work.Today(stored, http.RequestAborted), System = Viewer.Of(http) })
            : Page.NoSuchLawn();

    /// <summary>Shown in the browser, to print. It runs no script.</summary>
    private static async Task<IResult> Tap(RecoveryPlan plan, LawnWatering watering, HttpContext http)
    {
        var size = http.Request.Query["paper"] == "a4" ? PaperSize.A4 : PaperSize.Letter;
        var html = await PaperHtml.Tap(plan.LawnName, watering, size, Viewer.Of(http));
        http.Response.Headers.ContentSecurityPolicy = SecurityHeaders.PaperPolicy;
        return Results.Content(html, "text/html; charset=utf-8");
    }

    /// <summary>The file, or a page that says why there is none.</summary>
    private static async Task<IResult> Take(string id, LawnBook book, WaterWork work, HttpContext http, Func<RecoveryPlan, LawnWatering, Task<IResult>> write)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        return await work.Today(stored, http.RequestAborted) is { Watering: { Week.Count: > 0 } watering, Planned.Plan: { } plan }
            ? await write(plan, watering)
            : Page.Plain(StatusCodes.Status409Conflict, "No watering yet", "There is no daily watering to take away: the lawn's Water page says what is missing.");
    }

    private static Task<IResult> File(string text, string type, string id, LawnWatering watering, string kind) =>
        Task.FromResult(Results.File(Encoding.UTF8.GetBytes(text), $"{type}; charset=utf-8", FormattableString.Invariant($"{id}-{watering.Today:yyyy-MM-dd}-{kind}")));
}
