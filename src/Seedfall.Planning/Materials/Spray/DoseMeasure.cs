using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Materials;

/// <summary>A dose as it is read off a measure.</summary>
public static class DoseMeasure
{
    private const double TeaspoonMl = 4.92892159375; // 1/6 US fluid ounce
    private const double QuarterTeaspoon = 0.25;

    /// <summary>
    /// The measure to take and what to read on it. Kitchen measures are named only for what is no pesticide; whatever measures a
    /// pesticide never goes back to a kitchen.
    /// </summary>
    /// <param name="dose">Dose rounded by <see cref="TankMix.Measurable(Volume)"/>.</param>
    /// <param name="pesticide">True for a pesticide.</param>
    public static string Words(Volume dose, bool pesticide)
    {
        var read = Text($"{Exact(dose.Milliliters)} mL ({Ounces(dose.FluidOunces)} fl oz)");
        var teaspoons = Math.Floor(dose.Milliliters / TeaspoonMl / QuarterTeaspoon + 1.0e-9) * QuarterTeaspoon;
        return dose.Milliliters switch
        {
            <= 0.0 => "too little to measure: less than 0.05 mL",
            < 10.0 when pesticide => $"{read} in a 10 mL syringe",
            < 100.0 when pesticide => $"{read} in a 100 mL cylinder",
            _ when pesticide => $"{read} in a marked jug",
            _ when teaspoons is >= QuarterTeaspoon and <= 12.0 => Text($"{read}, about {teaspoons:0.##} tsp"),
            _ => $"{read} in a marked jug",
        };
    }

    /// <summary>What the scale shows. Both units are rounded down: neither reading goes above the dose.</summary>
    /// <param name="dose">Dose rounded by <see cref="TankMix.Measurable(Mass)"/>.</param>
    public static string Words(Mass dose)
    {
        var stepG = TankMix.ScaleStep(dose).Grams;
        return dose.Grams <= 0.0
            ? Text($"too little to weigh: less than {stepG:0.#} g")
            : Text($"{Math.Round(dose.Grams, 1).ToString(stepG < 1.0 ? "0.0" : "#,##0", CultureInfo.InvariantCulture)} g ({Ounces(Down(dose.Ounces))} dry oz) on a scale that shows {stepG:0.#} g");
    }

    /// <summary>A figure of product measured out, whichever its measure.</summary>
    internal static string Words(Figure dose, bool pesticide) => dose.Kind == QuantityKind.DryDose ? Words(new Mass(dose.Value)) : Words(new Volume(dose.Value), pesticide);

    /// <summary>Product of a tank in a sentence: a liquid in both units, a dry one as the scale shows it, rounded up in neither.</summary>
    internal static string Sentence(Figure dose) => $"{dose.Label} {(dose.Kind == QuantityKind.DryDose ? Words(new Mass(dose.Value)) : FigureText.Both(dose))}";

    private static double Down(double ounces)
    {
        var step = ounces < 1.0 ? 0.001 : ounces < 10.0 ? 0.01 : 0.1;
        return Math.Floor(ounces / step + 1.0e-9) * step;
    }

    private static string Exact(double milliliters) => milliliters.ToString(milliliters < 10.0 ? "0.00" : milliliters < 100.0 ? "0.0" : "#,##0", CultureInfo.InvariantCulture);

    private static string Ounces(double ounces) => ounces.ToString(ounces < 1.0 ? "0.000" : ounces < 10.0 ? "0.00" : "#,##0.0", CultureInfo.InvariantCulture);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
