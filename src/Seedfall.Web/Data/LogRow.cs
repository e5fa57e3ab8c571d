namespace Seedfall.Web.Data;

/// <summary>One field log entry as stored: its document as text. Rows are added and never changed.</summary>
public sealed class LogRow
{
    /// <summary>Made where the entry was written, so that sending it twice adds nothing.</summary>
    public required Guid Id { get; init; }

    public required string LawnId { get; init; }

    public required DateTimeOffset At { get; init; }

    /// <summary>The entry, as <c>log.json</c> is written.</summary>
    public required string Document { get; init; }

    /// <summary>When it arrived here.</summary>
    public required DateTimeOffset Received { get; init; }
}
