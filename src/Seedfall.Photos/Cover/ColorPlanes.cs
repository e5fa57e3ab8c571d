using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Cover;

/// <summary>
/// What the measure sees of a picture: logarithms of channel ratios, which a change of brightness leaves alone and a change of
/// light only shifts; lightness; and how rough the surroundings are. Natural logarithms of 8-bit sRGB values plus 8.
/// </summary>
internal sealed class ColorPlanes
{
    private const float Floor = 8f;
    private const int StepsPerLevel = 64;
    private static readonly float[] Logs = [.. Enumerable.Range(0, (255 * StepsPerLevel) + 1).Select(i => MathF.Log(((float)i / StepsPerLevel) + Floor))];

    private ColorPlanes(int width, int height) => (Width, Height) = (width, height);

    internal int Width { get; }

    internal int Height { get; }

    internal int Count => Width * Height;

    /// <summary>ln(G/R) of the 3 x 3 mean.</summary>
    internal required float[] GreenRed { get; init; }

    /// <summary>ln(G/B) of the 3 x 3 mean.</summary>
    internal required float[] GreenBlue { get; init; }

    /// <summary>ln of luma over 255 of the 3 x 3 mean.</summary>
    internal required float[] Light { get; init; }

    /// <summary>The same three over 7 x 7 more.</summary>
    internal required float[] WideGreenRed { get; init; }

    internal required float[] WideGreenBlue { get; init; }

    internal required float[] WideLight { get; init; }

    /// <summary>ln(G/R) above its mean over 17 x 17: green beside less green, whatever the light.</summary>
    internal required float[] GreenRedAbove { get; init; }

    /// <summary>Root mean square of lightness about its wide mean, over 7 x 7.</summary>
    internal required float[] Rough { get; init; }

    /// <summary>Median of |ln(G/R) of the pixel less that of the 3 x 3 mean|: the noise of the sensor, mostly.</summary>
    internal required float Noise { get; init; }

    internal static ColorPlanes Of(PixelImage image)
    {
        var (width, height, n) = (image.Width, image.Height, image.Width * image.Height);
        var (red, green, blue, scratch) = (new float[n], new float[n], new float[n], new float[n]);
        for (int i = 0, at = 0; i < n; i++, at += 3)
        {
            (red[i], green[i], blue[i]) = (image.Rgb[at], image.Rgb[at + 1], image.Rgb[at + 2]);
        }

        BoxMean.Apply(red, red, scratch, width, height, 1);
        BoxMean.Apply(green, green, scratch, width, height, 1);
        BoxMean.Apply(blue, blue, scratch, width, height, 1);
        var light = new float[n];
        for (var i = 0; i < n; i++)
        {
            var (r, g, b) = (red[i], green[i], blue[i]);
            light[i] = Log(Luma(r, g, b)) - Log(255f);
            (red[i], green[i]) = (Log(g) - Log(r), Log(g) - Log(b));
        }

        var (wideRed, wideBlue, wideLight, above) = (new float[n], new float[n], new float[n], blue);
        BoxMean.Apply(red, wideRed, scratch, width, height, 3);
        BoxMean.Apply(green, wideBlue, scratch, width, height, 3);
        BoxMean.Apply(light, wideLight, scratch, width, height, 3);
        BoxMean.Apply(red, above, scratch, width, height, 8);
        for (var i = 0; i < n; i++)
        {
            above[i] = red[i] - above[i];
        }

        return new ColorPlanes(width, height)
        {
            GreenRed = red,
            GreenBlue = green,
            Light = light,
            WideGreenRed = wideRed,
            WideGreenBlue = wideBlue,
            WideLight = wideLight,
            GreenRedAbove = above,
            Rough = Roughness(image, wideLight, scratch),
            Noise = NoiseOf(image, red),
        };
    }

    /// <summary>Luma of 8-bit sRGB values, 0 to 255 (weights of ITU-R BT.601, rounded).</summary>
    internal static float Luma(float red, float green, float blue) => (0.30f * red) + (0.59f * green) + (0.11f * blue);

    private static float Log(float level) => Logs[(int)((Math.Clamp(level, 0f, 255f) * StepsPerLevel) + 0.5f)];

    private static float[] Roughness(PixelImage image, float[] wideLight, float[] scratch)
    {
        var rough = new float[wideLight.Length];
        for (int i = 0, at = 0; i < rough.Length; i++, at += 3)
        {
            var d = Log(Luma(image.Rgb[at], image.Rgb[at + 1], image.Rgb[at + 2])) - Log(255f) - wideLight[i];
            rough[i] = d * d;
        }

        BoxMean.Apply(rough, rough, scratch, image.Width, image.Height, 3);
        for (var i = 0; i < rough.Length; i++)
        {
            rough[i] = MathF.Sqrt(Math.Max(0f, rough[i]));
        }

        return rough;
    }

    private static float NoiseOf(PixelImage image, float[] greenRed) => Quantiles.Of(
        greenRed.Length, i => Math.Abs(Log(image.Rgb[(3 * i) + 1]) - Log(image.Rgb[3 * i]) - greenRed[i]), 0.5);
}
