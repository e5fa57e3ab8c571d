using Seedfall.Engine.Units;
using Seedfall.Planning.Materials;

namespace Seedfall.Exchange.Units;

/// <summary>A product's rates and strength: by volume or by weight, as the unit says.</summary>
internal static class ProductTexts
{
    private const double Ounces = 16.0; // in a pound

    /// <summary>Dry product on the ground; M stands for 1,000 sq ft.</summary>
    private static readonly QuantityText<MassPerArea> Weighed = new(
        "a rate by weight",
        0.0,
        double.MaxValue,
        new("oz/acre", v => MassPerArea.FromPoundsPerAcre(v / Ounces), v => v.PoundsPerAcre * Ounces),
        new("oz/M", v => MassPerArea.FromPoundsPerThousandSquareFeet(v / Ounces), v => v.PoundsPerThousandSquareFeet * Ounces),
        new("lb/acre", MassPerArea.FromPoundsPerAcre, v => v.PoundsPerAcre),
        new("lb/M", MassPerArea.FromPoundsPerThousandSquareFeet, v => v.PoundsPerThousandSquareFeet),
        new("g/ha", v => MassPerArea.FromKilogramsPerHectare(v / 1000.0), v => v.KilogramsPerHectare * 1000.0),
        new("kg/ha", MassPerArea.FromKilogramsPerHectare, v => v.KilogramsPerHectare),
        new("g/100 m2", v => MassPerArea.FromGramsPerSquareMeter(v / 100.0), v => v.GramsPerSquareMeter * 100.0),
        new("g/m2", MassPerArea.FromGramsPerSquareMeter, v => v.GramsPerSquareMeter),
        new("kg/m2", MassPerArea.FromKilogramsPerSquareMeter, v => v.KilogramsPerSquareMeter));

    public static readonly EitherText<VolumePerArea, MassPerArea, ProductRate> Rate = new(
        Quantities.LiquidRate,
        Weighed,
        v => v,
        m => m,
        rate => rate.Weight is { } weight ? Weighed.Write(weight) : Quantities.LiquidRate.Write(rate.Volume!.Value));

    public static readonly EitherText<double, Fraction, ProductStrength> Strength = new(
        Quantities.Strength,
        Quantities.Share,
        kilograms => kilograms > 0.0 ? ProductStrength.PerLiter(kilograms) : null,
        share => share.Value > 0.0 ? ProductStrength.Percent(share) : null,
        strength => strength.ByWeight is { } share ? Quantities.Share.Write(share) : Quantities.Strength.Write(strength.KilogramsPerLiter!.Value));
}
