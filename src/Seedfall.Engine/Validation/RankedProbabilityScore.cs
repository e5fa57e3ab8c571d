using Seedfall.Engine.Numerics;

namespace Seedfall.Engine.Validation;

/// <summary>
/// Continuous ranked probability score: the distance between a forecast distribution and what happened, in the unit
/// of the quantity; 0 is perfect, and for a single sure value it is the absolute error.
/// Source: Hersbach 2000 and Gneiting and Raftery 2007, recalled; checked against worked numbers.
/// </summary>
public static class RankedProbabilityScore
{
    /// <summary>Of an ensemble of equally likely members: mean |x - y| - 1/2 mean |x - x'|.</summary>
    public static double Ensemble(ReadOnlySpan<double> members, double observed) =>
        Ensemble(members, observed, members.Length * (double)members.Length);

    /// <summary>The same with the spread term over n (n - 1) pairs: unbiased for the size of the ensemble; needs two members.</summary>
    public static double FairEnsemble(ReadOnlySpan<double> members, double observed) => members.Length < 2
        ? throw new ArgumentException("at least two members are needed", nameof(members))
        : Ensemble(members, observed, members.Length * (members.Length - 1.0));

    /// <summary>Of a normal distribution: s [z (2 Phi(z) - 1) + 2 phi(z) - pi^-1/2], z = (y - m) / s.</summary>
    public static double Normal(double mean, double standardDeviation, double observed)
    {
        if (!(standardDeviation > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(standardDeviation), standardDeviation, "a positive spread is needed");
        }

        var z = (observed - mean) / standardDeviation;
        return standardDeviation * (z * (2 * NormalDistribution.Cumulative(z) - 1) + 2 * NormalDistribution.Density(z) - 1 / Math.Sqrt(Math.PI));
    }

    private static double Ensemble(ReadOnlySpan<double> members, double observed, double pairs)
    {
        if (members.IsEmpty)
        {
            throw new ArgumentException("at least one member is needed", nameof(members));
        }

        double distance = 0, spread = 0;
        foreach (var member in members)
        {
            distance += Math.Abs(member - observed);
            foreach (var other in members)
            {
                spread += Math.Abs(member - other);
            }
        }

        return distance / members.Length - 0.5 * spread / pairs;
    }
}
