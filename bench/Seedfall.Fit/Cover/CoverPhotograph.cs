using System.Globalization;
using Seedfall.Photos.Cover;
using Seedfall.Photos.Pixels;
using Seedfall.Photos.Reading;

namespace Seedfall.Fit.Cover;

/// <summary>A photograph with its hand-made mask.</summary>
/// <param name="Name">File name.</param>
/// <param name="Image">The photograph at full size.</param>
/// <param name="IsGreen">The mask, row by row.</param>
/// <param name="Truth">Share of the mask that is plant.</param>
/// <param name="IsMaskWhole">False where the mask was drawn over a part of the photograph only.</param>
internal sealed record CoverPhotograph(string Name, PixelImage Image, bool[] IsGreen, double Truth, bool IsMaskWhole)
{
    private const byte Half = 127;

    /// <summary>Found by eye: the mask of this one is empty in a frame of 30 pixels all around, through full canopy.</summary>
    private const string PartMask = "FPWW0180049_RGB1_20170505_152333_6.png";

    internal static IReadOnlyList<CoverPhotograph> Read(string folder) =>
        [.. File.ReadLines(Path.Combine(folder, "index.csv")).Skip(1).Select(line => One(folder, line.Split(',')))];

    /// <summary>A part of the photograph as a photograph of its own.</summary>
    internal CoverPhotograph Crop(int left, int top, int width, int height)
    {
        var rgb = new byte[3 * width * height];
        var green = new bool[width * height];
        for (var y = 0; y < height; y++)
        {
            var from = ((top + y) * Image.Width) + left;
            Image.Rgb.AsSpan(3 * from, 3 * width).CopyTo(rgb.AsSpan(3 * y * width));
            IsGreen.AsSpan(from, width).CopyTo(green.AsSpan(y * width));
        }

        return this with { Image = new PixelImage(width, height, rgb), IsGreen = green, Truth = (double)green.Count(g => g) / green.Length };
    }

    internal CoverTap Answer(PicturePoint point) =>
        new(point.X, point.Y, IsGreen[((int)(point.Y * Image.Height) * Image.Width) + (int)(point.X * Image.Width)]);

    private static CoverPhotograph One(string folder, string[] row)
    {
        var (image, mask) = (Pixels(folder, "img", row[0]), Pixels(folder, "mask", row[0]));
        var green = new bool[image.Width * image.Height];
        for (var i = 0; i < green.Length; i++)
        {
            green[i] = mask.Rgb[3 * i] > Half;
        }

        return new CoverPhotograph(row[0], image, green, double.Parse(row[3], CultureInfo.InvariantCulture), row[0] != PartMask);
    }

    private static PixelImage Pixels(string folder, string kind, string name)
    {
        var result = PhotoFile.Read(File.ReadAllBytes(Path.Combine(folder, kind, name)), PhotoLimits.Ordinary with { DecodeLongSide = null });
        return result.Photo?.Image ?? throw new InvalidDataException($"{kind}/{name}: {result.Problem}");
    }
}
