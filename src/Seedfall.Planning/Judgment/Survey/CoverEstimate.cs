using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Judgment.Survey;

/// <summary>A share of the ground estimated from throws.</summary>
/// <param name="Share">The estimate, 0 to 1.</param>
/// <param name="Low">Lower end of the 90 % range.</param>
/// <param name="High">Upper end of the 90 % range.</param>
/// <param name="StandardError">Standard error, as a share.</param>
/// <param name="Throws">Throws behind it.</param>
/// <param name="Points">Grid points behind it; photographs add none.</param>
/// <param name="More">Throws still needed for a range of plus or minus 5 points; 0 where it is narrow enough.</param>
public sealed record CoverEstimate(double Share, double Low, double High, double StandardError, int Throws, int Points, int More)
{
    /// <summary>Spread between throws taken before any is known, as a share, at half cover; less toward none and all, as sqrt(4 c (1 - c)). Common practice, no source read.</summary>
    public const double AssumedSpread = 0.15;

    /// <summary>What the assumed spread counts for beside the spread seen, degrees of freedom; Seedfall's own.</summary>
    public const int AssumedWorth = 3;

    /// <summary>Error of a cover measured on one photograph, as a share: what the photograph measure is held to.</summary>
    public const double PhotoError = 0.035;

    private const double Wanted = 0.05;
    private const int MostThrows = 60;

    /// <summary>
    /// Living cover: the mean over the throws. Its variance is the spread between throws over their number (two-stage sampling,
    /// Cochran 1977, Sampling Techniques, ch. 10, from memory), blended with an assumed spread that counts for three throws and
    /// never below the binomial one of the points; the range is Wilson's (1927, J. Am. Stat. Assoc. 22:209-212) at the sample size
    /// that variance amounts to, with Student's t. Null without a throw.
    /// </summary>
    public static CoverEstimate? Living(IReadOnlyList<Quadrat> quadrats) =>
        Of([.. quadrats.Where(q => q.Share is not null).Select(q => (q.Share!.Value, q.Photo is null ? q.Points!.Value : 0))]);

    /// <summary>Weed cover from the throws whose weeds were told apart, in the same way.</summary>
    public static CoverEstimate? Weeds(IReadOnlyList<Quadrat> quadrats) =>
        Of([.. quadrats.Where(q => q is { Photo: null, Points: > 0, Weeds: not null }).Select(q => ((double)q.Weeds!.Value / q.Points!.Value, q.Points.Value))]);

    /// <summary>The estimate's working, with its range.</summary>
    public Working Working(string what) => new(
        "c = mean of hits / points over the throws; 90 % range by Wilson at n' = c (1 - c) / se^2",
        [
            new("c", what, Share, ""), new("low", "lower end of the 90 % range", Low, ""), new("high", "upper end of the 90 % range", High, ""),
            new("se", "standard error: spread between throws blended with an assumed one, at least binomial", StandardError, ""), new("m", "throws", Throws, ""), new("N", "grid points", Points, ""),
        ],
        "point quadrats of the walk-over; two-stage sampling (Cochran 1977), range by Wilson 1927 with Student's t",
        Sureness.Measured,
        $"{RangeWords} A spread of {AssumedSpread * 100.0:0} points between throws is assumed, worth {AssumedWorth} throws beside what was seen. {MoreWords}");

    /// <summary>The range in words.</summary>
    public string RangeWords => FormattableString.Invariant($"90 % range {Low * 100.0:0} to {High * 100.0:0} %, from {Throws} {(Throws == 1 ? "throw" : "throws")}.");

    /// <summary>How many throws more make it plus or minus 5 points.</summary>
    public string MoreWords => More == 0 ? "The range is within 5 points either way." : $"{More} more {(More == 1 ? "throw" : "throws")} would bring the range to about 5 points either way.";

    private static CoverEstimate? Of(IReadOnlyList<(double Share, int Points)> throws)
    {
        if (throws.Count == 0)
        {
            return null;
        }

        var (m, points) = (throws.Count, throws.Sum(t => t.Points));
        var mean = throws.Average(t => t.Share);
        var edge = 0.5 / (Math.Max(points, 20) + 1.0);
        var inner = Math.Clamp(mean, edge, 1.0 - edge);
        var within = throws.Average(t => t.Points > 0 ? inner * (1.0 - inner) / t.Points : PhotoError * PhotoError);
        var assumed = within + (AssumedSpread * AssumedSpread * 4.0 * inner * (1.0 - inner));
        var freedom = AssumedWorth + m - 1;
        var ofOne = Math.Max(((AssumedWorth * assumed) + throws.Sum(t => (t.Share - mean) * (t.Share - mean))) / freedom, within);
        var variance = ofOne / m;
        var t = StudentT.Upper(freedom);
        var (low, high) = Wilson(mean, inner * (1.0 - inner) / variance, t);
        return new(mean, low, high, Math.Sqrt(variance), m, points, StillNeeded(ofOne, m));
    }

    private static (double Low, double High) Wilson(double share, double sampleSize, double t)
    {
        var middle = (share + (t * t / (2.0 * sampleSize))) / (1.0 + (t * t / sampleSize));
        var half = t / (1.0 + (t * t / sampleSize)) * Math.Sqrt((share * (1.0 - share) / sampleSize) + (t * t / (4.0 * sampleSize * sampleSize)));
        return (Math.Max(0.0, middle - half), Math.Min(1.0, middle + half));
    }

    /// <summary>Throws until t se is 5 points, at the spread seen so far; at most 60 in all.</summary>
    private static int StillNeeded(double varianceOfOne, int throws)
    {
        var needed = throws;
        while (needed < MostThrows && StudentT.Upper(AssumedWorth + needed - 1) * Math.Sqrt(varianceOfOne / needed) > Wanted)
        {
            needed++;
        }

        return needed - throws;
    }
}
