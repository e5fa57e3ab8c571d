namespace Seedfall.Engine.Simulation.Correction;

/// <summary>Weights of ensemble members after observations, kept from collapsing onto a few.</summary>
public static class TemperedWeights
{
    /// <summary>Members that must at least be left, by Kish's effective number <c>1 / sum w^2</c>.</summary>
    public const double LeastEffective = 8.0;

    private const int Halvings = 30;

    /// <summary>
    /// Weights proportional to prior times likelihood to the power a, summing to 1, with a the largest of 0 to 1 that leaves
    /// <see cref="LeastEffective"/> members (all of them where there are fewer).
    /// </summary>
    /// <param name="prior">Prior weights, above 0, one per member.</param>
    /// <param name="logLikelihood">Log likelihoods, one per member.</param>
    public static double[] Of(ReadOnlySpan<double> prior, ReadOnlySpan<double> logLikelihood)
    {
        if (prior.Length == 0 || prior.Length != logLikelihood.Length)
        {
            throw new ArgumentException("as many likelihoods as members are needed, one at least", nameof(logLikelihood));
        }

        var least = Math.Min(LeastEffective, 0.9 * Effective(Weights(prior, logLikelihood, 0.0)));
        var full = Weights(prior, logLikelihood, 1.0);
        if (Effective(full) >= least)
        {
            return full;
        }

        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = Effective(Weights(prior, logLikelihood, middle)) >= least ? (middle, high) : (low, middle);
        }

        return Weights(prior, logLikelihood, low);
    }

    /// <summary>Kish's effective number of members, <c>1 / sum w^2</c> for weights that sum to 1.</summary>
    public static double Effective(ReadOnlySpan<double> weights)
    {
        var squares = 0.0;
        foreach (var weight in weights)
        {
            squares += weight * weight;
        }

        return 1.0 / squares;
    }

    private static double[] Weights(ReadOnlySpan<double> prior, ReadOnlySpan<double> logLikelihood, double power)
    {
        var highest = double.NegativeInfinity;
        foreach (var log in logLikelihood)
        {
            highest = Math.Max(highest, log);
        }

        var (weights, sum) = (new double[prior.Length], 0.0);
        for (var i = 0; i < weights.Length; i++)
        {
            weights[i] = prior[i] * Math.Exp(power * (logLikelihood[i] - highest));
            sum += weights[i];
        }

        for (var i = 0; i < weights.Length; i++)
        {
            weights[i] /= sum;
        }

        return weights;
    }
}
