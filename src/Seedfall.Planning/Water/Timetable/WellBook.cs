namespace Seedfall.Planning.Water.Timetable;

/// <summary>
/// A well's books, kept so that they never promise water that is not there: a run's water is taken when it starts, and what comes back
/// in an hour counts when that hour is over. The well is full when the stretch begins.
/// </summary>
internal static class WellBook
{
    internal const int MinutesPerEntry = 60;

    /// <summary>The household's use, entered hour by hour.</summary>
    internal static IEnumerable<(int Start, long Water)> Household(MinuteSpan when, long draw)
    {
        for (var from = when.From; from < when.To; from = ((from / MinutesPerEntry) + 1) * MinutesPerEntry)
        {
            yield return (from, draw * (Math.Min(when.To, ((from / MinutesPerEntry) + 1) * MinutesPerEntry) - from));
        }
    }

    /// <summary>True where no draw finds the well short.</summary>
    internal static bool Holds(long stored, long hourlyRecovery, IReadOnlyList<(int Start, long Water)> draws)
    {
        var (level, hour) = (stored, 0);
        foreach (var (start, water) in draws.OrderBy(d => d.Start))
        {
            for (; hour < start / MinutesPerEntry; hour++)
            {
                level = Math.Min(stored, level + hourlyRecovery);
            }

            level -= water;
            if (level < 0)
            {
                return false;
            }
        }

        return true;
    }
}
