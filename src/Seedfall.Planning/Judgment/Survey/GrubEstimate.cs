using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Judgment.Survey;

/// <summary>Where a grub count stands against the line of the verdict.</summary>
public enum GrubStanding
{
    /// <summary>The whole range lies below the line.</summary>
    ClearlyBelow,

    /// <summary>The line lies inside the range.</summary>
    NeedsMore,

    /// <summary>The whole range lies above the line.</summary>
    ClearlyAbove,
}

/// <summary>Grubs per square foot from several lifts.</summary>
/// <param name="PerSquareFoot">The mean.</param>
/// <param name="Low">Lower end of the 90 % range.</param>
/// <param name="High">Upper end of the 90 % range.</param>
/// <param name="Lifts">Lifts behind it.</param>
/// <param name="Counted">Grubs counted in all.</param>
/// <param name="SquareFeet">Ground lifted in all, sq ft.</param>
/// <param name="Clumping">Variance over mean of the counts where above 1: grubs lie in clumps, and the range is widened by its root.</param>
/// <param name="More">Lifts more that would settle it at the same mean; null where twenty would not.</param>
public sealed record GrubEstimate(double PerSquareFoot, double Low, double High, int Lifts, int Counted, double SquareFeet, double Clumping, int? More)
{
    private const int MostMore = 20;

    /// <summary>The line of the verdict, grubs per square foot.</summary>
    public static double Line => Thresholds.Grubs;

    public GrubStanding Standing => StandingOf(Low, High);

    /// <summary>Mean with its Poisson range (<see cref="PoissonRange"/>), widened where the lifts differ more than chance (quasi-Poisson); null without a lift.</summary>
    public static GrubEstimate? Of(GrubLifts? lifts)
    {
        if (lifts is null || lifts.Counts.Count == 0 || !(lifts.Ground.SquareFeet > 0.0))
        {
            return null;
        }

        var (m, counted) = (lifts.Counts.Count, lifts.Counts.Sum());
        var squareFeet = m * lifts.Ground.SquareFeet;
        var clumping = Clump(lifts.Counts);
        var (low, high) = Range(counted, squareFeet, clumping);
        return new(counted / squareFeet, low, high, m, counted, squareFeet, clumping, StillNeeded(counted, squareFeet, m, clumping));
    }

    /// <summary>The estimate's working, with its range.</summary>
    public Working Working => new(
        "g = G / A; 90 % range of a Poisson count, widened by sqrt(d)",
        [
            new("g", "grubs per square foot", PerSquareFoot, "per sq ft"), new("low", "lower end of the 90 % range", Low, "per sq ft"), new("high", "upper end of the 90 % range", High, "per sq ft"),
            new("G", "grubs counted", Counted, ""), new("A", "ground lifted", SquareFeet, "sq ft"), new("d", "clumping: variance over mean, at least 1", Clumping, ""), new("L", "line", Line, "per sq ft"),
        ],
        $"lifts of the walk-over; range by Garwood 1936; line: {Thresholds.GrubSource}",
        Sureness.Measured,
        Words);

    /// <summary>Whether the count settles it.</summary>
    public string Words => Standing switch
    {
        GrubStanding.ClearlyAbove => $"Clearly above the line of {Line:0} a square foot.",
        GrubStanding.ClearlyBelow => $"Clearly below the line of {Line:0} a square foot.",
        _ when More is { } more => $"Not clear of the line of {Line:0} a square foot yet: lift {more} more.",
        _ => $"Close to the line of {Line:0} a square foot: more lifts will hardly settle it; go by how the turf bears it.",
    };

    private static GrubStanding StandingOf(double low, double high) =>
        low > Line ? GrubStanding.ClearlyAbove : high < Line ? GrubStanding.ClearlyBelow : GrubStanding.NeedsMore;

    private static double Clump(IReadOnlyList<int> counts)
    {
        var mean = counts.Average();
        return counts.Count < 3 || mean == 0.0 ? 1.0 : Math.Max(1.0, counts.Sum(c => (c - mean) * (c - mean)) / (counts.Count - 1) / mean);
    }

    private static (double Low, double High) Range(int counted, double squareFeet, double clumping)
    {
        var (low, high) = PoissonRange.Of(counted);
        var wider = Math.Sqrt(clumping);
        return (Math.Max(0.0, counted - (wider * (counted - low))) / squareFeet, (counted + (wider * (high - counted))) / squareFeet);
    }

    private static int? StillNeeded(int counted, double squareFeet, int lifts, double clumping)
    {
        for (var more = 0; more <= MostMore; more++)
        {
            var grown = (double)(lifts + more) / lifts;
            var (low, high) = Range((int)Math.Round(counted * grown), squareFeet * grown, clumping);
            if (StandingOf(low, high) != GrubStanding.NeedsMore)
            {
                return more;
            }
        }

        return null;
    }
}
