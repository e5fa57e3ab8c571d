using Seedfall.Engine.Numerics;
using Seedfall.Engine.Weather;

namespace Seedfall.Planning.Tests.Timing;

/// <summary>Weather that never was: an annual wave, spells that linger, rain now and then. The same seed gives the same days.</summary>
internal static class InventedWeather
{
    internal static readonly Place North = new(40.0, -89.0, 200.0);

    internal static readonly Place South = new(-40.0, 175.0, 100.0);

    /// <summary>Whole calendar years, both inclusive.</summary>
    /// <param name="warmerC">Added to every day's temperature.</param>
    /// <param name="rainMm">Mean depth of a rainy day.</param>
    internal static WeatherHistory Years(int first, int last, Place? place = null, ulong seed = 7, double warmerC = 0.0, double rainMm = 9.0) =>
        Days(new DateOnly(first, 1, 1), new DateOnly(last, 12, 31), place, seed, warmerC, rainMm);

    internal static WeatherHistory Days(DateOnly first, DateOnly last, Place? place = null, ulong seed = 7, double warmerC = 0.0, double rainMm = 9.0)
    {
        var at = place ?? North;
        var days = new List<WeatherDay>();
        var spellC = 0.0;
        for (var date = first; date <= last; date = date.AddDays(1))
        {
            // Each date has its own stream, so that a longer history holds the same days.
            var random = new SplitMix64(seed + ((ulong)date.DayNumber * 0x9E3779B97F4A7C15UL));
            spellC = (0.75 * spellC) + (2.6 * random.NextNormal());
            var season = Math.Cos(2.0 * Math.PI * (date.DayOfYear - (at.LatitudeDeg >= 0.0 ? 203 : 20)) / 365.25);
            var meanC = 11.0 + (13.5 * season) + spellC + warmerC;
            var wet = random.NextDouble() < 0.3;
            var rangeC = (wet ? 8.0 : 12.0) + random.NextDouble();
            days.Add(new WeatherDay(date, meanC + (0.5 * rangeC), meanC - (0.5 * rangeC), wet ? rainMm * -Math.Log(1.0 - random.NextDouble()) : 0.0));
        }

        return Of(days, at);
    }

    internal static WeatherHistory Of(IEnumerable<WeatherDay> days, Place? place = null) => new(place ?? North, "invented", days.ToArray(), ["invented"], []);

    internal static WeatherHistory None(Place? place = null) => Of([], place);

    internal static WeatherHistory Without(WeatherHistory weather, DateOnly first, DateOnly last) =>
        Of(weather.Days.Where(d => d.Date < first || d.Date > last), weather.Station);
}
