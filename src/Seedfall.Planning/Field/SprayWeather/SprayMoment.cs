namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>The weather of one moment or hour on the lawn, at the heights the rules want it. Null means not known.</summary>
public sealed record SprayMoment
{
    /// <summary>
    /// Wind held against the label, m/s: as read on the spot, else as at 2 m. It is not brought down to the nozzle, for a label counts
    /// wind at the height of release or above (common practice, no source read).
    /// </summary>
    public double? WallMs { get; init; }

    /// <summary>Wind at the nozzle, m/s.</summary>
    public double? NozzleMs { get; init; }

    /// <summary>Likeliest wind at 2 m, m/s, to tell still air.</summary>
    public double? StillMs { get; init; }

    /// <summary>Gusts held against the label, m/s.</summary>
    public double? GustWallMs { get; init; }

    /// <summary>Gusts at the nozzle, m/s.</summary>
    public double? GustNozzleMs { get; init; }

    public double? AirC { get; init; }

    public double? HumidityPct { get; init; }

    public double? CloudPct { get; init; }

    /// <summary>Minutes since the sun rose; negative before.</summary>
    public required double AfterSunriseMinutes { get; init; }

    /// <summary>Minutes until the sun sets; negative after.</summary>
    public required double BeforeSunsetMinutes { get; init; }

    /// <summary>Before midday, how far the air has warmed above the morning's low, degC.</summary>
    public double? WarmedC { get; init; }

    /// <summary>Smoke, dust or fog hangs in a layer.</summary>
    public bool Hangs { get; init; }

    public bool? WetLeaves { get; init; }

    /// <summary>Minutes until rain, 0 while it rains; null where none is expected.</summary>
    public double? RainInMinutes { get; init; }

    /// <summary>False where nothing is known of the rain ahead for as long as it must stay dry.</summary>
    public bool RainKnown { get; init; }
}
