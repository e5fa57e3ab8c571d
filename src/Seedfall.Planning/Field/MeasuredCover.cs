using Seedfall.Engine.Units;

namespace Seedfall.Planning.Field;

/// <summary>Living cover measured on one picture.</summary>
/// <param name="Low">The true cover is below this once in twenty.</param>
/// <param name="High">The true cover is above this once in twenty.</param>
/// <param name="WholePatch">True for an overview of a whole patch, false for a picture of one square meter or so of it.</param>
public sealed record MeasuredCover(DateOnly Date, Fraction Cover, Fraction Low, Fraction High, bool WholePatch = false);

/// <summary>Living cover of a lawn on one day from all pictures of that day.</summary>
/// <param name="Count">Pictures it rests on.</param>
public sealed record PooledCover(DateOnly Date, Fraction Cover, Fraction Low, Fraction High, int Count)
{
    /// <summary>Standard deviation of cover from one square meter of a patch to the next where too few pictures tell it; 0.05 to 0.15 is usual (from memory).</summary>
    public const double UsualBetween = 0.10;

    private const double NineOfTen = 1.645;
    private const int TellIt = 3;

    /// <summary>
    /// One reading a day, in order: the mean, and a range of <c>hypot(mean half range, 1.645 sd / sqrt(n))</c>. The error of
    /// measuring is taken to be common to the pictures of a day, what differs from place to place evens out.
    /// </summary>
    public static IReadOnlyList<PooledCover> ByDay(IEnumerable<MeasuredCover> measured)
    {
        ArgumentNullException.ThrowIfNull(measured);
        return [.. measured.GroupBy(m => m.Date).OrderBy(g => g.Key).Select(g => Of(g.Key, [.. g]))];
    }

    private static PooledCover Of(DateOnly date, IReadOnlyList<MeasuredCover> pictures)
    {
        var mean = pictures.Average(p => p.Cover.Value);
        var between = pictures.Any(p => p.WholePatch) ? 0.0 : NineOfTen * Deviation(pictures, mean) / Math.Sqrt(pictures.Count);
        double Off(Func<MeasuredCover, double> side) => double.Hypot(pictures.Average(side), between);
        return new(
            date,
            Fraction.Of(mean),
            Fraction.Of(Math.Max(0.0, mean - Off(p => p.Cover.Value - p.Low.Value))),
            Fraction.Of(Math.Min(1.0, mean + Off(p => p.High.Value - p.Cover.Value))),
            pictures.Count);
    }

    private static double Deviation(IReadOnlyList<MeasuredCover> pictures, double mean) => pictures.Count < TellIt
        ? UsualBetween
        : Math.Sqrt(pictures.Sum(p => (p.Cover.Value - mean) * (p.Cover.Value - mean)) / (pictures.Count - 1));
}
