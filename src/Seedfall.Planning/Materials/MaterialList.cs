using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Materials;

/// <summary>The shopping list.</summary>
public static class MaterialList
{
    /// <summary>One line per thing to have, in the order it is used. Costs only where the user entered prices.</summary>
    /// <param name="lawn">The lawn with its prices.</param>
    /// <param name="seed">Seed plan; null where there is none, likewise for the others.</param>
    public static IReadOnlyList<MaterialLine> Lines(Lawn lawn, SeedPlan? seed, FeedPlan? feed, SprayPlan? spray, CoverPlan? cover)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        return [.. Seed(lawn, seed), .. Starter(lawn, feed), .. Spray(lawn, spray), .. Cover(lawn, cover), .. Late(feed)];
    }

    /// <summary>Sum of the known costs; null where none is known.</summary>
    public static Figure? TotalCost(IReadOnlyList<MaterialLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var known = lines.Where(l => l.Cost is not null).ToList();
        var unknown = lines.Where(l => l.Cost is null).Select(l => l.Name).ToList();
        return known.Count == 0
            ? null
            : Worked.Computed(
                "cost.total", "materials in all", QuantityKind.Money, known.Sum(l => l.Cost!.Value), "sum of the known costs",
                unknown.Count == 0 ? null : $"Without {string.Join(", ", unknown)}: no price entered.",
                [.. known.Select(l => new WorkingInput(l.Id, l.Name, l.Cost!.Value, ""))]);
    }

    private static IEnumerable<MaterialLine> Seed(Lawn lawn, SeedPlan? seed) => (seed?.Lots ?? []).Select(lot => new MaterialLine(
        seed!.Lots.Count == 1 ? "seed" : $"seed.{lot.Id}",
        $"Grass seed, {lot.Name}",
        "seed-down day, thin-spot extra included",
        lot.Bulk,
        BuyWords.For(lot.Purchase),
        lot.Purchase?.Cost ?? ByWeight($"seed.lot.{lot.Id}.cost", lot.Bulk, lawn.Prices?.SeedPerPound)));

    private static IEnumerable<MaterialLine> Starter(Lawn lawn, FeedPlan? feed)
    {
        var starters = feed?.Feedings.Where(f => f.DaysAfterSeedDown is not null).ToList() ?? [];
        if (starters.Count == 0)
        {
            yield break;
        }

        var need = Worked.Computed("feed.starter.need", "starter in all", QuantityKind.Mass, starters.Sum(f => f.Product.Value), "sum of the starter feedings");
        yield return new("starter", starters[0].ProductName, "seed-down day and about day 15", need, BuyWords.For(feed!.StarterPurchase), feed.StarterPurchase?.Cost ?? ByWeight("feed.starter.cost", need, lawn.Prices?.StarterPerPound));
    }

    private static IEnumerable<MaterialLine> Late(FeedPlan? feed) => (feed?.Feedings ?? []).Where(f => f.DaysAfterSeedDown is null).Select(f =>
        new MaterialLine("late-feed", f.ProductName, "late fall", f.Product, BuyWords.For(feed!.LatePurchase), feed.LatePurchase?.Cost));

    private static IEnumerable<MaterialLine> Spray(Lawn lawn, SprayPlan? spray)
    {
        foreach (var trip in spray?.Trips ?? [])
        {
            foreach (var (product, number) in trip.Products.Select((p, i) => (p, i + 1)))
            {
                var herbicide = trip.Id == "pre-emergent" && product.Name == lawn.PreEmergent?.ActiveIngredient;
                yield return new(
                    herbicide ? "pre-emergent" : $"spray.{trip.Id}.{number}",
                    product.Name,
                    trip.Title,
                    product.Total,
                    "",
                    herbicide ? ByOunce(product.Total, lawn.Prices) : null);
            }
        }
    }

    private static IEnumerable<MaterialLine> Cover(Lawn lawn, CoverPlan? cover)
    {
        if (cover is null)
        {
            yield break;
        }

        var cost = cover.Purchase?.Cost ?? (cover.Total.Kind == QuantityKind.Mass ? ByWeight("cover.cost", cover.Total, lawn.Prices?.CoverPerPound) : null);
        yield return new("cover", CoverPlanning.Words(cover.Kind), "over thin and steep places", cover.Total, BuyWords.For(cover.Purchase), cost);
    }

    private static Figure? ByWeight(string id, Figure need, decimal? perPound) => perPound is { } price
        ? Worked.Computed(id, "cost", QuantityKind.Money, Math.Round(new Mass(need.Value).Pounds * (double)price, 2), "cost = need x price", "By weight: no bag sizes entered.",
            new WorkingInput("need", need.Label, new Mass(need.Value).Pounds, "lb"), new WorkingInput("price", "price", (double)price, "per lb"))
        : null;

    private static Figure? ByOunce(Figure need, PriceList? prices)
    {
        var (price, ounces, unit) = need.Kind == QuantityKind.DryDose
            ? (prices?.PreEmergentPerOunce, new Mass(need.Value).Ounces, "dry oz")
            : (prices?.PreEmergentPerFluidOunce, new Volume(need.Value).FluidOunces, "fl oz");
        return price is { } each
            ? Worked.Computed("spray.pre-emergent.cost", "cost", QuantityKind.Money, Math.Round(ounces * (double)each, 2), "cost = need x price", null,
                new WorkingInput("need", need.Label, ounces, unit), new WorkingInput("price", "price", (double)each, $"per {unit}"))
            : null;
    }
}
