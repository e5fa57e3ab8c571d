namespace Seedfall.Engine.Weather;

/// <summary>Where a day's values came from.</summary>
public enum DayQuality
{
    /// <summary>Read from the file.</summary>
    Measured,

    /// <summary>Filled over a gap of at most three days.</summary>
    Interpolated,

    /// <summary>Not come yet: forecast.</summary>
    Forecast,
}

/// <summary>One local standard day of weather. Air values at about 1.5 to 2 m; wind as at 2 m.</summary>
/// <param name="Date">The local day.</param>
/// <param name="TmaxC">Highest air temperature, degC.</param>
/// <param name="TminC">Lowest air temperature, degC; never above <paramref name="TmaxC"/>.</param>
/// <param name="RainMm">Precipitation, mm; not negative.</param>
public sealed record WeatherDay(DateOnly Date, double TmaxC, double TminC, double RainMm)
{
    /// <summary>Mean of the day's hours, degC; where absent use <see cref="MidC"/>.</summary>
    public double? MeanC { get; init; }

    /// <summary>Global solar radiation on the horizontal, MJ m-2 d-1.</summary>
    public double? SolarMJ { get; init; }

    /// <summary>Highest relative humidity, percent 0 to 100.</summary>
    public double? HumidityMaxPct { get; init; }

    /// <summary>Lowest relative humidity, percent 0 to 100.</summary>
    public double? HumidityMinPct { get; init; }

    /// <summary>Mean relative humidity, percent 0 to 100.</summary>
    public double? HumidityMeanPct { get; init; }

    /// <summary>Mean wind speed at 2 m, m/s.</summary>
    public double? WindMs { get; init; }

    /// <summary>Measured soil temperature at 5 cm, daily mean, degC (for validation).</summary>
    public double? Soil5CmC { get; init; }

    /// <summary>Measured volumetric soil moisture at 5 cm, m3/m3 (for validation).</summary>
    public double? SoilMoisture5Cm { get; init; }

    /// <summary>Whether the day was read or filled.</summary>
    public DayQuality Quality { get; init; } = DayQuality.Measured;

    /// <summary>(Tmax + Tmin) / 2, degC.</summary>
    public double MidC => 0.5 * (TmaxC + TminC);

    /// <summary>The mean where measured, else the middle of the extremes, degC.</summary>
    public double AverageC => MeanC ?? MidC;
}
