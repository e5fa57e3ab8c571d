using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Judgment;

/// <summary>The verdict on one patch from what the walk-over found.</summary>
internal static class PatchJudging
{
    internal static PatchVerdict Judge(Patch patch, PatchSummary summary, TradeTables tables)
    {
        IReadOnlyList<Reason> cure = [.. CureReasons.For(patch, tables)];
        IReadOnlyList<Reason> over = [.. CoverReasons.StartOver(patch, summary)];
        IReadOnlyList<Reason> notes = [.. CoverReasons.Notes(patch, summary), .. CureReasons.Notes(patch, tables)];
        var dormant = patch.Dormant == true ? CoverReasons.Dormant(patch) : null;
        return (cure.Count, dormant, over.Count) switch
        {
            ( > 0, _, _) => new PatchVerdict(patch.Id, VerdictKind.CureFirst, [.. cure, .. over, .. notes]),
            (_, { } asleep, _) => new PatchVerdict(patch.Id, VerdictKind.Wait, [asleep, .. notes]),
            (_, _, > 0) => new PatchVerdict(patch.Id, VerdictKind.StartOver, [.. over, .. notes]),
            _ => new PatchVerdict(patch.Id, VerdictKind.Recover, [CoverReasons.Enough(patch, summary), .. notes]),
        };
    }
}
