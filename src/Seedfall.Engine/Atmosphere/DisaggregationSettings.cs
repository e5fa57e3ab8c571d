namespace Seedfall.Engine.Atmosphere;

/// <summary>What <see cref="Disaggregation"/> assumes where a day does not say. Every default is named here and shown as an assumption.</summary>
public sealed record DisaggregationSettings
{
    /// <summary>The settings used where none are given.</summary>
    public static DisaggregationSettings Default { get; } = new();

    /// <summary>Standard time ahead of UTC, h; null takes the 15 degree zone of the longitude.</summary>
    public double? StandardOffsetHours { get; init; }

    /// <summary>Mean wind at 2 m on days without wind, m/s above 0. FAO-56: 2 m/s where nothing is known.</summary>
    public double UnknownWindMs { get; init; } = Wind.UnknownMs;

    /// <summary>Wind by day over wind by night, 1 or more. About 2 in the middle latitudes (Doorenbos and Pruitt 1977; common practice, no source read).</summary>
    public double DayNightWindRatio { get; init; } = 2.0;

    /// <summary>How far the dew point lies below Tmin on days without humidity, degC; 0 in humid climates, 1 to 3 in dry ones (FAO-56; common practice).</summary>
    public double DewPointBelowTminC { get; init; }
}
