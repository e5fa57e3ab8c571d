using Seedfall.Photos.Color;
using Seedfall.Photos.Cover;

namespace Seedfall.Fit.Cover;

/// <summary>What a photograph measures with a model fitted on the others.</summary>
/// <param name="Bias">What would have to be added to all its evidence to measure the truth, log odds.</param>
/// <param name="Plain">As the model says.</param>
/// <param name="Tapped">After ten taps, each asked for by the measure and answered by the mask.</param>
/// <param name="Otherwise">Cover after ten taps at other points the measure might have asked for.</param>
internal sealed record LeftOutCover(CoverPhotograph Photograph, CoverModel Model, double Bias, CoverMeasure Plain, CoverMeasure Tapped, IReadOnlyList<double> Otherwise)
{
    internal const int Orders = 10;
    private const int Taps = 10;
    private const double FixedExcessGreen = 0.10;

    internal static LeftOutCover Of(CoverPhotograph photograph, CoverModel model)
    {
        var scene = CoverScene.Of(photograph.Image, null, model);
        return new LeftOutCover(
            photograph, model, scene.BiasToward(photograph.Truth), scene.Measure([]), Tap(photograph, scene, 1),
            [.. Enumerable.Range(2, Orders).Select(shuffle => Tap(photograph, scene, shuffle).Cover)]);
    }

    private static CoverMeasure Tap(CoverPhotograph photograph, CoverScene scene, int shuffle)
    {
        var taps = new List<CoverTap>();
        while (taps.Count < Taps)
        {
            taps.Add(photograph.Answer(scene.Measure(taps, shuffle).WorthTapping[0]));
        }

        return scene.Measure(taps);
    }

    /// <summary>Share with an excess green above 0.10, the plain index this is held against.</summary>
    internal double ExcessGreenShare => Share((r, g, b) => GreenIndex.ExcessGreen(r, g, b) > FixedExcessGreen);

    /// <summary>Share by the ratio rule.</summary>
    internal double RatioShare => Share(GreenIndex.IsGreenByRatios);

    private double Share(Func<byte, byte, byte, bool> isGreen)
    {
        var (rgb, n) = (Photograph.Image.Rgb, 0);
        for (var i = 0; i < rgb.Length; i += 3)
        {
            n += isGreen(rgb[i], rgb[i + 1], rgb[i + 2]) ? 1 : 0;
        }

        return 3.0 * n / rgb.Length;
    }
}
