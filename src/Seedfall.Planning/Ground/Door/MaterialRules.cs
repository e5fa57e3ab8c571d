using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Ground.Door;

/// <summary>Seed lots, fertilizers, covering, bags, prices, equipment.</summary>
internal static class MaterialRules
{
    private const double TagSlack = 0.005;
    private const double MostLayerMm = 50.0;

    internal static void Check(Lawn lawn, Findings found)
    {
        found.Once([.. lawn.SeedLots.Select(l => l.LotNumber)], i => $"seedLots[{i}].lotNumber", "lot number");
        for (var i = 0; i < lawn.SeedLots.Count; i++)
        {
            Lot(lawn.SeedLots[i], $"seedLots[{i}]", found);
        }

        Fertilizer(lawn.Starter, "starter", found);
        Fertilizer(lawn.LateFeed, "lateFeed", found);
        found.Range("nitrogenThisYear", lawn.NitrogenThisYear?.PoundsPerThousandSquareFeet, 0.0, 20.0, "lb per 1,000 sq ft");
        Cover(lawn.Cover, found);
        Prices(lawn.Prices, found);
    }

    private static void Lot(SeedLot lot, string path, Findings found)
    {
        found.Words($"{path}.lotNumber", lot.LotNumber, 60);
        if (lot.Components.Count == 0)
        {
            found.Add($"{path}.components", "none", "at least one kind of seed");
        }

        for (var i = 0; i < lot.Components.Count; i++)
        {
            Component(lot.Components[i], $"{path}.components[{i}]", found);
        }

        found.Share($"{path}.otherCrop", lot.OtherCrop);
        found.Share($"{path}.inert", lot.Inert);
        found.Share($"{path}.weedSeed", lot.WeedSeed);
        found.Date($"{path}.testDate", lot.TestDate);
        Sum(lot, path, found);
        Bags(lot.Bags, $"{path}.bags", found);
    }

    private static void Component(SeedComponent component, string path, Findings found)
    {
        if (!Enum.IsDefined(component.Species))
        {
            found.Add($"{path}.species", $"{(int)component.Species}", "a known grass");
        }

        found.Above($"{path}.purity", component.Purity.Percent, 100.0, "%");
        found.Above($"{path}.germination", component.Germination.Percent, 100.0, "%");
        found.Range($"{path}.seedsPerKilogram", component.SeedsPerKilogram, 1.0e5, 1.0e7, "per kg");
    }

    /// <summary>A tag's parts make 100 %: never more, and exactly that where all of them were entered.</summary>
    private static void Sum(SeedLot lot, string path, Findings found)
    {
        var pure = lot.Components.Sum(c => c.Purity.Value);
        var sum = pure + (lot.OtherCrop?.Value ?? 0.0) + (lot.Inert?.Value ?? 0.0) + (lot.WeedSeed?.Value ?? 0.0);
        var complete = lot is { OtherCrop: not null, Inert: not null, WeedSeed: not null };
        if (sum > 1.0 + TagSlack)
        {
            found.Add(path, $"parts of {Findings.Text(sum * 100.0, "%")}", "pure seed, other crop, inert and weed seed of no more than 100 % together");
        }
        else if (complete && sum < 1.0 - TagSlack)
        {
            found.Add(path, $"parts of {Findings.Text(sum * 100.0, "%")}", "pure seed, other crop, inert and weed seed of 100 % together, as on the tag");
        }
    }

    private static void Fertilizer(FertilizerProduct? product, string path, Findings found)
    {
        if (product is null)
        {
            return;
        }

        found.Words($"{path}.name", product.Name);
        found.Above($"{path}.nitrogen", product.Nitrogen.Percent, 60.0, "%");
        found.Share($"{path}.phosphate", product.Phosphate);
        found.Share($"{path}.potash", product.Potash);
        found.Share($"{path}.slowNitrogen", product.SlowNitrogen);
        found.Above($"{path}.rate", product.Rate?.PoundsPerThousandSquareFeet, 100.0, "lb per 1,000 sq ft");
        if (product.Nitrogen.Value + product.Phosphate.Value + product.Potash.Value > 1.0 + 1e-9)
        {
            found.Add(path, $"a grade of {Findings.Text(product.Nitrogen.Percent, "")}-{Findings.Text(product.Phosphate.Percent, "")}-{Findings.Text(product.Potash.Percent, "")}", "a grade of no more than 100 % together");
        }

        Bags(product.Bags, $"{path}.bags", found);
    }

    private static void Cover(CoverMaterial? cover, Findings found)
    {
        if (cover is not null)
        {
            found.Above("cover.layer", cover.Layer?.Millimeters, MostLayerMm, "mm");
            Bags(cover.Bags, "cover.bags", found);
        }
    }

    private static void Bags(IReadOnlyList<BagOffer> bags, string path, Findings found)
    {
        if (bags.Count > 6)
        {
            found.Add(path, $"{bags.Count}", "at most 6 bag sizes");
        }

        for (var i = 0; i < bags.Count; i++)
        {
            found.Range($"{path}[{i}].size", bags[i].Size.Kilograms, 0.1, 2000.0, "kg");
            Price($"{path}[{i}].price", bags[i].Price, found);
        }
    }

    private static void Prices(PriceList? prices, Findings found)
    {
        if (prices is null)
        {
            return;
        }

        if (prices.Currency is not { Length: 3 } currency || !currency.All(char.IsAsciiLetterUpper))
        {
            found.Add("prices.currency", $"'{prices.Currency}'", "three capital letters, for example USD");
        }

        Price("prices.waterPerThousandGallons", prices.WaterPerThousandGallons, found);
        Price("prices.seedPerPound", prices.SeedPerPound, found);
        Price("prices.starterPerPound", prices.StarterPerPound, found);
        Price("prices.preEmergentPerFluidOunce", prices.PreEmergentPerFluidOunce, found);
        Price("prices.preEmergentPerOunce", prices.PreEmergentPerOunce, found);
        Price("prices.coverPerPound", prices.CoverPerPound, found);
    }

    private static void Price(string path, decimal? price, Findings found)
    {
        if (price is < 0m or > 100_000m)
        {
            found.Add(path, Findings.Text((double)price.Value, ""), "a price from 0 to 100,000");
        }
    }
}
