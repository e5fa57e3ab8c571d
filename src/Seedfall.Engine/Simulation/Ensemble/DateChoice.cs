namespace Seedfall.Engine.Simulation.Ensemble;

/// <summary>The best window: every date whose share of stands lies within one paired standard error of the best date's.</summary>
/// <param name="Opens">First date of the window.</param>
/// <param name="Best">The best date: of those that share the highest value the one with the most plants.</param>
/// <param name="Closes">Last date of the window.</param>
public readonly record struct BestWindow(int Opens, int Best, int Closes);

/// <summary>Choosing a date from the scores of past seasons.</summary>
public static class DateChoice
{
    private const double Rounding = 1e-12;

    /// <summary>The window over all dates and all seasons, or all but one; null where no date ever gave a stand.</summary>
    /// <param name="scores">Outcomes.</param>
    /// <param name="leftOut">Season left out, or -1.</param>
    public static BestWindow? Of(DateScores scores, int leftOut = -1) => Of(scores, 0, scores.Dates - 1, leftOut);

    /// <summary>The window within a range of dates.</summary>
    /// <param name="scores">Outcomes.</param>
    /// <param name="first">First date that may be chosen.</param>
    /// <param name="last">Last date that may be chosen; before <paramref name="first"/> means none may.</param>
    /// <param name="leftOut">Season left out, or -1.</param>
    public static BestWindow? Of(DateScores scores, int first, int last, int leftOut = -1)
    {
        var best = Best(scores, first, last, leftOut);
        if (best < 0)
        {
            return null;
        }

        var (opens, closes) = (best, best);
        while (opens > first && Within(scores, opens - 1, best, leftOut))
        {
            opens--;
        }

        while (closes < last && Within(scores, closes + 1, best, leftOut))
        {
            closes++;
        }

        return new BestWindow(opens, best, closes);
    }

    /// <summary>Mean over the seasons of what each had on the date chosen without it: leave-one-year-out.</summary>
    public static double LeaveOneOutSuccess(DateScores scores, int first, int last)
    {
        var stood = 0.0;
        for (var season = 0; season < scores.Seasons; season++)
        {
            stood += Of(scores, first, last, season) is { } window ? scores.Stood(season, window.Best) : 0.0;
        }

        return scores.Seasons == 0 ? 0.0 : stood / scores.Seasons;
    }

    /// <summary>Mean over the seasons of the best any date in the range would have given: hindsight.</summary>
    public static double HindsightSuccess(DateScores scores, int first, int last)
    {
        var stood = 0.0;
        for (var season = 0; season < scores.Seasons; season++)
        {
            var most = 0.0;
            for (var date = first; date <= last; date++)
            {
                most = Math.Max(most, scores.Stood(season, date));
            }

            stood += most;
        }

        return scores.Seasons == 0 ? 0.0 : stood / scores.Seasons;
    }

    /// <summary>Of the dates with the most stands the one with the most plants; -1 where none ever stood.</summary>
    private static int Best(DateScores scores, int first, int last, int leftOut)
    {
        var (best, most, plants) = (-1, Rounding, 0.0);
        for (var date = first; date <= last; date++)
        {
            var (stood, grown) = Sums(scores, date, leftOut);
            if (stood > most + Rounding || (stood > most - Rounding && best >= 0 && grown > plants))
            {
                (best, most, plants) = (date, stood, grown);
            }
        }

        return best;
    }

    private static (double Stood, double Plants) Sums(DateScores scores, int date, int leftOut)
    {
        var (stood, plants) = (0.0, 0.0);
        for (var season = 0; season < scores.Seasons; season++)
        {
            if (season != leftOut)
            {
                (stood, plants) = (stood + scores.Stood(season, date), plants + scores.Plants(season, date));
            }
        }

        return (stood, plants);
    }

    /// <summary>True where the mean difference to the best date is at most its standard error over the paired seasons.</summary>
    private static bool Within(DateScores scores, int date, int best, int leftOut)
    {
        var (n, sum, squares) = (0, 0.0, 0.0);
        for (var season = 0; season < scores.Seasons; season++)
        {
            if (season != leftOut)
            {
                var difference = scores.Stood(season, best) - scores.Stood(season, date);
                (n, sum, squares) = (n + 1, sum + difference, squares + (difference * difference));
            }
        }

        var mean = sum / n;
        var variance = n > 1 ? Math.Max(0.0, (squares - (n * mean * mean)) / (n - 1)) : 0.0;
        return mean <= Math.Sqrt(variance / n) + Rounding;
    }
}
