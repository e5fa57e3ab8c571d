using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Correction;
using Seedfall.Engine.Weather;

namespace Seedfall.Planning.Timing;

/// <summary>What is already known of the season planned for: its own weather up to the day the plan is looked at, and the forecast after it.</summary>
/// <param name="Line">Soil temperature by day, for drawing; days without weather are left out.</param>
/// <param name="Uncorrected">The same without what thermometers said; empty where none was read.</param>
/// <param name="Known">Soil and nights from the season's first day on, unbroken up to today and the forecast's end; null where there is none or no today was given.</param>
/// <param name="KnownDays">Number of leading days in <paramref name="Known"/> that are known.</param>
/// <param name="Corrected">The soil before and after thermometer readings; null where none was taken.</param>
internal sealed record ThisSeason(
    IReadOnlyList<SoilLineDay> Line, IReadOnlyList<SoilLineDay> Uncorrected, SeasonWeather? Known, int KnownDays, CorrectedSoil? Corrected)
{
    /// <summary>Days before the season from which soil temperatures are worked up.</summary>
    private const int RunUpDays = 400;

    /// <summary>Forecast days believed; later ones say no more than past seasons do.</summary>
    private const int MostForecastDays = 10;

    /// <summary>Days a reading may be ahead of the weather; the last day's weather is taken to have gone on.</summary>
    private const int MostDaysAhead = 2;

    private static ThisSeason Nothing { get; } = new([], [], null, 0, null);

    /// <summary>What readings taught the soil to be off on a day, degC; 0 where nothing was read.</summary>
    internal double BiasC(DateOnly date) => Corrected?.Bias.AtC(date) ?? 0.0;

    internal static ThisSeason Of(WeatherHistory weather, SeasonCalendar calendar, Place place, DateOnly? today, IReadOnlyList<SitedReading> readings)
    {
        var last = today is { } day && day < calendar.Last ? day : calendar.Last;
        var from = calendar.First.AddDays(-RunUpDays);
        var days = weather.Days.SkipWhile(d => d.Date < from).TakeWhile(d => d.Date <= last || IsAhead(d, last)).ToArray();
        if (days.Length == 0 || days[^1].Date < calendar.First)
        {
            return Nothing;
        }

        var worked = readings.Count == 0 ? days : [.. days, .. GoneOn(days[^1], readings.Max(r => r.Reading.Date))];
        var series = SoilTemperatureSource.DailyMean(worked, place);
        var corrected = readings.Count == 0 ? null : CorrectedSoil.From(series, place, SoilTempSite.Reference, [.. readings.Select(r => (r.Reading, r.Site))], SoilHeatConstants.Shipped);
        var line = Drawn(days, corrected?.DailyMeanC ?? series.DailyMeanC, calendar);
        (SeasonWeather? Weather, int Days) known = today is null ? (null, 0) : KnownOf(days, corrected?.DailyMeanC ?? series.DailyMeanC, calendar);
        return new ThisSeason(line, corrected is null ? [] : Drawn(days, series.DailyMeanC, calendar), known.Days == 0 ? null : known.Weather, known.Days, corrected);
    }

    private static bool IsAhead(WeatherDay day, DateOnly last) => day.Quality == DayQuality.Forecast && day.Date <= last.AddDays(MostForecastDays);

    private static IEnumerable<WeatherDay> GoneOn(WeatherDay last, DateOnly reading) =>
        Enumerable.Range(1, Math.Clamp(reading.DayNumber - last.Date.DayNumber, 0, MostDaysAhead)).Select(n => last with { Date = last.Date.AddDays(n) });

    private static List<SoilLineDay> Drawn(WeatherDay[] days, double[] soilC, SeasonCalendar calendar) =>
        [.. days.Select((day, i) => (Day: day, Soil: soilC[i])).Where(d => d.Day.Date >= calendar.First).Select(d => new SoilLineDay(d.Day.Date, d.Soil, d.Day.Quality != DayQuality.Forecast))];

    private static (SeasonWeather? Weather, int Days) KnownOf(WeatherDay[] days, double[] soilC, SeasonCalendar calendar)
    {
        var (knownSoilC, knownTminC, known) = (new double[SeasonCalendar.Length], new double[SeasonCalendar.Length], 0);
        for (var i = Array.FindIndex(days, d => d.Date >= calendar.First); i < days.Length && known < SeasonCalendar.Length; i++)
        {
            if (calendar.Index(days[i].Date) == known)
            {
                (knownSoilC[known], knownTminC[known]) = (soilC[i], days[i].TminC);
                known++;
            }
        }

        return (new SeasonWeather(calendar.Year, knownSoilC, knownTminC), known);
    }
}
