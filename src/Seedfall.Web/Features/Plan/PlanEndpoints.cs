using Microsoft.Extensions.Primitives;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.Plan;

/// <summary>The plan of a lawn on one page, its what-if, and keeping a choice.</summary>
internal static class PlanEndpoints
{
    public static void MapPlan(this WebApplication app)
    {
        app.MapGet("/lawns/{id}", Show);
        app.MapPost("/lawns/{id}/season", Keep);
    }

    private static async Task<IResult> Show(string id, LawnBook book, PlanWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var (planned, entries) = await Asked(stored, http.Request.Query, work, http);
        return Page.Of<PlanPage>(new { Planned = planned, Entries = entries, System = Viewer.Of(http) }, entries.Sound ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task<IResult> Keep(string id, IFormCollection form, LawnBook book, PlanWork work, HttpContext http)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var entries = Entries.From(form, Viewer.Of(http));
        var kept = await work.Kept(stored, SeasonOf(form[WhatIf.Season.Name]), http.RequestAborted);
        var asked = WhatIf.Read(entries, kept);
        if (!entries.Sound)
        {
            var planned = await work.Plan(stored, kept, null, http.RequestAborted);
            return Page.Of<PlanPage>(new { Planned = planned, Entries = entries, System = Viewer.Of(http) }, StatusCodes.Status422UnprocessableEntity);
        }

        await work.Keep(id, asked, http.RequestAborted);
        return Results.LocalRedirect(FormattableString.Invariant($"/lawns/{id}?season={asked.Season}"));
    }

    /// <summary>The plan an address asks for. Where something in it is wrong, the kept plan with the problems noted.</summary>
    public static async Task<(PlannedLawn Planned, Entries Entries)> Asked(StoredLawn stored, IQueryCollection query, PlanWork work, HttpContext http)
    {
        var entries = new Entries(Viewer.Of(http));
        foreach (var name in WhatIf.Names.Where(query.ContainsKey))
        {
            entries.Put(name, query[name]);
        }

        var kept = await work.Kept(stored, SeasonOf(query[WhatIf.Season.Name]), http.RequestAborted);
        var asked = WhatIf.Read(entries, kept);
        var planned = await work.Plan(stored, kept, entries.Sound ? asked : null, http.RequestAborted);
        if (entries.Sound)
        {
            WhatIf.Fill(entries, planned.Plan?.Timing.SeedDown is { } day && asked.SeedDown is null ? asked with { SeedDown = day } : asked);
        }

        return (planned, entries);
    }

    private static int? SeasonOf(StringValues text) => NumberText.Parse(text.ToString()) is >= 1950.0 and <= 2150.0 and { } year ? (int)year : null;
}
