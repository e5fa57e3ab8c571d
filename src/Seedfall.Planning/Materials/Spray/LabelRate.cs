using Seedfall.Engine.Units;

namespace Seedfall.Planning.Materials;

/// <summary>Label rates as product, as active ingredient and as amounts on the ground.</summary>
public static class LabelRate
{
    /// <summary>Product for an area: <c>rate x area</c>.</summary>
    public static Volume ProductFor(VolumePerArea rate, Area area) => Volume.FromLiters(rate.LitersPerSquareMeter * area.SquareMeters);

    /// <summary>Active ingredient that comes with a product rate: <c>ai = rate x strength</c>.</summary>
    /// <param name="rate">Product per area.</param>
    /// <param name="strengthKgPerLiter">Active ingredient in the product, kg/L, above 0.</param>
    public static MassPerArea ActiveIngredient(VolumePerArea rate, double strengthKgPerLiter) =>
        MassPerArea.FromKilogramsPerSquareMeter(rate.LitersPerSquareMeter * Required(strengthKgPerLiter));

    /// <summary>Product rate that brings an active ingredient rate: <c>rate = ai / strength</c>.</summary>
    /// <param name="active">Active ingredient per area.</param>
    /// <param name="strengthKgPerLiter">Active ingredient in the product, kg/L, above 0.</param>
    public static VolumePerArea ProductFor(MassPerArea active, double strengthKgPerLiter) =>
        VolumePerArea.FromLitersPerSquareMeter(active.KilogramsPerSquareMeter / Required(strengthKgPerLiter));

    /// <summary>Strength in kg/L from lb of active ingredient per US gallon.</summary>
    public static double StrengthFromPoundsPerGallon(double poundsPerGallon) => Mass.FromPounds(poundsPerGallon).Kilograms / Volume.FromGallons(1.0).Liters;

    private static double Required(double strengthKgPerLiter) =>
        strengthKgPerLiter > 0.0 ? strengthKgPerLiter : throw new ArgumentOutOfRangeException(nameof(strengthKgPerLiter), strengthKgPerLiter, "a strength above 0 kg/L is needed");
}
