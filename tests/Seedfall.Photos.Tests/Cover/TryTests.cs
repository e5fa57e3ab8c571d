using Seedfall.Photos.Cover;
using Seedfall.Photos.Pixels;
namespace Seedfall.Photos.Tests.Cover;
public sealed class TryTests
{
    [Fact]
    public void Table()
    {
        var o = new System.Text.StringBuilder();
        void T(string n, double t, PixelImage im) { var m = GreenCover.Measure(im); o.AppendLine($"{n,-28} true {100 * t,5:F1} cover {100 * m.Cover,5:F1} {100 * m.Low,5:F1} {100 * m.High,5:F1} {string.Join(",", m.Flags)} sharp {Sharpness.Of(im):F2}"); }
        foreach (var g in new[] { 0.0, 0.02, 0.1, 0.25, 0.5, 0.75, 0.95, 1.0 }) { var s = LawnScene.Of(new LawnSceneKind { Green = Math.Min(g, 0.985) }); T($"green {g}", s.Cover, s.Image); System.IO.File.WriteAllBytes($"/tmp/ph/scene-{g}.jpg", CoverOverlay.Draw(s.Image, GreenCover.Measure(s.Image).Mask)); if (g == 0.25) System.IO.File.WriteAllBytes($"/tmp/ph/scene.jpg", Seedfall.Photos.Reading.PhotoFile.Store(s.Image)); }
        var k = new LawnSceneKind { Green = 0.4 };
        foreach (var (n, kk) in new[] { ("straw", k with { Straw = 0.4 }), ("leaves", k with { Leaves = 20 }), ("shadow", k with { Shadow = true }), ("dew", k with { Dew = true }), ("mulch", k with { Mulch = 0.5, Green = 0.1 }), ("mulch all", k with { Mulch = 1.0, Green = 0.1 }), ("straw only", k with { Straw = 0.8, Green = 0 }) }) { var s = LawnScene.Of(kk); T(n, s.Cover, s.Image); if (n == "mulch") System.IO.File.WriteAllBytes($"/tmp/ph/mulch.jpg", Seedfall.Photos.Reading.PhotoFile.Store(s.Image)); }
        var b = LawnScene.Of(k); var c = b.Cover; var i = b.Image;
        foreach (var q in new[] { 50, 75, 95 }) T($"jpeg {q}", c, Weathering.Jpeg(i, q));
        foreach (var r in new[] { 1, 2, 4 }) T($"blur {r}", c, Weathering.Blur(i, r));
        foreach (var (rr, gg, bb) in new[] { (1.1, 1, .9), (.9, 1, 1.1), (1.2, 1, .8), (.8, 1, 1.2), (.6, .6, .6), (1.4, 1.4, 1.4), (.3, .3, .3), (.12, .12, .12), (3.0, 3, 3) }) T($"gains {rr} {gg} {bb}", c, Weathering.Gains(i, rr, gg, bb));
        foreach (var w in new[] { 480, 320, 160 }) T($"resize {w}", c, AreaScale.ToLongSide(i, w));
        System.IO.File.WriteAllText("/tmp/ph/try.txt", o.ToString());
    }
}
