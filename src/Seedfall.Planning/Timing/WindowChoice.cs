namespace Seedfall.Planning.Timing;

/// <summary>The window and its best day, as indices into the season.</summary>
internal sealed record ChosenWindow(int Opens, int Best, int Closes);

/// <summary>Chooses the seeding window: every day within one standard error of the best.</summary>
internal static class WindowChoice
{
    /// <summary>Share of seasons below which no autumn day is worth seeding.</summary>
    internal const double LeastShare = 0.5;

    private const int SmoothingReach = 3;

    /// <summary>
    /// The days around the best whose share of stands falls short of it by no more than one standard error of the paired
    /// difference (the same seasons judge both days). Among equals the best day is the one well inside the good days, then the one
    /// nearest to the middle day the soil falls to 70 degF. Null where even the best day fails in more than half the seasons.
    /// </summary>
    /// <param name="outcomes">Stands by day and season; at least one season.</param>
    /// <param name="first">First day that may be chosen.</param>
    /// <param name="last">Last day that may be chosen.</param>
    /// <param name="coolDay">Middle day of the fall to 70 degF; null where unknown.</param>
    internal static ChosenWindow? Of(StandOutcomes outcomes, int first, int last, int? coolDay)
    {
        if (first > last)
        {
            return null;
        }

        var best = Best(outcomes, first, last, coolDay);
        if (outcomes.Share(best) < LeastShare)
        {
            return null;
        }

        var (opens, closes) = (best, best);
        while (opens > first && IsAsGood(outcomes, opens - 1, best))
        {
            opens--;
        }

        while (closes < last && IsAsGood(outcomes, closes + 1, best))
        {
            closes++;
        }

        return new ChosenWindow(opens, best, closes);
    }

    private static int Best(StandOutcomes outcomes, int first, int last, int? coolDay)
    {
        var (best, bestScore, bestDistance) = (first, double.NegativeInfinity, int.MaxValue);
        for (var day = first; day <= last; day++)
        {
            var score = Smoothed(outcomes, day);
            var distance = coolDay is { } cool ? Math.Abs(day - cool) : 0;
            if (score > bestScore + 1e-9 || (score > bestScore - 1e-9 && distance < bestDistance))
            {
                (best, bestScore, bestDistance) = (day, score, distance);
            }
        }

        return best;
    }

    private static double Smoothed(StandOutcomes outcomes, int day)
    {
        var sum = 0.0;
        for (var near = day - SmoothingReach; near <= day + SmoothingReach; near++)
        {
            sum += outcomes.Share(Math.Clamp(near, 0, SeasonCalendar.Length - 1));
        }

        return sum / ((2 * SmoothingReach) + 1);
    }

    private static bool IsAsGood(StandOutcomes outcomes, int day, int best) =>
        outcomes.Share(best) - outcomes.Share(day) <= PairedError(outcomes, day, best) + 1e-9;

    /// <summary>Standard error of the mean difference between two days over the same seasons.</summary>
    private static double PairedError(StandOutcomes outcomes, int day, int best)
    {
        var n = outcomes.Members;
        if (n < 2)
        {
            return 0.0;
        }

        var mean = outcomes.Share(best) - outcomes.Share(day);
        var squares = 0.0;
        for (var member = 0; member < n; member++)
        {
            var difference = (outcomes.Stood(member, best) ? 1.0 : 0.0) - (outcomes.Stood(member, day) ? 1.0 : 0.0) - mean;
            squares += difference * difference;
        }

        return Math.Sqrt(squares / (n - 1) / n);
    }
}
