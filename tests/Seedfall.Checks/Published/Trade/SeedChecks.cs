using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using static Seedfall.Checks.Published.Trade.TradeData;

namespace Seedfall.Checks.Published.Trade;

/// <summary>Pure live seed and seeds on the ground against published worked figures.</summary>
public sealed class SeedChecks
{
    private static readonly Fraction CornellShare = PureLiveSeed.Of(Fraction.FromPercent(95), Fraction.FromPercent(85));

    private static double PerPound(GrassSpecies species) => Tables.For(species).SeedsPerPound.Value;

    /// <summary>Bulk rate in lb per 1,000 sq ft for live seeds per sq ft.</summary>
    private static double BulkPoundsPerM(double livePerSquareFoot, double seedsPerPound, Fraction share) => PureLiveSeed
        .BulkFor(SeedCount.RateFor(SeedCount.FromPerSquareFoot(livePerSquareFoot), SeedCount.PerKilogram(seedsPerPound)), share)
        .PoundsPerThousandSquareFeet;

    [Fact]
    public void Pure_live_seed_of_31_percent_purity_and_80_percent_germination_is_24_8_percent() =>
        // University of Minnesota Extension, Purchasing Seed.
        Close(24.8, PureLiveSeed.Of(Fraction.FromPercent(31), Fraction.FromPercent(80)).Percent);

    [Fact]
    public void Pure_live_seed_of_95_and_85_percent_is_printed_as_81_percent()
    {
        // Cornell University, Safe Sports Fields, seeding rates: printed 81 %.
        Assert.Equal(81.0, Math.Round(CornellShare.Percent));
        Close(80.75, CornellShare.Percent);
    }

    [Fact]
    public void Bulk_for_3_lb_of_live_seed_is_3_715_lb_and_the_factor_near_the_printed_1_2()
    {
        // Arithmetic, not outside evidence.
        Close(3.715, PureLiveSeed.BulkFor(Mass.FromPounds(3), CornellShare).Pounds);
        // Cornell University, Safe Sports Fields: buy about 20 % more; the exact factor is 1.238.
        Assert.Equal(1.2, Math.Round(PureLiveSeed.BulkFor(Mass.FromPounds(1), CornellShare).Pounds, 1));
    }

    [Fact]
    public void The_sample_label_adds_up_to_100_percent()
    {
        // University of Minnesota Extension, Purchasing Seed, sample label.
        double[] purities = [44, 31, 9, 12];
        Assert.Equal(100.0, purities.Sum() + 1.56 + 2.11 + 0.33, 10);
        var lot = new SeedLot
        {
            LotNumber = "sample",
            Components =
            [
                new(GrassSpecies.CreepingRedFescue, Fraction.FromPercent(44), Fraction.FromPercent(85)),
                new(GrassSpecies.KentuckyBluegrass, Fraction.FromPercent(31), Fraction.FromPercent(80)),
                new(GrassSpecies.ChewingsFescue, Fraction.FromPercent(9), Fraction.FromPercent(85)),
                new(GrassSpecies.PerennialRyegrass, Fraction.FromPercent(12), Fraction.FromPercent(90)),
            ],
            OtherCrop = Fraction.FromPercent(1.56),
            Inert = Fraction.FromPercent(2.11),
            WeedSeed = Fraction.FromPercent(0.33),
        };
        Assert.DoesNotContain(LawnRules.Problems(TradeLawn.With(l => l with { SeedLots = [lot] })), p => p.Path.StartsWith("seedLots", StringComparison.Ordinal));
    }

    [Fact]
    public void A_half_coated_lot_of_49_percent_purity_and_90_percent_germination_is_44_1_percent_live()
    {
        var share = PureLiveSeed.Of(Fraction.FromPercent(49), Fraction.FromPercent(90));
        // 7 CFR 201.51b(f): coating is inert matter, so the tag's purity already leaves it out. The product is arithmetic.
        Close(44.1, share.Percent);
        // Arithmetic, not outside evidence.
        Close(4.54, PureLiveSeed.BulkFor(Mass.FromPounds(2), share).Pounds);
    }

    [Fact]
    public void Seeds_per_square_inch_follow_from_rate_and_seeds_per_pound()
    {
        // Seeds per pound: Purdue University Turf; the product is arithmetic.
        Close(19.44, SeedCount.PerSquareInch(MassPerArea.FromPoundsPerThousandSquareFeet(2), PerPound(GrassSpecies.KentuckyBluegrass)));
        Close(10.00, SeedCount.PerSquareInch(MassPerArea.FromPoundsPerThousandSquareFeet(6), PerPound(GrassSpecies.PerennialRyegrass)));
        // Seeds per pound: common practice, no source read; the product is arithmetic.
        Close(11.03, SeedCount.PerSquareInch(MassPerArea.FromPoundsPerThousandSquareFeet(7), PerPound(GrassSpecies.TallFescue)));
    }

    [Fact]
    public void The_trial_optimum_of_196_per_square_decimeter_lies_inside_the_trade_range()
    {
        const double perM2 = 19_600;
        // Brede & Duich 1984, Agronomy Journal 76:875-879: 196 field-viable seeds per dm2; the conversion is arithmetic.
        Close(12.64, SeedCount.ToPerSquareInch(perM2));
        Close(1821, perM2 / SeedCount.FromPerSquareFoot(1));
        // Trade press on pure live seed: 1,000 to 2,000 viable seeds per sq ft.
        Assert.InRange(SeedTarget.LivePerSquareFoot, 1000, 2000);
        Assert.InRange(perM2 / SeedCount.FromPerSquareFoot(1), 1000, 2000);
    }

    [Fact]
    public void Bulk_rates_for_1500_live_seeds_per_square_foot()
    {
        // Arithmetic on Purdue's seeds per pound and Cornell's purity and germination, not outside evidence.
        Close(1.327, BulkPoundsPerM(1500, 1_400_000, CornellShare));
        Close(7.086, BulkPoundsPerM(1500, 240_000, PureLiveSeed.Of(Fraction.Of(0.98), Fraction.Of(0.90))));
        Close(7.933, BulkPoundsPerM(1500, 227_000, PureLiveSeed.Of(Fraction.Of(0.98), Fraction.Of(0.85))));
    }

    [Fact]
    public void The_target_agrees_with_printed_new_lawn_rates()
    {
        // Cornell University: tall fescue 6 to 8 lb per 1,000 sq ft.
        Assert.InRange(BulkPoundsPerM(SeedTarget.LivePerSquareFoot, PerPound(GrassSpecies.TallFescue), PureLiveSeed.Of(Fraction.Of(0.98), Fraction.Of(0.85))), 6, 8);
        // Purdue University: perennial ryegrass 6 to 9 lb, Kentucky bluegrass 1 to 2 lb per 1,000 sq ft.
        Assert.InRange(BulkPoundsPerM(SeedTarget.LivePerSquareFoot, PerPound(GrassSpecies.PerennialRyegrass), PureLiveSeed.Of(Fraction.Of(0.98), Fraction.Of(0.90))), 6, 9);
        Assert.InRange(BulkPoundsPerM(SeedTarget.LivePerSquareFoot, PerPound(GrassSpecies.KentuckyBluegrass), CornellShare), 1, 2);
    }

    [Fact]
    public void Seeds_per_gram_of_the_seed_law_agree_with_the_table()
    {
        const double gramsPerPound = 453.59237;
        // Federal Seed Act regulations, 7 CFR 201.46: common practice, no source read. Within 1 % of Purdue's figures.
        Close(1_387_993, 3060 * gramsPerPound);
        Close(240_404, 530 * gramsPerPound);
        Close(PerPound(GrassSpecies.KentuckyBluegrass), 3060 * gramsPerPound, 0.01);
        Close(PerPound(GrassSpecies.PerennialRyegrass), 530 * gramsPerPound, 0.01);
    }

    [Fact]
    public void A_pound_of_live_seed_costs_the_bag_price_over_pure_live_seed() =>
        // Arithmetic, not outside evidence.
        Close(4.95, (double)PureLiveSeed.PriceOf(4.00m, CornellShare));
}
