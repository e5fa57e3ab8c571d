namespace Seedfall.Web.Data;

/// <summary>One lawn as stored: its document as text, so that a file and the database hold the same words.</summary>
public sealed class LawnRow
{
    /// <summary>The lawn's own id: lower-case letters, digits and hyphens.</summary>
    public required string Id { get; init; }

    public required string Name { get; set; }

    /// <summary>The lawn document, as <c>lawn.json</c> is written.</summary>
    public required string Document { get; set; }

    /// <summary>Raised by every change; a form carries the version it was filled from.</summary>
    public int Version { get; set; } = 1;

    /// <summary>True for the demo: an invented lawn, and said to be one on every page.</summary>
    public bool Invented { get; init; }

    /// <summary>The weather this lawn is planned with; null until one is picked.</summary>
    public int? WeatherId { get; set; }

    public WeatherRow? Weather { get; init; }

    public required DateTimeOffset Added { get; init; }

    public required DateTimeOffset Changed { get; set; }

    public List<SeasonRow> Seasons { get; init; } = [];
}
