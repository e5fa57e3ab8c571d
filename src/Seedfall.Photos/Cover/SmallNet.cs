using System.Numerics;

namespace Seedfall.Photos.Cover;

/// <summary>One hidden layer of a dozen units: a smooth surface between green and not green, bounded outside what it was fitted on.</summary>
/// <param name="Hidden">Per unit: a weight for each standardized number, then a constant.</param>
/// <param name="Output">A weight for each unit, then a constant.</param>
public sealed record SmallNet(IReadOnlyList<float[]> Hidden, float[] Output)
{
    /// <summary>x(27 + x2)/(27 + 9x2), held at its ends beyond 3: a hyperbolic tangent without its exponentials.</summary>
    internal static float Bend(float x)
    {
        x = Math.Clamp(x, -3f, 3f);
        return x * (27f + (x * x)) / (27f + (9f * x * x));
    }

    /// <summary>Evidence for green of one pixel, from standardized numbers: the logarithm of its odds.</summary>
    internal float Evidence(ReadOnlySpan<float> standardized)
    {
        var z = Output[^1];
        for (var h = 0; h < Hidden.Count; h++)
        {
            var (weights, sum) = (Hidden[h], Hidden[h][^1]);
            for (var j = 0; j < standardized.Length; j++)
            {
                sum += weights[j] * standardized[j];
            }

            z += Output[h] * Bend(sum);
        }

        return z;
    }

    /// <summary>Constants of the units with the picture's own numbers added in.</summary>
    internal float[] Constants(ReadOnlySpan<float> ofPicture)
    {
        var constants = new float[Hidden.Count];
        for (var h = 0; h < constants.Length; h++)
        {
            constants[h] = Hidden[h][^1];
            for (var j = 0; j < ofPicture.Length; j++)
            {
                constants[h] += Hidden[h][PixelFeatures.PixelCount + j] * ofPicture[j];
            }
        }

        return constants;
    }

    /// <summary>Evidence of as many pixels as a vector holds.</summary>
    internal Vector<float> Evidence(ReadOnlySpan<Vector<float>> ofPixels, float[] constants)
    {
        var (least, most, c27, c9) = (new Vector<float>(-3f), new Vector<float>(3f), new Vector<float>(27f), new Vector<float>(9f));
        var z = new Vector<float>(Output[^1]);
        for (var h = 0; h < constants.Length; h++)
        {
            var weights = Hidden[h];
            var x = new Vector<float>(constants[h]);
            for (var j = 0; j < ofPixels.Length; j++)
            {
                x += ofPixels[j] * weights[j];
            }

            x = Vector.Min(Vector.Max(x, least), most);
            var square = x * x;
            z += x * (c27 + square) / (c27 + (c9 * square)) * Output[h];
        }

        return z;
    }
}
