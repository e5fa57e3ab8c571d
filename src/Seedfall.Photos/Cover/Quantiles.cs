namespace Seedfall.Photos.Cover;

/// <summary>Quantiles of a plane from some twenty thousand evenly spread points.</summary>
internal static class Quantiles
{
    private const int Points = 20_000;

    internal static float Of(int count, Func<int, float> value, double share)
    {
        var step = Math.Max(1, count / Points) | 1;
        var sample = new float[((count - 1) / step) + 1];
        for (var i = 0; i < sample.Length; i++)
        {
            sample[i] = value(i * step);
        }

        Array.Sort(sample);
        return sample[(int)(share * (sample.Length - 1))];
    }

    internal static float Of(float[] plane, double share) => Of(plane.Length, i => plane[i], share);
}
