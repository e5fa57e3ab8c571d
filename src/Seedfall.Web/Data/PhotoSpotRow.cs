namespace Seedfall.Web.Data;

/// <summary>A place pictures of a lawn are taken from again and again.</summary>
public sealed class PhotoSpotRow
{
    public required Guid Id { get; init; }

    public required string LawnId { get; init; }

    public required string Name { get; set; }

    /// <summary>The patch it shows; null for the lawn as a whole.</summary>
    public string? PatchId { get; set; }

    /// <summary>What to stand on and which way to look, in the adviser's words.</summary>
    public string? StandOn { get; set; }

    /// <summary>True for an overview at a slant, false for straight down.</summary>
    public bool IsOverview { get; init; }

    public required DateTimeOffset Added { get; init; }

    public List<PhotoRow> Photos { get; init; } = [];
}
