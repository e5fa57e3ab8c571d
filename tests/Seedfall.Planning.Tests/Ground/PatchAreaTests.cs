using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Tests.Ground;

public sealed class PatchAreaTests
{
    private static readonly Gen<GroundPoint[]> Stars = Gen.Double[5, 40].Array[3, 20].Select(radii =>
        radii.Select((r, i) => new GroundPoint(r * Math.Cos(2 * Math.PI * i / radii.Length), r * Math.Sin(2 * Math.PI * i / radii.Length))).ToArray());

    [Fact]
    public void Outlines_keep_their_area_when_moved_reversed_or_closed() => Gen.Select(Stars, Gen.Double[-1e6, 1e6], Gen.Double[-1e6, 1e6]).Sample((ring, east, north) =>
    {
        var area = PolygonArea.Of(ring, []).SquareMeters;
        var moved = ring.Select(p => new GroundPoint(p.EastM + east, p.NorthM + north)).ToArray();
        Assert.Equal(1.0, PolygonArea.Of(moved, []).SquareMeters / area, 6);
        Assert.Equal(1.0, PolygonArea.Of([.. ring.Reverse()], []).SquareMeters / area, 12);
        Assert.Equal(1.0, PolygonArea.Of([.. ring, ring[0]], []).SquareMeters / area, 12);
    });

    [Fact]
    public void Outlines_grow_with_the_square_of_scale() => Gen.Select(Stars, Gen.Double[0.1, 10]).Sample((ring, scale) =>
    {
        var scaled = ring.Select(p => new GroundPoint(p.EastM * scale, p.NorthM * scale)).ToArray();
        Assert.Equal(1.0, PolygonArea.Of(scaled, []).SquareMeters / (scale * scale * PolygonArea.Of(ring, []).SquareMeters), 9);
    });

    [Fact]
    public void A_rectangle_is_the_same_by_every_shape() => Gen.Select(Gen.Double[1, 100], Gen.Double[1, 100]).Sample((a, b) =>
    {
        var (wide, tall) = (Length.FromMeters(a), Length.FromMeters(b));
        var expected = PatchArea.Of(new PatchShape.Rectangle(wide, tall)).SquareMeters;
        GroundPoint[] ring = [new(0, 0), new(a, 0), new(a, b), new(0, b)];
        Assert.Equal(1.0, PatchArea.Of(new PatchShape.Outline(ring, [])).SquareMeters / expected, 12);
        Assert.Equal(1.0, 2 * PatchArea.Of(new PatchShape.Triangle(wide, tall)).SquareMeters / expected, 12);
        Assert.Equal(1.0, PatchArea.Of(new PatchShape.Offsets(wide / 2, [tall, tall, tall])).SquareMeters / expected, 12);
        Assert.Equal(1.0, PatchArea.Of(new PatchShape.Offsets(wide / 3, [tall, tall, tall, tall])).SquareMeters / expected, 12);
    });

    [Fact]
    public void A_hole_takes_its_area_out()
    {
        GroundPoint[] ring = [new(0, 0), new(10, 0), new(10, 10), new(0, 10)];
        GroundPoint[] hole = [new(2, 2), new(2, 4), new(5, 4), new(5, 2)];
        Assert.Equal(94.0, PolygonArea.Of(ring, [hole]).SquareMeters, 10);
    }

    [Fact]
    public void Simpson_needs_an_odd_number_of_widths()
    {
        Length[] four = [.. Enumerable.Repeat(Length.FromMeters(1), 4)];
        Assert.False(OffsetArea.SimpsonApplies(four));
        Assert.Throws<ArgumentException>(() => OffsetArea.Simpson(Length.FromMeters(1), four));
        Assert.Throws<ArgumentException>(() => OffsetArea.Trapezoid(Length.FromMeters(1), [Length.FromMeters(1)]));
    }

    [Fact]
    public void A_bow_tie_is_refused_naming_where()
    {
        GroundPoint[] bow = [new(0, 0), new(10, 10), new(10, 0), new(0, 10)];
        var crossing = RingCrossing.Within(bow)!;
        Assert.Equal((1, 3), (crossing.FirstSide, crossing.SecondSide));
        Assert.Equal(new GroundPoint(5, 5), crossing.At);
    }

    [Fact]
    public void An_outline_that_folds_back_on_itself_is_refused()
    {
        GroundPoint[] spike = [new(0, 0), new(10, 0), new(4, 0), new(4, 8)];
        Assert.NotNull(RingCrossing.Within(spike));
    }

    [Fact]
    public void Points_along_a_straight_side_are_no_fault()
    {
        GroundPoint[] ring = [new(0, 0), new(5, 0), new(10, 0), new(10, 10), new(0, 10), new(0, 5)];
        Assert.Null(RingCrossing.Within(ring));
    }

    [Fact]
    public void A_slope_adds_ground_to_a_plan_but_not_to_a_taped_length()
    {
        var sloped = Some.Patch("bank", 1000) with { SlopePercent = 30 };
        var taped = sloped with { Id = "taped", Shape = new PatchShape.Rectangle(Length.FromFeet(50), Length.FromFeet(20)) };
        var summaries = Some.Summaries(Some.Lawn(sloped, taped));
        Assert.Equal(1000 * Math.Sqrt(1.09), new Area(summaries[0].Area.Value).SquareFeet, 6);
        Assert.Equal(1000, new Area(summaries[1].Area.Value).SquareFeet, 6);
        Assert.Contains("no slope correction", summaries[1].Area.Working.Note!, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_not_entered_for_a_patch_becomes_a_named_assumption()
    {
        var bare = Some.Patch("back", 1000, cover: null) with { SunHours = null, SlopePercent = null };
        var section = PatchGround.Summarize(Some.Lawn(Some.Patch("front", 1000), bare));
        Assert.Equal(["assumed.back.cover", "assumed.back.sun", "assumed.back.slope", "assumed.measured"], section.Assumptions.Select(a => a.Id));
        Assert.Equal(GroundDefaults.LivingCover, section.Value![1].LivingCover.Value);
    }
}
