using Seedfall.Engine.Workings;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>A blend as figures and as a sentence.</summary>
internal static class MixFigures
{
    /// <summary>The kinds of a blend, the heaviest first.</summary>
    /// <param name="id">Id of the mix in the figures' ids.</param>
    internal static IReadOnlyList<MixPart> Parts(string id, SeedBlend blend, TradeTables tables)
    {
        var kinds = blend.Kinds();
        var counts = MixShares.ByCount([.. kinds.Select(k => k.WeightShare)], [.. kinds.Select(k => k.SeedsPerKilogram)]);
        return [.. kinds.Select((k, i) => Part(id, blend, tables.For(k.Species), k.WeightShare, counts[i], k.SeedsPerKilogram)).OrderByDescending(p => p.ShareByWeight.Value)];
    }

    internal static string Sentence(IReadOnlyList<MixPart> mix) => mix.Count == 1
        ? $"all {mix[0].Name}."
        : $"{Words.List(mix.Select(m => $"{Percent(m.ShareByWeight)} {m.Name}"))} by weight of live seed; {Words.List(mix.Select(m => Percent(m.ShareByCount)))} of the seeds by count.";

    private static string Percent(Figure share) => FormattableString.Invariant($"{share.Value * 100.0:0.#} %");

    private static MixPart Part(string mix, SeedBlend blend, SpeciesFacts facts, double weight, double count, double seedsPerKg)
    {
        var id = $"seed.{mix}.{SpeciesIds.Of(facts.Species)}";
        var bags = blend.Parts.SelectMany(p => p.Kinds.Where(k => k.Species == facts.Species).Select(k => (p.Lot, p.BulkShare, Kind: k))).ToList();
        var tagged = bags.All(b => b.Lot is not null);
        return new(
            facts.Species,
            facts.Name,
            Worked.Computed($"{id}.weight", $"{facts.Name} by weight", QuantityKind.Share, weight, "share of the pure live seed by weight"),
            Worked.Sourced(
                $"{id}.count", $"{facts.Name} by count", QuantityKind.Share, count, "c_i = w_i s_i / sum(w s)", facts.SeedsPerPound.Source, facts.SeedsPerPound.Sureness, null,
                new WorkingInput("w", "share by weight", weight, ""), new WorkingInput("s", "seeds in a pound", seedsPerKg * 0.45359237, "per lb")),
            Worked.Sourced(
                $"{id}.pls", $"{facts.Name}: pure live seed in its bag", QuantityKind.Share, Mean(bags.Select(b => (b.BulkShare, b.Kind.PureLive))), "PLS = purity x germination",
                tagged ? "tag in hand" : facts.UsualPurity.Source, tagged ? Sureness.Measured : Sureness.Assumed, null,
                new WorkingInput("purity", "pure seed of this kind", Mean(bags.Select(b => (b.BulkShare, b.Kind.Purity.Value))), ""),
                new WorkingInput("germination", "germination", Mean(bags.Select(b => (b.BulkShare, b.Kind.Germination.Value))), "")));
    }

    private static double Mean(IEnumerable<(double Weight, double Value)> values)
    {
        var all = values.ToList();
        return all.Sum(v => v.Weight * v.Value) / all.Sum(v => v.Weight);
    }
}
