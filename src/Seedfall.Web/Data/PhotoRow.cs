namespace Seedfall.Web.Data;

/// <summary>One picture from a photo spot and what was measured on it. The picture itself lies in the data folder.</summary>
public sealed class PhotoRow
{
    public required Guid Id { get; init; }

    public required Guid SpotId { get; init; }

    public required string LawnId { get; init; }

    /// <summary>The day it was taken, by the lawn's clock.</summary>
    public required DateOnly Taken { get; set; }

    public required DateTimeOffset Added { get; init; }

    /// <summary>Raised by every new measure; part of the address of what is drawn from it.</summary>
    public int Version { get; set; } = 1;

    /// <summary>Pixels of the picture as kept.</summary>
    public required int Width { get; init; }

    public required int Height { get; init; }

    /// <summary>Share of living green; null on an overview until four points are marked.</summary>
    public double? Cover { get; set; }

    public double? CoverLow { get; set; }

    public double? CoverHigh { get; set; }

    /// <summary>What makes the measure doubtful, as names between commas.</summary>
    public string Flags { get; set; } = "";

    /// <summary>Points answered by the adviser, as JSON.</summary>
    public string Taps { get; set; } = "[]";

    /// <summary>Where a gray card lies, as JSON; null where none does.</summary>
    public string? Card { get; set; }

    /// <summary>Points worth answering next, as JSON.</summary>
    public string WorthTapping { get; set; } = "[]";

    /// <summary>The four marked points and what they span, as JSON; null where nothing is marked.</summary>
    public string? Marks { get; set; }

    /// <summary>The cover map's thin spots, as JSON; null where nothing is marked.</summary>
    public string? Found { get; set; }

    /// <summary>The field log's entry of this measure; null where none was written.</summary>
    public Guid? LogEntryId { get; set; }
}
