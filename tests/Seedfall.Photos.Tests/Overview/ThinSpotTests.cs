using CsCheck;
using Seedfall.Photos.Overview;

namespace Seedfall.Photos.Tests.Overview;

public sealed class ThinSpotTests
{
    [Theory]
    [InlineData(0.6, 3.0, 2.0, 0.08)]
    [InlineData(1.0, 4.0, 3.0, 0.05)]
    [InlineData(1.5, 3.5, 4.0, 0.05)]
    public void A_bare_circle_is_found_with_its_area(double radiusM, double acrossM, double awayM, double within)
    {
        var map = CoverMap.Of(Camera.Phone.Mask(p => Off(p, acrossM, awayM) > radiusM), Camera.Phone.View(8.0, 7.0));
        var spot = Assert.Single(ThinSpots.In(map).Spots);
        var truth = Math.PI * radiusM * radiusM;
        Assert.Equal(truth, spot.AreaM2, within * truth);
        Assert.InRange(truth, spot.LowM2, spot.HighM2);
        Assert.Equal(0.0, Off(spot.Middle, acrossM, awayM), 0.1);
        Assert.All(spot.Ring, p => Assert.Equal(radiusM, Off(p, acrossM, awayM), 0.15));
        Assert.InRange(spot.Cover, 0.0, 0.15);
        Assert.True(Math.Abs(Rings.Area(spot.Ring) - spot.AreaM2) < 0.1 * truth, "the drawn outline must still show the area");
    }

    /// <summary>Circles of any size anywhere, with every mark missed by as much as a finger does: the range holds nine times of ten.</summary>
    [Fact]
    public void The_stated_range_holds_nine_times_of_ten()
    {
        var (held, all, random) = (0, 0, new Random(11));
        for (var i = 0; i < 60; i++)
        {
            var camera = Camera.Phone with { HeightM = 1.4 + 1.2 * random.NextDouble(), DownDeg = 18.0 + 14.0 * random.NextDouble() };
            var (radius, x, y) = (0.5 + random.NextDouble(), 1.8 + 4.4 * random.NextDouble(), 1.8 + 3.4 * random.NextDouble());
            var frame = MarkFrame.Rectangle(8.0, 7.0);
            ImagePoint Missed(PlanPoint corner)
            {
                var seen = camera.Project(corner);
                return new(seen.X + 8.0 * (random.NextDouble() - 0.5), seen.Y + 8.0 * (random.NextDouble() - 0.5));
            }

            var view = MarkedView.Of(1000, 750, [.. frame.Corners.Select(Missed)], frame).View!;
            var found = ThinSpots.In(CoverMap.Of(camera.Mask(p => Off(p, x, y) > radius), view));
            all++;
            held += found.LowM2 <= Math.PI * radius * radius && Math.PI * radius * radius <= found.HighM2 ? 1 : 0;
            Assert.True(found.HighM2 - found.LowM2 < 1.1 * Math.PI * radius * radius, "a range that says nothing");
        }

        Assert.True(held >= 0.9 * all, $"held {held} of {all}");
    }

    [Fact]
    public void A_thin_stand_among_a_thick_one_is_found_by_its_cover()
    {
        // Grass as grains of 2 cm: three in ten within the rectangle, nine in ten around it.
        static bool Grain(PlanPoint p, double share)
        {
            var hash = unchecked(((uint)(int)Math.Floor(p.AcrossM * 50.0) * 374761393u) ^ ((uint)(int)Math.Floor(p.AwayM * 50.0) * 668265263u));
            hash = unchecked((hash ^ (hash >> 13)) * 1274126177u);
            return (hash ^ (hash >> 16)) / (double)uint.MaxValue < share;
        }

        var camera = Camera.Phone with { Width = 2000, Height = 1500, FocalPx = 1560.0 };
        bool Thin(PlanPoint p) => p is { AcrossM: > 2.0 and < 5.0, AwayM: > 1.5 and < 3.5 };
        var map = CoverMap.Of(camera.Mask(p => Grain(p, Thin(p) ? 0.3 : 0.9)), camera.View(8.0, 6.0));
        var spot = Assert.Single(ThinSpots.In(map, new() { Threshold = 0.6 }).Spots);
        Assert.Equal(6.0, spot.AreaM2, 0.4);
        Assert.Equal(0.33, spot.Cover, 0.05);
    }

    [Fact]
    public void A_green_island_in_bare_ground_is_a_hole()
    {
        var map = CoverMap.Of(Camera.Phone.Mask(p => Off(p, 4.0, 3.0) is < 0.7 or > 2.0), Camera.Phone.View(8.0, 6.0));
        var spot = Assert.Single(ThinSpots.In(map).Spots);
        Assert.Single(spot.Holes);
        var truth = Math.PI * (4.0 - 0.49);
        Assert.Equal(truth, spot.AreaM2, 0.05 * truth);
    }

    [Fact]
    public void Specks_are_passed_over_and_counted()
    {
        var map = CoverMap.Of(Camera.Phone.Mask(p => Off(p, 2.0, 2.0) > 0.22 && Off(p, 5.0, 3.0) > 0.8), Camera.Phone.View(8.0, 6.0));
        var found = ThinSpots.In(map);
        Assert.Single(found.Spots);
        Assert.Equal(1, found.SmallCount);
        Assert.InRange(found.SmallM2, 0.02, 0.28);
    }

    [Fact]
    public void All_bare_is_one_spot_to_the_edge_and_all_green_is_none()
    {
        var camera = Camera.Phone with { AcrossM = 2.0, AwayM = -4.0 };
        var view = camera.View(4.0, 3.0);
        var bare = Assert.Single(ThinSpots.In(CoverMap.Of(camera.Mask(_ => false), view)).Spots);
        Assert.Equal(12.0, bare.AreaM2, 0.05);
        Assert.Empty(ThinSpots.In(CoverMap.Of(camera.Mask(_ => true), view)).Spots);
    }

    /// <summary>On any ground, every measured cell below the threshold lies inside an odd number of rings and every other one outside.</summary>
    [Fact]
    public void Outlines_part_low_from_high_on_any_ground() => Gen.Int[0, 3].Array[144].Sample(levels =>
    {
        // Straight down, so that every cell is exact: 12 by 12 cells of a quarter meter, with cover 0, 1/3, 2/3 or 1.
        var camera = new Camera(240, 240, 4.0, 90.0, 320.0, 1.5, 1.5);
        bool Green(PlanPoint p)
        {
            var (column, row) = ((int)Math.Floor(p.AcrossM * 4.0), (int)Math.Floor(p.AwayM * 4.0));
            return column is >= 0 and < 12 && row is >= 0 and < 12 && p.AcrossM * 4.0 - column < levels[12 * row + column] / 3.0;
        }

        var map = CoverMap.Of(camera.Mask(Green), camera.View(3.0, 3.0));
        var rings = Contours.Below(map, 0.5);
        for (var i = 0; i < 144; i++)
        {
            var at = map.Middle(i % 12, i / 12);
            var inside = rings.Count(r => Rings.Contains(r, at.AcrossM, at.AwayM)) % 2 == 1;
            Assert.Equal(map[i % 12, i / 12].Cover < 0.5, inside);
        }

        var found = ThinSpots.In(map, new() { LeastM2 = 0.0 });
        Assert.Equal(rings.Sum(Rings.Area), found.AreaM2, 1e-9);
    }, iter: 60);

    [Fact]
    public void A_simpler_outline_stays_near_the_old_one() => Gen.Double[0.8, 1.2].Array[40].Sample(radii =>
    {
        PlanPoint[] ring = [.. radii.Select((r, i) => new PlanPoint(r * Math.Cos(i * Math.PI / 20.0), r * Math.Sin(i * Math.PI / 20.0)))];
        var simple = Rings.Simplified(ring, 0.05);
        Assert.True(simple.Count is >= 3 and <= 40);
        Assert.Equal(Rings.Area(ring), Rings.Area(simple), 0.05 * Rings.Length(ring));
        Assert.All(simple, p => Assert.Contains(p, ring));
    });

    private static double Off(PlanPoint p, double acrossM, double awayM) => double.Hypot(p.AcrossM - acrossM, p.AwayM - awayM);
}
