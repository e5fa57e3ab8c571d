using Seedfall.Photos.Pixels;
using Seedfall.Photos.Reading;

namespace Seedfall.Photos.Cover;

/// <summary>The picture with what was counted, to be checked by eye: the rest gray and dim, the green as it is, outlined in light straw.</summary>
public static class CoverOverlay
{
    private const int Quality = 88;
    private const double Dim = 0.45;
    private static readonly byte[] Straw = [244, 226, 160];

    /// <summary>JPEG bytes, as large as the mask; the picture may be larger, in the same proportions.</summary>
    public static byte[] Draw(PixelImage image, CoverMask mask)
    {
        ArgumentNullException.ThrowIfNull(image);
        ArgumentNullException.ThrowIfNull(mask);
        image = AreaScale.ToLongSide(image, Math.Max(mask.Width, mask.Height));
        if ((image.Width, image.Height) != (mask.Width, mask.Height))
        {
            throw new ArgumentException($"expected a mask of {image.Width} x {image.Height}, found {mask.Width} x {mask.Height}", nameof(mask));
        }

        var rgb = new byte[image.Rgb.Length];
        for (int y = 0, at = 0; y < image.Height; y++)
        {
            for (var x = 0; x < image.Width; x++, at += 3)
            {
                Paint(image, mask, x, y, rgb.AsSpan(at, 3));
            }
        }

        return JpegEncode.Encode(new PixelImage(image.Width, image.Height, rgb), Quality);
    }

    private static void Paint(PixelImage image, CoverMask mask, int x, int y, Span<byte> to)
    {
        var from = image.Rgb.AsSpan(3 * ((y * image.Width) + x), 3);
        if (mask.IsGreen(x, y))
        {
            from.CopyTo(to);
        }
        else if (BesideGreen(mask, x, y))
        {
            Straw.CopyTo(to);
        }
        else
        {
            to.Fill((byte)(Dim * ((0.30 * from[0]) + (0.59 * from[1]) + (0.11 * from[2]))));
        }
    }

    private static bool BesideGreen(CoverMask mask, int x, int y) =>
        (x > 0 && mask.IsGreen(x - 1, y)) || (x + 1 < mask.Width && mask.IsGreen(x + 1, y))
        || (y > 0 && mask.IsGreen(x, y - 1)) || (y + 1 < mask.Height && mask.IsGreen(x, y + 1));
}
