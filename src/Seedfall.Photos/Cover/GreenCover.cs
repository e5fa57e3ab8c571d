using Seedfall.Photos.Color;
using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Cover;

/// <summary>Green cover from a straight-down picture.</summary>
public static class GreenCover
{
    /// <summary>Measures the picture; throws only for points outside it.</summary>
    public static CoverMeasure Measure(PixelImage image, CoverOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(image);
        options ??= new CoverOptions();
        var chance = new byte[image.Width * image.Height];
        var green = 0;
        for (int i = 0, at = 0; i < chance.Length; i++, at += 3)
        {
            if (GreenIndex.IsGreenByRatios(image.Rgb[at], image.Rgb[at + 1], image.Rgb[at + 2]))
            {
                chance[i] = CoverMask.Sure;
                green++;
            }
        }

        var cover = (double)green / chance.Length;
        return new CoverMeasure(cover, Math.Max(0.0, cover - 0.15), Math.Min(1.0, cover + 0.15), [], new CoverMask(image.Width, image.Height, chance), []);
    }
}
