namespace Seedfall.Planning.Water;

/// <summary>
/// Places a day's rounds inside the allowed hours. Each round belongs to its own part of the daylight, because a seedbed watered
/// three times before breakfast is dry by noon.
/// </summary>
internal static class RoundPlacing
{
    /// <summary>Latest end by choice, so that leaves dry before dark: 18:00. Shallow and frequent, not in the evening (WVU).</summary>
    private const int Dusk = 18 * 60;

    /// <summary>Latest start of a round forced into the evening: 22:00.</summary>
    private const int Night = 22 * 60;

    /// <summary>Start wished for in the evenings before seeding.</summary>
    private const int EveningWish = 19 * 60;

    /// <summary>
    /// Start minutes of as many of <paramref name="rounds"/> rounds as fit, in order, none overlapping, as near as can be to even
    /// spacing. Every round ends by 18:00 where that costs none of them; otherwise the last may run into the evening and
    /// <paramref name="forced"/> is true.
    /// </summary>
    internal static IReadOnlyList<int> Place(IReadOnlyList<Stretch> allowed, int length, int rounds, out bool forced)
    {
        forced = false;
        var day = Fit([.. allowed.Select(s => s with { To = Math.Min(s.To, Dusk) })], length, Parts(rounds, Dusk));
        if (day.Count == rounds)
        {
            return day;
        }

        var whole = Fit(allowed, length, Parts(rounds, rounds == 1 ? WateringHours.MinutesPerDay : Night));
        forced = whole.Count > day.Count;
        return forced ? whole : day;
    }

    /// <summary>One round at 19:00 or as near to it as it fits; null where it fits nowhere.</summary>
    internal static int? PlaceEvening(IReadOnlyList<Stretch> allowed, int length) =>
        Start(allowed, length, new Part(0, WateringHours.MinutesPerDay, EveningWish), 0, WateringHours.MinutesPerDay);

    /// <summary>The part of the day in which a round starts, and the start wished for.</summary>
    private readonly record struct Part(int From, int To, int Wish);

    /// <summary>Parts by number of rounds; the first takes in the small hours, the last runs to <paramref name="end"/>.</summary>
    private static Part[] Parts(int rounds, int end) => rounds switch
    {
        1 => [new(0, end, 6 * 60)],
        2 => [new(0, 11 * 60, 8 * 60), new(11 * 60, end, 14 * 60)],
        3 => [new(0, 10 * 60, 7 * 60), new(10 * 60, 14 * 60, 11 * 60), new(14 * 60, end, 15 * 60)],
        _ => [new(0, 9 * 60, 7 * 60), new(9 * 60, 12 * 60, 10 * 60), new(12 * 60, 15 * 60, 13 * 60), new(15 * 60, end, 16 * 60)],
    };

    /// <summary>
    /// The same parts for runs timed one by one, up to 22:00: a round that begins at the end of its part may run on for its length, and
    /// its water is wished half its length after its start.
    /// </summary>
    internal static IReadOnlyList<Timetable.RoundPart> Starts(int rounds, int length) =>
        [.. Parts(rounds, rounds == 1 ? WateringHours.MinutesPerDay : Night).Select((part, k) => new Timetable.RoundPart(part.From, k + 1 < rounds ? part.To + length : WateringHours.MinutesPerDay, part.Wish + (length / 2)))];

    /// <summary>One round whose water is wished half its length after 19:00.</summary>
    internal static IReadOnlyList<Timetable.RoundPart> EveningStart(int length) => [new(0, WateringHours.MinutesPerDay, EveningWish + (length / 2))];

    private static IReadOnlyList<int> Fit(IReadOnlyList<Stretch> allowed, int length, IReadOnlyList<Part> parts)
    {
        var (chosen, earliest) = (new List<Part>(), new List<int>());
        foreach (var part in parts)
        {
            var from = earliest.Count == 0 ? 0 : earliest[^1] + length;
            if (Start(allowed, length, part with { Wish = part.From }, from, WateringHours.MinutesPerDay) is { } start)
            {
                chosen.Add(part);
                earliest.Add(start);
            }
        }

        var latest = new int[chosen.Count];
        var before = WateringHours.MinutesPerDay;
        for (var k = chosen.Count - 1; k >= 0; k--)
        {
            latest[k] = Start(allowed, length, chosen[k] with { Wish = chosen[k].To }, earliest[k], before) ?? earliest[k];
            before = latest[k] - length;
        }

        var starts = new List<int>();
        for (var k = 0; k < chosen.Count; k++)
        {
            var from = k == 0 ? earliest[0] : Math.Max(earliest[k], starts[^1] + length);
            starts.Add(Start(allowed, length, chosen[k], from, latest[k]) ?? latest[k]);
        }

        return starts;
    }

    /// <summary>The start nearest the wish, inside the part, the allowed hours and the bounds; null where there is none.</summary>
    private static int? Start(IReadOnlyList<Stretch> allowed, int length, Part part, int from, int to)
    {
        int? best = null;
        foreach (var stretch in allowed)
        {
            var low = Math.Max(Math.Max(part.From, from), stretch.From);
            var high = Math.Min(Math.Min(part.To, to), stretch.To - length);
            if (low <= high)
            {
                var start = Math.Clamp(part.Wish, low, high);
                best = best is null || Math.Abs(start - part.Wish) < Math.Abs(best.Value - part.Wish) ? start : best;
            }
        }

        return best;
    }
}
