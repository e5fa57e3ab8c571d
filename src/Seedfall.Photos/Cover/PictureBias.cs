namespace Seedfall.Photos.Cover;

/// <summary>
/// How far one picture's evidence is off as a whole. Before anybody taps most pictures are off a little and a few a lot (the bias is
/// Student's t with three degrees of freedom); taps draw it their way by Bayes' rule, and where they contradict evidence that was
/// sure, all of it is trusted less. Held on a grid.
/// </summary>
internal sealed class PictureBias
{
    /// <summary>Chance that a tap tells of a neighbor: a finger is wider than a blade. Common practice, no source read.</summary>
    private const double Slip = 0.04;

    private const double Widest = 6.0;
    private const double Freedom = 3.0;
    private const int Steps = 97;
    private static readonly (double Trust, double Chance)[] Trusts = [(1.0, 0.85), (0.5, 0.10), (0.25, 0.05)];

    private PictureBias(IReadOnlyList<(EvidenceReading Reading, double Weight)> readings) => Readings = readings;

    /// <summary>Readings with their chances, which add to 1.</summary>
    internal IReadOnlyList<(EvidenceReading Reading, double Weight)> Readings { get; }

    /// <summary>The mean reading.</summary>
    internal EvidenceReading Mean => new(Readings.Sum(r => r.Weight * r.Reading.Bias), Readings.Sum(r => r.Weight * r.Reading.Trust));

    /// <summary>After taps, each as the evidence where it was made and its answer.</summary>
    internal static PictureBias After(double spread, IReadOnlyList<(double Evidence, bool IsGreen)> taps)
    {
        var readings = new List<(EvidenceReading Reading, double Weight)>();
        foreach (var (trust, chance) in taps.Count > 0 ? Trusts : Trusts[..1])
        {
            for (var k = 0; k < Steps; k++)
            {
                var unit = Widest * ((2.0 * k / (Steps - 1)) - 1.0);
                var reading = new EvidenceReading(spread * unit, trust);
                readings.Add((reading, chance * Math.Pow(1.0 + (unit * unit / Freedom), -0.5 * (Freedom + 1.0)) * Likelihood(reading, taps)));
            }
        }

        var sum = readings.Sum(r => r.Weight);
        return new PictureBias([.. readings.Select(r => (r.Reading, r.Weight / sum))]);
    }

    private static double Likelihood(EvidenceReading reading, IReadOnlyList<(double Evidence, bool IsGreen)> taps)
    {
        var likelihood = 1.0;
        foreach (var (evidence, isGreen) in taps)
        {
            var green = Logistic.Of(reading.Of(evidence));
            likelihood *= Slip + ((1.0 - (2.0 * Slip)) * (isGreen ? green : 1.0 - green));
        }

        return likelihood;
    }
}
