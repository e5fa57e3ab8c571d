using Seedfall.Photos.Reading;

namespace Seedfall.Photos.Tests.Reading;

public sealed class PhotoFileTests
{
    [Fact]
    public void AnHeicPictureIsReadUpright()
    {
        var photo = PhotoFile.Read(Fixture.Bytes("scene.heic")).Photo!;

        Assert.Equal((PhotoFormat.Heic, 96, 64), (photo.Format, photo.Image.Width, photo.Image.Height));
        Assert.Equal((96, 64), (photo.OriginalWidth, photo.OriginalHeight));
        Fixture.AssertScene(photo.Image, within: 8);
    }
}
