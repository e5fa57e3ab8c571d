using Seedfall.Engine.Units;

namespace Seedfall.Planning.Materials;

/// <summary>Label rates as product, as active ingredient and as amounts on the ground.</summary>
public static class LabelRate
{
    /// <summary>Liquid for an area: <c>rate x area</c>.</summary>
    public static Volume ProductFor(VolumePerArea rate, Area area) => Volume.FromLiters(rate.LitersPerSquareMeter * area.SquareMeters);

    /// <summary>Dry product for an area: <c>rate x area</c>.</summary>
    public static Mass ProductFor(MassPerArea rate, Area area) => Mass.FromKilograms(rate.KilogramsPerSquareMeter * area.SquareMeters);

    /// <summary>Active ingredient that comes with a product rate: <c>ai = rate x strength</c>.</summary>
    /// <param name="rate">Product per area.</param>
    /// <param name="strength">Active ingredient in the product, of the rate's measure.</param>
    public static MassPerArea ActiveIngredient(ProductRate rate, ProductStrength strength) =>
        MassPerArea.FromKilogramsPerSquareMeter(rate.PerSquareMeter * Matching(rate.Measure, strength).Active);

    /// <summary>Active ingredient that comes with a liquid.</summary>
    /// <param name="rate">Product per area.</param>
    /// <param name="strengthKgPerLiter">Active ingredient in the product, kg/L, above 0.</param>
    public static MassPerArea ActiveIngredient(VolumePerArea rate, double strengthKgPerLiter) => ActiveIngredient(rate, ProductStrength.PerLiter(strengthKgPerLiter));

    /// <summary>Product rate that brings an active ingredient rate, in the strength's measure: <c>rate = ai / strength</c>.</summary>
    public static ProductRate ProductFor(MassPerArea active, ProductStrength strength) =>
        ProductRate.Of(strength.Measure, active.KilogramsPerSquareMeter / strength.Active);

    /// <summary>Strength in kg/L from lb of active ingredient per US gallon.</summary>
    public static double StrengthFromPoundsPerGallon(double poundsPerGallon) => Mass.FromPounds(poundsPerGallon).Kilograms / Volume.FromGallons(1.0).Liters;

    private static ProductStrength Matching(ProductMeasure measure, ProductStrength strength) => strength.Measure == measure
        ? strength
        : throw new ArgumentException($"a strength of a product measured by {measure} is needed, not by {strength.Measure}", nameof(strength));
}
