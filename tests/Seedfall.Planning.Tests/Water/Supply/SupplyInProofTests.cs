using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Coverage;
using Seedfall.Planning.Water.Supply;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Tests.Water.Supply;

/// <summary>Everything entered of a lawn's supply moves its water proof.</summary>
public sealed class SupplyInProofTests
{
    private static readonly SprinklerSet[] Zones = [Zone("one"), Zone("two")];

    [Fact]
    public void ALongThinHoseLeavesLessForTheSprinkler()
    {
        double Draw(double feet, double boreInches)
        {
            var set = Zone("one") with { Rate = null, Flow = null, Nozzle = new NozzleRating(FlowRate.FromGallonsPerMinute(5.0), Pressure.FromPoundsPerSquareInch(40.0)), Hose = new HoseRun(Length.FromFeet(feet), Length.FromInches(boreInches)) };
            var supply = WaterLawn.Supply(9.0, set) with { Pressure = new PressureTest(Pressure.FromPoundsPerSquareInch(60.0), null, null) };
            return Prove(supply).Figures.Single(f => f.Id == "water.set-1.draw").Value;
        }

        Assert.True(Draw(150.0, 0.5) < Draw(150.0, 0.625));
        Assert.True(Draw(150.0, 0.625) < Draw(25.0, 0.625));
        Assert.Contains(Prove(WaterLawn.Supply(9.0, Zone("one") with { Hose = new HoseRun(Length.FromFeet(100.0), Length.FromInches(0.5)) }) with { Pressure = new PressureTest(Pressure.FromPoundsPerSquareInch(50.0), null, null) }).Figures, f => f.Id == "water.set-1.hose");
    }

    /// <summary>Zones of 5 gpm on a tap of 6 run one after the other; a second tap lets them run together, unless both hang on a pipe that gives 6 in all.</summary>
    [Fact]
    public void ASecondTapHelpsOnlyWhereThePipeGivesMore()
    {
        double Round(WaterSupply supply) => Prove(supply).Phases.Single(p => p.PhaseId == "seedbed").Totals.Single(f => f.Id == "water.seedbed.round-minutes").Value;
        var one = WaterLawn.Supply(6.0, Zones);
        var two = one with { OtherTaps = [new FurtherTap("back tap", FlowRate.FromGallonsPerMinute(6.0))] };
        Assert.True(Round(two with { Together = FlowRate.FromGallonsPerMinute(11.0) }) < Round(one));
        Assert.Equal(Round(one), Round(two with { Together = FlowRate.FromGallonsPerMinute(6.0) }));
        Assert.Contains(Prove(two).Figures, f => f.Id == "water.main" && f.Working.Sureness == Sureness.Assumed);
    }

    [Fact]
    public void NothingRunsWhileTheHouseholdNeedsTheWater()
    {
        var supply = WaterLawn.Supply(6.0, Zones) with { Household = [new HouseholdHours(new TimeOnly(6, 0), new TimeOnly(9, 30), FlowRate.FromGallonsPerMinute(3.0))], Reserved = FlowRate.FromGallonsPerMinute(0.5) };
        var proof = Prove(supply);
        Assert.All(
            proof.Phases.SelectMany(p => p.Timetables.Daily?.Days ?? []).SelectMany(day => Assert.IsType<TimetableProof.Found>(day.Proof).Runs),
            run => Assert.True(run.End <= 6 * 60 || run.Start >= (9 * 60) + 30, $"{run}"));
        Assert.Contains(proof.Figures, f => f.Id == "water.reserved");
    }

    [Fact]
    public void ATimerWithOneStartADayCannotGiveSeveralRounds()
    {
        var proof = Prove(WaterLawn.Supply(12.0, Zones) with { Timers = [new TimetableTimer("hose timer", 1, 1)] });
        Assert.Equal(ProofResult.Refused, proof.Result);
        Assert.Contains(proof.Limits, limit => limit.Limit == TimetableLimit.TimerStarts);
        Assert.Contains("hose timer", proof.Sentence, StringComparison.Ordinal);
        Assert.Equal(ProofResult.Holds, Prove(WaterLawn.Supply(12.0, Zones) with { Timers = [new TimetableTimer("hose timer", 1, 4)] }).Result);
    }

    [Fact]
    public void AWellThatComesBackTooSlowlyIsNamed()
    {
        var proof = Prove(WaterLawn.Supply(6.0, Zones) with { Well = new WellLimit(Volume.FromGallons(100.0), FlowRate.FromGallonsPerMinute(0.05)) });
        Assert.Equal(ProofResult.Refused, proof.Result);
        Assert.True(proof.Limits.Any(limit => limit.Limit == TimetableLimit.Well), proof.Sentence);
        Assert.Contains(proof.Figures, f => f.Id == "water.well.longest-run");
    }

    /// <summary>Heads on the drawn plan give rate and evenness where no cans were set out; cans come before them.</summary>
    [Fact]
    public void PlacedHeadsGiveRateAndEvenness()
    {
        GroundPoint[] square = [new(0.0, 0.0), new(10.0, 0.0), new(10.0, 10.0), new(0.0, 10.0)];
        CoverageHead Head(double x, double y, double from) => new(new GroundPoint(x, y), Length.FromMeters(10.0), FlowRate.FromLitersPerMinute(4.0), new SprayProfile.Uniform()) { ArcFromDeg = from, ArcDeg = 90.0 };
        var set = new SprinklerSet { Name = "corners", PatchIds = ["front"], Kind = SprinklerKind.Rotor, Heads = [Head(0.0, 0.0, 0.0), Head(10.0, 0.0, 270.0), Head(10.0, 10.0, 180.0), Head(0.0, 10.0, 90.0)] };
        var lawn = WaterLawn.Lawn(WaterLawn.Supply(8.0, set));
        lawn = lawn with { Patches = [lawn.Patches[0] with { Shape = new PatchShape.Outline(square, []) }] };
        var figures = WaterLawn.Prove(lawn).Value!.Figures;
        var rate = figures.Single(f => f.Id == "water.set-1.rate");

        // 4 heads of 4 L/min over 100 m2: at most 9.6 mm/h; quarter circles of 10 m radius lose a little over the edge of the square.
        Assert.InRange(rate.Value, 8.0, 9.6);
        Assert.Contains("drawn plan", rate.Working.Source, StringComparison.Ordinal);
        Assert.Contains("drawn plan", figures.Single(f => f.Id == "water.set-1.uniformity").Working.Source, StringComparison.Ordinal);
        Assert.Equal(16.0, figures.Single(f => f.Id == "water.set-1.draw").Value, 1e-9);
    }

    /// <summary>Steps of the bill: what lies beyond the first step costs the second's price, month by month.</summary>
    [Fact]
    public void PriceStepsMakeTheLastWaterDearer()
    {
        var supply = WaterLawn.Supply(8.0, Zones);
        double Cost(WaterSupply s) => Prove(s).SeasonCost!.Value;
        MeterPrice Steps(decimal first, decimal then) => new([new MeterStep(Volume.FromGallons(1000.0), first), new MeterStep(null, then)]);
        Assert.Equal(Cost(supply), Cost(supply with { Meter = Steps(5m, 5m) }), 1e-9);
        Assert.True(Cost(supply with { Meter = Steps(5m, 9m) }) > Cost(supply));
        Assert.Equal(Cost(supply) * 9.0 / 5.0, Cost(supply with { Meter = Steps(5m, 9m), HouseholdPerMonth = Volume.FromGallons(2000.0) }), 1e-9);
    }

    private static SprinklerSet Zone(string name) => new() { Name = name, PatchIds = ["front"], Kind = SprinklerKind.Rotor, Rate = PrecipitationRate.FromInchesPerHour(0.5), Flow = FlowRate.FromGallonsPerMinute(5.0) };

    private static WaterProof Prove(WaterSupply supply) => WaterLawn.Prove(WaterLawn.Lawn(supply, 2000.0)).Value!;
}
