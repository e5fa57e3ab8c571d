using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Overview;

/// <summary>Marked ground seen from straight above: the same ground to every pixel, far or near.</summary>
/// <param name="Image">The picture; row 0 lies farthest from the camera.</param>
/// <param name="Inside">True for each pixel within the marks and within the photo.</param>
/// <param name="PixelsPerMeter">Pixels to a meter of ground.</param>
/// <param name="Origin">The ground at the picture's lower left corner.</param>
public sealed record PlanView(PixelImage Image, IReadOnlyList<bool> Inside, double PixelsPerMeter, PlanPoint Origin)
{
    private const long MostPixels = 4_000_000;
    private const int MostSamplesAside = 8;

    /// <summary>
    /// Resamples a photo. Where the photo is finer than the plan, all that falls on a plan pixel is averaged in linear light; where
    /// it is coarser, it is interpolated, which adds no detail.
    /// </summary>
    /// <param name="pixelsPerMeter">Wanted; less is taken where the plan would have more than 4 million pixels.</param>
    public static PlanView Of(PixelImage photo, MarkedView view, double pixelsPerMeter)
    {
        ArgumentNullException.ThrowIfNull(photo);
        ArgumentNullException.ThrowIfNull(view);
        if (!(pixelsPerMeter is > 0.0 and <= 1000.0))
        {
            throw new ArgumentOutOfRangeException(nameof(pixelsPerMeter), pixelsPerMeter, "more than 0 and at most 1,000 are needed");
        }

        var corners = view.Frame.Corners;
        var (left, near) = (corners.Min(c => c.AcrossM), corners.Min(c => c.AwayM));
        var (acrossM, awayM) = (corners.Max(c => c.AcrossM) - left, corners.Max(c => c.AwayM) - near);
        var n = Math.Min(pixelsPerMeter, Math.Sqrt(MostPixels / (acrossM * awayM)));
        var (width, height) = (Math.Max(1, (int)Math.Round(acrossM * n)), Math.Max(1, (int)Math.Round(awayM * n)));
        var (rgb, inside) = (new byte[3 * width * height], new bool[width * height]);
        var reader = new PhotoReading(photo, view);
        for (var row = 0; row < height; row++)
        {
            var away = near + (height - row - 0.5) / n;
            for (var column = 0; column < width; column++)
            {
                var ground = new PlanPoint(left + (column + 0.5) / n, away);
                var at = row * width + column;
                if (Rings.Contains(corners, ground.AcrossM, ground.AwayM) && reader.Mean(ground, 1.0 / n, MostSamplesAside) is var (r, g, b))
                {
                    inside[at] = true;
                    (rgb[3 * at], rgb[3 * at + 1], rgb[3 * at + 2]) = (LinearLight.ToSrgb(r), LinearLight.ToSrgb(g), LinearLight.ToSrgb(b));
                }
            }
        }

        return new(new PixelImage(width, height, rgb), inside, n, new(left, near));
    }
}
