using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Cover;

/// <summary>What is wrong with a picture, by a few plain measures of it. The limits are common practice, no source read.</summary>
internal static class CoverFlags
{
    private const int LeastLongSide = 200;
    private const double DarkLuma = 30.0;
    private const byte BlownLevel = 250;
    private const double BlownShare = 0.05;
    private const double ShadowRange = 2.0;
    private const double CastGreenBlueLow = -0.12;
    private const double CastGreenBlueHigh = 0.42;
    private const double CastGreenRedLow = -0.32;
    private const double CastGreenRedHigh = 0.12;

    internal static IReadOnlyList<CoverFlag> Of(PixelImage image, ColorPlanes planes, PictureColors colors, double mulch, int originalLongSide, bool cardUnreadable)
    {
        var flags = new List<CoverFlag>();
        void Raise(CoverFlag flag, bool when)
        {
            if (when)
            {
                flags.Add(flag);
            }
        }

        Raise(CoverFlag.TooDark, Math.Exp(Quantiles.Of(planes.Light, 0.5)) * 255.0 < DarkLuma + 8.0);
        Raise(CoverFlag.BlownHighlights, Blown(image) > BlownShare);
        Raise(CoverFlag.StrongShadow, Quantiles.Of(planes.WideLight, 0.95) - Quantiles.Of(planes.WideLight, 0.10) > ShadowRange);
        Raise(CoverFlag.Blurred, Sharpness.Of(image) < Sharpness.Least);
        Raise(CoverFlag.PaperMulch, mulch > PaperMulch.Reported);
        Raise(CoverFlag.ColorCast, colors.GroundGreenBlue is < (float)CastGreenBlueLow or > (float)CastGreenBlueHigh || colors.GroundGreenRed is < (float)CastGreenRedLow or > (float)CastGreenRedHigh);
        Raise(CoverFlag.CardUnreadable, cardUnreadable);
        Raise(CoverFlag.TooSmall, originalLongSide < LeastLongSide);
        return flags;
    }

    private static double Blown(PixelImage image)
    {
        var blown = 0;
        for (var i = 0; i < image.Rgb.Length; i += 3)
        {
            blown += image.Rgb[i] >= BlownLevel && image.Rgb[i + 1] >= BlownLevel && image.Rgb[i + 2] >= BlownLevel ? 1 : 0;
        }

        return 3.0 * blown / image.Rgb.Length;
    }
}
