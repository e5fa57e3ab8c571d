using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Tests.Reading;

/// <summary>
/// A composed picture of 96 x 64: pale in the upper quarter, below it green on the left and brown on the right. The HEIC file was
/// written by an encoder that is not part of the project.
/// </summary>
internal static class Fixture
{
    internal static byte[] Bytes(string name)
    {
        using var stream = typeof(Fixture).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is not in the test assembly");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    internal static PixelImage Scene()
    {
        var rgb = new byte[3 * 96 * 64];
        for (var i = 0; i < 96 * 64; i++)
        {
            Color(i % 96, i / 96).CopyTo(rgb, 3 * i);
        }

        return new PixelImage(96, 64, rgb);
    }

    internal static void AssertScene(PixelImage image, int within)
    {
        foreach (var (x, y) in new[] { (10, 5), (85, 5), (10, 30), (85, 30), (10, 60), (85, 60) })
        {
            var found = image.Rgb.AsSpan(3 * ((y * image.Width) + x), 3);
            var expected = Color(x, y);
            for (var c = 0; c < 3; c++)
            {
                Assert.InRange(found[c], expected[c] - within, expected[c] + within);
            }
        }
    }

    private static byte[] Color(int x, int y) => y < 16 ? [230, 230, 230] : x < 48 ? [60, 120, 40] : [110, 85, 60];
}
