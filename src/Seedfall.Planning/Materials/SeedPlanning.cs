using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>The seed part of the plan.</summary>
public static class SeedPlanning
{
    /// <summary>Mixes, rates, bulk seed per patch, bags to buy.</summary>
    /// <param name="lawn">The lawn; must have passed <see cref="LawnRules.Problems"/>.</param>
    /// <param name="choices">Mix and overseeding share, where chosen.</param>
    /// <param name="tables">The trade's tables.</param>
    /// <param name="patches">Summaries of all the lawn's patches, in its order.</param>
    public static Section<SeedPlan> Plan(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(choices);
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(patches);
        var groups = SeedGroups.Of(lawn, choices, tables, patches);
        var (work, workAssumed) = WorkKind.Of(lawn);
        var seeded = groups.Groups.Select(g => Seeded(g, tables, OverseedShare(choices), work)).ToList();
        var rows = patches.Select(p => seeded.SelectMany(s => s).Single(r => r.PatchId == p.Id)).ToList();
        var totalsKg = seeded.Select(s => s.Sum(r => r.Bulk.Value)).ToList();
        var whole = groups.Whole(totalsKg);
        var mix = MixFigures.Parts("mix", whole, tables);
        var mixes = Mixes(groups, seeded, mix, tables);
        var lots = whole.Parts.Select(p => LotNeeds.Of(p, totalsKg.Sum(), lawn)).ToList();
        var plan = new SeedPlan(
            Sentence(mixes, patches),
            mix,
            rows,
            Total(rows),
            Half("seed.half-pass", rows),
            BagPurchase.Together("seed.buy", [.. lots.Select(l => l.Purchase)]),
            lots,
            [.. groups.Reasons, .. SeedAdvice.For(lawn, choices, tables, mixes), .. whole.Parts.Zip(lots).SelectMany(z => LotNeeds.Slight(z.First, z.Second, lawn))])
        {
            Mixes = mixes,
        };
        return new(plan, [], [.. groups.Assumptions, .. workAssumed, .. ShareAssumed(choices, work)]);
    }

    /// <summary>The kinds of grass that will be seeded, for labels and laws that ask.</summary>
    internal static IReadOnlyList<GrassSpecies> Seeded(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches) =>
        [.. SeedGroups.Of(lawn, choices, tables, patches).Groups.SelectMany(g => g.Blend.Kinds()).Select(k => k.Species).Distinct().Order()];

    private static List<PatchSeed> Seeded(SeedGroup group, TradeTables tables, double overseedShare, SeedingWork work)
    {
        var seeding = new PatchSeeding(group.Blend, tables, overseedShare, work);
        return [.. group.Patches.Select(seeding.For)];
    }

    private static List<PatchMix> Mixes(SeedGroups groups, IReadOnlyList<List<PatchSeed>> seeded, IReadOnlyList<MixPart> whole, TradeTables tables)
    {
        var one = groups.Groups.Count == 1;
        return [.. groups.Groups.Select((g, i) =>
        {
            var id = one ? "mix" : FormattableString.Invariant($"mix-{i + 1}");
            var parts = one ? whole : MixFigures.Parts(id, g.Blend, tables);
            return new PatchMix(id, Words.Sentence(MixFigures.Sentence(parts)), [.. g.Patches.Select(p => p.Id)], parts, Half($"seed.{id}.half-pass", seeded[i]));
        })];
    }

    private static string Sentence(IReadOnlyList<PatchMix> mixes, IReadOnlyList<PatchSummary> patches) => mixes.Count == 1
        ? mixes[0].Sentence
        : string.Join(" ", mixes.Select(m => $"{Words.List(patches.Where(p => m.PatchIds.Contains(p.Id)).Select(p => p.Name))}: {MixFigures.Sentence(m.Parts)}"));

    private static double OverseedShare(Choices choices) =>
        Math.Clamp(choices.OverseedShare?.Value ?? SeedTarget.UsualOverseedShare, SeedTarget.LeastOverseedShare, SeedTarget.MostOverseedShare);

    private static IEnumerable<Assumption> ShareAssumed(Choices choices, SeedingWork work)
    {
        if (work == SeedingWork.NewEstablishment)
        {
            yield break;
        }

        if (choices.OverseedShare is null)
        {
            yield return new("assumed.seed.share", "Overseeding takes half the new-lawn rate.", "Extension uses 0.5 to 0.67: the higher share needs a third more seed.", "Choose the overseeding share.");
        }
        else if (choices.OverseedShare.Value.Value is < SeedTarget.LeastOverseedShare or > SeedTarget.MostOverseedShare)
        {
            yield return new("assumed.seed.share", FormattableString.Invariant($"The overseeding share of {choices.OverseedShare.Value.Percent:0.#} % is held to the usual 50 to 67 %."), "Seed quantity.", "Choose a share from 50 to 67 %.");
        }
    }

    private static Figure Total(IReadOnlyList<PatchSeed> rows) => Worked.Computed(
        "seed.total", "bulk seed in all", QuantityKind.Mass, rows.Sum(r => r.Bulk.Value), "sum over the patches, thin-spot extra included", null,
        [.. rows.Select(r => new WorkingInput(r.PatchId, r.Bulk.Label, Mass.FromKilograms(r.Bulk.Value).Pounds, "lb"))]);

    private static Figure Half(string id, IReadOnlyList<PatchSeed> rows)
    {
        var (allKg, extraKg) = (rows.Sum(r => r.Bulk.Value), rows.Sum(r => r.ThinExtra.Value));
        return Worked.Computed(
            id, "seed for one of two passes", QuantityKind.Mass, 0.5 * (allKg - extraKg), "half = (total - thin extra) / 2", "Two passes at half rate and right angles even out the spreader's pattern.",
            new WorkingInput("total", "bulk seed", Mass.FromKilograms(allKg).Pounds, "lb"), new WorkingInput("extra", "kept for thin spots", Mass.FromKilograms(extraKg).Pounds, "lb"));
    }
}
