using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Tests.Reading;

public sealed class UprightTests
{
    /// <summary>The letters as stored, and as they are to be seen: Exif 2.32, tag 274, names which side of the scene row 0 and column 0 are.</summary>
    [Theory]
    [InlineData(1, "abc/def")]
    [InlineData(2, "cba/fed")]
    [InlineData(3, "fed/cba")]
    [InlineData(4, "def/abc")]
    [InlineData(5, "ad/be/cf")]
    [InlineData(6, "da/eb/fc")]
    [InlineData(7, "fc/eb/da")]
    [InlineData(8, "cf/be/ad")]
    public void EveryOrientationIsTurnedAsExifSays(int orientation, string seen)
    {
        var image = Upright.Turn(new PixelImage(3, 2, [.. "abcdef".SelectMany(letter => new[] { (byte)letter, (byte)0, (byte)0 })]), orientation);

        var rows = Enumerable.Range(0, image.Height).Select(y => string.Concat(Enumerable.Range(0, image.Width).Select(x => (char)image.Rgb[3 * ((y * image.Width) + x)])));
        Assert.Equal(seen, string.Join('/', rows));
    }
}
