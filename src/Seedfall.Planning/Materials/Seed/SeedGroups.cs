using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>Patches sown with the same blend.</summary>
internal sealed record SeedGroup(SeedBlend Blend, IReadOnlyList<PatchSummary> Patches);

/// <summary>The lawn's patches by the blend that suits each: their grasses, their sun, the lots in hand.</summary>
/// <param name="Groups">The one on most ground first.</param>
/// <param name="Reasons">Why the mixes are what they are.</param>
internal sealed record SeedGroups(IReadOnlyList<SeedGroup> Groups, IReadOnlyList<Advice> Reasons)
{
    internal IEnumerable<Assumption> Assumptions => Groups.SelectMany(g => g.Blend.Assumptions).DistinctBy(a => a.Id);

    internal static SeedGroups Of(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches)
    {
        var wanted = lawn.Patches.Select(p => MixChoice.For(lawn, p, choices, tables)).ToList();
        var groups = patches
            .Select((p, i) => (Patch: p, Blend: SeedBlend.Of(lawn, choices, tables, wanted[i])))
            .GroupBy(x => x.Blend.Key(), StringComparer.Ordinal)
            .Select(g => new SeedGroup(g.First().Blend, [.. g.Select(x => x.Patch)]))
            .OrderByDescending(g => g.Patches.Sum(p => p.Area.Value))
            .ToList();
        var reasons = patches.SelectMany((p, i) => wanted[i].Reasons.Where(r => Sown(groups, p).Contains(r.About)).Select(r => r.Advice));
        return new(groups, [.. reasons.DistinctBy(r => r.Id)]);
    }

    private static IEnumerable<GrassSpecies> Sown(IEnumerable<SeedGroup> groups, PatchSummary patch) =>
        groups.Single(g => g.Patches.Contains(patch)).Blend.Kinds().Select(k => k.Species);

    /// <summary>All groups as one blend, each weighing what it takes of the lawn's seed.</summary>
    /// <param name="totalsKg">Bulk seed of each group.</param>
    internal SeedBlend Whole(IReadOnlyList<double> totalsKg)
    {
        var allKg = totalsKg.Sum();
        var parts = Groups.SelectMany((g, i) => g.Blend.Parts.Select(p => p with { BulkShare = p.BulkShare * totalsKg[i] / allKg }));
        return new([.. parts.GroupBy(p => p.Id, StringComparer.Ordinal).Select(g => g.First() with { BulkShare = g.Sum(p => p.BulkShare) })], []);
    }
}
