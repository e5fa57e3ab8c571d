using Seedfall.Engine.Simulation;
using Seedfall.Engine.Weather;

namespace Seedfall.Planning.Timing;

/// <summary>Where the plan's soil temperatures come from: one door, so that a better model is one line.</summary>
internal static class SoilTemperatureSource
{
    /// <summary>Daily mean soil temperature at 2 in (5 cm) for every day given; at least one day.</summary>
    internal static SoilTemperatureSeries DailyMean(IReadOnlyList<WeatherDay> days, Place place) =>
        SoilTemperature.DailyMeanAt5Cm(days, place, SoilTempSite.Reference);
}
