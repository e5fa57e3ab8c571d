namespace Seedfall.Photos.Pixels;

/// <summary>Turns a picture as it was seen, from how the sensor lay.</summary>
internal static class Upright
{
    /// <summary>Applies the Exif orientation 1 to 8 (Exif 2.32, tag 274: which side of the scene the first row and column are).</summary>
    internal static PixelImage Turn(PixelImage image, int orientation)
    {
        if (orientation is <= 1 or > 8)
        {
            return image;
        }

        var sideways = orientation >= 5;
        var (width, height) = sideways ? (image.Height, image.Width) : (image.Width, image.Height);
        var mirrorX = orientation is 2 or 3 or 7 or 8;
        var mirrorY = orientation is 3 or 4 or 6 or 7;
        var rgb = new byte[image.Rgb.Length];
        for (int y = 0, to = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++, to += 3)
            {
                var (sx, sy) = sideways ? (y, x) : (x, y);
                var from = 3 * (((mirrorY ? image.Height - 1 - sy : sy) * image.Width) + (mirrorX ? image.Width - 1 - sx : sx));
                rgb[to] = image.Rgb[from];
                rgb[to + 1] = image.Rgb[from + 1];
                rgb[to + 2] = image.Rgb[from + 2];
            }
        }

        return new PixelImage(width, height, rgb);
    }
}
