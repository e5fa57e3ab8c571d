using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Validation;
using Seedfall.Engine.Weather;

namespace Seedfall.Fit;

/// <summary>One station's days for one input set, with its usual year.</summary>
internal sealed record StationWeather(string Name, Place Place, IReadOnlyList<WeatherDay> Days, PlaceClimate Climate, InputSet Inputs)
{
    internal static StationWeather Of(WeatherHistory history, InputSet inputs, int firstYear)
    {
        var place = history.Station!;
        IReadOnlyList<WeatherDay> days = [.. history.Days.Where(d => d.Date.Year >= firstYear).Select(d => inputs == InputSet.Full ? d : SoilValidation.OnlyExtremes(d))];
        return new StationWeather(history.StationName, place, days, PlaceClimate.FromHistory(days, place), inputs);
    }

    /// <summary>Whether a day counts: August to November (the autumn of the place), measured at 5 cm.</summary>
    internal static bool Scored(WeatherDay day) => day is { Soil5CmC: not null, Date.Month: >= 8 and <= 11 };
}
