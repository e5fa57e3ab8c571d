namespace Seedfall.Planning.Calibration.Sprayer;

/// <summary>Several runs of one test: their mean and how far they lie apart.</summary>
/// <param name="Mean">Mean, in the unit of the runs.</param>
/// <param name="Least">Least run.</param>
/// <param name="Most">Largest run.</param>
/// <param name="Runs">How many.</param>
public sealed record RunMean(double Mean, double Least, double Most, int Runs)
{
    /// <summary>Runs this near their mean are steady (spray-gun sheet of the Pesticide Environmental Stewardship program, +-5 %).</summary>
    public const double Steady = 0.05;

    /// <summary>Share of the mean by which the run farthest from it differs; 0 for a single run.</summary>
    public double Farthest => Math.Max(Most - Mean, Mean - Least) / Mean;

    /// <summary>True where at least two runs lie within <see cref="Steady"/> of their mean.</summary>
    public bool IsSteady => Runs > 1 && Farthest <= Steady * (1.0 + 1.0e-9);

    /// <summary>The mean of runs.</summary>
    /// <param name="runs">At least one, each above 0.</param>
    public static RunMean Of(IReadOnlyList<double> runs)
    {
        ArgumentNullException.ThrowIfNull(runs);
        return runs.Count > 0 && runs.All(r => r > 0.0)
            ? new RunMean(runs.Average(), runs.Min(), runs.Max(), runs.Count)
            : throw new ArgumentOutOfRangeException(nameof(runs), runs.Count, "at least one run is needed, each above 0");
    }
}
