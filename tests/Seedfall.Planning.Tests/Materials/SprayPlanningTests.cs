using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Tests.Ground;
using Seedfall.Planning.Tests.Rules;

namespace Seedfall.Planning.Tests.Materials;

public sealed class SprayPlanningTests
{
    private static HerbicideLabel Label { get; } = new()
    {
        ActiveIngredient = "mesotrione",
        Rate = Ounces(5),
        MaximumRate = Ounces(8),
        MaximumPerYear = Ounces(16),
        LabeledAtSeeding = [GrassSpecies.KentuckyBluegrass, GrassSpecies.TallFescue],
        Barred = [GrassSpecies.HardFescue],
        SeedingIntervalDays = 0,
        MinimumCarrier = VolumePerArea.FromGallonsPerAcre(30),
        HoseEndBarred = true,
    };

    private static Lawn Sprayed { get; } = Some.Lawn() with
    {
        PreEmergent = Label,
        Sprayer = new SprayerFacts { Tank = Volume.FromGallons(4), Carrier = VolumePerArea.FromGallonsPerThousandSquareFeet(1.5) },
    };

    [Fact]
    public void Tanks_add_up_to_the_total_and_never_above_the_label() => Gen.Select(Gen.Double[0.1, 200], Gen.Double[0.1, 30], Gen.Double[0.001, 5000]).Sample((carrierL, tankL, doseMl) =>
    {
        var loads = TankMix.Loads(Volume.FromLiters(carrierL), Volume.FromLiters(tankL));
        Assert.Equal(1.0, loads.Sum(l => l.Liters) / carrierL, 9);
        Assert.All(loads, l => Assert.True(l.Liters <= tankL * (1 + 1e-9)));
        var doses = TankMix.Split(Volume.FromMilliliters(doseMl), loads);
        for (var i = 0; i < loads.Count; i++)
        {
            Assert.True(doses[i].Milliliters <= doseMl * loads[i].Liters / carrierL * (1 + 1e-6) + 1e-9);
        }
    });

    [Fact]
    public void A_planned_trip_is_the_sum_of_its_tanks() => Gen.Select(Gen.Double[200, 30_000], Gen.Double[0.5, 8], Gen.Double[1, 25]).Sample((squareFeet, rate, tank) =>
    {
        var lawn = Sprayed with
        {
            Patches = [Some.Patch("front", squareFeet)],
            PreEmergent = Label with { Rate = Ounces(rate) },
            Sprayer = new SprayerFacts { Tank = Volume.FromGallons(tank), Carrier = VolumePerArea.FromGallonsPerThousandSquareFeet(1) },
        };
        var trip = Plan(lawn).Value!.Trips[0];
        Assert.Equal(trip.CarrierTotal.Value, trip.Tanks.Sum(t => t.Carrier.Value), 6);
        Assert.Equal(trip.Products[0].Total.Value, trip.Tanks.Sum(t => t.Products[0].Value), 9);
        Assert.True(trip.Products[0].Total.Value <= trip.Products[0].PerPatch.Sum(p => p.Value) * (1 + 1e-6));
    });

    [Fact]
    public void The_worked_lawn_takes_two_full_tanks_and_a_part_tank()
    {
        var trip = Plan(Sprayed).Value!.Trips.Single();
        Assert.Equal("pre-emergent", trip.Id);
        Assert.Equal([9.05, 9.05, 7.35], trip.Tanks.Select(t => Math.Round(t.Products[0].Value * 1000, 6)));
        Assert.Equal(["half the water, agitating", "mesotrione (suspension)", "the rest of the water"], trip.MixingOrder);
    }

    public static TheoryData<string, Lawn> Walled { get; } = new()
    {
        { "label.rate", Sprayed with { PreEmergent = Label with { Rate = Ounces(9) } } },
        { "label.yearly-maximum", Sprayed with { PreEmergent = Label with { AppliedThisYear = Ounces(12) } } },
        { "label.yearly-maximum", Sprayed with { PreEmergent = Label with { MaximumPerYear = null, AppliedThisYear = Ounces(12) } } },
        { "label.yearly-maximum", Sprayed with { Sprayed = [new PastSpray { ActiveIngredient = "Mesotrione 40 SC", Date = new DateOnly(2025, 5, 1), Rate = Ounces(13) }] } },
        { "label.species.perennial-ryegrass", Sprayed with { Patches = [Some.Patch("front", 1000, 0.5, GrassSpecies.PerennialRyegrass)] } },
        { "label.species.hard-fescue", Sprayed with { Patches = [Some.Patch("front", 1000, 0.5, GrassSpecies.HardFescue)] } },
        { "label.species.kentucky-bluegrass", Sprayed with { PreEmergent = Label with { LabeledAtSeeding = [] } } },
        { "label.hose-end", Sprayed with { Sprayer = new SprayerFacts { Kind = SprayerKind.HoseEnd } } },
        { "label.carrier", Sprayed with { Sprayer = new SprayerFacts { Carrier = VolumePerArea.FromGallonsPerAcre(20) } } },
        { "label.seeding-interval", Sprayed with { PreEmergent = Label with { SeedingIntervalDays = 60 } } },
    };

    [Theory(DisableDiscoveryEnumeration = true)]
    [MemberData(nameof(Walled))]
    public void What_the_label_forbids_is_a_wall_by_name(string id, Lawn lawn)
    {
        var section = Plan(lawn);
        Assert.Null(section.Value);
        var wall = Assert.Single(section.Walls, w => w.Id == id);
        Assert.NotEmpty(wall.Statement);
        Assert.NotEmpty(wall.Instead);
    }

    [Fact]
    public void Last_years_use_does_not_count() =>
        Assert.Empty(Plan(Sprayed with { Sprayed = [new PastSpray { ActiveIngredient = "mesotrione", Date = new DateOnly(2024, 9, 1), Rate = Ounces(16), LabelSeedingIntervalDays = 0 }] }).Walls);

    [Fact]
    public void A_repeat_the_year_has_no_room_for_is_walled_and_the_first_still_planned()
    {
        var section = Plan(Sprayed with { PreEmergent = Label with { Rate = Ounces(8), AppliedThisYear = Ounces(5), RepeatAfterEmergenceDays = 28 } });
        Assert.NotNull(section.Value);
        Assert.Contains(section.Walls, w => w.Id == "label.yearly-maximum.repeat");
        Assert.Equal(13.0, new VolumePerArea(section.Value.YearlyTotals.Single(f => f.Id == "spray.year.after").Value).FluidOuncesPerAcre, 9);
    }

    [Fact]
    public void Partners_ride_along_or_go_by_themselves_and_a_stopped_pre_emergent_does_not_stop_them()
    {
        var partners = Sprayed with
        {
            TankPartners =
            [
                new TankPartner { Name = "wetting agent", Rate = VolumePerArea.FromFluidOuncesPerThousandSquareFeet(4) },
                new TankPartner { Name = "soil conditioner", Rate = VolumePerArea.FromFluidOuncesPerThousandSquareFeet(6), WithPreEmergent = true, Formulation = FormulationClass.WettablePowder },
            ],
        };
        var plan = Plan(partners).Value!;
        Assert.Equal(["pre-emergent", "conditioner"], plan.Trips.Select(t => t.Id));
        Assert.Equal(["soil conditioner", "mesotrione"], plan.Trips[0].Products.Select(p => p.Name));
        Assert.True(plan.Trips[0].JarTest.Count > 3);

        var stopped = Plan(partners with { PreEmergent = Label with { Rate = Ounces(9) } });
        Assert.Equal("conditioner", Assert.Single(stopped.Value!.Trips).Id);
        Assert.NotEmpty(stopped.Walls);
    }

    [Fact]
    public void Nothing_to_spray_is_no_plan_and_no_wall()
    {
        var section = Plan(Some.Lawn());
        Assert.Null(section.Value);
        Assert.Empty(section.Walls);
    }

    [Fact]
    public void What_was_not_entered_from_the_label_is_named()
    {
        var section = Plan(Sprayed with { Sprayer = null, PreEmergent = Label with { MaximumPerYear = null, MaximumRate = null, SeedingIntervalDays = null } });
        Assert.Equal(
            ["assumed.label.interval", "assumed.label.rate", "assumed.label.year", "assumed.sprayer.carrier", "assumed.sprayer.tank"],
            section.Assumptions.Select(a => a.Id).Order(StringComparer.Ordinal));
    }

    private static Section<SprayPlan> Plan(Lawn lawn) => SprayPlanning.Plan(lawn, Some.Choices, Tables.Shipped, Some.Summaries(lawn), Some.SeedDown);

    private static VolumePerArea Ounces(double perAcre) => VolumePerArea.FromFluidOuncesPerAcre(perAcre);
}
