using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;
using static Seedfall.Checks.Published.Trade.TradeData;

namespace Seedfall.Checks.Published.Trade;

/// <summary>Grade arithmetic and the rule packs.</summary>
public sealed class FeedChecks
{
    private static readonly DateOnly SeedDown = new(2025, 9, 5);

    private static double ProductPoundsPerM(double nutrientPounds, double percent) =>
        FertilizerGrade.ProductFor(MassPerArea.FromPoundsPerThousandSquareFeet(nutrientPounds), Fraction.FromPercent(percent)).PoundsPerThousandSquareFeet;

    [Fact]
    public void Product_for_a_nutrient_by_grade()
    {
        // UMass Extension, Rotary Spreader Calibration: 20-5-10 for 1 lb N.
        Close(5.00, ProductPoundsPerM(1.0, 20));
        // Schlossberg, Penn State: 0-0-22 for 2 lb potash.
        Close(9.09, ProductPoundsPerM(2.0, 22));
        // Arithmetic, not outside evidence.
        Close(6.25, ProductPoundsPerM(1.0, 16));
        Close(1.087, ProductPoundsPerM(0.5, 46));
    }

    [Fact]
    public void A_60_lb_bag_of_30_4_4_holds_18_lb_of_nitrogen()
    {
        // University of Minnesota Extension, fertilizer bag.
        var bag = Mass.FromPounds(60);
        Close(18.0, FertilizerGrade.NutrientIn(bag, Fraction.FromPercent(30)).Pounds);
        var phosphate = FertilizerGrade.NutrientIn(bag, Fraction.FromPercent(4)).Pounds;
        Close(2.4, phosphate);
        // Same page: 1.06 lb P with the rounded factor 0.44 (0.4364 is exact, 0.8 % less) and 1.99 lb K.
        Close(1.06, phosphate * FertilizerGrade.PhosphorusInPhosphate, 0.015);
        Close(1.99, phosphate * FertilizerGrade.PotassiumInPotash);
    }

    [Fact]
    public void Starter_18_24_12_for_a_pound_of_phosphate_brings_three_quarters_of_nitrogen()
    {
        // Arithmetic, not outside evidence.
        var rate = FertilizerGrade.ProductFor(MassPerArea.FromPoundsPerThousandSquareFeet(1), Fraction.FromPercent(24));
        Close(4.167, rate.PoundsPerThousandSquareFeet);
        Close(0.75, FertilizerGrade.NutrientIn(rate, Fraction.FromPercent(18)).PoundsPerThousandSquareFeet);
        Close(0.50, FertilizerGrade.NutrientIn(rate, Fraction.FromPercent(12)).PoundsPerThousandSquareFeet);
    }

    [Theory]
    [InlineData(0.20, 0.875)]
    [InlineData(0.2222222222, 0.900)]
    [InlineData(0.30, 0.900)]
    public void Maryland_limits_the_nitrogen_of_one_application(double slow, double most)
    {
        // Maryland Agriculture Code 6-224: 0.9 lb total, 0.7 lb soluble, at least 20 % slow-release.
        var allowed = NitrogenLimit.PerApplication(Pack("us-md").Nitrogen, slow);
        Assert.False(allowed.Refused);
        Close(most, allowed.MaxPoundsPerM!.Value);
    }

    [Fact]
    public void Maryland_read_strictly_refuses_a_product_below_the_slow_share() =>
        // Maryland Agriculture Code 6-224, a reading to be confirmed with the state.
        Assert.True(NitrogenLimit.PerApplication(Pack("us-md").Nitrogen, 0.10).Refused);

    [Fact]
    public void Maryland_read_permissively_allows_the_soluble_limit_of_it()
    {
        // Maryland Agriculture Code 6-224, a reading to be confirmed with the state: 18 % N, all soluble.
        var allowed = NitrogenLimit.PerApplication(Pack("us-md-permissive").Nitrogen, 0.0);
        Assert.False(allowed.Refused);
        Close(0.70, allowed.MaxPoundsPerM!.Value);
        Close(3.89, ProductPoundsPerM(allowed.MaxPoundsPerM!.Value, 18));
    }

    [Fact]
    public void New_York_does_not_let_phosphorus_onto_an_overseeded_lawn_without_a_soil_test()
    {
        // New York Environmental Conservation Law 17-2103: only a newly established lawn in its first season is exempt.
        var rule = Pack("us-ny").Phosphorus;
        Assert.False(PhosphorusLimit.Judge(rule, 0.24, SeedingWork.Overseed, null, SeedDown).Allowed);
        Assert.False(PhosphorusLimit.Judge(rule, 0.24, SeedingWork.Repair, null, SeedDown).Allowed);
        Assert.True(PhosphorusLimit.Judge(rule, 0.24, SeedingWork.NewEstablishment, null, SeedDown).Allowed);
        // Same law, threshold 0.67 % read second-hand.
        Assert.True(PhosphorusLimit.Judge(rule, 0.006, SeedingWork.Overseed, null, SeedDown).Allowed);
    }

    [Fact]
    public void Maryland_lets_phosphorus_onto_repaired_turf()
    {
        // Maryland Agriculture Code 6-224(2)(ii)3.
        var rule = Pack("us-md").Phosphorus;
        Assert.True(PhosphorusLimit.Judge(rule, 0.24, SeedingWork.Repair, null, SeedDown).Allowed);
        Assert.False(PhosphorusLimit.Judge(rule, 0.24, SeedingWork.Overseed, null, SeedDown).Allowed);
    }

    [Theory]
    [InlineData("2023-09-05", true)]
    [InlineData("2021-09-05", false)]
    public void Maryland_takes_a_soil_test_of_the_last_three_years(string tested, bool allowed) =>
        // Maryland Agriculture Code 6-224: soil test no older than 3 years.
        Assert.Equal(allowed, PhosphorusLimit.Judge(Pack("us-md").Phosphorus, 0.24, SeedingWork.Overseed, new SoilFacts { PhosphorusPpm = 12, TestDate = DateOnly.ParseExact(tested, "yyyy-MM-dd") }, SeedDown).Allowed);

    [Theory]
    [InlineData("us-ny", "2025-12-01", true)]
    [InlineData("us-ny", "2026-04-01", true)]
    [InlineData("us-ny", "2025-11-30", false)]
    [InlineData("us-md", "2025-11-15", true)]
    [InlineData("us-md", "2026-03-01", true)]
    [InlineData("us-md", "2026-03-02", false)]
    public void Closed_seasons_cover_their_days(string pack, string date, bool closed) =>
        // New York Environmental Conservation Law 17-2103 (1 December to 1 April); Maryland 15 November to 1 March, read second-hand.
        Assert.Equal(closed, Pack(pack).FertilizerBlackout!.Covers(DateOnly.ParseExact(date, "yyyy-MM-dd")));

    [Fact]
    public void A_rate_is_held_within_5_percent()
    {
        // UMass Extension, Rotary Spreader Calibration: 4.75 to 5.25 lb for a target of 5.
        var target = MassPerArea.FromPoundsPerThousandSquareFeet(5);
        Assert.True(Planning.Calibration.SpreaderOutput.Holds(MassPerArea.FromPoundsPerThousandSquareFeet(4.75), target));
        Assert.True(Planning.Calibration.SpreaderOutput.Holds(MassPerArea.FromPoundsPerThousandSquareFeet(5.25), target));
        Assert.False(Planning.Calibration.SpreaderOutput.Holds(MassPerArea.FromPoundsPerThousandSquareFeet(5.30), target));
        Assert.False(Planning.Calibration.SpreaderOutput.Holds(MassPerArea.FromPoundsPerThousandSquareFeet(4.70), target));
    }

    [Fact]
    public void A_pound_per_thousand_square_feet_is_43_56_per_acre_and_48_8_kg_per_hectare()
    {
        var rate = MassPerArea.FromPoundsPerThousandSquareFeet(1);
        // Arithmetic, not outside evidence.
        Close(43.56, rate.PoundsPerAcre);
        Close(48.8, rate.KilogramsPerHectare);
    }
}
