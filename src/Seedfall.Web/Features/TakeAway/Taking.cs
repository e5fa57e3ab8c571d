using Seedfall.Planning.Plan;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Layout;

namespace Seedfall.Web.Features.TakeAway;

/// <summary>Makes the plan an address asks for and turns it into a file.</summary>
internal sealed class Taking(LawnBook book, PlanWork work)
{
    /// <summary>The file, or a page that says why there is none.</summary>
    public async Task<IResult> Take(string id, HttpContext http, Func<RecoveryPlan, Task<IResult>> write)
    {
        if (await book.Find(id, http.RequestAborted) is not { } stored)
        {
            return Page.NoSuchLawn();
        }

        var (planned, entries) = await PlanEndpoints.Asked(stored, http.Request.Query, work, http);
        if (!entries.Sound)
        {
            return Page.Plain(StatusCodes.Status422UnprocessableEntity, "No such plan", [.. entries.Problems.Select(p => p.Message)]);
        }

        return planned.Plan is { } plan
            ? await write(plan)
            : Page.Plain(StatusCodes.Status409Conflict, "No plan yet", planned.Refusal ?? "This lawn has no weather yet. Give it weather, then take the plan away.");
    }
}
