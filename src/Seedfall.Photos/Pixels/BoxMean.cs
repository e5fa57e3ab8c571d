namespace Seedfall.Photos.Pixels;

/// <summary>Mean over the square around each point, cut at the edges; running sums, so that its size costs nothing.</summary>
internal static class BoxMean
{
    /// <summary>Writes the mean of <paramref name="source"/> within <paramref name="radius"/> pixels; <paramref name="scratch"/> is as large. Source and target may be the same.</summary>
    internal static void Apply(float[] source, float[] target, float[] scratch, int width, int height, int radius)
    {
        for (var y = 0; y < height; y++)
        {
            Row(source.AsSpan(y * width, width), scratch.AsSpan(y * width, width), radius);
        }

        var sums = new float[width];
        for (var y = 0; y < Math.Min(radius, height); y++)
        {
            Add(sums, scratch.AsSpan(y * width, width));
        }

        for (var y = 0; y < height; y++)
        {
            if (y + radius < height)
            {
                Add(sums, scratch.AsSpan((y + radius) * width, width));
            }

            if (y - radius - 1 >= 0)
            {
                Subtract(sums, scratch.AsSpan((y - radius - 1) * width, width));
            }

            Scale(sums, target.AsSpan(y * width, width), 1f / (Math.Min(height - 1, y + radius) - Math.Max(0, y - radius) + 1));
        }
    }

    private static void Row(ReadOnlySpan<float> from, Span<float> to, int radius)
    {
        var width = from.Length;
        var sum = 0f;
        for (var x = 0; x < Math.Min(radius, width); x++)
        {
            sum += from[x];
        }

        for (var x = 0; x < width; x++)
        {
            sum += x + radius < width ? from[x + radius] : 0f;
            sum -= x - radius - 1 >= 0 ? from[x - radius - 1] : 0f;
            to[x] = sum / (Math.Min(width - 1, x + radius) - Math.Max(0, x - radius) + 1);
        }
    }

    private static void Add(Span<float> sums, ReadOnlySpan<float> row)
    {
        for (var x = 0; x < sums.Length; x++)
        {
            sums[x] += row[x];
        }
    }

    private static void Subtract(Span<float> sums, ReadOnlySpan<float> row)
    {
        for (var x = 0; x < sums.Length; x++)
        {
            sums[x] -= row[x];
        }
    }

    private static void Scale(ReadOnlySpan<float> sums, Span<float> to, float by)
    {
        for (var x = 0; x < to.Length; x++)
        {
            to[x] = sums[x] * by;
        }
    }
}
