using Seedfall.Photos.Pixels;
using Seedfall.Photos.Reading;
using Seedfall.Photos.Tests.Reading;
using SkiaSharp;

namespace Seedfall.Photos.Tests.Cover;

/// <summary>What happens to a picture between the lawn and the program.</summary>
internal static class Weathering
{
    internal static PixelImage Jpeg(PixelImage image, int quality) => PhotoFile.Read(Composed.Encode(image, SKEncodedImageFormat.Jpeg, quality)).Photo!.Image;

    internal static PixelImage Gains(PixelImage image, double red, double green, double blue)
    {
        double[] gains = [red, green, blue];
        return new PixelImage(image.Width, image.Height, [.. image.Rgb.Select((v, i) => (byte)Math.Clamp((v * gains[i % 3]) + 0.5, 0.0, 255.0))]);
    }

    internal static PixelImage Blur(PixelImage image, int radius)
    {
        var n = image.Width * image.Height;
        var rgb = new byte[3 * n];
        for (var c = 0; c < 3; c++)
        {
            var (plane, scratch) = (new float[n], new float[n]);
            for (var i = 0; i < n; i++)
            {
                plane[i] = image.Rgb[(3 * i) + c];
            }

            BoxMean.Apply(plane, plane, scratch, image.Width, image.Height, radius);
            BoxMean.Apply(plane, plane, scratch, image.Width, image.Height, radius);
            for (var i = 0; i < n; i++)
            {
                rgb[(3 * i) + c] = (byte)(plane[i] + 0.5f);
            }
        }

        return new PixelImage(image.Width, image.Height, rgb);
    }
}
