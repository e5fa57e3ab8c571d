using Seedfall.Engine.Units;
using Seedfall.Planning.Calibration.Spreader;
using static Seedfall.Checks.Published.Trade.TradeData;

namespace Seedfall.Checks.Published.Trade;

/// <summary>Pan tests against printed examples, beyond what the calibration checks hold.</summary>
public sealed class SpreaderChecks
{
    private static readonly PanTest Pans = new([0, 1, 2, 3, 4, 5, 6, 7, 6, 5, 4, 3, 2, 1, 0], Length.FromFeet(1));

    [Fact]
    public void A_pan_row_has_the_swath_of_the_half_rate_rule()
    {
        // Ohio State Extension Bulletin 817: 4 in at the center, 2 in at 6 ft either side, 12 ft swath.
        var test = new PanTest([0, 1, 2, 3, 4, 3, 2, 1, 0], Length.FromFeet(3));
        Close(12.0, test.EffectiveSwath!.Value.Feet);
        Assert.Equal(0.0, test.Variation(Length.FromFeet(12), PassOrder.SameWay), 9);
    }

    [Theory]
    [InlineData(8, 5.8)]
    [InlineData(9, 13.3)]
    [InlineData(10, 22.5)]
    public void Pans_of_0_to_7_and_back_walked_round_and_round(int spacingFeet, double percent) =>
        // Arithmetic, not outside evidence: sample standard deviation over the pans.
        Close(percent, 100 * Pans.Variation(Length.FromFeet(spacingFeet), PassOrder.SameWay), 0.01);

    [Fact]
    public void Walked_at_the_swath_of_seven_feet_it_is_even_both_ways()
    {
        // Arithmetic, not outside evidence.
        Close(7.0, Pans.EffectiveSwath!.Value.Feet);
        Assert.Equal(0.0, Pans.Variation(Length.FromFeet(7), PassOrder.SameWay), 9);
        Assert.Equal(0.0, Pans.Variation(Length.FromFeet(7), PassOrder.BackAndForth), 9);
    }
}
