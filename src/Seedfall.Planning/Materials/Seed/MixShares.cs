namespace Seedfall.Planning.Materials;

/// <summary>A mix by weight and by count of seeds. They differ wildly: Kentucky bluegrass has six times the seeds of ryegrass in a pound.</summary>
public static class MixShares
{
    /// <summary>Shares by count [-]: <c>c_i = w_i s_i / sum(w s)</c>; use weights of pure live seed for shares of live seeds.</summary>
    /// <param name="weights">Weights in any one unit, none negative, not all zero.</param>
    /// <param name="seedsPerMass">Seeds per unit mass, in the same order, above 0.</param>
    public static IReadOnlyList<double> ByCount(IReadOnlyList<double> weights, IReadOnlyList<double> seedsPerMass) =>
        Normalized(weights, seedsPerMass, (w, s) => w * s);

    /// <summary>Shares by weight [-] that give wanted shares by count: <c>w_i = (c_i / s_i) / sum(c / s)</c>.</summary>
    public static IReadOnlyList<double> ByWeight(IReadOnlyList<double> countShares, IReadOnlyList<double> seedsPerMass) =>
        Normalized(countShares, seedsPerMass, (c, s) => c / s);

    /// <summary>Seeds in a unit mass of the mix: <c>s = sum(w s) / sum(w)</c>.</summary>
    public static double SeedsPerMass(IReadOnlyList<double> weights, IReadOnlyList<double> seedsPerMass)
    {
        Require(weights, seedsPerMass);
        return weights.Zip(seedsPerMass, (w, s) => w * s).Sum() / weights.Sum();
    }

    /// <summary>Rate of a mix from each kind's own full rate, each kind taking its part of the ground: <c>1 / sum(w_i / r_i)</c>, <c>w</c> summing to 1.</summary>
    public static double RateOfMix(IReadOnlyList<double> weights, IReadOnlyList<double> ownRates)
    {
        Require(weights, ownRates);
        return weights.Sum() / weights.Zip(ownRates, (w, r) => w / r).Sum();
    }

    private static IReadOnlyList<double> Normalized(IReadOnlyList<double> parts, IReadOnlyList<double> seedsPerMass, Func<double, double, double> measure)
    {
        Require(parts, seedsPerMass);
        var measured = parts.Zip(seedsPerMass, measure).ToArray();
        var total = measured.Sum();
        return [.. measured.Select(m => m / total)];
    }

    private static void Require(IReadOnlyList<double> parts, IReadOnlyList<double> perPart)
    {
        if (parts.Count == 0 || parts.Count != perPart.Count)
        {
            throw new ArgumentException($"one value for each of the {parts.Count} parts is needed, found {perPart.Count}", nameof(perPart));
        }

        if (parts.Any(p => !(p >= 0.0)) || !(parts.Sum() > 0.0))
        {
            throw new ArgumentException("parts must not be negative and not all zero", nameof(parts));
        }

        if (perPart.Any(s => !(s > 0.0)))
        {
            throw new ArgumentException("values above 0 are needed", nameof(perPart));
        }
    }
}
