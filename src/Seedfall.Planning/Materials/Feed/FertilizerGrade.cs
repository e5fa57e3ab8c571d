using Seedfall.Engine.Units;

namespace Seedfall.Planning.Materials;

/// <summary>Arithmetic on a fertilizer's grade (N, P2O5, K2O in percent).</summary>
public static class FertilizerGrade
{
    /// <summary>Phosphorus in phosphate: 2 x 30.974 / 141.944.</summary>
    public const double PhosphorusInPhosphate = 0.4364;

    /// <summary>Potassium in potash: 2 x 39.098 / 94.196.</summary>
    public const double PotassiumInPotash = 0.8301;

    /// <summary>Product rate for a nutrient rate: <c>product = nutrient / share</c> (UMass Extension, Rotary Spreader Calibration).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The product holds none of the nutrient.</exception>
    public static MassPerArea ProductFor(MassPerArea nutrient, Fraction share) =>
        share.Value > 0.0
            ? nutrient / share.Value
            : throw new ArgumentOutOfRangeException(nameof(share), share, "a product holding some of the nutrient is needed");

    /// <summary>Nutrient rate that comes with a product rate: <c>nutrient = product x share</c>.</summary>
    public static MassPerArea NutrientIn(MassPerArea product, Fraction share) => product * share.Value;

    /// <summary>Nutrient in a mass of product.</summary>
    public static Mass NutrientIn(Mass product, Fraction share) => product * share.Value;
}
