using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Tests.Rules;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Supply;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Tests.Ground;

/// <summary>The water supply at the door: what cannot be is named where it stands, what can be meant passes.</summary>
public sealed class SupplyRulesTests
{
    private static readonly WaterSupply Whole = new()
    {
        Bucket = new BucketTest(Volume.FromLiters(20), 60),
        Pressure = new PressureTest(Pressure.FromPoundsPerSquareInch(60), Pressure.FromPoundsPerSquareInch(35), Lpm(15)),
        OtherTaps = [new FurtherTap("garage", Lpm(16)), new FurtherTap("alley", Lpm(12))],
        Together = Lpm(30),
        Well = new WellLimit(Volume.FromLiters(300), Lpm(12)),
        Reserved = Lpm(4),
        Household = [new HouseholdHours(new TimeOnly(6, 30), new TimeOnly(7, 30), Lpm(8))],
        HouseholdPerMonth = Volume.FromGallons(6000),
        Timers = [new TimetableTimer("box", 3, 4)],
        Timer = true,
        Meter = Steps((4000, 3m), (10_000, 5.5m), (null, 9m)),
        Sets = [Set with { Tap = "garage", Timer = "box", Hose = new HoseRun(Length.FromFeet(75), Length.FromInches(0.625)), Nozzle = new NozzleRating(Lpm(11), Pressure.FromPoundsPerSquareInch(40)) }],
    };

    private static SprinklerSet Set => new() { Name = "one", PatchIds = ["front"] };

    /// <summary>Path at which the supply must be refused, and the supply.</summary>
    public static TheoryData<string, WaterSupply> Wrong { get; } = new()
    {
        { "water.flow", new WaterSupply { Flow = FlowRate.Zero } },
        { "water.flow", new WaterSupply { Flow = new FlowRate(double.NaN) } },
        { "water.bucket", new WaterSupply { Bucket = new BucketTest(Volume.FromLiters(1), 3600) } },
        { "water.pressure.still", Whole with { Pressure = new PressureTest(Pressure.Zero, null, null) } },
        { "water.pressure.still", Whole with { Pressure = new PressureTest(Pressure.FromBars(30), null, null) } },
        { "water.pressure.running", Whole with { Pressure = new PressureTest(Pressure.FromBars(4), Pressure.FromBars(4), Lpm(10)) } },
        { "water.pressure.running", Whole with { Pressure = new PressureTest(Pressure.FromBars(4), Pressure.FromBars(-1), Lpm(10)) } },
        { "water.pressure", Whole with { Pressure = new PressureTest(Pressure.FromBars(4), Pressure.FromBars(2), null) } },
        { "water.pressure", Whole with { Pressure = new PressureTest(Pressure.FromBars(4), null, Lpm(10)) } },
        { "water.pressure.at", Whole with { Pressure = new PressureTest(Pressure.FromBars(4), Pressure.FromBars(2), FlowRate.Zero) } },
        { "water.otherTaps[1].flow", Whole with { OtherTaps = [new("garage", Lpm(16)), new("alley", FlowRate.Zero)] } },
        { "water.otherTaps[1].name", Whole with { OtherTaps = [new("garage", Lpm(16)), new("Garage", Lpm(16))] } },
        { "water.otherTaps[1].name", Whole with { OtherTaps = [new("garage", Lpm(16)), new(" ", Lpm(16))] } },
        { "water.together", Whole with { Together = Lpm(48 * 1.06) } },
        { "water.together", Whole with { Together = Lpm(20 * 0.94) } },
        { "water.together", Whole with { Together = FlowRate.Zero } },
        { "water.together", new WaterSupply { Flow = Lpm(20), Together = Lpm(20) } },
        { "water.well.stored", Whole with { Well = new WellLimit(new Volume(-1), Lpm(10)) } },
        { "water.well.recovery", Whole with { Well = new WellLimit(Volume.FromLiters(100), new FlowRate(-1)) } },
        { "water.well.stored", Whole with { Well = new WellLimit(Volume.Zero, Lpm(8)) } },
        { "water.reserved", Whole with { Reserved = Lpm(30) } },
        { "water.reserved", new WaterSupply { Flow = Lpm(10), Reserved = Lpm(10) } },
        { "water.reserved", Whole with { Reserved = new FlowRate(-1) } },
        { "water.household[0]", Whole with { Household = [new(new TimeOnly(8, 0), new TimeOnly(7, 0), Lpm(5))] } },
        { "water.household[0]", Whole with { Household = [new(new TimeOnly(8, 0), new TimeOnly(8, 0), Lpm(5))] } },
        { "water.household[0].flow", Whole with { Household = [new(new TimeOnly(8, 0), new TimeOnly(9, 0), FlowRate.Zero)] } },
        { "water.householdPerMonth", Whole with { HouseholdPerMonth = new Volume(-5) } },
        { "water.timers[0].programs", Whole with { Timers = [new("box", 0, 4)] } },
        { "water.timers[0].startsPerDay", Whole with { Timers = [new("box", 3, 0)] } },
        { "water.timers[1].name", Whole with { Timers = [new("box", 3, 4), new("box", 1, 2)] } },
        { "water.timer", Whole with { Timer = false } },
        { "water.sets[0].tap", Whole with { Sets = [Set with { Tap = "roof" }] } },
        { "water.sets[0].tap", new WaterSupply { Sets = [Set with { Tap = "garage" }] } },
        { "water.sets[0].timer", Whole with { Sets = [Set with { Timer = "roof" }] } },
        { "water.sets[0].hose.bore", Whole with { Sets = [Set with { Hose = new(Length.FromFeet(50), Length.Zero) }] } },
        { "water.sets[0].hose.length", Whole with { Sets = [Set with { Hose = new(Length.FromMeters(501), Length.FromInches(0.75)) }] } },
        { "water.sets[0].nozzle.flow", Whole with { Sets = [Set with { Nozzle = new(FlowRate.Zero, Pressure.FromBars(3)) }] } },
        { "water.sets[0].nozzle.at", Whole with { Sets = [Set with { Nozzle = new(Lpm(10), Pressure.Zero) }] } },
        { "water.sets[0].cans", Whole with { Sets = [Set with { Cans = new CatchCanTest([Depth.FromInches(4), Depth.FromInches(3)], 5) }] } },
        { "water.meter", Whole with { Meter = new MeterPrice([]) } },
        { "water.meter[1].upTo", Whole with { Meter = Steps((4000, 3m), (2000, 4m), (null, 5m)) } },
        { "water.meter[1].upTo", Whole with { Meter = Steps((4000, 3m), (4000, 4m), (null, 5m)) } },
        { "water.meter[1].upTo", Whole with { Meter = Steps((4000, 3m), (6000, 4m)) } },
        { "water.meter[0].upTo", Whole with { Meter = Steps((null, 3m), (null, 4m)) } },
        { "water.meter[0].upTo", Whole with { Meter = Steps((0, 3m), (null, 4m)) } },
        { "water.meter[0].perThousandGallons", Whole with { Meter = Steps((null, -1m)) } },
    };

    [Theory(DisableDiscoveryEnumeration = true)]
    [MemberData(nameof(Wrong))]
    public void What_no_supply_can_be_is_named_once_with_what_was_expected(string path, WaterSupply water)
    {
        var problem = Assert.Single(LawnRules.Problems(Some.Lawn() with { Water = water }, Tables.Shipped));
        Assert.Equal(path, problem.Path);
        Assert.NotEmpty(problem.Found);
        Assert.NotEmpty(problem.Expected);
    }

    [Fact]
    public void A_whole_supply_passes_and_so_does_each_thing_that_can_be_meant()
    {
        foreach (var water in new[]
        {
            Whole,
            new WaterSupply { Pressure = new PressureTest(Pressure.FromBars(4), null, null) },
            new WaterSupply { Pressure = new PressureTest(Pressure.FromBars(4), Pressure.Zero, Lpm(20)) },
            Whole with { Together = Lpm(48 * 1.04) },
            Whole with { Together = Lpm(20 * 0.96) },
            Whole with { Bucket = null, Together = Lpm(200) },
            Whole with { Well = new WellLimit(Volume.FromLiters(900), FlowRate.Zero) },
            Whole with { Reserved = FlowRate.Zero, HouseholdPerMonth = Volume.Zero },
            Whole with { Timer = null },
            Whole with { Meter = Steps((null, 6m)) },
            Whole with { Sets = [Set with { Hose = new HoseRun(Length.Zero, Length.FromInches(0.5)) }] },
        })
        {
            Assert.Empty(LawnRules.Problems(Some.Lawn() with { Water = water }, Tables.Shipped));
        }
    }

    [Fact]
    public void An_unknown_tap_is_told_which_there_are()
    {
        var problem = Assert.Single(LawnRules.Problems(Some.Lawn() with { Water = Whole with { Sets = [Set with { Tap = "roof" }] } }));
        Assert.Equal("the name of a tap: garage, alley", problem.Expected);
    }

    private static FlowRate Lpm(double litersPerMinute) => FlowRate.FromLitersPerMinute(litersPerMinute);

    private static MeterPrice Steps(params (double? Gallons, decimal Price)[] steps) =>
        new([.. steps.Select(s => new MeterStep(s.Gallons is { } g ? Volume.FromGallons(g) : null, s.Price))]);
}
