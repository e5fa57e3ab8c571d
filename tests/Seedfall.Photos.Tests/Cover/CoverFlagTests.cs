using Seedfall.Photos.Cover;
using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Tests.Cover;

public sealed class CoverFlagTests
{
    private static readonly LawnScene Scene = LawnScene.Of(new LawnSceneKind());

    [Fact]
    public void APlainPictureHasNoFlagButThatItIsUnclear() => Assert.Empty(Flags(Scene.Image).Except([CoverFlag.Unclear]));

    [Fact]
    public void EachFaultIsNamed()
    {
        Assert.Contains(CoverFlag.TooDark, Flags(Weathering.Gains(Scene.Image, 0.2, 0.2, 0.2)));
        Assert.Contains(CoverFlag.BlownHighlights, Flags(Weathering.Gains(Scene.Image, 6.0, 6.0, 6.0)));
        Assert.Contains(CoverFlag.Blurred, Flags(Weathering.Blur(Scene.Image, 4)));
        Assert.Contains(CoverFlag.ColorCast, Flags(Weathering.Gains(Scene.Image, 1.2, 1.0, 0.7)));
        Assert.Contains(CoverFlag.TooSmall, Flags(AreaScale.ToLongSide(Scene.Image, 160)));
    }

    [Fact]
    public void DeepShadowBesideFullSunIsNamed()
    {
        var image = Scene.Image;
        var half = image.Rgb.Select((v, i) => (byte)(i / 3 % image.Width < image.Width / 2 ? v * 0.10 : Math.Min(255.0, v * 1.5))).ToArray();
        Assert.Contains(CoverFlag.StrongShadow, Flags(new PixelImage(image.Width, image.Height, half)));
    }

    [Fact]
    public void PaperMulchIsNamedAndNotCountedAsGreen()
    {
        var scene = LawnScene.Of(new LawnSceneKind { Green = 0.1, Mulch = 0.5 });
        var measure = GreenCover.Measure(scene.Image);

        Assert.Contains(CoverFlag.PaperMulch, measure.Flags);
        Assert.InRange(measure.Cover, 0.0, scene.Cover + 0.15);
    }

    private static IReadOnlyList<CoverFlag> Flags(PixelImage image) => GreenCover.Measure(image).Flags;
}
