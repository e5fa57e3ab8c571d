using Seedfall.Engine.Units;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Ground.Door;

/// <summary>Spreader, sprayer, label, partners and past sprays.</summary>
internal static class SprayRules
{
    private const int MostDays = 730;

    internal static void Check(Lawn lawn, Findings found)
    {
        found.Range("spreader.swath", lawn.Spreader?.Swath?.Meters, 0.2, 30.0, "m");
        found.Range("spreader.walkingSpeed", lawn.Spreader?.WalkingSpeed?.MetersPerSecond, 0.1, 5.0, "m/s");
        found.Above("sprayer.tank", lawn.Sprayer?.Tank?.Liters, 4000.0, "L");
        found.Above("sprayer.carrier", lawn.Sprayer?.Carrier?.GallonsPerThousandSquareFeet, 50.0, "gal per 1,000 sq ft");
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
        Rate("preEmergent.minimumCarrier", label.MinimumCarrier, found);
        found.Range("preEmergent.appliedThisYear", label.AppliedThisYear.GallonsPerThousandSquareFeet, 0.0, 50.0, "gal per 1,000 sq ft");
        found.Range("preEmergent.strength", label.StrengthKgPerLiter, 0.001, 2.0, "kg/L");
        found.Range("preEmergent.seedingIntervalDays", label.SeedingIntervalDays, 0.0, MostDays, "days");
        found.Range("preEmergent.repeatAfterEmergenceDays", label.RepeatAfterEmergenceDays, 0.0, MostDays, "days");
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

    private static void Rate(string path, VolumePerArea? rate, Findings found) =>
        found.Above(path, rate?.GallonsPerThousandSquareFeet, 50.0, "gal per 1,000 sq ft");
}
