using Seedfall.Engine.Units;
using Seedfall.Planning.Calibration.Sprayer;
using static Seedfall.Checks.Published.Trade.TradeData;

namespace Seedfall.Checks.Published.Trade;

/// <summary>Whole calibrations as extension sheets print them.</summary>
public sealed class SprayerTestChecks
{
    [Fact]
    public void A_spray_gun_walked_three_times_and_caught_once_puts_out_5_and_a_quarter_gallons_per_thousand()
    {
        // Pesticide Environmental Stewardship, spray gun: 5 ft swath, 200 ft course; 77, 79, 78 s, mean 78 s; 5.25 gal in the bucket.
        var test = new SprayerTest.Catch(Area.FromThousandSquareFeet(1), [77, 79, 78], [Volume.FromGallons(5.25)], null) { Width = Length.FromFeet(5) };
        var found = SprayerCalibration.Of(test);
        Close(5.25, found.Rate.GallonsPerThousandSquareFeet);
        Close(228.7, new VolumePerArea(found.PerAcre.Value).GallonsPerAcre);

        // The same sheet asks for runs within 5 %.
        Assert.True(found.Steady);
        Close(1.0 / 78.0, found.Farthest!.Value);
        Close(200.0 / 78.0 * 60.0 / 88.0, found.Speed!.Value.MilesPerHour);
    }

    [Theory]
    [InlineData(20, 31)]
    [InlineData(51, 40)]
    public void Ounces_caught_in_the_time_of_an_18_and_a_half_foot_square_are_gallons_per_acre(double seconds, double ounces)
    {
        // K-State (Wolf): 18.5 ft square; 20 s and 31 fl oz are 31 gal per acre, 51 s and 40 fl oz are 40.
        var test = new SprayerTest.OunceCourse(Length.FromFeet(18.45), [seconds], [Volume.FromFluidOunces(ounces)]);
        Close(ounces, new VolumePerArea(SprayerCalibration.Of(test).PerAcre.Value).GallonsPerAcre);
    }

    [Fact]
    public void A_hose_end_sprayer_over_250_square_feet_in_20_seconds()
    {
        // Inputs from an extension sheet: 20 s for 250 sq ft, 1.25 gal caught; the 5.0 gal per 1,000 sq ft are arithmetic.
        var test = new SprayerTest.Catch(Area.FromSquareFeet(250), [20], [Volume.FromGallons(1.25)], 20);
        Close(5.0, SprayerCalibration.Of(test).Rate.GallonsPerThousandSquareFeet);
    }

    [Theory]
    [InlineData(1.099, false)]
    [InlineData(1.10, true)]
    [InlineData(0.90, true)]
    [InlineData(0.91, false)]
    public void A_nozzle_10_percent_off_the_others_is_replaced(double share, bool replace)
    {
        // Michigan State University Extension: replace nozzles that differ by 10 % or more from the others.
        var flow = FlowRate.FromGallonsPerMinute(0.4);
        var found = NozzleWear.Check([flow, flow * share, flow, flow]);
        Assert.Equal([false, replace, false, false], found.Select(f => f.Replace));
    }

    [Fact]
    public void Every_fourth_application_is_calibrated_anew()
    {
        // NC State Extension: calibrate every fourth application.
        Assert.Equal([false, false, false, true, true], Enumerable.Range(0, 5).Select(CalibrationAge.IsDue));
    }

    [Fact]
    public void Walking_twice_as_slow_doubles_the_output()
    {
        // NC State Extension: 20 gal per acre at 3 mph is 10 at 6; turned round, 10 becomes 20 at half the speed.
        var aim = new RateAim(VolumePerArea.FromGallonsPerAcre(10), VolumePerArea.FromGallonsPerAcre(20)) { Walk = Speed.FromMilesPerHour(6) };
        var walk = RateRemedies.For(aim).Single(r => r.Kind == RemedyKind.Walk);
        Assert.True(walk.Works);
        Close(3.0, new Speed(walk.Figures[0].Value).MilesPerHour);
    }

    [Fact]
    public void A_nozzle_for_40_gallons_per_acre_at_3_mph_and_20_inches()
    {
        // Printed formula gpm = gal per acre x mph x in / 5,940 (Mesa and Albany counties); the value is arithmetic, not outside evidence.
        var aim = new RateAim(VolumePerArea.FromGallonsPerAcre(20), VolumePerArea.FromGallonsPerAcre(40)) { Walk = Speed.FromMilesPerHour(3), Width = Length.FromInches(20) };
        Close(0.404, new FlowRate(RateRemedies.For(aim).Single(r => r.Kind == RemedyKind.Nozzle).Figures[0].Value).GallonsPerMinute);
    }

    [Fact]
    public void Product_per_gallon_at_65_gallons_per_acre()
    {
        // A turf list post: 3 pt per acre at 65 gal per acre is 0.046 pt = 0.74 fl oz per gal.
        var perGallon = Volume.FromGallons(1) * (VolumePerArea.FromFluidOuncesPerAcre(48) / VolumePerArea.FromGallonsPerAcre(65));
        Close(0.74, perGallon.FluidOunces);
    }

    [Fact]
    public void Three_miles_an_hour_are_four_and_four_tenths_feet_a_second()
    {
        // mph = ft x 60 / (s x 88): extension calibration sheets.
        var pace = Pace.Of(Speed.FromMilesPerHour(3), Length.FromFeet(2.2), Length.FromFeet(88));
        Close(20.0, pace.CourseSeconds.Value);
        Close(120.0, pace.StepsPerMinute.Value);
    }
}
