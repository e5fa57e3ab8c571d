namespace Seedfall.Planning.Water.Timetable;

/// <summary>
/// A well's books, kept so that they never promise water that is not there. A run's water is taken when it starts. In each quarter of an
/// hour the well is filled first, as far as it holds, and all that starts in it is taken after; yet none of that filling may be counted
/// on before the quarter is over. Recovery faster than the weakest draw is not counted, for a full well loses it. Full at the beginning.
/// </summary>
internal static class WellBook
{
    internal const int MinutesPerEntry = 15;

    /// <summary>The household's use, entered quarter by quarter.</summary>
    internal static IEnumerable<(int Start, long Water)> Household(MinuteSpan when, long draw)
    {
        for (var from = when.From; from < when.To; from = Next(from))
        {
            yield return (from, draw * (Math.Min(when.To, Next(from)) - from));
        }
    }

    /// <summary>True where no draw finds the well short.</summary>
    internal static bool Holds(long stored, long recovery, IReadOnlyList<(int Start, long Water)> draws)
    {
        var (level, entry) = (stored, 0);
        foreach (var quarter in draws.GroupBy(d => d.Start / MinutesPerEntry).OrderBy(q => q.Key))
        {
            level = Math.Min(stored, level + (recovery * (quarter.Key - entry)));
            var taken = quarter.Sum(d => d.Water);
            if (taken > level)
            {
                return false;
            }

            (level, entry) = (Math.Min(stored, level + recovery) - taken, quarter.Key + 1);
        }

        return true;
    }

    private static int Next(int minute) => ((minute / MinutesPerEntry) + 1) * MinutesPerEntry;
}
