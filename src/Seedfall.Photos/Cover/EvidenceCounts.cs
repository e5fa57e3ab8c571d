namespace Seedfall.Photos.Cover;

/// <summary>How many pixels carry how much evidence, so that cover under any bias is a sum over a few hundred bins.</summary>
internal sealed class EvidenceCounts
{
    private const float Widest = 12f;
    private const int Bins = 481;
    private const double BinWidth = 2.0 * Widest / (Bins - 1);
    private const double Overlooked = 0.06;
    private readonly int[] _counts = new int[Bins];
    private int _total;

    internal static EvidenceCounts Of(float[] evidence, Func<int, bool>? leftOut)
    {
        var counts = new EvidenceCounts();
        for (var i = 0; i < evidence.Length; i++)
        {
            if (leftOut is null || !leftOut(i))
            {
                counts._counts[(int)(((Math.Clamp(evidence[i], -Widest, Widest) + Widest) * (Bins - 1) / (2f * Widest)) + 0.5f)]++;
                counts._total++;
            }
        }

        return counts;
    }

    /// <summary>Cover under a reading of the evidence: half the share likelier green than not, half the mean chance.</summary>
    /// <remarks>The share alone misses thin blades that never reach even odds; the mean alone counts a little of every clod. Their errors oppose.</remarks>
    internal double Cover(EvidenceReading reading) => _total == 0
        ? 0.0
        : Sum(z => 0.5 * (Logistic.Of(reading.Of(z)) + Math.Clamp((reading.Of(z) / (reading.Trust * BinWidth)) + 0.5, 0.0, 1.0)));

    /// <summary>The evidence below which a share of all doubt lies: p(1 - p) of each pixel and a little for the sure ones.</summary>
    internal double DoubtQuantile(EvidenceReading reading, double share)
    {
        var total = 0.0;
        var sums = new double[Bins];
        for (var k = 0; k < Bins; k++)
        {
            var p = Logistic.Of(reading.Of((k * BinWidth) - Widest));
            sums[k] = total += _counts[k] * ((p * (1.0 - p)) + Overlooked);
        }

        var at = Array.BinarySearch(sums, share * total);
        return (Math.Min(Bins - 1, at < 0 ? ~at : at) * BinWidth) - Widest;
    }

    private double Sum(Func<double, double> of)
    {
        var sum = 0.0;
        for (var k = 0; k < Bins; k++)
        {
            if (_counts[k] > 0)
            {
                sum += _counts[k] * of((k * BinWidth) - Widest);
            }
        }

        return sum / _total;
    }
}
