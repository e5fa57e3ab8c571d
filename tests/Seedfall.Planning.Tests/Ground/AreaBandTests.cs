using CsCheck;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Tests.Ground;

public sealed class AreaBandTests
{
    private static readonly PatchShape Yard = new PatchShape.Rectangle(Length.FromFeet(60), Length.FromFeet(25));

    [Theory]
    // What the trade reckons with, common practice with no source read: tape below 2 %, wheel 1 to 5 %, paces 5 to 10 %.
    [InlineData(MeasuredBy.Tape, 0.01, 0.02)]
    [InlineData(MeasuredBy.Wheel, 0.01, 0.05)]
    [InlineData(MeasuredBy.Paces, 0.05, 0.11)]
    public void A_rectangle_comes_out_as_the_trade_reckons(MeasuredBy by, double low, double high) =>
        Assert.InRange(AreaBand.Of(Yard, new(by, null)).Value, low, high);

    [Fact]
    public void A_drawn_outline_comes_out_between_2_and_5_percent()
    {
        GroundPoint[] ring = [new(0, 0), new(30, 0), new(30, 12), new(14, 20), new(0, 12)];
        Assert.InRange(AreaBand.Of(new PatchShape.Outline(ring, []), new(MeasuredBy.Picture, null)).Value, 0.02, 0.05);
    }

    [Fact]
    public void A_measured_band_is_taken_as_it_is() => Assert.Equal(0.17, AreaBand.Of(Yard, new(MeasuredBy.PhoneWalk, Fraction.Of(0.17))).Value);

    [Fact]
    public void A_flat_triangle_is_told_to_be_uncertain()
    {
        var plump = new PatchShape.Sides(Length.FromFeet(40), Length.FromFeet(40), Length.FromFeet(40));
        var flat = new PatchShape.Sides(Length.FromFeet(40), Length.FromFeet(21), Length.FromFeet(20));
        var tape = new Measuring(MeasuredBy.Tape, null);
        Assert.InRange(AreaBand.Of(plump, tape).Value, 0.005, 0.03);
        Assert.True(AreaBand.Of(flat, tape).Value > 0.10);
        Assert.InRange(AreaBand.Of(new PatchShape.Sides(Length.FromFeet(40), Length.FromFeet(20.0001), Length.FromFeet(20)), tape).Value, 0.1, 1.0);
    }

    [Fact]
    public void The_propagated_band_holds_nine_times_in_ten_when_lengths_are_put_wrong()
    {
        // Each length put wrong by a normal error of the stated half widths: the band must hold 90 % of the areas.
        PatchShape.Taped taped = new(Length.FromMeters(20),
        [
            new(Length.FromMeters(0), Length.FromMeters(20), BaseSide.Left), new(Length.FromMeters(20), Length.FromMeters(0), BaseSide.Left),
            new(Length.FromMeters(27), Length.FromMeters(17), BaseSide.Left), new(Length.FromMeters(16), Length.FromMeters(24), BaseSide.Left),
        ]);
        var (truth, band, chance) = (PatchArea.Of(taped).SquareMeters, AreaBand.Of(taped, new(MeasuredBy.Wheel, null)).Value, new SplitMix64(11));
        var (held, all) = (0, 4000);
        for (var i = 0; i < all; i++)
        {
            var common = 1.0 + 0.015 / 1.645 * chance.NextNormal();
            Length Wrong(Length l) => Length.FromMeters(Math.Max(0.0, l.Meters * common + Math.Sqrt(Math.Pow(0.015 * l.Meters, 2) + 0.01) / 1.645 * chance.NextNormal()));
            var wrong = new PatchShape.Taped(Wrong(taped.Base),
            [
                new(Length.Zero, Wrong(taped.Base), BaseSide.Left), new(Wrong(taped.Base), Length.Zero, BaseSide.Left),
                .. taped.Corners.Skip(2).Select(c => c with { FromA = Wrong(c.FromA), FromB = Wrong(c.FromB) }),
            ]);
            PatchShape.Taped level = wrong with { Corners = [new(Length.Zero, wrong.Base, BaseSide.Left), new(wrong.Base, Length.Zero, BaseSide.Left), .. wrong.Corners.Skip(2)] };
            held += Math.Abs(PatchArea.Of(level).SquareMeters - truth) <= band * truth ? 1 : 0;
        }

        Assert.InRange((double)held / all, 0.86, 0.96);
    }

    [Fact]
    public void Every_shape_has_a_band_between_nothing_and_all() => Shapes.Sample(
        shape =>
        {
            foreach (var by in Enum.GetValues<MeasuredBy>())
            {
                Assert.InRange(AreaBand.Of(shape, new(by, null)).Value, 0.0, 1.0);
            }
        });

    [Fact]
    public void The_plan_shows_range_and_edge()
    {
        GroundPoint[] ring = [new(0, 0), new(10, 0), new(10, 10), new(0, 10)];
        GroundPoint[] hole = [new(2, 2), new(2, 4), new(5, 4), new(5, 2)];
        var patch = Some.Patch("front", 1) with { Shape = new PatchShape.Outline(ring, [hole]), Measured = new(MeasuredBy.PhoneWalk, Fraction.Of(0.2)), SlopePercent = 20 };
        var summary = Some.Summaries(Some.Lawn(patch, Some.Patch("back", 500)))[0];
        Assert.Equal(94.0 * Math.Sqrt(1.04), summary.Area.Value, 9);
        Assert.Equal(0.8 * summary.Area.Value, summary.AreaLow.Value, 9);
        Assert.Equal(1.2 * summary.Area.Value, summary.AreaHigh.Value, 9);
        Assert.Equal(Sureness.Measured, summary.AreaLow.Working.Sureness);
        Assert.Equal(40.0, summary.Edge!.Value, 9);
        Assert.Equal(10.0, summary.BedEdge!.Value, 9);
        Assert.Null(Some.Summaries(Some.Lawn())[0].Edge);
    }

    private static readonly Gen<Length> Any = Gen.Double[0.5, 80].Select(Length.FromMeters);

    private static readonly Gen<PatchShape> Shapes = Gen.OneOf<PatchShape>(
        Gen.Select(Any, Any).Select(p => (PatchShape)new PatchShape.Rectangle(p.Item1, p.Item2)),
        Any.Select(d => (PatchShape)new PatchShape.Circle(d)),
        Gen.Select(Any, Any, Gen.Double[0.01, 0.99]).Select(t => (PatchShape)new PatchShape.Sides(t.Item1, t.Item2, Length.FromMeters(Math.Abs(t.Item1.Meters - t.Item2.Meters) + t.Item3 * 2.0 * Math.Min(t.Item1.Meters, t.Item2.Meters)))),
        Gen.Select(Any, Gen.Double[0.01, 1.0]).Select(t => (PatchShape)new PatchShape.Slice(t.Item1, Fraction.Of(t.Item2))),
        Gen.Select(Any, Any).Select(t => (PatchShape)new PatchShape.Bow(t.Item1, t.Item2)),
        Gen.Select(Any, Any.Array[2, 9]).Select(t => (PatchShape)new PatchShape.Offsets(t.Item1, t.Item2)),
        Gen.Select(Any, Any, Gen.Double[0.01, 0.9]).Select(t => (PatchShape)new PatchShape.Pieces([new(new PatchShape.Rectangle(t.Item1, t.Item2), false), new(new PatchShape.Rectangle(t.Item1 * t.Item3, t.Item2), true)])));
}
