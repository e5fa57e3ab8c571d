using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>What the work counts as: overseeding, repair or a new lawn.</summary>
internal static class WorkKind
{
    /// <summary>As entered; otherwise overseeding, the strictest case of the phosphorus laws, with a named assumption.</summary>
    internal static (SeedingWork Work, IReadOnlyList<Assumption> Assumed) Of(Lawn lawn) => lawn.Work is { } work
        ? (work, [])
        : (SeedingWork.Overseed,
            [new("assumed.work", "The work is taken as overseeding a standing lawn, not repair and not a new lawn.", "Seed rate, and whether the law lets phosphorus go on: several states exempt repair or new lawns but not overseeding.", "Say whether this is overseeding, repair of damaged turf, or a new lawn.")]);
}
