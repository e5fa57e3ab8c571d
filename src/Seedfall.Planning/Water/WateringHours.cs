namespace Seedfall.Planning.Water;

/// <summary>A stretch of a day in minutes after midnight.</summary>
internal readonly record struct Stretch(int From, int To);

/// <summary>The hours of each weekday in which water may run.</summary>
internal static class WateringHours
{
    internal const int MinutesPerDay = 1440;

    /// <summary>Monday to Sunday.</summary>
    internal static IReadOnlyList<WeekDays> Week { get; } =
        [WeekDays.Monday, WeekDays.Tuesday, WeekDays.Wednesday, WeekDays.Thursday, WeekDays.Friday, WeekDays.Saturday, WeekDays.Sunday];

    /// <summary>True where the town or the household limits hours or days.</summary>
    internal static bool Limited(WaterSupply? supply) => supply is { NewSeedPermit: false, Allowed.Count: > 0 };

    /// <summary>Hours in which somebody is about to open a tap or move a hose: 5:00 to 22:00. Assumed.</summary>
    private static readonly Stretch Awake = new(5 * 60, 22 * 60);

    /// <summary>The allowed stretches that can be used: all of them by a timer, those by day where hands are needed.</summary>
    internal static IReadOnlyList<Stretch> Usable(WaterSupply? supply, WeekDays day, bool byHand) => byHand
        ? [.. On(supply, day).Select(s => new Stretch(Math.Max(s.From, Awake.From), Math.Min(s.To, Awake.To))).Where(s => s.To > s.From)]
        : On(supply, day);

    /// <summary>The allowed stretches of a weekday, merged, in order; the whole day where nothing limits it.</summary>
    internal static IReadOnlyList<Stretch> On(WaterSupply? supply, WeekDays day)
    {
        if (!Limited(supply))
        {
            return [new Stretch(0, MinutesPerDay)];
        }

        var merged = new List<Stretch>();
        foreach (var window in supply!.Allowed.Where(w => (w.Days & day) != 0).OrderBy(w => w.From))
        {
            var (from, to) = ((int)window.From.ToTimeSpan().TotalMinutes, (int)window.To.ToTimeSpan().TotalMinutes);
            to = window.To == new TimeOnly(23, 59) || to == 0 ? MinutesPerDay : to;
            if (merged.Count > 0 && from <= merged[^1].To)
            {
                merged[^1] = merged[^1] with { To = Math.Max(merged[^1].To, to) };
            }
            else if (to > from)
            {
                merged.Add(new Stretch(from, to));
            }
        }

        return merged;
    }
}
