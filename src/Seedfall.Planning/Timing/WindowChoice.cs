using Seedfall.Engine.Timing;

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
    /// The days around the best whose chance falls short of it by no more than one standard error (adjusted proportion of Agresti
    /// and Coull 1998). Among equals the best day is the one well inside the good days, then the one nearest to the middle day the
    /// soil falls to 70 degF. Null where even the best day does worse than <see cref="LeastShare"/>.
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

        var least = outcomes.Share(best) - StandardError(outcomes.Share(best), outcomes.Members);
        var (opens, closes) = (best, best);
        while (opens > first && outcomes.Share(opens - 1) >= least)
        {
            opens--;
        }

        while (closes < last && outcomes.Share(closes + 1) >= least)
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

    private static double StandardError(double share, int seasons) => DateChances.FromDays([], seasons).StandardError(share);
}
