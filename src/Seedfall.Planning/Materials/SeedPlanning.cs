using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>The seed part of the plan.</summary>
public static class SeedPlanning
{
    /// <summary>Mix, rates, bulk seed per patch, bags to buy.</summary>
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
        var wanted = MixChoice.For(lawn, choices, tables, patches);
        var blend = SeedBlend.Of(lawn, choices, tables, wanted);
        var (work, workAssumed) = WorkKind.Of(lawn);
        var overseedShare = OverseedShare(choices);
        var seeding = new PatchSeeding(blend, tables, overseedShare, work);
        var rows = patches.Select(seeding.For).ToList();
        var totalKg = rows.Sum(r => r.Bulk.Value);
        var lots = blend.Parts.Select(p => Need(p, totalKg, lawn)).ToList();
        var mix = MixParts(blend, tables);
        var plan = new SeedPlan(
            Sentence(mix),
            mix,
            rows,
            Total(rows, totalKg),
            Half(rows),
            BagPurchase.Together("seed.buy", [.. lots.Select(l => l.Purchase)]),
            lots,
            [.. wanted.Reasons, .. SeedAdvice.For(lawn, choices, tables, mix)]);
        return new(plan, [], [.. blend.Assumptions, .. workAssumed, .. ShareAssumed(choices, work)]);
    }

    /// <summary>The kinds of grass that will be seeded, for labels and laws that ask.</summary>
    internal static IReadOnlyList<GrassSpecies> Seeded(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches) =>
        [.. SeedBlend.Of(lawn, choices, tables, MixChoice.For(lawn, choices, tables, patches)).Kinds().Select(k => k.Species)];

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

    private static LotNeed Need(BlendPart part, double totalKg, Lawn lawn)
    {
        var need = Mass.FromKilograms(totalKg * part.BulkShare);
        var bulk = Worked.Computed(
            $"seed.lot.{part.Id}.bulk", part.Name, QuantityKind.Mass, need.Kilograms, "bulk of the lot = total x share", null,
            new WorkingInput("total", "bulk seed for the lawn", Mass.FromKilograms(totalKg).Pounds, "lb"),
            new WorkingInput("share", "share of the blend by weight", part.BulkShare, ""));
        return new(part.Id, part.Name, bulk, BagPurchase.For($"seed.lot.{part.Id}", need, part.Lot?.Bags ?? [], lawn.Prices?.SeedPerPound));
    }

    private static List<MixPart> MixParts(SeedBlend blend, TradeTables tables)
    {
        var kinds = blend.Kinds();
        var weights = kinds.Select(k => k.WeightShare).ToList();
        var counts = MixShares.ByCount(weights, [.. kinds.Select(k => k.SeedsPerKilogram)]);
        return [.. kinds.Select((k, i) => MixPartOf(blend, tables.For(k.Species), k.WeightShare, counts[i], k.SeedsPerKilogram))];
    }

    private static MixPart MixPartOf(SeedBlend blend, SpeciesFacts facts, double weight, double count, double seedsPerKg)
    {
        var id = SpeciesIds.Of(facts.Species);
        var lots = blend.Parts.SelectMany(p => p.Kinds.Where(k => k.Species == facts.Species).Select(k => (p.Lot, p.BulkShare, Kind: k))).ToList();
        var (purity, germination) = (Mean(lots.Select(l => (l.BulkShare, l.Kind.Purity.Value))), Mean(lots.Select(l => (l.BulkShare, l.Kind.Germination.Value))));
        var tagged = lots.All(l => l.Lot is not null);
        var byWeight = Worked.Computed($"seed.mix.{id}.weight", $"{facts.Name} by weight", QuantityKind.Share, weight, "share of the pure live seed by weight", null);
        var byCount = Worked.Sourced(
            $"seed.mix.{id}.count", $"{facts.Name} by count", QuantityKind.Share, count, "c_i = w_i s_i / sum(w s)", facts.SeedsPerPound.Source, facts.SeedsPerPound.Sureness, null,
            new WorkingInput("w", "share by weight", weight, ""), new WorkingInput("s", "seeds in a pound", seedsPerKg * 0.45359237, "per lb"));
        var live = Worked.Sourced(
            $"seed.mix.{id}.pls", $"{facts.Name}: pure live seed in its bag", QuantityKind.Share, Mean(lots.Select(l => (l.BulkShare, l.Kind.PureLive))), "PLS = purity x germination",
            tagged ? "tag in hand" : facts.UsualPurity.Source, tagged ? Sureness.Measured : Sureness.Assumed, null,
            new WorkingInput("purity", "pure seed of this kind", purity, ""), new WorkingInput("germination", "germination", germination, ""));
        return new(facts.Species, facts.Name, byWeight, byCount, live);
    }

    private static double Mean(IEnumerable<(double Weight, double Value)> values)
    {
        var all = values.ToList();
        return all.Sum(v => v.Weight * v.Value) / all.Sum(v => v.Weight);
    }

    private static string Sentence(IReadOnlyList<MixPart> mix) => mix.Count == 1
        ? $"All {mix[0].Name}."
        : FormattableString.Invariant($"{string.Join(", ", mix.Select(m => FormattableString.Invariant($"{m.ShareByWeight.Value * 100.0:0.#} % {m.Name}")))} by weight of live seed; by count of seeds {string.Join(", ", mix.Select(m => FormattableString.Invariant($"{m.ShareByCount.Value * 100.0:0.#} %")))}.");

    private static Figure Total(IReadOnlyList<PatchSeed> rows, double totalKg) => Worked.Computed(
        "seed.total", "bulk seed in all", QuantityKind.Mass, totalKg, "sum over the patches, thin-spot extra included", null,
        [.. rows.Select(r => new WorkingInput(r.PatchId, r.Bulk.Label, Mass.FromKilograms(r.Bulk.Value).Pounds, "lb"))]);

    private static Figure Half(IReadOnlyList<PatchSeed> rows)
    {
        var (allKg, extraKg) = (rows.Sum(r => r.Bulk.Value), rows.Sum(r => r.ThinExtra.Value));
        return Worked.Computed(
            "seed.half-pass", "seed for one of two passes", QuantityKind.Mass, 0.5 * (allKg - extraKg), "half = (total - thin extra) / 2", "Two passes at half rate and right angles even out the spreader's pattern.",
            new WorkingInput("total", "bulk seed", Mass.FromKilograms(allKg).Pounds, "lb"), new WorkingInput("extra", "kept for thin spots", Mass.FromKilograms(extraKg).Pounds, "lb"));
    }
}
