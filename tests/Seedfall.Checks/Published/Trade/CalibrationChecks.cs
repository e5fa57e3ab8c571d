using Seedfall.Engine.Units;
using Seedfall.Planning.Calibration;
using static Seedfall.Checks.Published.Trade.TradeData;

namespace Seedfall.Checks.Published.Trade;

/// <summary>Sprayer and spreader calibration against printed examples.</summary>
public sealed class CalibrationChecks
{
    private static readonly Speed ThreeMph = Speed.FromMilesPerHour(3);

    [Fact]
    public void Ounces_on_340_square_feet_read_as_gallons_per_acre()
    {
        // Michigan State and K-State: 18.5 ft square; 31 fl oz caught is 31 gal per acre.
        Close(340.3, SprayerOutput.OunceSquare.SquareFeet);
        Close(31, SprayerOutput.OverArea(Volume.FromFluidOunces(31), SprayerOutput.OunceSquare).GallonsPerAcre);
        Close(18.5, Math.Sqrt(SprayerOutput.OunceSquare.SquareFeet));
    }

    [Fact]
    public void Boom_output_from_flow_speed_and_width() =>
        // Albany County: 3.75 gpm, 5 mph, 222 in, printed 20 gal per acre.
        Close(20.07, SprayerOutput.OfFlow(FlowRate.FromGallonsPerMinute(3.75), Speed.FromMilesPerHour(5), Length.FromInches(222)).GallonsPerAcre);

    [Theory]
    [InlineData(40, 0.918)]
    public void Gallons_per_acre_as_gallons_per_thousand(double perAcre, double perThousand) =>
        // Oklahoma State University: 40 gal per acre, printed 0.92 per 1,000 sq ft.
        Close(perThousand, VolumePerArea.FromGallonsPerAcre(perAcre).GallonsPerThousandSquareFeet);

    [Theory]
    [InlineData(5.25, 228.7)]
    [InlineData(1.5, 65.3)]
    public void Gallons_per_thousand_as_gallons_per_acre(double perThousand, double perAcre) =>
        // Pesticide Environmental Stewardship: 5.25 gal per 1,000 sq ft; a turf list post: 1.5 is 65 gal per acre.
        Close(perAcre, VolumePerArea.FromGallonsPerThousandSquareFeet(perThousand).GallonsPerAcre);

    [Fact]
    public void Nozzle_flow_for_40_gallons_per_acre() =>
        // Arithmetic on the printed formula, not outside evidence.
        Close(0.404, SprayerOutput.FlowFor(VolumePerArea.FromGallonsPerAcre(40), ThreeMph, Length.FromInches(20)).GallonsPerMinute);

    [Fact]
    public void Walking_200_feet_in_45_seconds_is_3_mph()
    {
        // Formula mph = ft x 60 / (s x 88): extension calibration sheets; the value is arithmetic.
        Close(3.03, WalkingPace.Over(Length.FromFeet(200), 45).MilesPerHour);
        Close(4.4 * 10, WalkingPace.Course(Area.FromSquareFeet(44), Length.FromFeet(1)).Feet);
    }

    [Theory]
    [InlineData(10, 408.4)]
    [InlineData(15, 272.3)]
    [InlineData(20, 204.2)]
    [InlineData(30, 136.1)]
    public void Course_of_one_nozzle_over_a_128th_of_an_acre(double spacingInches, double feet) =>
        // Arithmetic on 340.3 sq ft, not outside evidence; the standard charts print 408, 272, 204, 136.
        Close(feet, SprayerOutput.Course(Length.FromInches(spacingInches)).Feet);

    [Fact]
    public void Flow_follows_the_square_root_of_pressure()
    {
        // Square-root law: common practice, no source read.
        var flow = FlowRate.FromGallonsPerMinute(0.40);
        Close(0.283, NozzlePressure.FlowAt(flow, Pressure.FromPoundsPerSquareInch(40), Pressure.FromPoundsPerSquareInch(20)).GallonsPerMinute);
        Close(62.5, NozzlePressure.PressureFor(FlowRate.FromGallonsPerMinute(0.50), flow, Pressure.FromPoundsPerSquareInch(40)).PoundsPerSquareInch);
    }

    [Fact]
    public void Doubling_the_speed_halves_the_output() =>
        // NC State Extension: 20 gal per acre at 3 mph is 10 at 6.
        Close(10, SprayerOutput.AtSpeed(VolumePerArea.FromGallonsPerAcre(20), ThreeMph, Speed.FromMilesPerHour(6)).GallonsPerAcre);

    [Fact]
    public void A_hose_end_sprayer_that_catches_a_gallon_and_a_quarter_over_250_square_feet_puts_out_5_per_thousand() =>
        // Inputs from an extension sheet; the result is arithmetic.
        Close(5.0, SprayerOutput.OverArea(Volume.FromGallons(1.25), Area.FromSquareFeet(250)).GallonsPerThousandSquareFeet);

    [Fact]
    public void Swath_is_twice_the_distance_to_half_the_center()
    {
        // Ohio State Extension Bulletin 817: 4 in at the center, 2 in at 6 ft either side, 12 ft swath.
        double[] catches = [1, 2, 3, 4, 3, 2, 1];
        Close(12.0, SpreaderPattern.EffectiveSwath(catches, Length.FromFeet(3))!.Value.Feet);
    }

    [Theory]
    [InlineData(7, 142.9)]
    [InlineData(5, 200)]
    public void Course_of_a_thousand_square_feet(double swathFeet, double feet) =>
        // Trade press: 7 ft swath, 143 ft. Pesticide Environmental Stewardship: 5 ft swath, 200 ft.
        Close(feet, WalkingPace.Course(Area.FromThousandSquareFeet(1), Length.FromFeet(swathFeet)).Feet);

    [Theory]
    [InlineData(10, 4.3)]
    [InlineData(14, 5.3)]
    [InlineData(15, 9.68)]
    [InlineData(16, 14.6)]
    [InlineData(18, 25.5)]
    public void A_triangular_pattern_overlapped(int spacingFeet, double percent) =>
        // Arithmetic, not outside evidence: one-foot cells from the center line out, sample standard deviation.
        Close(percent, Variation(TriangleCells(12), spacingFeet), 0.01);

    [Fact]
    public void A_triangular_pattern_overlapped_at_its_swath_is_even() =>
        // Arithmetic, not outside evidence.
        Assert.Equal(0.0, Variation(TriangleCells(12), 12), 9);

    [Theory]
    [InlineData(8, 5.8)]
    [InlineData(9, 13.3)]
    [InlineData(10, 22.5)]
    public void Pans_of_0_to_7_and_back_overlapped(int spacingFeet, double percent) =>
        // Arithmetic, not outside evidence.
        Close(percent, Variation(Triangle(7), spacingFeet), 0.01);

    [Fact]
    public void A_thousand_square_feet_at_12_feet_and_3_mph_take_a_third_of_a_minute() =>
        // Arithmetic, not outside evidence.
        Close(0.316, WalkingPace.Minutes(Area.FromThousandSquareFeet(1), Length.FromFeet(12), ThreeMph));

    [Fact]
    public void Five_pounds_over_1000_square_feet_are_the_target_of_a_20_0_0() =>
        // LSU AgCenter: 10 ft swath, 100 ft course, 20-0-0 at 1 lb N takes 5 lb.
        Close(5.0, SpreaderOutput.Rate(Mass.FromPounds(5), Length.FromFeet(10), Length.FromFeet(100)).PoundsPerThousandSquareFeet);

    private static double[] Triangle(int reach) => [.. Enumerable.Range(-reach, 2 * reach + 1).Select(x => (double)(reach - Math.Abs(x)))];

    /// <summary>The same pattern as mean catches of cells between whole feet.</summary>
    private static double[] TriangleCells(int reach) => [.. Enumerable.Range(-reach, 2 * reach).Select(x => reach - Math.Abs(x + 0.5))];

    private static double Variation(double[] catches, int everyPans) => 100 * SpreaderPattern.CoefficientOfVariation(SpreaderPattern.Overlapped(catches, everyPans));
}
