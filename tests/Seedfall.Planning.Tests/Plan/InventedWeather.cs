using Seedfall.Engine.Numerics;
using Seedfall.Engine.Weather;

namespace Seedfall.Planning.Tests.Plan;

/// <summary>Invented daily weather of a humid mid-latitude place: an annual wave, day-to-day persistence, rain every third day or so.</summary>
internal static class InventedWeather
{
    internal static readonly Place North = new(41.6, -93.6, 280.0);

    internal static readonly Place South = new(-37.8, 175.3, 40.0);

    internal static WeatherHistory Years(int first, int last, Place place, ulong seed = 7)
    {
        var random = new SplitMix64(seed);
        var (days, departure) = (new List<WeatherDay>(), 0.0);
        for (var date = new DateOnly(first, 1, 1); date.Year <= last; date = date.AddDays(1))
        {
            var phase = 2.0 * Math.PI * (date.DayOfYear - (place.LatitudeDeg < 0.0 ? 20 : 202)) / 365.25;
            departure = (0.7 * departure) + (2.2 * NormalDistribution.Inverse(0.001 + (0.998 * random.NextDouble())));
            var mean = 10.0 + (14.0 * Math.Cos(phase)) + departure;
            var wet = random.NextDouble() < 0.3;
            days.Add(new WeatherDay(date, mean + 5.5, mean - 5.5, wet ? -6.0 * Math.Log(1.0 - (0.999 * random.NextDouble())) : 0.0));
        }

        return new WeatherHistory(place, "invented station", [.. days], ["invented weather for tests"], []);
    }
}
