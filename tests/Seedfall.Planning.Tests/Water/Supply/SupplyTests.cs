using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Supply;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Tests.Water.Supply;

public sealed class SupplyTests
{
    private static readonly Length FiveEighths = Length.FromInches(0.625);

    private static readonly NozzleRating Impact = new(FlowRate.FromGallonsPerMinute(5.0), Psi(40.0));

    [Fact]
    public void NozzleFlowGrowsWithTheRootOfPressure() =>
        // Orifice law: 40 to 60 psi gives 22 % more; common practice, no source read.
        Assert.Equal(1.2247, Impact.FlowAt(Psi(60.0)) / Impact.Flow, 1e-4);

    [Fact]
    public void TapHoseAndHeadAgree() => Gen.Select(Gen.Double[30.0, 100.0], Gen.Double[0.0, 0.9], Gen.Double[4.0, 20.0], Gen.Double[0.0, 200.0], Gen.Double[0.5, 1.0]).Sample(
        (still, running, gpm, feet, inches) =>
        {
            var tap = new TapPressure(Psi(still), Psi(still * running), FlowRate.FromGallonsPerMinute(gpm));
            var line = HoseLine.Of(tap, Length.FromFeet(feet), Length.FromInches(inches), Impact);
            var left = tap.At(line.Flow) - HazenWilliams.Loss(line.Flow, Length.FromFeet(feet), Length.FromInches(inches));
            Assert.Equal(left.PoundsPerSquareInch, line.AtHead.PoundsPerSquareInch, 1e-6);
            Assert.Equal(Impact.FlowAt(line.AtHead).LitersPerMinute, line.Flow.LitersPerMinute, 1e-6);
            var longer = HoseLine.Of(tap, Length.FromFeet(feet + 50.0), Length.FromInches(inches), Impact);
            Assert.True(longer.Flow < line.Flow);
        },
        iter: 200);

    [Fact]
    public void AHundredFeetOfFiveEighthsTakesItsPrintedLoss()
    {
        // Hazen-Williams as printed with 4.52, C 140: 5 gpm loses 9.3 psi in 100 ft of 5/8 in. A tap that holds 49.3 psi leaves 40.
        var line = HoseLine.Of(new TapPressure(Psi(49.3001), Psi(49.3), FlowRate.FromGallonsPerMinute(5.0)), Length.FromFeet(100.0), FiveEighths, Impact);
        Assert.Equal((40.0, 5.0), (Math.Round(line.AtHead.PoundsPerSquareInch, 1), Math.Round(line.Flow.GallonsPerMinute, 2)));
    }

    [Fact]
    public void ABucketAtTheOpenTapUsesUpAllPressure()
    {
        var tap = TapPressure.FromBucket(Psi(50.0), FlowRate.FromGallonsPerMinute(12.0));
        Assert.Equal(0.0, tap.At(FlowRate.FromGallonsPerMinute(12.0)).PoundsPerSquareInch, 1e-9);
        Assert.Equal(50.0, tap.At(FlowRate.Zero).PoundsPerSquareInch, 1e-9);
    }

    [Fact]
    public void TapsOnOnePipeGiveWhatTheyGiveTogether()
    {
        FlowRate[] alone = [FlowRate.FromGallonsPerMinute(8.0), FlowRate.FromGallonsPerMinute(6.0)];
        Assert.Equal(9.5, new FlowRate(SharedMain.Flow(alone, FlowRate.FromGallonsPerMinute(9.5)).Value).GallonsPerMinute, 1e-9);
        Assert.Equal(14.0, new FlowRate(SharedMain.Flow(alone, FlowRate.FromGallonsPerMinute(20.0)).Value).GallonsPerMinute, 1e-9);
        Assert.Equal(8.0, new FlowRate(SharedMain.Flow(alone, null).Value).GallonsPerMinute, 1e-9);
    }

    [Fact]
    public void AWellGivesItsStoreAndWhatComesBack()
    {
        var well = new WellLimit(Volume.FromGallons(150.0), FlowRate.FromGallonsPerMinute(2.0));
        Assert.Equal(150.0 + (2.0 * 60.0 * 3.0), new Volume(WellYield.Within(well, 3.0).Value).Gallons, 1e-9);
        Assert.Equal(50.0, WellYield.LongestRun(well, FlowRate.FromGallonsPerMinute(5.0))!.Value, 1e-9);
        Assert.Null(WellYield.LongestRun(well, FlowRate.FromGallonsPerMinute(2.0)));
    }

    [Fact]
    public void TheLawnPaysTheStepsItReaches()
    {
        // By hand: 4,000 gal of household, 5,000 gal of lawn: 1,000 at 4.00, 3,000 at 6.00, 1,000 at 9.00 = 31.00.
        var meter = new MeterPrice([new(Volume.FromGallons(5000.0), 4.00m), new(Volume.FromGallons(8000.0), 6.00m), new(null, 9.00m)]);
        Assert.Equal(31.0, meter.CostOf(Volume.FromGallons(4000.0), Volume.FromGallons(5000.0)).Value, 1e-9);
        Assert.Equal(0.0, meter.CostOf(Volume.FromGallons(4000.0), Volume.Zero).Value, 1e-9);
        Assert.Throws<InvalidOperationException>(() => new MeterPrice([new(null, 4.00m), new(Volume.FromGallons(5.0), 5.00m)]).CostOf(Volume.Zero, Volume.Zero));
        Assert.Throws<InvalidOperationException>(() => new MeterPrice([]).CostOf(Volume.Zero, Volume.Zero));
    }

    [Fact]
    public void AbsurdSuppliesAreThrownOut()
    {
        var tap = new TapPressure(Psi(50.0), Psi(30.0), FlowRate.FromGallonsPerMinute(6.0));
        Assert.ThrowsAny<ArgumentException>(() => HoseLine.Of(tap with { Running = Psi(60.0) }, Length.FromFeet(50.0), FiveEighths, Impact));
        Assert.ThrowsAny<ArgumentException>(() => HoseLine.Of(tap, Length.FromFeet(50.0), Length.Zero, Impact));
        Assert.ThrowsAny<ArgumentException>(() => HoseLine.Of(tap with { RunningFlow = FlowRate.Zero }, Length.FromFeet(50.0), FiveEighths, Impact));
        Assert.ThrowsAny<ArgumentException>(() => SharedMain.Flow([], null));
    }

    private static Pressure Psi(double psi) => Pressure.FromPoundsPerSquareInch(psi);
}
