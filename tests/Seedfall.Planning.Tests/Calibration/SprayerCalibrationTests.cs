using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Calibration;
using Seedfall.Planning.Calibration.Sprayer;
using Seedfall.Planning.Field;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Tests.Calibration;

public sealed class SprayerCalibrationTests
{
    private static readonly Area Thousand = Area.FromThousandSquareFeet(1);

    [Fact]
    public void The_three_methods_agree_on_one_sprayer() => Gen.Select(Gen.Double[0.05, 2.0], Gen.Double[0.3, 2.5], Gen.Double[0.25, 3.0]).Sample((gpm, metersPerSecond, widthM) =>
    {
        // A made-up sprayer of known flow, speed and width, tested in each of the three ways.
        var (flow, width) = (FlowRate.FromGallonsPerMinute(gpm), Length.FromMeters(widthM));
        var truth = SprayerOutput.OfFlow(flow, Speed.FromMetersPerSecond(metersPerSecond), width);
        var areaSeconds = Thousand.SquareMeters / widthM / metersPerSecond;
        var refill = SprayerCalibration.Of(new SprayerTest.Refill(Thousand, [Volume.FromLiters(flow.LitersPerMinute * areaSeconds / 60)], [areaSeconds]) { Width = width });
        var caught = SprayerCalibration.Of(new SprayerTest.Catch(Thousand, [areaSeconds], [Volume.FromLiters(flow.LitersPerMinute / 2)], 30) { Width = width });
        var courseSeconds = SprayerOutput.Course(width).Meters / metersPerSecond;
        var course = SprayerCalibration.Of(new SprayerTest.OunceCourse(width, [courseSeconds], [Volume.FromLiters(flow.LitersPerMinute * courseSeconds / 60)]));
        foreach (var found in (SprayerCalibration[])[refill, caught, course])
        {
            Assert.Equal(1.0, found.Rate / truth, 9);
            Assert.Equal(1.0, found.Speed!.Value.MetersPerSecond / metersPerSecond, 9);
            Assert.Equal(1.0, found.Flow!.Value / flow.LitersPerMinute, 9);
        }
    });

    [Fact]
    public void Runs_are_averaged_and_the_farthest_is_named()
    {
        var found = SprayerCalibration.Of(new SprayerTest.Refill(Thousand, [Volume.FromGallons(0.9), Volume.FromGallons(1.0), Volume.FromGallons(1.1)], []));
        Assert.Equal(1.0, found.Rate.GallonsPerThousandSquareFeet, 9);
        Assert.Equal(0.10, found.Farthest!.Value, 9);
        Assert.False(found.Steady);
        Assert.Null(found.Walk);
        Assert.Null(found.Flow);
    }

    [Fact]
    public void A_single_run_says_that_it_is_one()
    {
        var found = SprayerCalibration.Of(new SprayerTest.Refill(Thousand, [Volume.FromGallons(1)], []));
        Assert.Null(found.Farthest);
        Assert.False(found.Steady);
        Assert.Contains("One run only", found.Output.Working.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Pace_and_step_turn_into_each_other() => Gen.Select(Gen.Double[0.5, 2.0], Gen.Double[0.4, 1.0], Gen.Int[10, 200]).Sample((metersPerSecond, stepM, steps) =>
    {
        var course = Length.FromMeters(stepM * steps);
        var step = Pace.StepOf(course, steps);
        var pace = Pace.Of(Speed.FromMetersPerSecond(metersPerSecond), step, course);

        // Walked at the beat, the course takes as many steps as it was measured with.
        Assert.Equal(steps, pace.StepsPerMinute.Value * pace.CourseSeconds.Value / 60.0, 6);
        Assert.Equal(QuantityKind.Seconds, pace.CourseSeconds.Kind);
    });

    [Fact]
    public void One_worn_nozzle_does_not_condemn_the_sound_ones()
    {
        var flows = new[] { 1.0, 1.0, 1.5, 1.0, 1.02 }.Select(FlowRate.FromLitersPerMinute).ToList();
        Assert.Equal([false, false, true, false, false], NozzleWear.Check(flows).Select(n => n.Replace));
    }

    [Fact]
    public void A_nozzle_alone_is_judged_by_its_rating_at_the_pressure_of_the_test()
    {
        var rating = new NozzleRating(FlowRate.FromGallonsPerMinute(0.4), Pressure.FromPoundsPerSquareInch(40));
        Assert.Empty(NozzleWear.Check([rating.Flow]));
        var sound = NozzleWear.Check([NozzlePressure.FlowAt(rating.Flow, rating.At, Pressure.FromPoundsPerSquareInch(20))], rating, Pressure.FromPoundsPerSquareInch(20)).Single();
        Assert.Equal(0.0, sound.OffRating!.Value, 9);
        Assert.False(sound.Replace);
        var blocked = NozzleWear.Check([rating.Flow * 0.8], rating, rating.At).Single();
        Assert.True(blocked.Replace);
        Assert.Contains("Clean it", blocked.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_two_nozzles_without_a_rating_none_is_called_sound()
    {
        var found = NozzleWear.Check([FlowRate.FromLitersPerMinute(1.0), FlowRate.FromLitersPerMinute(1.3)]);
        Assert.Equal([false, true], found.Select(n => n.Replace));
        Assert.Contains("may be the faulty one", found[0].Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Sprayings_since_the_calibration_are_counted_and_spread_ones_are_not()
    {
        var day = new DateOnly(2026, 5, 1);
        var spread = Applied(day.AddDays(3)) with { Id = Guid.NewGuid() };
        spread = spread with { What = spread.What with { Amount = new ProductAmount(Mass.FromPounds(10), null) } };
        var log = FieldLog.Of([Applied(day.AddDays(-1)), Applied(day), Applied(day.AddDays(90)), spread, Applied(day.AddYears(1))]);
        Assert.Equal(3, CalibrationAge.Sprayings(log, day));
        Assert.True(CalibrationAge.IsDue(3));
        Assert.False(CalibrationAge.IsDue(2));
    }

    [Fact]
    public void What_cannot_be_is_turned_away_at_the_door()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SprayerCalibration.Of(new SprayerTest.Refill(Thousand, [], [])));
        Assert.Throws<ArgumentOutOfRangeException>(() => SprayerCalibration.Of(new SprayerTest.Refill(Area.Zero, [Volume.FromGallons(1)], [])));
        Assert.Throws<ArgumentOutOfRangeException>(() => SprayerCalibration.Of(new SprayerTest.Catch(Thousand, [0], [Volume.FromGallons(1)], null)));
        Assert.Throws<ArgumentOutOfRangeException>(() => NozzleWear.Check([FlowRate.Zero, FlowRate.FromLitersPerMinute(1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Pace.Of(Speed.Zero, Length.FromFeet(2), Length.FromFeet(100)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Pace.StepOf(Length.FromFeet(100), 0));
    }

    private static LogEntry.Applied Applied(DateOnly day) => new(new Application
    {
        Kind = ApplicationKind.Pesticide,
        Product = "mesotrione 4 lb/gal",
        Amount = new ProductAmount(null, Volume.FromFluidOunces(1)),
        Area = Thousand,
    })
    {
        Id = Guid.NewGuid(),
        At = new DateTimeOffset(day.ToDateTime(new TimeOnly(9, 0)), TimeSpan.Zero),
    };
}
