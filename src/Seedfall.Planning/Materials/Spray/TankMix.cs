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
    public static IReadOnlyList<Volume> Split(Volume product, IReadOnlyList<Volume> loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        var carrierL = loads.Sum(l => l.Liters);
        return [.. loads.Select(l => Measurable(product * (l.Liters / carrierL)))];
    }

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
}
