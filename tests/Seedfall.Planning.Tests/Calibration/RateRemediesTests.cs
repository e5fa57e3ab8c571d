using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Calibration;
using Seedfall.Planning.Calibration.Sprayer;

namespace Seedfall.Planning.Tests.Calibration;

public sealed class RateRemediesTests
{
    [Theory]
    [InlineData(1.0, 1.0)]
    [InlineData(1.0, 1.05)]
    [InlineData(1.0, 0.955)]
    public void Nothing_is_changed_where_the_rate_is_held(double now, double wanted) => Assert.Empty(RateRemedies.For(Aim(now, wanted)));

    [Fact]
    public void Below_the_labels_least_carrier_nothing_is_held() =>
        Assert.NotEmpty(RateRemedies.For(Aim(0.97, 1.0) with { LabelLeast = Gallons(1.0) }));

    [Fact]
    public void Every_way_that_works_brings_the_wanted_rate() => Gen.Select(Gen.Double[0.2, 5.0], Gen.Double[0.2, 5.0], Gen.Double[1.0, 5.0], Gen.Double[15, 60]).Sample((now, wanted, mph, psi) =>
    {
        var width = Length.FromInches(20);
        var walk = Speed.FromMilesPerHour(mph);
        var aim = Aim(now, wanted) with { Walk = walk, Width = width, Pressure = Pressure.FromPoundsPerSquareInch(psi), LeastPressure = Pressure.FromPoundsPerSquareInch(15), MostPressure = Pressure.FromPoundsPerSquareInch(60) };
        var flow = SprayerOutput.FlowFor(aim.Now, walk, width);
        var found = RateRemedies.For(aim);
        Assert.Equal(found.OrderBy(r => r.Works ? 0 : 1).ThenBy(r => r.Kind).Select(r => r.Kind), found.Select(r => r.Kind));
        foreach (var way in found.Where(r => r.Works))
        {
            var brought = way.Kind switch
            {
                RemedyKind.Walk => SprayerOutput.OfFlow(flow, new Speed(way.Figures[0].Value), width),
                RemedyKind.Pressure => SprayerOutput.OfFlow(NozzlePressure.FlowAt(flow, aim.Pressure!.Value, new Pressure(way.Figures[0].Value)), walk, width),
                RemedyKind.SecondPass => SprayerOutput.OfFlow(flow, new Speed(way.Figures[1].Value), width) * 2.0,
                _ => SprayerOutput.OfFlow(new FlowRate(way.Figures[0].Value), walk, width),
            };
            Assert.Equal(1.0, brought / aim.Wanted, 9);
        }

        Assert.All(found.Where(r => r is { Works: true, Kind: RemedyKind.Walk }), r => Assert.True(Pace.IsWalkable(new Speed(r.Figures[0].Value))));
        Assert.All(found.Where(r => r is { Works: true, Kind: RemedyKind.Pressure }), r => Assert.InRange(new Pressure(r.Figures[0].Value).PoundsPerSquareInch, 15.0 - 1e-9, 60.0 + 1e-9));
    });

    [Fact]
    public void Pressure_is_only_for_small_trims()
    {
        var trim = Pressing(1.0, 1.09);
        Assert.True(trim.Works);
        var more = Pressing(1.0, 1.2);
        Assert.False(more.Works);
        Assert.Contains("trims up to 10 %", more.Statement, StringComparison.Ordinal);
        Assert.False(RateRemedies.For(Aim(1.0, 1.09)).Single(r => r.Kind == RemedyKind.Pressure).Works);
    }

    [Fact]
    public void A_rate_no_walk_reaches_takes_two_passes_or_another_nozzle()
    {
        var found = RateRemedies.For(Aim(0.5, 1.2) with { Walk = Speed.FromMilesPerHour(3), Width = Length.FromFeet(5) });
        Assert.Equal([RemedyKind.SecondPass, RemedyKind.Nozzle, RemedyKind.Walk, RemedyKind.Pressure], found.Select(r => r.Kind));
        Assert.Equal([true, true, false, false], found.Select(r => r.Works));
        Assert.Contains("1.25 mph", found[2].Statement, StringComparison.Ordinal);
    }

    private static RateRemedy Pressing(double now, double wanted) =>
        RateRemedies.For(Aim(now, wanted) with { Pressure = Pressure.FromPoundsPerSquareInch(40) }).Single(r => r.Kind == RemedyKind.Pressure);

    private static RateAim Aim(double now, double wanted) => new(Gallons(now), Gallons(wanted));

    private static VolumePerArea Gallons(double perThousand) => VolumePerArea.FromGallonsPerThousandSquareFeet(perThousand);
}
