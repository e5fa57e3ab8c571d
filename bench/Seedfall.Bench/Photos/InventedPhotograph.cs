using Seedfall.Photos.Pixels;
using Seedfall.Photos.Reading;

namespace Seedfall.Bench.Photos;

/// <summary>A composed photograph of 4000 x 3000 pixels: brown noise with green strokes. Seeded, so that it is the same everywhere.</summary>
internal static class InventedPhotograph
{
    private const int Width = 4000;
    private const int Height = 3000;
    private const int Strokes = 6000;

    internal static byte[] Jpeg()
    {
        var random = new Random(1);
        var rgb = new byte[3 * Width * Height];
        for (var i = 0; i < rgb.Length; i += 3)
        {
            var light = 80 + random.Next(40);
            (rgb[i], rgb[i + 1], rgb[i + 2]) = ((byte)light, (byte)(light * 0.82), (byte)(light * 0.62));
        }

        for (var s = 0; s < Strokes; s++)
        {
            var (x, y, angle, light) = (random.NextDouble() * Width, random.NextDouble() * Height, random.NextDouble() * Math.PI, 0.7 + (0.6 * random.NextDouble()));
            for (var along = 0; along < 160 * 14; along++)
            {
                var (a, b) = (along / 14, (along % 14) - 7);
                var (px, py) = ((int)(x + (a * Math.Cos(angle)) - (b * Math.Sin(angle))), (int)(y + (a * Math.Sin(angle)) + (b * Math.Cos(angle))));
                if (px >= 0 && py >= 0 && px < Width && py < Height)
                {
                    var i = 3 * ((py * Width) + px);
                    (rgb[i], rgb[i + 1], rgb[i + 2]) = ((byte)(75 * light), (byte)(120 * light), (byte)(45 * light));
                }
            }
        }

        return JpegEncode.Encode(new PixelImage(Width, Height, rgb), 90);
    }
}
