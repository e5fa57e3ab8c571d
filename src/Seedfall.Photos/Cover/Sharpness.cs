using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Cover;

/// <summary>How fast a picture changes from one pixel to the next, beside how fast it changes over eight: the ratio falls as it blurs.</summary>
internal static class Sharpness
{
    /// <summary>Below this nothing in the picture is sharp; composed blurs of known width set it.</summary>
    internal const double Least = 0.2;

    private const int Far = 8;

    internal static double Of(PixelImage image)
    {
        var (near, far) = (0.0, 0.0);
        for (var y = 0; y < image.Height; y += 2)
        {
            for (var x = Far; x < image.Width; x += 2)
            {
                var here = Luma(image, x, y);
                near += Math.Abs(here - Luma(image, x - 1, y));
                far += Math.Abs(here - Luma(image, x - Far, y));
            }
        }

        return far > 0.0 ? near / far : 1.0;
    }

    private static float Luma(PixelImage image, int x, int y)
    {
        var at = 3 * ((y * image.Width) + x);
        return ColorPlanes.Luma(image.Rgb[at], image.Rgb[at + 1], image.Rgb[at + 2]);
    }
}
