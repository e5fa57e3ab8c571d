using Microsoft.EntityFrameworkCore;
using Seedfall.Web.Data;

namespace Seedfall.Web.Features.Photos;

/// <summary>Photo spots and their pictures: rows in the database, files in the data folder, kept together.</summary>
internal sealed class PhotoShelf(IDbContextFactory<SeedfallDb> contexts, Writer writer, PhotoFolder folder, TimeProvider clock)
{
    /// <summary>Spots one lawn may have.</summary>
    public const int MostSpots = 60;

    /// <summary>Pictures one spot may have.</summary>
    public const int MostPhotos = 400;

    /// <summary>The lawn's spots by name, each with its pictures in order of the day taken.</summary>
    public async Task<IReadOnlyList<PhotoSpotRow>> Spots(string lawnId, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        return await db.PhotoSpots.AsNoTracking().Where(s => s.LawnId == lawnId)
            .Include(s => s.Photos.OrderBy(p => p.Taken).ThenBy(p => p.Added))
            .OrderBy(s => s.Name).ToListAsync(cancellation);
    }

    /// <summary>Null where the lawn has no such spot.</summary>
    public async Task<PhotoSpotRow?> Spot(string lawnId, Guid spot, CancellationToken cancellation) =>
        (await Spots(lawnId, cancellation)).FirstOrDefault(s => s.Id == spot);

    /// <summary>False where the lawn has as many as it may.</summary>
    public async Task<bool> Add(PhotoSpotRow spot, CancellationToken cancellation) =>
        await writer.Write(
            async db =>
            {
                var free = await db.PhotoSpots.CountAsync(s => s.LawnId == spot.LawnId, cancellation) < MostSpots && await db.Lawns.AnyAsync(l => l.Id == spot.LawnId, cancellation);
                if (free)
                {
                    db.PhotoSpots.Add(spot);
                }

                return free;
            },
            cancellation);

    /// <summary>Keeps a picture that came in; null where the spot is gone or full.</summary>
    /// <param name="id">A new one; a phone's own where it made one.</param>
    /// <param name="last">What is still to be noted on its row.</param>
    public async Task<PhotoRow?> Add(PhotoSpotRow spot, Guid id, Arrival.Fit arrived, DateOnly taken, Action<PhotoRow> last, CancellationToken cancellation)
    {
        var row = new PhotoRow { Id = id, SpotId = spot.Id, LawnId = spot.LawnId, Taken = taken, Added = clock.GetUtcNow(), Width = arrived.Width, Height = arrived.Height };
        folder.Write(row.Id, PicturePart.Picture, arrived.Picture);
        folder.Write(row.Id, PicturePart.Small, arrived.Small);
        if (arrived.Measured is { } measured)
        {
            Put(row, measured);
        }

        last(row);
        var kept = false;
        try
        {
            return await writer.Write(
                async db =>
                {
                    kept = await db.PhotoSpots.AnyAsync(s => s.Id == spot.Id, cancellation) && await db.Photos.CountAsync(p => p.SpotId == spot.Id, cancellation) < MostPhotos;
                    if (kept)
                    {
                        db.Photos.Add(row);
                    }

                    return kept ? row : null;
                },
                cancellation);
        }
        finally
        {
            if (!kept)
            {
                folder.Remove([row.Id]);
            }
        }
    }

    /// <summary>A picture by its id, on any lawn; null where there is none.</summary>
    public async Task<PhotoRow?> Photo(Guid id, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        return await db.Photos.AsNoTracking().FirstOrDefaultAsync(p => p.Id == id, cancellation);
    }

    /// <summary>Changes a picture's row where it still is the one the change was made from; false where it is not.</summary>
    public async Task<bool> Change(Guid photo, int version, Action<PhotoRow> change, CancellationToken cancellation) =>
        await writer.Write(
            async db =>
            {
                if (await db.Photos.FirstOrDefaultAsync(p => p.Id == photo && p.Version == version, cancellation) is not { } row)
                {
                    return false;
                }

                change(row);
                row.Version = version + 1;
                return true;
            },
            cancellation);

    /// <summary>Puts a measure into a row and its overlay beside the picture.</summary>
    public void Put(PhotoRow row, Measured measured)
    {
        folder.Write(row.Id, PicturePart.Overlay, measured.Overlay);
        (row.Cover, row.CoverLow, row.CoverHigh) = (measured.Cover, measured.Low, measured.High);
        row.Flags = string.Join(',', measured.Flags);
        row.WorthTapping = PhotoNotes.Text(measured.WorthTapping);
    }

    public async Task<bool> RemovePhoto(string lawnId, Guid photo, CancellationToken cancellation)
    {
        var removed = await writer.Write(db => db.Photos.Where(p => p.Id == photo && p.LawnId == lawnId).ExecuteDeleteAsync(cancellation), cancellation) == 1;
        if (removed)
        {
            folder.Remove([photo]);
        }

        return removed;
    }

    /// <summary>Removes a spot and all its pictures; false where there is none.</summary>
    public async Task<bool> RemoveSpot(string lawnId, Guid spot, CancellationToken cancellation)
    {
        if (await Spot(lawnId, spot, cancellation) is not { } found)
        {
            return false;
        }

        await writer.Write(db => db.PhotoSpots.Where(s => s.Id == spot).ExecuteDeleteAsync(cancellation), cancellation);
        folder.Remove(found.Photos.Select(p => p.Id));
        return true;
    }

    /// <summary>The files of a lawn that is about to be removed; its rows go with it.</summary>
    public async Task<IReadOnlyList<Guid>> Of(string lawnId, CancellationToken cancellation)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellation);
        return await db.Photos.AsNoTracking().Where(p => p.LawnId == lawnId).Select(p => p.Id).ToListAsync(cancellation);
    }

    /// <summary>Removes files whose rows are gone.</summary>
    public void Forget(IEnumerable<Guid> photos) => folder.Remove(photos);
}
