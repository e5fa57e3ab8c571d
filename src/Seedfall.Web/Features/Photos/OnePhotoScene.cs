using Seedfall.Engine.Workings;
using Seedfall.Photos.Cover;
using Seedfall.Planning.Field;
using Seedfall.Web.Data;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Photos;

/// <summary>What became of measuring again.</summary>
internal enum MeasureResult
{
    Done,

    /// <summary>The picture is gone or the marks cannot be.</summary>
    Refused,

    /// <summary>Changed meanwhile.</summary>
    Conflict,

    /// <summary>Too many wait.</summary>
    Busy,
}

/// <summary>One picture with its spot and lawn, and measuring it again.</summary>
internal sealed class OnePhotoScene(LawnBook book, PhotoShelf shelf, PhotoFolder folder, PhotoMeasuring measuring, PhotoLogging logging, PlanWork work)
{
    public async Task<(StoredLawn Stored, PhotoSpotRow Spot, PhotoRow Photo)?> Find(string id, Guid spot, Guid photo, CancellationToken cancellation) =>
        await book.Find(id, cancellation) is { } stored && await shelf.Spot(id, spot, cancellation) is { } found && found.Photos.FirstOrDefault(p => p.Id == photo) is { } row
            ? (stored, found, row)
            : null;

    public async Task<PlannedLawn> Plan(StoredLawn stored, CancellationToken cancellation) =>
        await work.Plan(stored, await work.Kept(stored, null, cancellation), null, cancellation);

    /// <summary>Width over height of the picture that is measured; null where nothing is measured yet.</summary>
    public double? Measurable(PhotoRow row) => row.Found() is { } found ? (double)found.Width / found.Height : row.Cover is null ? null : (double)row.Width / row.Height;

    /// <summary>The marks as stored; those of the spot's last marked picture where this one has none, for the same spot sees the same ground.</summary>
    public Entries MarksOf(PhotoSpotRow spot, PhotoRow row, UnitSystem system)
    {
        var entries = new Entries(system);
        var note = row.Marks() ?? spot.Photos.LastOrDefault(p => p.Marks is not null)?.Marks();
        MarksForm.Fill(entries, note);
        return entries;
    }

    /// <summary>Measures the kept picture with these answers, these marks on an overview and this gray card, and keeps the result.</summary>
    public async Task<MeasureResult> Measure(StoredLawn stored, PhotoSpotRow spot, PhotoRow row, MarksNote? marks, IReadOnlyList<CoverTap> taps, PictureArea? card, CancellationToken cancellation)
    {
        if (folder.Read(row.Id, PicturePart.Picture) is not { } picture)
        {
            return MeasureResult.Refused;
        }

        if (await measuring.InTurn(() => Again(picture, marks, taps, card), cancellation) is not { } again)
        {
            return MeasureResult.Busy;
        }

        if (again.Measured is not { } measured)
        {
            return MeasureResult.Refused;
        }

        return await Change(
            stored, spot, row, "the picture was measured again",
            r =>
            {
                shelf.Put(r, measured);
                r.Taps = PhotoNotes.Text(taps);
                r.Card = card is { } area ? PhotoNotes.Text(area) : null;
                if (again.Overview is { } overview)
                {
                    folder.Write(r.Id, PicturePart.Plan, overview.Plan);
                    folder.Write(r.Id, PicturePart.Map, overview.Map);
                    (r.Marks, r.Found) = (PhotoNotes.Text(marks), PhotoNotes.Text(overview.Found));
                }
            },
            cancellation) ? MeasureResult.Done : MeasureResult.Conflict;
    }

    /// <summary>Gives a picture another day; false where it changed meanwhile.</summary>
    public async Task<bool> Date(StoredLawn stored, PhotoSpotRow spot, PhotoRow row, DateOnly day, CancellationToken cancellation) =>
        await Change(stored, spot, row, "the picture’s day was put right", r => r.Taken = day, cancellation);

    public async Task Remove(StoredLawn stored, PhotoRow row, CancellationToken cancellation)
    {
        if (await shelf.RemovePhoto(row.LawnId, row.Id, cancellation))
        {
            await logging.Write(stored, null, row.LogEntryId, "the picture was removed", cancellation);
        }
    }

    /// <summary>Changes the row, and the log with it.</summary>
    private async Task<bool> Change(StoredLawn stored, PhotoSpotRow spot, PhotoRow row, string why, Action<PhotoRow> change, CancellationToken cancellation)
    {
        LogEntry.CoverSeen? entry = null;
        var kept = await shelf.Change(
            row.Id,
            row.Version,
            r =>
            {
                change(r);
                entry = logging.Entry(stored, spot, r);
                r.LogEntryId = entry?.Id;
            },
            cancellation);
        if (kept)
        {
            await logging.Write(stored, entry, row.LogEntryId, why, cancellation);
        }

        return kept;
    }

    private static Remeasured Again(byte[] picture, MarksNote? marks, IReadOnlyList<CoverTap> taps, PictureArea? card)
    {
        if (marks is null)
        {
            return new(PhotoMeasuring.Measure(picture, taps, card), null);
        }

        var overview = marks.Frame() is { } frame ? PhotoMeasuring.Overview(picture, marks, frame, taps).Measured : null;
        return new(overview?.Measured, overview);
    }

    private sealed record Remeasured(Measured? Measured, OverviewMeasured? Overview);
}
