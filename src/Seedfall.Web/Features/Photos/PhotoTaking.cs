using Seedfall.Planning.Field;
using Seedfall.Web.Data;
using Seedfall.Web.Features.TakeOn;

namespace Seedfall.Web.Features.Photos;

/// <summary>What became of a picture that came in.</summary>
internal abstract record PhotoTaken
{
    /// <summary>It is here.</summary>
    /// <param name="Row">Its row.</param>
    /// <param name="Before">True where it was here already: it was sent twice.</param>
    public sealed record Kept(PhotoRow Row, bool Before) : PhotoTaken;

    /// <summary>It cannot be taken.</summary>
    /// <param name="Why">In one sentence without a period.</param>
    public sealed record Refused(string Why) : PhotoTaken;

    /// <summary>The spot is gone or full.</summary>
    public sealed record NoRoom : PhotoTaken;

    /// <summary>Too many wait to be measured: send it again.</summary>
    public sealed record Busy : PhotoTaken;
}

/// <summary>A picture on its way in: made fit, measured, kept, written into the log. One sent twice is there once.</summary>
internal sealed class PhotoTaking(PhotoShelf shelf, PhotoMeasuring measuring, PhotoLogging logging, TimeProvider clock) : IDisposable
{
    private readonly SemaphoreSlim _one = new(1, 1);

    public static string NoRoom { get; } = FormattableString.Invariant($"This spot is gone, or it holds {PhotoShelf.MostPhotos} pictures already. Nothing was saved.");

    /// <param name="id">Made where the picture was taken.</param>
    /// <param name="said">The day it was taken; null takes the camera's.</param>
    public async Task<PhotoTaken> Take(StoredLawn stored, PhotoSpotRow spot, Guid id, byte[] bytes, DateOnly? said, CancellationToken cancellation)
    {
        if (await Before(stored, id, cancellation) is { } before)
        {
            return before;
        }

        var arrival = await measuring.InTurn(() => PhotoMeasuring.Arrive(bytes, spot.IsOverview), cancellation);
        if (arrival is not Arrival.Fit arrived)
        {
            return arrival is Arrival.Unfit unfit ? new PhotoTaken.Refused(unfit.Problem.Sentence) : new PhotoTaken.Busy();
        }

        // Files are written under the id before the row is: two deliveries of one picture must not meet here.
        await _one.WaitAsync(cancellation);
        try
        {
            return await Before(stored, id, cancellation) ?? await Keep(stored, spot, id, arrived, said, cancellation);
        }
        finally
        {
            _one.Release();
        }
    }

    public void Dispose() => _one.Dispose();

    private async Task<PhotoTaken?> Before(StoredLawn stored, Guid id, CancellationToken cancellation)
    {
        if (await shelf.Photo(id, cancellation) is not { } row)
        {
            return null;
        }

        if (row.LawnId != stored.Row.Id)
        {
            return new PhotoTaken.Refused("another lawn has a picture with this id");
        }

        // The first delivery may have ended between picture and log: an entry of this id adds nothing where it is there.
        if (row.LogEntryId is { } entryId && await shelf.Spot(row.LawnId, row.SpotId, cancellation) is { } spot && logging.Entry(stored, spot, row) is { } entry)
        {
            await logging.Write(stored, entry with { Id = entryId }, null, "", cancellation);
        }

        return new PhotoTaken.Kept(row, true);
    }

    private async Task<PhotoTaken> Keep(StoredLawn stored, PhotoSpotRow spot, Guid id, Arrival.Fit arrived, DateOnly? said, CancellationToken cancellation)
    {
        LogEntry.CoverSeen? entry = null;
        var day = said ?? Sensible(arrived.Taken, PhotoProgress.Today(stored, clock));
        if (await shelf.Add(spot, id, arrived, day, r => r.LogEntryId = (entry = logging.Entry(stored, spot, r))?.Id, cancellation) is not { } row)
        {
            return new PhotoTaken.NoRoom();
        }

        await logging.Write(stored, entry, null, "", cancellation);
        return new PhotoTaken.Kept(row, false);
    }

    /// <summary>The camera's day, unless its clock is plainly wrong.</summary>
    private static DateOnly Sensible(DateOnly? camera, DateOnly today) => camera is { Year: >= 2000 } day && day <= today.AddDays(1) ? day : today;
}
