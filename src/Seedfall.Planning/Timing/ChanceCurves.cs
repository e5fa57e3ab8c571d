using Seedfall.Engine.Simulation;
using Seedfall.Engine.Timing;

namespace Seedfall.Planning.Timing;

/// <summary>The curves the season ribbon draws.</summary>
internal static class ChanceCurves
{
    /// <summary>70 degF.</summary>
    internal const double CoolSoilC = 190.0 / 9.0;

    /// <summary>Soil temperature by day over the past seasons; empty where there are none.</summary>
    internal static IReadOnlyList<SoilFanDay> SoilFan(IReadOnlyList<SeasonWeather> past, SeasonCalendar calendar) =>
        past.Count == 0 ? [] : [.. Drawn().Select(day => FanDay(past, calendar, day))];

    /// <summary>First day of autumn on which the 5-day mean is at or below 70 degF and stays, by season.</summary>
    internal static DateChances? CoolDays(IReadOnlyList<SeasonWeather> members) => Spread.Of(FallDays(members, CoolSoilC, SeasonCalendar.FirstSeeding));

    /// <summary>First day from <paramref name="from"/> on which the 5-day mean is at or below a threshold and stays, by season.</summary>
    internal static IReadOnlyList<int?> FallDays(IReadOnlyList<SeasonWeather> members, double thresholdC, int from) =>
        [.. members.Select(m => SoilCrossing.FirstFallBelow(m.SoilC, Math.BitIncrement(thresholdC), from))];

    /// <summary>First night of autumn at or below a threshold, by season.</summary>
    internal static DateChances? FrostDays(IReadOnlyList<SeasonWeather> members, double thresholdC) =>
        Spread.Of(members.Select(m => Frosts.First(m.TminC, thresholdC, SeasonCalendar.FirstSeeding)));

    /// <summary>Share of seasons that had the event by each drawn day, whole percents; empty where there are no seasons.</summary>
    internal static IReadOnlyList<DateChance> ByDate(DateChances? chances, SeasonCalendar calendar) => chances is null
        ? []
        : [.. Drawn().Select(day => new DateChance(calendar.Date(day), WholePercent(chances.ChanceBy(day))))];

    /// <summary>Chance of a stand by seed-down date; empty where there are no seasons.</summary>
    internal static IReadOnlyList<DateChance> Stand(StandOutcomes outcomes, SeasonCalendar calendar) => outcomes.Members == 0
        ? []
        : [.. Enumerable.Range(outcomes.FirstDay, outcomes.LastDay - outcomes.FirstDay + 1)
            .Select(day => new DateChance(calendar.Date(day), outcomes.Chance(day)))];

    /// <summary>A share rounded to whole percents.</summary>
    internal static double WholePercent(double share) => Math.Round(share, 2, MidpointRounding.AwayFromZero);

    private static IEnumerable<int> Drawn() => Enumerable.Range(SeasonCalendar.FirstDrawn, SeasonCalendar.Length - SeasonCalendar.FirstDrawn);

    private static SoilFanDay FanDay(IReadOnlyList<SeasonWeather> past, SeasonCalendar calendar, int day)
    {
        var sorted = past.Select(season => season.SoilC[day]).Order().ToArray();
        return new SoilFanDay(
            calendar.Date(day),
            Spread.Percentile(sorted, 0.10),
            Spread.Percentile(sorted, 0.25),
            Spread.Percentile(sorted, 0.50),
            Spread.Percentile(sorted, 0.75),
            Spread.Percentile(sorted, 0.90));
    }
}
