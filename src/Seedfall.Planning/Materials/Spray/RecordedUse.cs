using Seedfall.Planning.Field;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Materials;

/// <summary>What the record of applications says of one label's product in a year.</summary>
/// <param name="Applied">The most that came together on any one piece of ground, as product of the label's strength.</param>
/// <param name="Applications">The applications counted, in order.</param>
/// <param name="Uncounted">Applications of the same active ingredient that cannot be put as this product: strength or amount in its measure is missing.</param>
public sealed record RecordedUse(ProductRate Applied, IReadOnlyList<LogEntry.Applied> Applications, IReadOnlyList<LogEntry.Applied> Uncounted)
{
    /// <summary>
    /// The year's record of one label's active ingredient. From a recorded mass <c>product = mass / strength / area</c>; where the
    /// strength is not known, or no mass was written, the recorded product itself where it is of the label's measure.
    /// </summary>
    /// <param name="label">The label; its strength turns active ingredient into product.</param>
    /// <param name="log">The lawn's field log.</param>
    /// <param name="year">Calendar year.</param>
    /// <param name="before">Only applications before this day count; null counts the whole year.</param>
    public static RecordedUse Of(HerbicideLabel label, FieldLog log, int year, DateOnly? before = null)
    {
        ArgumentNullException.ThrowIfNull(label);
        var entries = YearTotals.Counting(log, year).Where(e => (before is null || e.Day < before) && Names(e, label.ActiveIngredient)).ToList();
        var rates = entries.Select(e => (Entry: e, Rate: PerSquareMeter(e, label))).ToList();
        return new(
            ProductRate.Of(label.Rate.Measure, YearTotals.Heaviest(rates.Where(r => r.Rate is not null).Select(r => (r.Entry.PatchId, r.Rate!.Value))).Rate),
            [.. rates.Where(r => r.Rate is not null).Select(r => r.Entry)],
            [.. rates.Where(r => r.Rate is null).Select(r => r.Entry)]);
    }

    /// <summary>True where an application names the active ingredient, among its actives or in its product.</summary>
    internal static bool Names(LogEntry.Applied entry, string active) =>
        entry.What.Actives.Any(a => ActiveName.Same(a.Name, active)) || ActiveName.Same(entry.What.Product, active);

    /// <summary>Product of the label's strength per area, L/m2 or kg/m2 by the label's measure; null where it cannot be told.</summary>
    private static double? PerSquareMeter(LogEntry.Applied entry, HerbicideLabel label)
    {
        var activeKg = entry.What.Actives.Where(a => ActiveName.Same(a.Name, label.ActiveIngredient)).Sum(a => a.Amount.Kilograms);
        var squareMeters = YearTotals.Ground(entry).SquareMeters;
        var product = label.Rate.Measure == ProductMeasure.Volume ? entry.What.Amount.Volume?.Liters : entry.What.Amount.Mass?.Kilograms;
        return (activeKg, YearlyUse.Strength(label), product) switch
        {
            ( > 0.0, { } strength, _) => activeKg / strength.Active / squareMeters,
            (_, _, { } amount) => amount / squareMeters,
            _ => null,
        };
    }
}
