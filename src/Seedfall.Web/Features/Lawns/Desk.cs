using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;

namespace Seedfall.Web.Features.Lawns;

/// <summary>All lawns at a glance: those with the next dated work first.</summary>
internal sealed class Desk(LawnBook book, PlanWork work)
{
    public async Task<IReadOnlyList<PlannedLawn>> Look(CancellationToken cancellation)
    {
        List<PlannedLawn> lawns = [];
        foreach (var stored in await book.All(cancellation))
        {
            lawns.Add(await work.Plan(stored, await work.Kept(stored, null, cancellation), null, cancellation));
        }

        return [.. lawns.OrderBy(l => l.Plan?.Next.Date ?? DateOnly.MaxValue).ThenBy(l => l.Stored.Lawn.Name, StringComparer.OrdinalIgnoreCase)];
    }
}
