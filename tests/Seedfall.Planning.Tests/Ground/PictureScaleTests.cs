using CsCheck;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Tests.Ground;

public sealed class PictureScaleTests
{
    [Fact]
    public void Two_points_fix_the_scale_and_up_is_north()
    {
        var scale = new PictureScale(new(100, 400), new(500, 100), Length.FromMeters(50), Fraction.None);
        Assert.Equal(0.1, scale.MetersPerPixel, 12);
        Assert.Equal(new GroundPoint(40, 30), scale.ToGround(new(500, 100)));
        var east = new PictureScale(new(100, 400), new(500, 100), Length.FromMeters(50), Fraction.None, upDeg: 90).ToGround(new(100, 300));
        Assert.Equal(10.0, east.EastM, 9);
        Assert.Equal(0.0, east.NorthM, 9);
    }

    [Fact]
    public void There_and_back() => Gen.Select(Gen.Double[-2000, 2000], Gen.Double[-2000, 2000], Gen.Double[-360, 360]).Sample((right, down, up) =>
    {
        var scale = new PictureScale(new(10, 20), new(300, 500), Length.FromFeet(80), Fraction.None, upDeg: up);
        var back = scale.ToPicture(scale.ToGround(new(right, down)));
        Assert.Equal(right, back.RightPx, 1e-6);
        Assert.Equal(down, back.DownPx, 1e-6);
    });

    [Theory]
    [InlineData(9.0, 10.0)]
    [InlineData(100.0, 0.0)]
    [InlineData(double.NaN, 10.0)]
    public void Points_too_near_or_no_distance_are_refused(double rightPx, double meters) =>
        Assert.ThrowsAny<ArgumentException>(() => new PictureScale(new(0, 0), new(rightPx, 0), Length.FromMeters(meters), Fraction.None));

    [Fact]
    public void The_band_holds_nine_times_in_ten_when_picks_go_wrong()
    {
        PicturePoint[] corners = [new(200, 900), new(900, 880), new(940, 400), new(600, 300), new(180, 420)];
        var (first, second, chance) = (new PicturePoint(150, 950), new PicturePoint(560, 940), new SplitMix64(3));
        var truth = PolygonArea.Of([.. corners.Select(new PictureScale(first, second, Length.FromMeters(30), Fraction.None).ToGround)], []).SquareMeters;
        PicturePoint Picked(PicturePoint p) => new(p.RightPx + 4.0 / 1.645 * chance.NextNormal(), p.DownPx + 4.0 / 1.645 * chance.NextNormal());
        var (held, all) = (0, 2000);
        for (var i = 0; i < all; i++)
        {
            var distance = Length.FromMeters(30.0 * (1.0 + 0.01 / 1.645 * chance.NextNormal()));
            var scale = new PictureScale(Picked(first), Picked(second), distance, Fraction.Of(0.01), 4.0);
            var outline = new PatchShape.Outline([.. corners.Select(c => scale.ToGround(Picked(c)))], []);
            var (area, band) = (PatchArea.Of(outline).SquareMeters, scale.Measured(outline).AreaBand!.Value.Value);
            held += Math.Abs(area - truth) <= band * area ? 1 : 0;
        }

        Assert.InRange((double)held / all, 0.87, 0.93);
    }
}
