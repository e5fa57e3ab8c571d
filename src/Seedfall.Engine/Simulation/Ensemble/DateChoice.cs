namespace Seedfall.Engine.Simulation.Ensemble;

/// <summary>The best window: every date whose share of stands lies within one paired standard error of the best date's.</summary>
/// <param name="Opens">First candidate of the window.</param>
/// <param name="Best">The best candidate: of those that share the highest value the one with the most plants.</param>
/// <param name="Closes">Last candidate of the window.</param>
public readonly record struct BestWindow(int Opens, int Best, int Closes);

/// <summary>Choosing a date from a table of outcomes.</summary>
public static class DateChoice
{
    /// <summary>The window over all seasons but one (or over all); null where no date ever gave a stand.</summary>
    /// <param name="table">Outcomes.</param>
    /// <param name="leftOut">Season left out, or -1.</param>
    public static BestWindow? Of(StandTable table, int leftOut = -1)
    {
        var count = table.Candidates.Count;
        var stood = new int[count];
        for (var c = 0; c < count; c++)
        {
            stood[c] = Stood(table, c, leftOut);
        }

        var most = stood.Max();
        if (most == 0)
        {
            return null;
        }

        var best = Fullest(table, stood, most, leftOut);
        var (opens, closes) = (best, best);
        while (opens > 0 && Within(table, opens - 1, best, leftOut))
        {
            opens--;
        }

        while (closes + 1 < count && Within(table, closes + 1, best, leftOut))
        {
            closes++;
        }

        return new BestWindow(opens, best, closes);
    }

    /// <summary>Share of seasons whose own stand was had on the date chosen without them: leave-one-year-out.</summary>
    public static double LeaveOneOutSuccess(StandTable table)
    {
        var stood = 0;
        for (var season = 0; season < table.Years.Count; season++)
        {
            stood += Of(table, season) is { } window && table.Stood(season, window.Best) ? 1 : 0;
        }

        return table.Years.Count == 0 ? 0.0 : (double)stood / table.Years.Count;
    }

    /// <summary>Share of seasons in which some date would have given a stand: the best in hindsight.</summary>
    public static double HindsightSuccess(StandTable table)
    {
        var stood = Enumerable.Range(0, table.Years.Count).Count(season => Enumerable.Range(0, table.Candidates.Count).Any(c => table.Stood(season, c)));
        return table.Years.Count == 0 ? 0.0 : (double)stood / table.Years.Count;
    }

    private static int Stood(StandTable table, int candidate, int leftOut)
    {
        var stood = 0;
        for (var season = 0; season < table.Years.Count; season++)
        {
            stood += season != leftOut && table.Stood(season, candidate) ? 1 : 0;
        }

        return stood;
    }

    /// <summary>Of the dates with the most stands, the one with the most plants.</summary>
    private static int Fullest(StandTable table, int[] stood, int most, int leftOut)
    {
        var (best, bestPlants) = (-1, -1.0);
        for (var c = 0; c < stood.Length; c++)
        {
            var plants = stood[c] == most ? Plants(table, c, leftOut) : -1.0;
            (best, bestPlants) = plants > bestPlants ? (c, plants) : (best, bestPlants);
        }

        return best;
    }

    private static double Plants(StandTable table, int candidate, int leftOut)
    {
        var plants = 0.0;
        for (var season = 0; season < table.Years.Count; season++)
        {
            plants += season == leftOut ? 0.0 : table[season, candidate].PlantsPerM2;
        }

        return plants;
    }

    /// <summary>True where the mean difference to the best date is at most its standard error over the paired seasons.</summary>
    private static bool Within(StandTable table, int candidate, int best, int leftOut)
    {
        var (n, sum, squares) = (0, 0.0, 0.0);
        for (var season = 0; season < table.Years.Count; season++)
        {
            if (season == leftOut)
            {
                continue;
            }

            var difference = (table.Stood(season, best) ? 1.0 : 0.0) - (table.Stood(season, candidate) ? 1.0 : 0.0);
            (n, sum, squares) = (n + 1, sum + difference, squares + (difference * difference));
        }

        var mean = sum / n;
        var variance = n > 1 ? Math.Max(0.0, (squares - (n * mean * mean)) / (n - 1)) : 0.0;
        return mean <= Math.Sqrt(variance / n) + 1e-12;
    }
}
