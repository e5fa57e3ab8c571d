using Seedfall.Photos.Cover;
using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Tests.Cover;

/// <summary>Composed lawns of exactly known cover. Ours, so no outside evidence; the photographs in docs/validation.md are that.</summary>
public sealed class ComposedSceneTests
{
    private static readonly LawnSceneKind Ordinary = new();
    private static readonly LawnScene Scene = LawnScene.Of(Ordinary);

    [Theory]
    [InlineData(0.0)]
    [InlineData(0.02)]
    [InlineData(0.1)]
    [InlineData(0.25)]
    [InlineData(0.5)]
    [InlineData(0.75)]
    [InlineData(0.95)]
    public void FromBareToFullTheCoverIsFound(double green)
    {
        var scene = LawnScene.Of(Ordinary with { Green = green });
        AssertWithin(0.06, scene.Cover, scene.Image);
    }

    [Fact]
    public void StrawLeavesShadowAndDewAreNotTakenForGreenOrGround()
    {
        foreach (var kind in new[] { Ordinary with { Straw = 0.4 }, Ordinary with { Leaves = 20 }, Ordinary with { Shadow = true }, Ordinary with { Dew = true } })
        {
            var scene = LawnScene.Of(kind);
            AssertWithin(0.10, scene.Cover, scene.Image);
        }
    }

    [Fact]
    public void OnlyStrawIsOnlyGround()
    {
        var scene = LawnScene.Of(Ordinary with { Green = 0.0, Straw = 0.8 });
        AssertWithin(0.10, scene.Cover, scene.Image);
    }

    [Theory]
    [InlineData(50)]
    [InlineData(75)]
    [InlineData(95)]
    public void JpegChangesLittle(int quality) => AssertWithin(0.10, Scene.Cover, Weathering.Jpeg(Scene.Image, quality));

    [Theory]
    [InlineData(480)]
    [InlineData(320)]
    public void FewerPixelsChangeLittle(int longSide) => AssertWithin(0.08, Scene.Cover, AreaScale.ToLongSide(Scene.Image, longSide));

    [Fact]
    public void ASoftPictureIsStillMeasured() => AssertWithin(0.08, Scene.Cover, Weathering.Blur(Scene.Image, 1));

    [Theory]
    [InlineData(1.1, 1.0, 0.9)]
    [InlineData(0.9, 1.0, 1.1)]
    [InlineData(0.6, 0.6, 0.6)]
    [InlineData(1.4, 1.4, 1.4)]
    public void LightAndItsColorChangeLittle(double red, double green, double blue) =>
        AssertWithin(0.08, Scene.Cover, Weathering.Gains(Scene.Image, red, green, blue));

    [Fact]
    public void TheSamePictureMeasuresTheSame()
    {
        var (one, two) = (GreenCover.Measure(Scene.Image), GreenCover.Measure(Scene.Image));
        Assert.Equal((one.Cover, one.Low, one.High), (two.Cover, two.Low, two.High));
        Assert.Equal(one.Mask.Chance, two.Mask.Chance);
    }

    private static void AssertWithin(double points, double truth, PixelImage image)
    {
        var measure = GreenCover.Measure(image);
        Assert.InRange(measure.Cover, truth - points, truth + points);
        Assert.InRange(truth, measure.Low, measure.High);
    }
}
