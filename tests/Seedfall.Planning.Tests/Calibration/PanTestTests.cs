using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Calibration;
using Seedfall.Planning.Calibration.Spreader;

namespace Seedfall.Planning.Tests.Calibration;

public sealed class PanTestTests
{
    private static readonly Length Foot = Length.FromFeet(1.0);

    private static readonly PanTest Even = new([0, 1, 2, 3, 4, 5, 6, 7, 6, 5, 4, 3, 2, 1, 0], Foot);

    private static readonly PanTest Lopsided = new([0, 2, 4, 6, 8, 7, 5, 3, 1, 0, 0], Foot);

    [Fact]
    public void At_whole_pan_spacings_the_ground_is_the_overlapped_row() =>
        Gen.Select(Gen.Double[0.1, 9.0].Array[15], Gen.Int[2, 14]).Sample((catches, pans) =>
        {
            var across = new PanTest(catches, Foot).Across(Foot * pans, PassOrder.SameWay);
            Assert.Equal(SpreaderPattern.Overlapped(catches, pans).Order(), across.Order(), (a, b) => Math.Abs(a - b) < 1.0e-9);
        }, iter: 100);

    [Fact]
    public void An_even_handed_pattern_is_the_same_both_ways() =>
        // Up and down repeats over twice the ground, so the sample divisor differs; without it both are the same.
        Assert.All(PassSpacing.Of(Even).Curve, c =>
        {
            var points = Math.Round(c.Passes / Foot);
            Assert.Equal(c.SameWay * Math.Sqrt((points - 1.0) / points), c.BackAndForth * Math.Sqrt((2.0 * points - 1.0) / (2.0 * points)), 9);
        });

    [Fact]
    public void What_falls_is_what_was_thrown() =>
        Gen.Select(Gen.Double[0.1, 9.0].Array[11], Gen.Int[2, 10]).Sample((catches, pans) =>
        {
            foreach (var order in Enum.GetValues<PassOrder>())
            {
                Assert.Equal(catches.Sum() / pans, new PanTest(catches, Foot).Across(Foot * pans, order).Average(), 1.0e-9);
            }
        }, iter: 100);

    [Fact]
    public void Lopsidedness_is_seen()
    {
        Assert.Equal(0.5, Even.LeftShare, 9);
        Assert.Equal(0.0, Even.Shift.Meters, 9);
        Assert.Equal(23.5 / 36.0, Lopsided.LeftShare, 9);
        Assert.True(Lopsided.Shift < Length.Zero);
        Assert.True(Lopsided.Reach(left: true) > Lopsided.Reach(left: false));
    }

    [Fact]
    public void A_lopsided_pattern_is_evener_in_one_way_than_the_other()
    {
        var curve = PassSpacing.Of(Lopsided).Curve;
        Assert.Contains(curve, c => c.SameWay < 0.8 * c.BackAndForth);
    }

    [Fact]
    public void Half_rates_at_right_angles_are_what_a_checkerboard_of_both_gives()
    {
        // Every point of the ground: half of one pass pattern plus half of the other, by brute force.
        var across = Even.Across(Foot * 10.0, PassOrder.SameWay);
        double[] crossed = [.. across.SelectMany(a => across.Select(b => 0.5 * (a + b)))];
        var (mean, n) = (crossed.Average(), (double)across.Count);
        var populationCv = Math.Sqrt(crossed.Average(c => (c - mean) * (c - mean))) / mean;
        Assert.Equal(populationCv, Even.VariationCrossed(Foot * 10.0, PassOrder.SameWay) * Math.Sqrt((n - 1.0) / n), 9);
    }

    [Fact]
    public void The_best_spacing_is_the_widest_even_one()
    {
        var best = PassSpacing.Of(Even).Best!;
        Assert.True(best.BackAndForth <= PassSpacing.Even);
        Assert.All(PassSpacing.Of(Even).Curve.Where(c => c.Passes > best.Passes), c => Assert.True(c.BackAndForth > PassSpacing.Even));
    }

    [Theory]
    [InlineData(new double[] { 1, 2 })]
    [InlineData(new double[] { 1, -2, 3 })]
    [InlineData(new double[] { 0, 0, 0 })]
    public void What_is_no_row_is_named(double[] catches)
    {
        Assert.NotNull(PanTest.Fault(catches));
        Assert.Throws<ArgumentException>(() => new PanTest(catches, Foot));
    }

    [Theory]
    [InlineData(22.0, 24.0, 2.0)]
    [InlineData(36.0, 30.0, -6.0)]
    public void The_drop_spreaders_wheel_runs_inside_its_last_track_by_what_the_track_is_wider(double openingInches, double trackInches, double insideInches) =>
        Assert.Equal(insideInches, DropPasses.WheelInside(Length.FromInches(openingInches), Length.FromInches(trackInches)).Inches, 9);

    [Theory]
    [InlineData(6.0, 6.0, 1)]
    [InlineData(7.0, 6.0, 2)]
    [InlineData(0.5, 6.0, 1)]
    public void The_ends_take_as_many_passes_as_the_throw_is_wide(double reachFeet, double passFeet, int passes) =>
        Assert.Equal(passes, PassSpacing.HeadlandPasses(Length.FromFeet(reachFeet), Length.FromFeet(passFeet)));
}
