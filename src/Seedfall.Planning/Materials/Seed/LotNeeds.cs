using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>What each lot, or each kind without a lot, comes to and how it is bought.</summary>
internal static class LotNeeds
{
    /// <summary>A shortfall this small is lost in the spreader; worth a word where it saves a bag.</summary>
    private const double SlightShortfall = 0.02;

    internal static LotNeed Of(BlendPart part, double totalKg, Lawn lawn)
    {
        var need = Mass.FromKilograms(totalKg * part.BulkShare);
        var bulk = Worked.Computed(
            $"seed.lot.{part.Id}.bulk", part.Name, QuantityKind.Mass, need.Kilograms, "bulk of the lot = total x share", null,
            new WorkingInput("total", "bulk seed for the lawn", Mass.FromKilograms(totalKg).Pounds, "lb"),
            new WorkingInput("share", "share of all the seed by weight", part.BulkShare, ""));
        return new(part.Id, part.Name, bulk, BagPurchase.For($"seed.lot.{part.Id}", need, part.Lot?.Bags ?? [], lawn.Prices?.SeedPerPound));
    }

    /// <summary>A line where spreading up to 2 % thinner saves a bag.</summary>
    internal static IEnumerable<Advice> Slight(BlendPart part, LotNeed need, Lawn lawn)
    {
        if (need.Purchase is not { } full || BagPurchase.For("", Mass.FromKilograms(need.Bulk.Value * (1.0 - SlightShortfall)), part.Lot!.Bags, lawn.Prices?.SeedPerPound) is not { } less)
        {
            yield break;
        }

        var cheaper = full.Cost is { } cost && less.Cost is { } lower ? lower.Value < cost.Value : less.Bought.Value < full.Bought.Value;
        if (cheaper)
        {
            var shortfall = Mass.FromKilograms(need.Bulk.Value - less.Bought.Value);
            yield return new(
                $"seed.lot.{part.Id}.slight",
                FormattableString.Invariant($"{Words.Sentence(part.Name)}: {BuyWords.For(less)} would lack only {shortfall.Ounces:0.#} oz ({shortfall.Kilograms / need.Bulk.Value * 100.0:0.#} %) of the need; spread that much thinner, it saves a bag."),
                Worked.Arithmetic,
                Sureness.Computed);
        }
    }
}
