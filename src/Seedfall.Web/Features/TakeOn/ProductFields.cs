using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn;

/// <summary>A product's rates and strength as questions: by volume or by weight, as the unit says.</summary>
internal static class ProductFields
{
    private const double KilogramsPerPoundPerGallon = 0.45359237 / 3.785411784;

    private static readonly IReadOnlyList<UnitChoice<double>> PerVolume =
    [
        new("lbgal", "lb per gal", UnitSystem.UsCustomary, v => v * KilogramsPerPoundPerGallon, v => v / KilogramsPerPoundPerGallon),
        new("gL", "g per L", UnitSystem.Metric, v => v / 1000.0, v => v * 1000.0),
    ];

    private static readonly IReadOnlyList<UnitChoice<Fraction>> ByWeight =
    [
        new("pct", "% by weight", UnitSystem.UsCustomary, v => new Fraction(v / 100.0), v => v.Percent),
        new("pct", "% by weight", UnitSystem.Metric, v => new Fraction(v / 100.0), v => v.Percent),
    ];

    /// <summary>A rate in a unit system.</summary>
    internal static string Show(ProductRate rate, UnitSystem system) => (rate.Weight is { } weight
        ? FigureText.Show(QuantityKind.DryLabelRate, weight.KilogramsPerSquareMeter, system)
        : FigureText.Show(QuantityKind.LabelRate, rate.Volume!.Value.LitersPerSquareMeter, system)).ToString();

    /// <summary>A rate above 0 of a product for the tank.</summary>
    /// <param name="name">Name posted by the browser.</param>
    /// <param name="label">The question.</param>
    /// <param name="most">Highest, in L/ha by volume and kg/ha by weight.</param>
    /// <param name="zero">True where nothing is an answer too.</param>
    internal static EitherField<VolumePerArea, MassPerArea, ProductRate> Rate(string name, string label, double most = 200.0, bool zero = false) => new(
        new(name, label, UnitChoices.LabelRate, VolumePerArea.Zero, VolumePerArea.FromLitersPerHectare(most)) { AboveLeast = !zero },
        new(name, label, UnitChoices.WeighedRate, MassPerArea.Zero, MassPerArea.FromKilogramsPerHectare(most)) { AboveLeast = !zero },
        v => v,
        m => m,
        rate => rate.Volume,
        rate => rate.Weight);

    /// <summary>Active ingredient in the product.</summary>
    internal static EitherField<double, Fraction, ProductStrength> Strength(string name, string label) => new(
        new(name, label, PerVolume, 0.001 * KilogramsPerPoundPerGallon, 20.0 * KilogramsPerPoundPerGallon) { AboveLeast = true },
        new(name, label, ByWeight, Fraction.None, Fraction.All) { AboveLeast = true },
        ProductStrength.PerLiter,
        ProductStrength.Percent,
        strength => strength.KilogramsPerLiter,
        strength => strength.ByWeight);
}
