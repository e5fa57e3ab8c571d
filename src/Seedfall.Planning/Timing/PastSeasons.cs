using System.Globalization;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Weather;

namespace Seedfall.Planning.Timing;

/// <summary>The past seasons a plan rests on; the season planned for is never among them, nor is any later one.</summary>
/// <param name="Seasons">Seasons with weather on every day of the calendar, oldest first.</param>
/// <param name="Dropped">Seasons left out, each with the reason.</param>
/// <param name="Soil">The soil temperatures they were cut from; null where no day lies before the season.</param>
internal sealed record PastSeasons(IReadOnlyList<SeasonWeather> Seasons, IReadOnlyList<string> Dropped, SoilTemperatureSeries? Soil)
{
    /// <summary>Cuts the history before the season into past seasons.</summary>
    internal static PastSeasons Of(WeatherHistory weather, SeasonCalendar calendar, Place place)
    {
        var before = weather.Days.TakeWhile(d => d.Date < calendar.First).ToArray();
        if (before.Length == 0)
        {
            return new PastSeasons([], [], null);
        }

        var soil = SoilTemperatureSource.DailyMean(before, place);
        var (seasons, dropped) = (new List<SeasonWeather>(), new List<string>());
        for (var year = before[0].Date.Year; year < calendar.Year; year++)
        {
            var past = calendar.In(year);
            var (from, to) = (LowerBound(before, past.First), LowerBound(before, past.Last.AddDays(1)));
            if (to - from == SeasonCalendar.Length)
            {
                seasons.Add(new SeasonWeather(year, soil.DailyMeanC[from..to], [.. before[from..to].Select(d => d.TminC)]));
            }
            else if (to > from)
            {
                dropped.Add(Reason(before.AsSpan(from, to - from), past));
            }
        }

        return new PastSeasons(seasons, dropped, soil);
    }

    private static string Reason(ReadOnlySpan<WeatherDay> days, SeasonCalendar past)
    {
        var gapFrom = past.First;
        foreach (var day in days)
        {
            if (day.Date != gapFrom)
            {
                return Sentence(past.Year, gapFrom, day.Date.AddDays(-1));
            }

            gapFrom = gapFrom.AddDays(1);
        }

        return Sentence(past.Year, gapFrom, past.Last);
    }

    private static string Sentence(int year, DateOnly from, DateOnly to) => string.Create(
        CultureInfo.InvariantCulture, $"{year}: weather is missing from {from:MMM d} to {to:MMM d}, longer than may be filled");

    private static int LowerBound(WeatherDay[] days, DateOnly date)
    {
        var (low, high) = (0, days.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = days[middle].Date < date ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
