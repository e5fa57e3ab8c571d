namespace Seedfall.Engine.Weather;

/// <summary>One hour of a forecast. Null means that the forecast does not say.</summary>
/// <param name="Start">When the hour begins; a whole hour.</param>
public sealed record ForecastHour(DateTimeOffset Start)
{
    /// <summary>Air temperature, degC.</summary>
    public double? AirC { get; init; }

    /// <summary>Relative humidity, percent 0 to 100.</summary>
    public double? HumidityPct { get; init; }

    /// <summary>Mean wind at <see cref="HourlyForecast.WindHeightM"/>, m/s.</summary>
    public double? WindMs { get; init; }

    /// <summary>Gusts at the same height, m/s.</summary>
    public double? GustMs { get; init; }

    /// <summary>Share of the sky covered, percent 0 to 100.</summary>
    public double? CloudPct { get; init; }

    /// <summary>Precipitation in the hour, mm.</summary>
    public double? RainMm { get; init; }

    /// <summary>Chance of precipitation in the hour, percent 0 to 100.</summary>
    public double? RainChancePct { get; init; }

    /// <summary>True where the hour was drawn between values further apart, or out of a whole day.</summary>
    public bool Drawn { get; init; }
}

/// <summary>Weather of the hours ahead at one place.</summary>
/// <param name="Hours">Ascending, no hour twice; an hour the forecast lacks is absent.</param>
/// <param name="WindHeightM">Height above ground the wind holds for, m.</param>
/// <param name="Source">Where it comes from, for the page.</param>
public sealed record HourlyForecast(IReadOnlyList<ForecastHour> Hours, double WindHeightM, string Source)
{
    /// <summary>Hours in ascending order, no hour twice; throws where they do not ascend.</summary>
    public IReadOnlyList<ForecastHour> Hours { get; init; } = Ascending(Hours);

    /// <summary>When it was made; null where it does not say.</summary>
    public DateTimeOffset? Issued { get; init; }

    /// <summary>Where it holds; null where it does not say.</summary>
    public Place? Place { get; init; }

    /// <summary>What was assumed or drawn, in plain sentences.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    private static IReadOnlyList<ForecastHour> Ascending(IReadOnlyList<ForecastHour> hours)
    {
        ArgumentNullException.ThrowIfNull(hours);
        for (var i = 1; i < hours.Count; i++)
        {
            if (hours[i].Start <= hours[i - 1].Start)
            {
                throw new ArgumentException(FormattableString.Invariant($"hours must ascend: {hours[i].Start:u} follows {hours[i - 1].Start:u}"), nameof(hours));
            }
        }

        return hours;
    }
}
