using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Overview;

/// <summary>Marked ground seen from straight above: the same ground to every pixel, far or near.</summary>
/// <param name="Image">The picture; middle gray where there is nothing to see.</param>
/// <param name="Inside">True for each pixel within the marks and within the photo.</param>
public sealed record PlanView(PixelImage Image, IReadOnlyList<bool> Inside, PlanGrid Grid)
{
    private const byte Nothing = 128;
    private const int MostSamplesAside = 8;

    /// <summary>
    /// Resamples a photo. Where the photo is finer than the plan, all that falls on a plan pixel is averaged in linear light; where
    /// it is coarser, it is interpolated, which adds no detail.
    /// </summary>
    public static PlanView Of(PixelImage photo, MarkedView view, PlanGrid grid)
    {
        ArgumentNullException.ThrowIfNull(photo);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(grid);
        var (rgb, inside) = (new byte[3 * grid.Width * grid.Height], new bool[grid.Width * grid.Height]);
        Array.Fill(rgb, Nothing);
        var reader = new PhotoReading(photo, view);
        for (var at = 0; at < inside.Length; at++)
        {
            var ground = grid.Ground(at % grid.Width + 0.5, at / grid.Width + 0.5);
            if (Rings.Contains(view.Frame.Corners, ground.AcrossM, ground.AwayM) && reader.Mean(ground, 1.0 / grid.PixelsPerMeter, MostSamplesAside) is var (r, g, b))
            {
                inside[at] = true;
                (rgb[3 * at], rgb[3 * at + 1], rgb[3 * at + 2]) = (LinearLight.ToSrgb(r), LinearLight.ToSrgb(g), LinearLight.ToSrgb(b));
            }
        }

        return new(new PixelImage(grid.Width, grid.Height, rgb), inside, grid);
    }
}
