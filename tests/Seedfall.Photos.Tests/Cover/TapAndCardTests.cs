using Seedfall.Photos.Cover;
using Seedfall.Photos.Pixels;
using Seedfall.Photos.Reading;

namespace Seedfall.Photos.Tests.Cover;

public sealed class TapAndCardTests
{
    private static readonly LawnScene Scene = LawnScene.Of(new LawnSceneKind());

    [Fact]
    public void TapsDrawTheCoverTheirWay()
    {
        var look = CoverScene.Of(Scene.Image);
        var plain = look.Measure([]);
        var points = plain.WorthTapping;

        Assert.Equal(10, points.Count);
        Assert.All(points, p => Assert.True(p.X is > 0.0 and < 1.0 && p.Y is > 0.0 and < 1.0));
        Assert.True(look.Measure([.. points.Select(p => new CoverTap(p.X, p.Y, true))]).Cover > plain.Cover);
        Assert.True(look.Measure([.. points.Select(p => new CoverTap(p.X, p.Y, false))]).Cover < plain.Cover);
    }

    [Fact]
    public void APointIsNotAskedTwice()
    {
        var look = CoverScene.Of(Scene.Image);
        var taps = new List<CoverTap>();
        for (var i = 0; i < 10; i++)
        {
            var next = look.Measure(taps).WorthTapping[0];
            Assert.DoesNotContain(taps, t => (t.X, t.Y) == (next.X, next.Y));
            taps.Add(new CoverTap(next.X, next.Y, i % 2 == 0));
        }
    }

    [Fact]
    public void ATapOutsideThePictureIsTheCallersMistake() => Assert.Throws<ArgumentOutOfRangeException>(
        () => GreenCover.Measure(Scene.Image, new CoverOptions { Taps = [new CoverTap(1.2, 0.5, true)] }));

    [Fact]
    public void AGrayCardTakesTheColorOfTheLightAwayAndIsNotCounted()
    {
        var card = new PictureArea(0.02, 0.02, 0.22, 0.22);
        var image = WithCard(Scene.Image, 150);
        var straight = GreenCover.Measure(image, new CoverOptions { GrayCard = card });
        var cast = Weathering.Gains(image, 0.75, 1.0, 1.25);

        var (with, without) = (GreenCover.Measure(cast, new CoverOptions { GrayCard = card }), GreenCover.Measure(cast));

        Assert.InRange(with.Cover, straight.Cover - 0.03, straight.Cover + 0.03);
        Assert.True(Math.Abs(with.Cover - straight.Cover) < Math.Abs(without.Cover - straight.Cover));
        Assert.Equal(CoverMask.LeftOut, with.Mask.Chance[(with.Mask.Width * 20) + 20]);
    }

    [Fact]
    public void ABlownCardIsNotUsed() => Assert.Contains(
        CoverFlag.CardUnreadable, GreenCover.Measure(WithCard(Scene.Image, 255), new CoverOptions { GrayCard = new PictureArea(0.03, 0.03, 0.2, 0.2) }).Flags);

    [Fact]
    public void TheOverlayIsAPictureOfWhatWasCounted()
    {
        var measure = GreenCover.Measure(Scene.Image);
        var overlay = PhotoFile.Read(CoverOverlay.Draw(Scene.Image, measure.Mask)).Photo!.Image;

        Assert.Equal((measure.Mask.Width, measure.Mask.Height), (overlay.Width, overlay.Height));
        Assert.Throws<ArgumentException>(() => CoverOverlay.Draw(AreaScale.ToLongSide(Scene.Image, 100), measure.Mask));
    }

    private static PixelImage WithCard(PixelImage image, byte gray)
    {
        var rgb = image.Rgb.ToArray();
        for (var y = 0; y < image.Height / 4; y++)
        {
            rgb.AsSpan(3 * y * image.Width, 3 * image.Width / 4).Fill(gray);
        }

        return new PixelImage(image.Width, image.Height, rgb);
    }
}
