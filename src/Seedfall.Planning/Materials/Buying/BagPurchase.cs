using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Materials;

/// <summary>A need turned into bags to buy.</summary>
public static class BagPurchase
{
    /// <summary>The cheapest bags that cover the need; null where no bag sizes are known.</summary>
    /// <param name="id">Dotted id the figures start with, for example <c>seed.buy</c>.</param>
    /// <param name="need">Mass needed.</param>
    /// <param name="offers">Bag sizes on offer.</param>
    /// <param name="pricePerPound">Price where an offer carries none of its own; null means not known.</param>
    public static Purchase? For(string id, Mass need, IReadOnlyList<BagOffer> offers, decimal? pricePerPound)
    {
        if (offers.Count == 0)
        {
            return null;
        }

        var priced = offers.Select(o => o with { Price = o.Price ?? (pricePerPound is { } p ? decimal.Round(p * (decimal)o.Size.Pounds, 2) : null) }).ToList();
        var counts = BagSearch.Cheapest(need, priced);
        var bags = priced.Select((o, i) => new BagCount(o.Size.Kilograms, counts[i], o.Price)).Where(b => b.Count > 0).ToList();
        var bought = Mass.FromKilograms(bags.Sum(b => b.BagKilograms * b.Count));
        var cost = bags.All(b => b.PriceEach is not null) ? bags.Sum(b => b.PriceEach!.Value * b.Count) : (decimal?)null;
        return new Purchase(bags, Bought(id, need, bought, bags), LeftOver(id, need, bought), cost is null ? null : Cost(id, cost.Value, bags));
    }

    /// <summary>Purchases of several things as one; null where none is known or one is missing.</summary>
    internal static Purchase? Together(string id, IReadOnlyList<Purchase?> purchases)
    {
        if (purchases.Count == 0 || purchases.Any(p => p is null))
        {
            return null;
        }

        var all = purchases.OfType<Purchase>().ToList();
        if (all.Count == 1)
        {
            return all[0];
        }

        var bags = all.SelectMany(p => p.Bags).GroupBy(b => (b.BagKilograms, b.PriceEach)).Select(g => new BagCount(g.Key.BagKilograms, g.Sum(b => b.Count), g.Key.PriceEach)).ToList();
        var bought = Mass.FromKilograms(all.Sum(p => p.Bought.Value));
        var need = Mass.FromKilograms(all.Sum(p => p.Bought.Value - p.LeftOver.Value));
        var cost = all.All(p => p.Cost is not null) ? all.Sum(p => (decimal)p.Cost!.Value) : (decimal?)null;
        return new Purchase(bags, Bought(id, need, bought, bags), LeftOver(id, need, bought), cost is null ? null : Cost(id, cost.Value, bags));
    }

    private static Figure Bought(string id, Mass need, Mass bought, IReadOnlyList<BagCount> bags) => Worked.Computed(
        $"{id}.bought", "to buy", QuantityKind.Mass, bought.Kilograms, "the set of bags that covers the need at the least cost, or with the least left over where no price is known", "Exact search over all counts.",
        [new("need", "needed", need.Pounds, "lb"), .. bags.Select((b, i) => new WorkingInput($"n{i + 1}", $"bags of {new Mass(b.BagKilograms).Pounds:0.##} lb", b.Count, ""))]);

    private static Figure LeftOver(string id, Mass need, Mass bought) => Worked.Computed(
        $"{id}.left", "left over", QuantityKind.Mass, Math.Max(0.0, bought.Kilograms - need.Kilograms), "left = bought - need", "Keep seed dry and cool; keep the tag.",
        new WorkingInput("bought", "bought", bought.Pounds, "lb"), new WorkingInput("need", "needed", need.Pounds, "lb"));

    private static Figure Cost(string id, decimal cost, IReadOnlyList<BagCount> bags) => Worked.Computed(
        $"{id}.cost", "cost", QuantityKind.Money, (double)cost, "sum of count x price", null,
        [.. bags.Select((b, i) => new WorkingInput($"p{i + 1}", $"price of a {new Mass(b.BagKilograms).Pounds:0.##} lb bag", (double)(b.PriceEach ?? 0m), ""))]);
}
