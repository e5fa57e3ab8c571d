using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Forcing;

/// <summary>Which measurements a soil temperature is computed from.</summary>
public enum InputSet
{
    /// <summary>Hourly-mean air temperature and measured sun, beside the extremes and rain.</summary>
    Full,

    /// <summary>Highest and lowest air temperature and rain only.</summary>
    Extremes,
}

/// <summary>Which input set a history carries.</summary>
public static class InputSets
{
    private const double ShareNeeded = 0.9;

    /// <summary>Full where at least nine days in ten have both a measured mean and measured sun, else extremes only.</summary>
    public static InputSet Of(IReadOnlyList<WeatherDay> days) =>
        days.Count(d => d.MeanC is not null && d.SolarMJ is not null) >= ShareNeeded * days.Count && days.Count > 0
            ? InputSet.Full
            : InputSet.Extremes;
}
