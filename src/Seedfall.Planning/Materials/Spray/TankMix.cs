using Seedfall.Engine.Units;

namespace Seedfall.Planning.Materials;

/// <summary>Carrier and product over the tanks of one trip.</summary>
public static class TankMix
{
    private const double Sliver = 1.0e-9;

    /// <summary>Carrier of each tank: full tanks first, then the part tank where one is left.</summary>
    /// <param name="carrier">Carrier for the whole trip, above 0.</param>
    /// <param name="tank">What the tank holds, above 0.</param>
    public static IReadOnlyList<Volume> Loads(Volume carrier, Volume tank)
    {
        if (!(carrier > Volume.Zero) || !(tank > Volume.Zero))
        {
            throw new ArgumentOutOfRangeException(nameof(carrier), carrier, $"carrier and tank above 0 are needed, the tank was {tank}");
        }

        var full = (int)Math.Floor(carrier / tank + Sliver);
        var rest = carrier - tank * full;
        var loads = Enumerable.Repeat(tank, full).ToList();
        if (rest > tank * Sliver)
        {
            loads.Add(rest);
        }

        return loads;
    }

    /// <summary>
    /// Product for each tank in step with its carrier, rounded once, down, to what can be measured: no tank goes above the
    /// label, and the tanks' sum is the total.
    /// </summary>
    /// <param name="product">Product for the whole trip by rate and area.</param>
    /// <param name="loads">Carrier of each tank, from <see cref="Loads"/>.</param>
    public static IReadOnlyList<Volume> Split(Volume product, IReadOnlyList<Volume> loads) => [.. Shares(loads).Select(share => Measurable(product * share))];

    /// <summary>Dry product for each tank, likewise.</summary>
    public static IReadOnlyList<Mass> Split(Mass product, IReadOnlyList<Volume> loads) => [.. Shares(loads).Select(share => Measurable(product * share))];

    /// <summary>Product of a rate over an area for each tank: L by volume, kg by weight.</summary>
    internal static IReadOnlyList<double> Split(ProductRate rate, Area area, IReadOnlyList<Volume> loads) => rate.Weight is { } weight
        ? [.. Split(LabelRate.ProductFor(weight, area), loads).Select(m => m.Kilograms)]
        : [.. Split(LabelRate.ProductFor(rate.Volume!.Value, area), loads).Select(v => v.Liters)];

    /// <summary>The dose rounded down to a measure's marks: 0.05 mL below 10 mL, 0.5 mL below 100 mL, 5 mL above.</summary>
    public static Volume Measurable(Volume dose)
    {
        var stepMl = dose.Milliliters switch
        {
            < 10.0 => 0.05,
            < 100.0 => 0.5,
            _ => 5.0,
        };
        return Volume.FromMilliliters(Math.Floor(dose.Milliliters / stepMl + Sliver) * stepMl);
    }

    /// <summary>The dose rounded down to what the scale shows, see <see cref="ScaleStep"/>.</summary>
    public static Mass Measurable(Mass dose)
    {
        var stepG = ScaleStep(dose).Grams;
        return Mass.FromGrams(Math.Floor(dose.Grams / stepG + Sliver) * stepG);
    }

    /// <summary>
    /// What the scale is taken to show: 0.1 g below 100 g, 1 g above, a small scale and a bench scale kept for pesticides alone.
    /// Common practice, no source read.
    /// </summary>
    public static Mass ScaleStep(Mass dose) => Mass.FromGrams(dose.Grams < 100.0 ? 0.1 : 1.0);

    private static IEnumerable<double> Shares(IReadOnlyList<Volume> loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        var carrierL = loads.Sum(l => l.Liters);
        return loads.Select(l => l.Liters / carrierL);
    }
}
