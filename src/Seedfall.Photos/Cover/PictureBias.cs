namespace Seedfall.Photos.Cover;

/// <summary>
/// How far one picture's evidence is off as a whole, in log odds: before anybody taps most pictures are off a little and a few a
/// lot (Student's t with three degrees of freedom), then drawn to the taps by Bayes' rule. Held on a grid.
/// </summary>
internal sealed class PictureBias
{
    /// <summary>Chance that a tap tells of a neighbor: a finger is wider than a blade. Common practice, no source read.</summary>
    private const double Slip = 0.04;

    private const double Widest = 6.0;
    private const double Freedom = 3.0;
    private const int Steps = 97;

    private readonly double[] _weights;

    private PictureBias(double[] values, double[] weights) => (Values, _weights) = (values, weights);

    internal IReadOnlyList<double> Values { get; }

    internal IReadOnlyList<double> Weights => _weights;

    /// <summary>The bias after taps, each as the evidence where it was made and its answer.</summary>
    internal static PictureBias After(double spread, IReadOnlyList<(double Evidence, bool IsGreen)> taps)
    {
        var values = new double[Steps];
        var weights = new double[Steps];
        for (var k = 0; k < Steps; k++)
        {
            var unit = Widest * ((2.0 * k / (Steps - 1)) - 1.0);
            values[k] = spread * unit;
            weights[k] = Math.Pow(1.0 + (unit * unit / Freedom), -0.5 * (Freedom + 1.0));
            foreach (var (evidence, isGreen) in taps)
            {
                var green = Logistic.Of(evidence + values[k]);
                weights[k] *= Slip + ((1.0 - (2.0 * Slip)) * (isGreen ? green : 1.0 - green));
            }
        }

        var sum = weights.Sum();
        return new PictureBias(values, [.. weights.Select(w => w / sum)]);
    }

    /// <summary>Its mean, log odds.</summary>
    internal double Mean => Values.Zip(_weights, (value, weight) => value * weight).Sum();
}
