using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using static Seedfall.Checks.Published.Trade.TradeData;

namespace Seedfall.Checks.Published.Trade;

/// <summary>Mixes by weight and by count.</summary>
public sealed class MixChecks
{
    private static double Percent(double firstWeight, double secondWeight, double firstSeeds, double secondSeeds) =>
        100 * MixShares.ByCount([firstWeight, secondWeight], [firstSeeds, secondSeeds])[0];

    [Fact]
    public void Ninety_parts_bluegrass_are_98_percent_of_the_seeds() =>
        // Seeds per pound: Purdue University Turf; the share is arithmetic.
        Close(98.1, Percent(90, 10, Tables.For(GrassSpecies.KentuckyBluegrass).SeedsPerPound.Value, Tables.For(GrassSpecies.PerennialRyegrass).SeedsPerPound.Value));

    [Fact]
    public void Thirty_parts_bluegrass_are_72_percent_of_the_seeds_not_half()
    {
        // Cornell's own seeds per pound (1.5 million and 250,000) refute its line that 70:30 ryegrass to bluegrass gives equal plants.
        Close(72.0, Percent(30, 70, 1_500_000, 250_000));
        // Arithmetic: equal counts need 85.71 % ryegrass by weight.
        Close(85.71, 100 * MixShares.ByWeight([0.5, 0.5], [250_000, 1_500_000])[0]);
    }

    [Fact]
    public void A_tenth_of_bluegrass_in_tall_fescue_is_two_fifths_of_the_seeds() =>
        // Tall fescue seeds per pound: common practice, no source read; the share is arithmetic.
        Close(40.66, 100 - Percent(90, 10, 227_000, 1_400_000));
}
