using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Weather;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>Hours made out of days where only days are known: rough, and said to be.</summary>
public static class DayHours
{
    private const double WindHeightM = 2.0;

    private const int Most = 8;

    /// <summary>
    /// The run of days that holds <paramref name="from"/>, drawn out into hours: temperature by Parton and Logan 1981, humidity from a
    /// vapor pressure that holds all day, wind twice as strong by day as by night, rain by the usual hours of rain. Null where no day
    /// from <paramref name="from"/> on is known. A day without wind has no wind here either, for a wind made up is no ground to spray on.
    /// </summary>
    /// <param name="history">Holds the days.</param>
    /// <param name="place">The lawn.</param>
    /// <param name="from">First day wanted; the day before is taken along where it is known.</param>
    /// <param name="standardOffset">The lawn's standard time ahead of UTC.</param>
    public static HourlyForecast? From(WeatherHistory history, Place place, DateOnly from, TimeSpan standardOffset)
    {
        ArgumentNullException.ThrowIfNull(history);
        var days = Run(history, from);
        if (days.Count == 0)
        {
            return null;
        }

        var hours = Disaggregation.FromDaily(days, place, new DisaggregationSettings { StandardOffsetHours = standardOffset.TotalHours });
        var first = new DateTimeOffset(days[0].Date.ToDateTime(TimeOnly.MinValue), standardOffset);
        return new HourlyForecast([.. Enumerable.Range(0, hours.Hours).Select(i => Hour(hours, i, first, days[i / 24]))], WindHeightM, history.Sources.Count > 0 ? history.Sources[^1] : history.StationName)
        {
            Place = history.Station,
            Notes =
            [
                "Only days are known, not hours. The hours are drawn out of each day’s high, low, rain and mean wind by the usual run of a day: rough, good for seeing which days are worth looking at.",
                .. days.Any(d => d.WindMs is null) ? ["Days without wind stay without wind: read it on the spot."] : Array.Empty<string>(),
            ],
        };
    }

    private static List<WeatherDay> Run(WeatherHistory history, DateOnly from)
    {
        var days = new List<WeatherDay>();
        if (history.Day(from) is null)
        {
            return days;
        }

        if (history.Day(from.AddDays(-1)) is { } before)
        {
            days.Add(before);
        }

        for (var date = from; days.Count < Most && history.Day(date) is { } day; date = date.AddDays(1))
        {
            days.Add(day);
        }

        return days;
    }

    private static ForecastHour Hour(HourlyWeather hours, int i, DateTimeOffset first, WeatherDay day) => new(first.AddHours(i))
    {
        AirC = hours.AirC[i],
        HumidityPct = Math.Min(100.0, 100.0 * hours.VaporKPa[i] / Humidity.SaturationVaporPressureCore(hours.AirC[i])),
        WindMs = day.WindMs is null ? null : hours.WindMs[i],
        RainMm = hours.RainMm[i],
        Drawn = true,
    };
}
