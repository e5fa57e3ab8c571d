namespace Seedfall.Photos.Pixels;

/// <summary>A decoded picture, upright: 8-bit sRGB, three bytes a pixel, rows from the top, no padding.</summary>
public sealed class PixelImage
{
    /// <summary>Takes over the bytes given; throws where their number is not width times height times 3.</summary>
    public PixelImage(int width, int height, byte[] rgb)
    {
        ArgumentNullException.ThrowIfNull(rgb);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 1);
        if (rgb.LongLength != 3L * width * height)
        {
            throw new ArgumentOutOfRangeException(nameof(rgb), rgb.LongLength, $"{width} x {height} pixels need {3L * width * height} bytes");
        }

        (Width, Height, Rgb) = (width, height, rgb);
    }

    /// <summary>Pixels across.</summary>
    public int Width { get; }

    /// <summary>Pixels down.</summary>
    public int Height { get; }

    /// <summary>Red, green, blue of each pixel in turn.</summary>
    public byte[] Rgb { get; }
}
