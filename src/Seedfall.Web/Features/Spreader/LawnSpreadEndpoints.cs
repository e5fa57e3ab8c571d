using Seedfall.Planning.Calibration.Spreader;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Spreader;

/// <summary>Half, correct, half on one lawn.</summary>
internal static class LawnSpreadEndpoints
{
    public static void MapLawnSpreading(this WebApplication app)
    {
        app.MapGet("/lawns/{id}/spreader", Show);
        app.MapPost("/lawns/{id}/spreader", Write);
    }

    private static async Task<IResult> Show(string id, string? with, string? job, LawnBook book, SpreadWork work, SpreaderShelf shelf, TimeProvider clock, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var view = await View(stored, with, job, work, shelf, http);
        var entries = view.Step is SpreadStep.Spread step ? RunForm.For(Viewer.Of(http), view.Spreader!, step) : RunForm.Blank(Viewer.Of(http));
        return Answer(view, entries, Guid.CreateVersion7(clock.GetUtcNow()), StatusCodes.Status200OK, http);
    }

    private static async Task<IResult> Write(string id, IFormCollection form, LawnBook book, SpreadWork work, SpreaderShelf shelf, TimeProvider clock, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var view = await View(stored, form["with"], form["job"], work, shelf, http);
        if (view.Spreader is not { } spreader || view.Named is not { } named || spreader.Id != form["with"] || named.Job.Id != form["job"])
        {
            return Page.Plain(StatusCodes.Status409Conflict, "Changed meanwhile", "This job or this spreader is no longer there; the plan may have changed. Go back to the lawn's Spreader page and begin from it.");
        }

        var (entries, entry) = (Entries.From(form, Viewer.Of(http)), SpreaderEndpoints.EntryId(form, clock));
        if (spreader.Entries.All(e => e.Id != entry))
        {
            var progress = JobProgress.Of(spreader, named.Job);
            var open = Engine.Units.Area.FromSquareMeters(progress.Open.SquareMeters - progress.PassCovered.SquareMeters);
            if (RunForm.Read(entries, spreader, named.Job, open, entry, LawnClock.Now(stored, clock)) is not { } run)
            {
                return Answer(view, entries, entry, StatusCodes.Status422UnprocessableEntity, http);
            }

            await shelf.Append(spreader.Id, run, http.RequestAborted);
        }

        return Results.LocalRedirect($"/lawns/{id}/spreader?with={spreader.Id}&job={named.Job.Id}#next");
    }

    private static async Task<LawnSpreadView> View(StoredLawn stored, string? with, string? job, SpreadWork work, SpreaderShelf shelf, HttpContext http)
    {
        var (lawn, spreaders) = (await work.For(stored, http.RequestAborted), await shelf.All(http.RequestAborted));
        var spreader = spreaders.FirstOrDefault(s => s.Id == with) ?? spreaders.FirstOrDefault();
        return new(lawn, spreaders, spreader, lawn.Jobs.FirstOrDefault(j => j.Job.Id == job) ?? lawn.Jobs.FirstOrDefault());
    }

    private static IResult Answer(LawnSpreadView view, Entries entries, Guid entry, int status, HttpContext http) =>
        Page.Of<LawnSpreadPage>(new { View = view, Entries = entries, Entry = entry, System = Viewer.Of(http) }, status);
}
