namespace Seedfall.Photos.Cover;

/// <summary>The logistic curve.</summary>
internal static class Logistic
{
    internal static float Of(float z) => 1f / (1f + MathF.Exp(-z));

    internal static double Of(double z) => 1.0 / (1.0 + Math.Exp(-z));
}
