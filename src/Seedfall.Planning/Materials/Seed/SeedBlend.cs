using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>One bag's worth of seed that goes into the blend: a lot by its tag, or a kind by its usual figures.</summary>
/// <param name="Lot">Null where no tag was entered for this kind.</param>
/// <param name="BulkShare">Its share of the blend's bulk weight; the shares sum to 1.</param>
internal sealed record BlendPart(string Id, string Name, SeedLot? Lot, double BulkShare, IReadOnlyList<BlendKind> Kinds);

/// <summary>One kind of seed in a bag.</summary>
/// <param name="Purity">Share of the bag's weight.</param>
internal sealed record BlendKind(GrassSpecies Species, Fraction Purity, Fraction Germination, double SeedsPerKilogram)
{
    internal double PureLive => Purity.Value * Germination.Value;
}

/// <summary>The seed as it will lie in the hopper, whatever bags it comes from.</summary>
internal sealed record SeedBlend(IReadOnlyList<BlendPart> Parts, IReadOnlyList<Assumption> Assumptions)
{
    /// <summary>Pure live seed of all kinds, share of the blend's bulk weight.</summary>
    internal double PureLive => Parts.Sum(p => p.BulkShare * p.Kinds.Sum(k => k.PureLive));

    /// <summary>The kinds with their share of the pure live seed by weight and their seeds per kilogram, in the order of the enum.</summary>
    internal IReadOnlyList<(GrassSpecies Species, double WeightShare, double SeedsPerKilogram)> Kinds()
    {
        var all = Parts.SelectMany(p => p.Kinds.Select(k => (k.Species, Mass: p.BulkShare * k.PureLive, k.SeedsPerKilogram)));
        return [.. all.GroupBy(a => a.Species).OrderBy(g => g.Key).Select(g =>
            (g.Key, g.Sum(a => a.Mass) / PureLive, g.Sum(a => a.Mass * a.SeedsPerKilogram) / g.Sum(a => a.Mass)))];
    }

    /// <summary>Live seeds in a kilogram of pure live seed of the blend.</summary>
    internal double SeedsPerKilogram() => Kinds().Sum(k => k.WeightShare * k.SeedsPerKilogram);

    /// <summary>Two blends of the same bags in the same shares read alike.</summary>
    internal string Key() => string.Join('|', Parts.Select(p => FormattableString.Invariant($"{p.Id}:{p.BulkShare:R}")));

    /// <summary>The lots entered, blended to the wanted mix where they are of one kind each; otherwise bags as they come.</summary>
    internal static SeedBlend Of(Lawn lawn, Choices choices, TradeTables tables, MixChoice wanted)
    {
        var mixedBags = lawn.SeedLots.Any(l => l.Components.Select(c => c.Species).Distinct().Count() > 1);
        return mixedBags && choices.MixByWeight is null ? AsTheyCome(lawn, tables) : FromSingleKinds(lawn, choices, tables, wanted);
    }

    private static SeedBlend AsTheyCome(Lawn lawn, TradeTables tables)
    {
        var share = 1.0 / lawn.SeedLots.Count;
        var assumptions = lawn.SeedLots.Count == 1
            ? Array.Empty<Assumption>()
            : [new("assumed.seed.lots", "The seed lots are used in equal weights.", "The mix and its pure live seed follow from it.", "Enter the mix you want by weight, or one lot.")];
        return new([.. lawn.SeedLots.Select(l => Part(l, share, tables))], assumptions);
    }

    /// <summary>Bulk share of each kind: wanted pure live weight over the pure live seed of its lots.</summary>
    private static SeedBlend FromSingleKinds(Lawn lawn, Choices choices, TradeTables tables, MixChoice wanted)
    {
        var singles = lawn.SeedLots.Where(l => l.Components.Select(c => c.Species).Distinct().Count() == 1).ToList();
        var weights = wanted.Weights;
        if (choices.MixByWeight is null && singles.Count > 0)
        {
            weights = WithinLots(weights, singles);
        }

        var parts = new List<BlendPart>();
        List<Assumption> assumptions = [.. lawn.SeedLots.Except(singles).Select(LeftOut)];
        foreach (var (species, weight) in weights)
        {
            var lots = singles.Where(l => l.Components[0].Species == species).ToList();
            if (lots.Count == 0)
            {
                parts.Add(Usual(tables.For(species), weight));
                assumptions.Add(NoTag(tables.For(species)));
                continue;
            }

            parts.AddRange(lots.Select(l => Part(l, 1.0, tables)).Select(p => p with { BulkShare = weight / lots.Count / p.Kinds.Sum(k => k.PureLive) }));
        }

        var total = parts.Sum(p => p.BulkShare);
        return new([.. parts.Select(p => p with { BulkShare = p.BulkShare / total })], assumptions);
    }

    /// <summary>With seed in hand and no mix entered, only the kinds in hand are used; where none of them was wanted, all in equal parts.</summary>
    private static IReadOnlyList<(GrassSpecies, double)> WithinLots(IReadOnlyList<(GrassSpecies Species, double Weight)> wanted, IReadOnlyList<SeedLot> singles)
    {
        var inHand = singles.Select(l => l.Components[0].Species).Distinct().Order().ToList();
        var kept = wanted.Where(w => inHand.Contains(w.Species)).ToList();
        return kept.Count == 0
            ? [.. inHand.Select(s => (s, 1.0 / inHand.Count))]
            : [.. kept.Select(w => (w.Species, w.Weight / kept.Sum(k => k.Weight)))];
    }

    private static BlendPart Part(SeedLot lot, double share, TradeTables tables) => new(
        lot.LotNumber,
        $"lot {lot.LotNumber}: {string.Join(", ", lot.Components.Select(c => tables.For(c.Species).Name).Distinct())}",
        lot,
        share,
        [.. lot.Components.Select(c => new BlendKind(c.Species, c.Purity, c.Germination, c.SeedsPerKilogram ?? SeedCount.PerKilogram(tables.For(c.Species).SeedsPerPound.Value)))]);

    private static BlendPart Usual(SpeciesFacts facts, double weight)
    {
        var kind = new BlendKind(facts.Species, Fraction.Of(facts.UsualPurity.Value), Fraction.Of(facts.UsualGermination.Value), SeedCount.PerKilogram(facts.SeedsPerPound.Value));
        return new(SpeciesIds.Of(facts.Species), facts.Name, null, weight / kind.PureLive, [kind]);
    }

    private static Assumption LeftOut(SeedLot lot) => new(
        $"assumed.seed.lot.{lot.LotNumber}",
        $"Lot {lot.LotNumber} holds several kinds and is left out: a mix was chosen.",
        "The chosen mix is made from bags of one kind.",
        "Choose no mix to use the mixed bag as it comes.");

    private static Assumption NoTag(SpeciesFacts facts) => new(
        $"assumed.seed.{SpeciesIds.Of(facts.Species)}.tag",
        FormattableString.Invariant($"{facts.Name}: a usual good lot is taken, {facts.UsualPurity.Value * 100.0:0.#} % pure and {facts.UsualGermination.Value * 100.0:0.#} % germinating."),
        "Bulk seed is the target divided by pure live seed: a poorer or coated lot needs more weight.",
        "Enter the tag of the bag before weighing out.");
}
