using Seedfall.Engine.Units;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Field;

/// <summary>How a cover was judged.</summary>
public enum CoverJudged
{
    /// <summary>By eye.</summary>
    ByEye,

    /// <summary>Counted under a grid or hoop.</summary>
    Counted,

    /// <summary>Measured from a photograph.</summary>
    Photograph,
}

/// <summary>What a finger in the seedbed found.</summary>
public enum FingerFelt
{
    /// <summary>Dry crumbs.</summary>
    TooDry,

    /// <summary>Moist, holds together, no water shows.</summary>
    Right,

    /// <summary>Water shows or stands.</summary>
    Soggy,
}

/// <summary>
/// Something seen or done on the lawn. Never changed once written; a mistake is struck by a later entry. Closed: only the kinds
/// below exist.
/// </summary>
public abstract record LogEntry
{
    private LogEntry()
    {
    }

    /// <summary>Made where the entry was written, so that sending it twice adds nothing.</summary>
    public required Guid Id { get; init; }

    /// <summary>When it happened, with the offset of the lawn's own clock.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The patch; null for the whole lawn.</summary>
    public string? PatchId { get; init; }

    /// <summary>What else was worth writing down.</summary>
    public string? Remark { get; init; }

    /// <summary>The day by the lawn's own clock.</summary>
    public DateOnly Day => DateOnly.FromDateTime(At.DateTime);

    /// <summary>Seed went down.</summary>
    public sealed record SeededDown : LogEntry;

    /// <summary>The first seedlings were seen.</summary>
    public sealed record FirstGreen : LogEntry;

    /// <summary>A thermometer read in the soil.</summary>
    /// <param name="Depth">Depth of the sensor.</param>
    /// <param name="Read">What it showed.</param>
    public sealed record SoilReading(Depth Depth, Temperature Read) : LogEntry
    {
        /// <summary>False where only the day is known; the reading then counts as the day's mean.</summary>
        public bool HourKnown { get; init; } = true;
    }

    /// <summary>Living cover judged or measured.</summary>
    /// <param name="Cover">Share of the ground under living turf.</param>
    /// <param name="Judged">How.</param>
    public sealed record CoverSeen(Fraction Cover, CoverJudged Judged) : LogEntry
    {
        /// <summary>Lower end of the range it lies in nine times of ten; null where not known.</summary>
        public Fraction? Low { get; init; }

        /// <summary>Upper end of the same range.</summary>
        public Fraction? High { get; init; }
    }

    /// <summary>Water was given: so deep, or for so long; exactly one of the two.</summary>
    public sealed record Watered : LogEntry
    {
        /// <summary>Name of the sprinkler set; null where the depth says enough.</summary>
        public string? Set { get; init; }

        /// <summary>Mean depth put on.</summary>
        public Depth? Given { get; init; }

        /// <summary>Minutes run in each position.</summary>
        public double? Minutes { get; init; }
    }

    /// <summary>Rain read off a gauge.</summary>
    /// <param name="Caught">Depth since the gauge was last emptied, taken as fallen in the 24 hours before.</param>
    public sealed record Rained(Depth Caught) : LogEntry;

    /// <summary>A finger pushed into the seedbed.</summary>
    /// <param name="Felt">What it found.</param>
    public sealed record FingerTest(FingerFelt Felt) : LogEntry
    {
        /// <summary>How deep the moist soil reached; null where not looked at.</summary>
        public Depth? WetTo { get; init; }
    }

    /// <summary>The grass was mowed.</summary>
    public sealed record Mowed : LogEntry
    {
        /// <summary>Height it was mowed to; null where not looked at.</summary>
        public Depth? To { get; init; }
    }

    /// <summary>Something was put on the lawn. The entry's instant is the start.</summary>
    /// <param name="What">The record of it.</param>
    public sealed record Applied(Application What) : LogEntry;

    /// <summary>Something worth keeping in words.</summary>
    public sealed record Note(string Text) : LogEntry;

    /// <summary>An earlier entry does not hold.</summary>
    /// <param name="EntryId">The entry struck.</param>
    /// <param name="Why">The reason.</param>
    public sealed record Struck(Guid EntryId, string Why) : LogEntry;
}
