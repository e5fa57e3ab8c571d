using Seedfall.Photos.Cover;
using Seedfall.Photos.Overview;
using Seedfall.Photos.Pixels;
using Seedfall.Photos.Reading;

namespace Seedfall.Web.Features.Photos;

/// <summary>Green cover as measured, with the picture of what was counted.</summary>
internal sealed record Measured(double Cover, double Low, double High, IReadOnlyList<CoverFlag> Flags, IReadOnlyList<PicturePoint> WorthTapping, byte[] Overlay);

/// <summary>A picture that came in: as it is kept, or why it is not.</summary>
internal abstract record Arrival
{
    /// <param name="Measured">Null for an overview, whose ground is not marked yet.</param>
    internal sealed record Fit(byte[] Picture, byte[] Small, int Width, int Height, DateOnly? Taken, bool HadLocation, Measured? Measured) : Arrival;

    internal sealed record Unfit(PhotoProblem Problem) : Arrival;
}

/// <summary>An overview measured between its marks, or what is wrong with the marks.</summary>
internal sealed record OverviewMeasured(Measured Measured, FoundNote Found, byte[] Plan, byte[] Map);

/// <summary>
/// The work on pixels, which is heavy: one picture at a time, a few more waiting, the rest turned away. A picture is always
/// measured as it is kept, so that measuring it again gives the same.
/// </summary>
internal sealed class PhotoMeasuring : IDisposable
{
    private const int MostWaiting = 6;
    private const int SmallSide = 480;
    private const int LeastSide = 64;
    private const double PlanPixelsPerMeter = 200.0;

    /// <summary>Least half range of an overview's cover: at a slant light and leaves mislead more than straight down (from memory).</summary>
    private const double OverviewError = 0.10;

    private readonly SemaphoreSlim _one = new(1, 1);
    private int _waiting;

    /// <summary>Does the work in turn; null where too many wait already.</summary>
    public async Task<T?> InTurn<T>(Func<T> work, CancellationToken cancellation)
        where T : class
    {
        if (Interlocked.Increment(ref _waiting) > MostWaiting)
        {
            Interlocked.Decrement(ref _waiting);
            return null;
        }

        try
        {
            await _one.WaitAsync(cancellation);
            try
            {
                return await Task.Run(work, CancellationToken.None);
            }
            finally
            {
                _one.Release();
            }
        }
        finally
        {
            Interlocked.Decrement(ref _waiting);
        }
    }

    /// <summary>The picture made fit to be kept, and measured where it looks straight down.</summary>
    public static Arrival Arrive(ReadOnlySpan<byte> file, bool isOverview)
    {
        var read = PhotoFile.Read(file);
        if (!read.IsRead)
        {
            return new Arrival.Unfit(read.Problem);
        }

        if (Math.Min(read.Photo.Image.Width, read.Photo.Image.Height) < LeastSide)
        {
            return new Arrival.Unfit(new(PhotoProblemKind.Damaged, FormattableString.Invariant($"expected a picture of at least {LeastSide} pixels each way, found {read.Photo.Image.Width} x {read.Photo.Image.Height}")));
        }

        var picture = PhotoFile.Store(read.Photo);
        var small = PhotoFile.Read(picture, PhotoLimits.Ordinary with { DecodeLongSide = SmallSide }).Photo!;
        var kept = Kept(picture);
        return new Arrival.Fit(
            picture, PhotoFile.Store(small), kept.Width, kept.Height, read.Photo.TakenAt is { } at ? DateOnly.FromDateTime(at) : null, read.Photo.HadLocation, isOverview ? null : Measure(kept, [], null));
    }

    /// <summary>A kept straight-down picture measured again.</summary>
    public static Measured Measure(byte[] picture, IReadOnlyList<CoverTap> taps, PictureArea? card) => Measure(Kept(picture), taps, card);

    /// <summary>An overview from straight above its marked ground, with its cover map and thin spots.</summary>
    public static (OverviewMeasured? Measured, MarkProblem? Problem) Overview(byte[] picture, MarksNote marks, MarkFrame frame, IReadOnlyList<CoverTap> taps)
    {
        var photo = Kept(picture);
        var (view, problem) = MarkedView.Of(photo.Width, photo.Height, [.. marks.Points.Select(p => new ImagePoint(p.X * photo.Width, p.Y * photo.Height))], frame);
        if (view is null)
        {
            return (null, problem);
        }

        var plan = PlanView.Of(photo, view, PlanGrid.Of(frame, PlanPixelsPerMeter));
        var measure = GreenCover.Measure(plan.Image, new CoverOptions { Taps = taps });
        var map = CoverMap.Of(measure.Mask, plan.Grid, view);
        var spots = ThinSpots.In(map, new ThinSpotSettings { Threshold = marks.Threshold });
        var cover = map.Cover ?? 0.0;
        var off = Math.Max(OverviewError, 0.5 * (measure.High - measure.Low));
        var measured = new Measured(cover, Math.Max(0.0, cover - off), Math.Min(1.0, cover + off), measure.Flags, measure.WorthTapping, CoverOverlay.Draw(plan.Image, measure.Mask));
        return (new(measured, Note(plan.Grid, frame, map, spots), PhotoFile.Store(plan.Image), PhotoFile.Store(CoverMapDrawing.Draw(plan.Image, plan.Grid, map))), null);
    }

    public void Dispose() => _one.Dispose();

    private static Measured Measure(PixelImage picture, IReadOnlyList<CoverTap> taps, PictureArea? card)
    {
        var measure = GreenCover.Measure(picture, new CoverOptions { Taps = taps, GrayCard = card });
        return new(measure.Cover, measure.Low, measure.High, measure.Flags, measure.WorthTapping, CoverOverlay.Draw(picture, measure.Mask));
    }

    private static PixelImage Kept(byte[] picture) =>
        PhotoFile.Read(picture, PhotoLimits.Ordinary with { DecodeLongSide = null }) is { IsRead: true } read ? read.Photo.Image : throw new InvalidDataException("a kept photograph cannot be read");

    private static FoundNote Note(PlanGrid grid, MarkFrame frame, CoverMap map, ThinSpots spots)
    {
        var measured = Enumerable.Range(0, map.Columns * map.Rows).Select(i => map[i % map.Columns, i / map.Columns]).Where(c => c.State == CellState.Measured && c.Inside > 0.9).ToList();
        return new(
            grid.Width, grid.Height, grid.PixelsPerMeter, frame.AreaM2, map.MeasuredM2, map.TooCoarseM2, Math.Max(map.CellAcrossM, map.CellAwayM),
            measured.Count == 0 ? 0.0 : measured.Min(c => c.PhotoPixels), measured.Count == 0 ? 0.0 : measured.Min(c => c.ElevationDeg),
            [.. spots.Spots.Select(s => new SpotNote([.. s.Ring.Select(grid.Point)], [.. s.Holes.Select(h => (IReadOnlyList<ImagePoint>)[.. h.Select(grid.Point)])], grid.Point(s.Middle), s.AreaM2, s.LowM2, s.HighM2, s.Cover))],
            spots.SmallCount, spots.SmallM2);
    }
}
