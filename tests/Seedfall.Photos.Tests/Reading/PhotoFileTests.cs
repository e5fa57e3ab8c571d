using Seedfall.Photos.Reading;
using SkiaSharp;

namespace Seedfall.Photos.Tests.Reading;

public sealed class PhotoFileTests
{
    [Theory]
    [InlineData("jpeg", PhotoFormat.Jpeg, 6)]
    [InlineData("png", PhotoFormat.Png, 0)]
    [InlineData("webp", PhotoFormat.WebP, 12)]
    [InlineData("heic", PhotoFormat.Heic, 8)]
    public void EachFormatIsKnownByItsBytesAndReadToItsColors(string kind, PhotoFormat format, int within)
    {
        var photo = PhotoFile.Read(Of(kind)).Photo!;

        Assert.Equal((format, 96, 64), (photo.Format, photo.OriginalWidth, photo.OriginalHeight));
        Fixture.AssertScene(photo.Image, within);
        Assert.Null(photo.TakenAt);
        Assert.False(photo.HadLocation);
    }

    [Fact]
    public void APictureTakenSidewaysIsTurnedAndTellsWhenAndThatItKnewWhere()
    {
        // Orientation 6: the first row is the right side of the scene (Exif 2.32, tag 274), so the camera lay on its side.
        var lying = Seedfall.Photos.Pixels.Upright.Turn(Fixture.Scene(), 8);
        var jpeg = Composed.WithExif(Composed.Encode(lying, SKEncodedImageFormat.Jpeg, 95), Composed.Exif(6, "2026:09:14 07:31:05", location: true));

        var photo = PhotoFile.Read(jpeg).Photo!;

        Assert.Equal((96, 64, 96, 64), (photo.Image.Width, photo.Image.Height, photo.OriginalWidth, photo.OriginalHeight));
        Fixture.AssertScene(photo.Image, 6);
        Assert.Equal(new DateTime(2026, 9, 14, 7, 31, 5), photo.TakenAt);
        Assert.True(photo.HadLocation);
        Assert.False(PhotoFile.Read(Composed.WithExif(Of("jpeg"), Composed.Exif(1, "2026:09:14 07:31:05", location: false))).Photo!.HadLocation);
    }

    [Fact]
    public void WhatIsKeptHasNothingButThePicture()
    {
        var sent = Composed.WithExif(Composed.Encode(Fixture.Scene(), SKEncodedImageFormat.Jpeg, 95), Composed.Exif(1, "2026:09:14 07:31:05", location: true));
        Assert.True(sent.AsSpan().IndexOf("Exif"u8) >= 0);

        var kept = PhotoFile.Store(PhotoFile.Read(sent).Photo!);

        foreach (var trace in new[] { "Exif", "GPS", "2026:09", "http://", "II*", "MM\0*" })
        {
            Assert.True(kept.AsSpan().IndexOf(System.Text.Encoding.ASCII.GetBytes(trace)) < 0, trace);
        }

        var again = PhotoFile.Read(kept).Photo!;
        Assert.Null(again.TakenAt);
        Assert.False(again.HadLocation);
        Fixture.AssertScene(again.Image, 8);
    }

    [Fact]
    public void ALargePictureIsMadeSmallerInReadingAndKeeping()
    {
        var wide = Composed.Encode(new Seedfall.Photos.Pixels.PixelImage(4800, 30, new byte[3 * 4800 * 30]), SKEncodedImageFormat.Jpeg, 80);

        var photo = PhotoFile.Read(wide).Photo!;
        var whole = PhotoFile.Read(wide, PhotoLimits.Ordinary with { DecodeLongSide = null }).Photo!;

        Assert.InRange(photo.Image.Width, 1800, 2200);
        Assert.Equal((4800, 30), (photo.OriginalWidth, photo.OriginalHeight));
        Assert.Equal(4800, whole.Image.Width);
        Assert.Equal(2000, PhotoFile.Read(PhotoFile.Store(whole)).Photo!.OriginalWidth);
    }

    internal static byte[] Of(string kind) => kind switch
    {
        "jpeg" => Composed.Encode(Fixture.Scene(), SKEncodedImageFormat.Jpeg, 95),
        "png" => Composed.Encode(Fixture.Scene(), SKEncodedImageFormat.Png, 100),
        "webp" => Composed.Encode(Fixture.Scene(), SKEncodedImageFormat.Webp, 90),
        _ => Fixture.Bytes("scene.heic"),
    };
}
