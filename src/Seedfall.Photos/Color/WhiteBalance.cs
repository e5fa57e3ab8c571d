using Seedfall.Photos.Cover;
using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Color;

/// <summary>Gains of red, green and blue in linear light that make a gray card gray.</summary>
internal sealed record WhiteBalance(double Red, double Green, double Blue)
{
    private const double Darkest = 15.0;
    private const double Brightest = 250.0;

    /// <summary>From the mean of the card; null where it is too dark or blown out to tell.</summary>
    internal static WhiteBalance? FromCard(PixelImage image, PixelArea card)
    {
        Span<double> linear = stackalloc double[3], plain = stackalloc double[3];
        for (var y = card.Top; y < card.Bottom; y++)
        {
            for (var x = card.Left; x < card.Right; x++)
            {
                for (var c = 0; c < 3; c++)
                {
                    var level = image.Rgb[(3 * ((y * image.Width) + x)) + c];
                    linear[c] += SRgb.ToLinear(level / 255.0);
                    plain[c] += level;
                }
            }
        }

        double n = (card.Right - card.Left) * (card.Bottom - card.Top);
        for (var c = 0; c < 3; c++)
        {
            if (plain[c] / n is < Darkest or > Brightest)
            {
                return null;
            }
        }

        var gray = (linear[0] + linear[1] + linear[2]) / 3.0;
        return new WhiteBalance(gray / linear[0], gray / linear[1], gray / linear[2]);
    }

    internal PixelImage Apply(PixelImage image)
    {
        byte[][] tables = [Table(Red), Table(Green), Table(Blue)];
        var rgb = new byte[image.Rgb.Length];
        for (var i = 0; i < rgb.Length; i += 3)
        {
            (rgb[i], rgb[i + 1], rgb[i + 2]) = (tables[0][image.Rgb[i]], tables[1][image.Rgb[i + 1]], tables[2][image.Rgb[i + 2]]);
        }

        return new PixelImage(image.Width, image.Height, rgb);
    }

    private static byte[] Table(double gain) =>
        [.. Enumerable.Range(0, 256).Select(level => (byte)((SRgb.FromLinear(Math.Min(1.0, gain * SRgb.ToLinear(level / 255.0))) * 255.0) + 0.5))];
}
