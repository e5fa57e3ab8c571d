namespace Seedfall.Web.Data;

/// <summary>An imported weather history: what the readers made of the files, not the files themselves.</summary>
public sealed class WeatherRow
{
    public int Id { get; init; }

    public required string Name { get; init; }

    public required DateOnly FirstDay { get; init; }

    public required DateOnly LastDay { get; init; }

    public required int DayCount { get; init; }

    /// <summary>Where it was measured; null where the files do not say.</summary>
    public double? LatitudeDeg { get; init; }

    public double? LongitudeDeg { get; init; }

    public bool Invented { get; init; }

    /// <summary>The readers' report as JSON.</summary>
    public required string Report { get; init; }

    /// <summary>The history, packed by <see cref="PackedHistory"/>.</summary>
    public required byte[] History { get; init; }

    public required DateTimeOffset Added { get; init; }
}
