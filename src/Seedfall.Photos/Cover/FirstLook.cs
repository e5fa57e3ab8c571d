namespace Seedfall.Photos.Cover;

/// <summary>
/// A first guess of each pixel by a logistic curve on its color, absolute and against the picture's least green quarter: good
/// enough to find what the ground and the leaves of this picture look like.
/// </summary>
internal static class FirstLook
{
    internal const int FeatureCount = 5;
    private const double LeastGreen = 0.25;

    /// <summary>Chance of green, 0 to 1, of every pixel.</summary>
    internal static float[] Chances(ColorPlanes planes, IReadOnlyList<double> weights)
    {
        var (redBase, blueBase) = Base(planes);
        var (a, b, c, constant) = (
            (float)(weights[0] + weights[3]), (float)(weights[1] + weights[4]), (float)weights[2],
            (float)(weights[5] - (weights[3] * redBase) - (weights[4] * blueBase)));
        var chances = new float[planes.Count];
        for (var i = 0; i < chances.Length; i++)
        {
            chances[i] = Logistic.Of((a * planes.GreenRed[i]) + (b * planes.GreenBlue[i]) + (c * planes.Light[i]) + constant);
        }

        return chances;
    }

    internal static (float GreenRed, float GreenBlue) Base(ColorPlanes planes) =>
        (Quantiles.Of(planes.GreenRed, LeastGreen), Quantiles.Of(planes.GreenBlue, LeastGreen));

    /// <summary>The five numbers the weights belong to, for fitting.</summary>
    internal static void Features(ColorPlanes planes, (float GreenRed, float GreenBlue) least, int i, Span<float> to)
    {
        (to[0], to[1], to[2]) = (planes.GreenRed[i], planes.GreenBlue[i], planes.Light[i]);
        (to[3], to[4]) = (planes.GreenRed[i] - least.GreenRed, planes.GreenBlue[i] - least.GreenBlue);
    }
}
