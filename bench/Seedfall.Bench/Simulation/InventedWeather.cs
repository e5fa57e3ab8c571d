using Seedfall.Engine.Numerics;
using Seedfall.Engine.Weather;

namespace Seedfall.Bench.Simulation;

/// <summary>Whole calendar years of weather that never was, highs, lows and rain only, as most stations have.</summary>
internal static class InventedWeather
{
    internal static readonly Place Where = new(41.6, -93.6, 280.0);

    internal static WeatherHistory Years(int count)
    {
        var random = new SplitMix64(7);
        var (days, departure) = (new List<WeatherDay>(), 0.0);
        for (var date = new DateOnly(2024 - count, 1, 1); date.Year < 2024; date = date.AddDays(1))
        {
            departure = (0.7 * departure) + (2.2 * random.NextNormal());
            var mean = 10.0 - (14.0 * Math.Cos(2.0 * Math.PI * (date.DayOfYear - 20) / 365.25)) + departure;
            days.Add(new WeatherDay(date, mean + 5.5, mean - 5.5, random.NextDouble() < 0.3 ? 9.0 * random.NextDouble() : 0.0));
        }

        return new WeatherHistory(Where, "invented", [.. days], [], []);
    }
}
