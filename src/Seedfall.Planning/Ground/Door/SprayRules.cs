using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Ground.Door;

/// <summary>Spreader, sprayer, label, partners and past sprays.</summary>
internal static class SprayRules
{
    private const int MostDays = 730;
    private const double MostGallons = 50.0;
    private const double MostPounds = 50.0;
    private const int MostMowings = 10;

    internal static void Check(Lawn lawn, Findings found)
    {
        found.Range("spreader.swath", lawn.Spreader?.Swath?.Meters, 0.2, 30.0, "m");
        found.Range("spreader.walkingSpeed", lawn.Spreader?.WalkingSpeed?.MetersPerSecond, 0.1, 5.0, "m/s");
        found.Above("sprayer.tank", lawn.Sprayer?.Tank?.Liters, 4000.0, "L");
        found.Above("sprayer.carrier", lawn.Sprayer?.Carrier?.GallonsPerThousandSquareFeet, MostGallons, "gal per 1,000 sq ft");
        if (lawn.PreEmergent is { } label)
        {
            Label(label, found);
        }

        for (var i = 0; i < lawn.TankPartners.Count; i++)
        {
            found.Words($"tankPartners[{i}].name", lawn.TankPartners[i].Name);
            Rate($"tankPartners[{i}].rate", lawn.TankPartners[i].Rate, found);
        }

        for (var i = 0; i < lawn.Sprayed.Count; i++)
        {
            Past(lawn.Sprayed[i], $"sprayed[{i}]", found);
        }
    }

    private static void Label(HerbicideLabel label, Findings found)
    {
        found.Words("preEmergent.activeIngredient", label.ActiveIngredient);
        Rate("preEmergent.rate", label.Rate, found);
        Rate("preEmergent.maximumRate", label.MaximumRate, found);
        Rate("preEmergent.maximumPerYear", label.MaximumPerYear, found);
        found.Above("preEmergent.minimumCarrier", label.MinimumCarrier?.GallonsPerThousandSquareFeet, MostGallons, "gal per 1,000 sq ft");
        if (label.AppliedThisYear is { IsNothing: false } applied)
        {
            Rate("preEmergent.appliedThisYear", applied, found);
        }

        Strength(label.Strength, found);
        OneMeasure(label, found);
        found.Range("preEmergent.seedingIntervalDays", label.SeedingIntervalDays, 0.0, MostDays, "days");
        found.Range("preEmergent.repeatAfterEmergenceDays", label.RepeatAfterEmergenceDays, 0.0, MostDays, "days");
        found.Range("preEmergent.mowingsBeforeSeedlings", label.MowingsBeforeSeedlings, 0.0, MostMowings, "mowings");
        found.Above("preEmergent.maximumWind", label.MaximumWind?.MilesPerHour, 40.0, "mph");
        found.Range("preEmergent.minimumWind", label.MinimumWind?.MilesPerHour, 0.0, label.MaximumWind?.MilesPerHour ?? 40.0, "mph");
        found.Range("preEmergent.rainFreeHours", label.RainFreeHours, 0.0, 168.0, "hours");
        found.Range("preEmergent.lowestAir", label.LowestAir?.Celsius, -10.0, label.HighestAir?.Celsius ?? 50.0, "degC");
        found.Range("preEmergent.highestAir", label.HighestAir?.Celsius, 0.0, 50.0, "degC");
        var both = label.LabeledAtSeeding.Intersect(label.Barred).ToList();
        if (both.Count > 0)
        {
            found.Add("preEmergent.barred", string.Join(", ", both.Select(SpeciesIds.Of)), "no grass both named as safe and barred");
        }
    }

    private static void Past(PastSpray past, string path, Findings found)
    {
        found.Words($"{path}.activeIngredient", past.ActiveIngredient);
        found.Date($"{path}.date", past.Date);
        found.Range($"{path}.labelSeedingIntervalDays", past.LabelSeedingIntervalDays, 0.0, MostDays, "days");
        Rate($"{path}.rate", past.Rate, found);
    }

    /// <summary>A volume is never held against a weight: what stands beside the rate is of its measure.</summary>
    private static void OneMeasure(HerbicideLabel label, Findings found)
    {
        var measure = label.Rate.Measure;
        foreach (var (field, rate) in new[] { ("maximumRate", label.MaximumRate), ("maximumPerYear", label.MaximumPerYear), ("appliedThisYear", label.AppliedThisYear) })
        {
            if (rate is { IsNothing: false } other && other.Measure != measure)
            {
                found.Add($"preEmergent.{field}", other.Words(), $"a rate by {Word(measure)}, as the rate to apply is");
            }
        }

        if (label.Strength is { } strength && strength.Measure != measure)
        {
            found.Add("preEmergent.strength", strength.ByWeight is { } share ? $"{share}" : Findings.Text(strength.Active, "kg/L"), measure == ProductMeasure.Volume ? "active ingredient per volume, as the rate to apply is by volume" : "active ingredient in percent by weight, as the rate to apply is by weight");
        }
    }

    private static void Strength(ProductStrength? strength, Findings found)
    {
        found.Range("preEmergent.strength", strength?.KilogramsPerLiter, 0.001, 2.0, "kg/L");
        found.Range("preEmergent.strength", strength?.ByWeight?.Percent, 0.01, 100.0, "%");
    }

    private static string Word(ProductMeasure measure) => measure == ProductMeasure.Volume ? "volume" : "weight";

    private static void Rate(string path, ProductRate? rate, Findings found)
    {
        found.Above(path, rate?.Volume?.GallonsPerThousandSquareFeet, MostGallons, "gal per 1,000 sq ft");
        found.Above(path, rate?.Weight?.PoundsPerThousandSquareFeet, MostPounds, "lb per 1,000 sq ft");
    }
}
