namespace Seedfall.Web.Data;

/// <summary>One spreader as stored: its card as text, without its entries. It belongs to the adviser, not to a lawn.</summary>
public sealed class SpreaderRow
{
    /// <summary>Lower-case letters, digits and hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>The card, as <c>spreader.json</c> is written.</summary>
    public required string Document { get; set; }

    public required DateTimeOffset Added { get; init; }

    public List<SpreaderEntryRow> Entries { get; init; } = [];
}

/// <summary>One thing a spreader showed: its document as text. Rows are added and never changed.</summary>
public sealed class SpreaderEntryRow
{
    /// <summary>Made where the entry was written, so that sending it twice adds nothing.</summary>
    public required Guid Id { get; init; }

    public required string SpreaderId { get; init; }

    public required DateTimeOffset At { get; init; }

    /// <summary>The entry, as <c>spreader.json</c> is written.</summary>
    public required string Document { get; init; }

    /// <summary>When it arrived here.</summary>
    public required DateTimeOffset Received { get; init; }
}
