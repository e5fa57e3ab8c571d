using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Cover;

/// <summary>Green cover from a straight-down picture.</summary>
public static class GreenCover
{
    /// <summary>Long side of the picture that is measured, pixels: a larger one is made smaller first.</summary>
    public const int LongSide = 1600;

    /// <summary>Shortest side that can be measured at all, pixels.</summary>
    public const int LeastSide = 16;

    /// <summary>Measures the picture; throws for points outside it and for one smaller than <see cref="LeastSide"/>.</summary>
    public static CoverMeasure Measure(PixelImage image, CoverOptions? options = null) => Measure(image, options ?? new CoverOptions(), CoverModel.Shipped);

    internal static CoverMeasure Measure(PixelImage image, CoverOptions options, CoverModel model) => CoverScene.Of(image, options.GrayCard, model).Measure(options.Taps);
}
