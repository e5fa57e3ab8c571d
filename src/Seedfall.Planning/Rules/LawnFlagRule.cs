using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Rules;

/// <summary>What a state asks to be put up on a sprayed lawn and told to people, for work done for pay. Null means nothing of that kind was read.</summary>
public sealed record LawnFlagRule
{
    /// <summary>Least size of the marker, in.</summary>
    public required double LeastWidthInches { get; init; }

    public required double LeastHeightInches { get; init; }

    /// <summary>Least height of its letters, in.</summary>
    public double? LeastLetterInches { get; init; }

    /// <summary>Its bottom edge above the turf, in.</summary>
    public required double LeastAboveGroundInches { get; init; }

    public double? MostAboveGroundInches { get; init; }

    /// <summary>Hours it must stand.</summary>
    public double? StandHours { get; init; }

    /// <summary>True where it may come down the day after.</summary>
    public bool UntilNextDay { get; init; }

    /// <summary>What it is made of and stands on, in our words.</summary>
    public string? Make { get; init; }

    /// <summary>Where it is put, in our words.</summary>
    public string? Where { get; init; }

    /// <summary>Words the law itself prescribes, line by line; empty where it prescribes none.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>True where the law prescribes a picture of the whole sign, which Seedfall does not draw.</summary>
    public bool FormPrescribed { get; init; }

    /// <summary>What the customer is given in writing, line by line in our words.</summary>
    public IReadOnlyList<string> Customer { get; init; } = [];

    /// <summary>Hours before the work by which neighbors are told; a business day counts as 24.</summary>
    public double? NeighborHours { get; init; }

    /// <summary>Which neighbors are told, and how, in our words.</summary>
    public string? Neighbors { get; init; }

    public required string Source { get; init; }

    public required Sureness Sureness { get; init; }

    /// <summary>The marker in one sentence.</summary>
    public string Sentence => FormattableString.Invariant(
        $"Commercial spraying: a marker of at least {LeastHeightInches:0.##} by {LeastWidthInches:0.##} in, its bottom edge {Above}, {Down}.");

    /// <summary>How high it hangs.</summary>
    public string Above => MostAboveGroundInches is { } most
        ? FormattableString.Invariant($"{LeastAboveGroundInches:0.##} to {most:0.##} in above the turf")
        : FormattableString.Invariant($"{LeastAboveGroundInches:0.##} in or more above the ground");

    /// <summary>When it may come down.</summary>
    public string Down => StandHours is { } hours
        ? FormattableString.Invariant($"left {hours:0.##} hours")
        : UntilNextDay ? "left until the next day" : "left as long as the state asks";
}
