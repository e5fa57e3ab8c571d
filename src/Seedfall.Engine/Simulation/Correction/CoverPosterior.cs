using Seedfall.Engine.Simulation.Ensemble;

namespace Seedfall.Engine.Simulation.Correction;

/// <summary>Living cover seen on a day after seed-down.</summary>
/// <param name="Day">Days from seed-down, 0 or more.</param>
/// <param name="Cover">Share of the ground, 0 to 1.</param>
/// <param name="Deviation">Standard deviation of the measure, share of the ground, above 0.</param>
public readonly record struct CoverObservation(int Day, double Cover, double Deviation);

/// <summary>One observation beside what had been expected of it.</summary>
/// <param name="Seen">The observation.</param>
/// <param name="Uncorrected">Middle of the forecast from weather and seed alone.</param>
/// <param name="Expected">Middle of the forecast with all observations before this one.</param>
public readonly record struct CoverCheck(CoverObservation Seen, double Uncorrected, double Expected);

/// <summary>
/// Cover of one patch after what was seen of it: members of the ensemble weighed by how well they agree (importance weights,
/// heavy-tailed, tempered), then drawn anew as equal ones.
/// </summary>
public sealed class CoverPosterior
{
    /// <summary>Spot against patch, growth that no member has: share of the ground (judged).</summary>
    public const double PlaceDeviation = 0.05;

    private const int Drawn = 200;
    private readonly double[][] _equal;

    private CoverPosterior(double[][] equal, IReadOnlyList<CoverCheck> checks) => (_equal, Checks) = (equal, checks);

    /// <summary>Each observation beside what was expected, in order of day.</summary>
    public IReadOnlyList<CoverCheck> Checks { get; }

    /// <summary>Days answered.</summary>
    public int Days => _equal[0].Length;

    /// <summary>Weighs the members; those beyond the last simulated day are passed over.</summary>
    /// <param name="ensemble">Cover by member and day with the members' prior weights.</param>
    /// <param name="seen">Observations in any order.</param>
    public static CoverPosterior Of(CoverMembers ensemble, IReadOnlyList<CoverObservation> seen)
    {
        ArgumentNullException.ThrowIfNull(ensemble);
        var days = ensemble.Cover[0].Length;
        var (logs, checks) = (new double[ensemble.Cover.Count], new List<CoverCheck>());
        var prior = Draw(ensemble.Cover, ensemble.Prior);
        foreach (var one in seen.Where(o => o.Day >= 0 && o.Day < days).OrderBy(o => o.Day))
        {
            var before = Draw(ensemble.Cover, TemperedWeights.Of(ensemble.Prior, logs));
            checks.Add(new CoverCheck(one, Quantile(prior, one.Day, 0.5), Quantile(before, one.Day, 0.5)));
            var deviation = Math.Sqrt((one.Deviation * one.Deviation) + (PlaceDeviation * PlaceDeviation));
            for (var m = 0; m < logs.Length; m++)
            {
                logs[m] += TailedLikelihood.Log(one.Cover - ensemble.Cover[m][one.Day], deviation);
            }
        }

        return new CoverPosterior(checks.Count == 0 ? [.. ensemble.Cover] : Draw(ensemble.Cover, TemperedWeights.Of(ensemble.Prior, logs)), checks);
    }

    /// <summary>Cover that a share of the members stay below on a day, 0 to 1.</summary>
    public double Quantile(int day, double share) => Quantile(_equal, day, share);

    /// <summary>Systematic resampling: one member for each of equally spaced points along the summed weights (Kitagawa 1996).</summary>
    private static double[][] Draw(IReadOnlyList<double[]> members, ReadOnlySpan<double> weights)
    {
        var drawn = new double[Drawn][];
        var (m, sum) = (0, weights[0]);
        for (var i = 0; i < Drawn; i++)
        {
            while (sum < (i + 0.5) / Drawn && m + 1 < members.Count)
            {
                sum += weights[++m];
            }

            drawn[i] = members[m];
        }

        return drawn;
    }

    private static double Quantile(double[][] members, int day, double share)
    {
        Span<double> values = members.Length <= 1024 ? stackalloc double[members.Length] : new double[members.Length];
        for (var m = 0; m < members.Length; m++)
        {
            values[m] = members[m][day];
        }

        values.Sort();
        var position = share * (values.Length - 1);
        var low = (int)position;
        return low + 1 < values.Length ? values[low] + ((position - low) * (values[low + 1] - values[low])) : values[low];
    }
}
