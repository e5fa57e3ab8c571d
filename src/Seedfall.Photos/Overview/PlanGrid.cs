using Seedfall.Photos.Cover;

namespace Seedfall.Photos.Overview;

/// <summary>Where ground lies in a picture of marked ground from straight above.</summary>
/// <param name="Width">Pixels across.</param>
/// <param name="Height">Pixels down; row 0 lies farthest from the camera.</param>
/// <param name="PixelsPerMeter">Pixels to a meter of ground.</param>
/// <param name="Origin">The ground at the lower left corner.</param>
public sealed record PlanGrid(int Width, int Height, double PixelsPerMeter, PlanPoint Origin)
{
    private const long MostPixels = 4_000_000;
    private const double LongestSide = GreenCover.LongSide;

    /// <summary>The grid over a frame.</summary>
    /// <param name="pixelsPerMeter">Wanted; less is taken where the picture would have more than 4 million pixels or a side longer than the cover measure takes.</param>
    public static PlanGrid Of(MarkFrame frame, double pixelsPerMeter)
    {
        ArgumentNullException.ThrowIfNull(frame);
        if (!(pixelsPerMeter is > 0.0 and <= 1000.0))
        {
            throw new ArgumentOutOfRangeException(nameof(pixelsPerMeter), pixelsPerMeter, "more than 0 and at most 1,000 are needed");
        }

        var origin = new PlanPoint(frame.Corners.Min(c => c.AcrossM), frame.Corners.Min(c => c.AwayM));
        var (acrossM, awayM) = (frame.Corners.Max(c => c.AcrossM) - origin.AcrossM, frame.Corners.Max(c => c.AwayM) - origin.AwayM);
        var n = Math.Min(pixelsPerMeter, Math.Min(Math.Sqrt(MostPixels / (acrossM * awayM)), LongestSide / Math.Max(acrossM, awayM)));
        return new(Math.Max(1, (int)Math.Round(acrossM * n)), Math.Max(1, (int)Math.Round(awayM * n)), n, origin);
    }

    /// <summary>The ground at a point of the picture.</summary>
    public PlanPoint Ground(double x, double y) => new(Origin.AcrossM + x / PixelsPerMeter, Origin.AwayM + (Height - y) / PixelsPerMeter);

    /// <summary>Where ground lies in the picture.</summary>
    public ImagePoint Point(PlanPoint ground) => new((ground.AcrossM - Origin.AcrossM) * PixelsPerMeter, Height - (ground.AwayM - Origin.AwayM) * PixelsPerMeter);
}
