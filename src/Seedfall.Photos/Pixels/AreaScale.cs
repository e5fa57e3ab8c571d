namespace Seedfall.Photos.Pixels;

/// <summary>Makes pictures smaller by averaging the area each new pixel covers; nothing is sharpened or skipped.</summary>
public static class AreaScale
{
    /// <summary>The picture itself where its long side is short enough, else one whose long side is as given.</summary>
    public static PixelImage ToLongSide(PixelImage image, int longSide)
    {
        ArgumentNullException.ThrowIfNull(image);
        ArgumentOutOfRangeException.ThrowIfLessThan(longSide, 1);
        return Math.Max(image.Width, image.Height) <= longSide ? image : Shrink(image.Rgb, 3, image.Width, image.Height, longSide);
    }

    /// <summary>Shrinks rows of pixels of which the first three bytes are red, green and blue.</summary>
    internal static PixelImage Shrink(ReadOnlySpan<byte> pixels, int bytesPerPixel, int width, int height, int longSide)
    {
        var scale = (double)longSide / Math.Max(width, height);
        var (newWidth, newHeight) = (Math.Max(1, (int)Math.Round(width * scale)), Math.Max(1, (int)Math.Round(height * scale)));
        var columns = new Spans(width, newWidth);
        var rows = new Spans(height, newHeight);
        var rgb = new byte[3 * newWidth * newHeight];
        var sums = new float[3 * newWidth];
        for (var y = 0; y < newHeight; y++)
        {
            Array.Clear(sums);
            for (var sy = rows.First(y); sy <= rows.Last(y); sy++)
            {
                AddRow(pixels.Slice(sy * width * bytesPerPixel, width * bytesPerPixel), bytesPerPixel, columns, rows.Weight(y, sy), sums);
            }

            for (var i = 0; i < sums.Length; i++)
            {
                rgb[(y * sums.Length) + i] = (byte)(sums[i] + 0.5f);
            }
        }

        return new PixelImage(newWidth, newHeight, rgb);
    }

    private static void AddRow(ReadOnlySpan<byte> row, int bytesPerPixel, Spans columns, float rowWeight, float[] sums)
    {
        for (var x = 0; x < columns.Count; x++)
        {
            var (r, g, b) = (0f, 0f, 0f);
            var last = columns.Last(x);
            for (var sx = columns.First(x); sx <= last; sx++)
            {
                var (weight, at) = (columns.Weight(x, sx), sx * bytesPerPixel);
                r += weight * row[at];
                g += weight * row[at + 1];
                b += weight * row[at + 2];
            }

            sums[3 * x] += rowWeight * r;
            sums[(3 * x) + 1] += rowWeight * g;
            sums[(3 * x) + 2] += rowWeight * b;
        }
    }

    /// <summary>Which old pixels a new one covers along one side, and how much of it each fills; the weights of one add to 1.</summary>
    private readonly struct Spans(int from, int to)
    {
        private readonly double _step = (double)from / to;

        internal int Count => to;

        internal int First(int i) => (int)(i * _step);

        internal int Last(int i) => Math.Min(from - 1, (int)Math.Ceiling((i + 1) * _step - 1e-9) - 1);

        internal float Weight(int i, int source) =>
            (float)((Math.Min(source + 1, (i + 1) * _step) - Math.Max(source, i * _step)) / _step);
    }
}
