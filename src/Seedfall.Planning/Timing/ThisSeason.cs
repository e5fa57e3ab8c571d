using Seedfall.Engine.Weather;

namespace Seedfall.Planning.Timing;

/// <summary>What is already known of the season planned for: its own weather up to the day the plan is looked at.</summary>
/// <param name="Line">Soil temperature by day, for drawing; days without weather are left out.</param>
/// <param name="Known">Soil and nights from the season's first day on, unbroken up to today; null where there is none or no today was given.</param>
/// <param name="KnownDays">Number of leading days in <paramref name="Known"/> that are known.</param>
internal sealed record ThisSeason(IReadOnlyList<SoilLineDay> Line, SeasonWeather? Known, int KnownDays)
{
    /// <summary>Days before the season from which soil temperatures are worked up.</summary>
    private const int RunUpDays = 400;

    private static ThisSeason Nothing { get; } = new([], null, 0);

    internal static ThisSeason Of(WeatherHistory weather, SeasonCalendar calendar, Place place, DateOnly? today)
    {
        var last = today is { } day && day < calendar.Last ? day : calendar.Last;
        var from = calendar.First.AddDays(-RunUpDays);
        var days = weather.Days.SkipWhile(d => d.Date < from).TakeWhile(d => d.Date <= last).ToArray();
        if (days.Length == 0 || days[^1].Date < calendar.First)
        {
            return Nothing;
        }

        var soilC = SoilTemperatureSource.DailyMean(days, place).DailyMeanC;
        var first = Array.FindIndex(days, d => d.Date >= calendar.First);
        var line = new List<SoilLineDay>();
        var (knownSoilC, knownTminC, known) = (new double[SeasonCalendar.Length], new double[SeasonCalendar.Length], 0);
        for (var i = first; i < days.Length; i++)
        {
            line.Add(new SoilLineDay(days[i].Date, soilC[i], true));
            if (calendar.Index(days[i].Date) == known)
            {
                (knownSoilC[known], knownTminC[known]) = (soilC[i], days[i].TminC);
                known++;
            }
        }

        return today is null || known == 0
            ? new ThisSeason(line, null, 0)
            : new ThisSeason(line, new SeasonWeather(calendar.Year, knownSoilC, knownTminC), known);
    }
}
