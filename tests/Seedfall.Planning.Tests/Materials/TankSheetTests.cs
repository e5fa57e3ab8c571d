using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Records;
using Seedfall.Planning.Tests.Ground;
using Seedfall.Planning.Tests.Rules;

namespace Seedfall.Planning.Tests.Materials;

public sealed class TankSheetTests
{
    private static readonly double FourPounds = LabelRate.StrengthFromPoundsPerGallon(4);

    private static HerbicideLabel Label { get; } = new()
    {
        ActiveIngredient = "mesotrione",
        Strength = ProductStrength.PerLiter(FourPounds),
        Rate = Ounces(5),
        MaximumRate = Ounces(8),
        MaximumPerYear = Ounces(16),
        LabeledAtSeeding = [GrassSpecies.KentuckyBluegrass, GrassSpecies.TallFescue],
        SeedingIntervalDays = 0,
        RepeatAfterEmergenceDays = 28,
    };

    private static Lawn Sprayed { get; } = Some.Lawn() with
    {
        PreEmergent = Label,
        Sprayer = new SprayerFacts { Tank = Volume.FromGallons(4), Carrier = VolumePerArea.FromGallonsPerThousandSquareFeet(1.5) },
    };

    private static DateOnly Day => Some.SeedDown;

    [Fact]
    public void With_nothing_recorded_the_lawn_is_mixed_and_the_cautions_lead()
    {
        var sheet = Mix(Sprayed, FieldLog.Empty);
        Assert.Empty(sheet.Walls);
        Assert.False(sheet.IsRepeat);
        var trip = Assert.Single(sheet.Trips);
        Assert.True(trip.Pesticide);
        Assert.Equal(["9.05 mL (0.306 fl oz) in a 10 mL syringe"], trip.Read[0]);
        Assert.Equal(3, trip.Read.Count);
        Assert.Equal([Cautions.LabelId, Cautions.MixId, Cautions.SprayId], sheet.Cautions.Select(c => c.Id));
    }

    [Fact]
    public void The_record_counts_against_the_year_and_each_part_is_named()
    {
        var lawn = Sprayed with { PreEmergent = Label with { AppliedThisYear = Ounces(4) } };
        var wall = Assert.Single(Mix(lawn, FieldLog.Of([Spray(Day.AddDays(-90), 8)])).Walls);
        Assert.Equal("label.yearly-maximum", wall.Id);
        Assert.Contains("4 entered in the notes + 8 in the record + 5 now = 17 fl oz per acre", wall.Statement, StringComparison.Ordinal);
        Assert.Contains("4 fl oz per acre", wall.Instead, StringComparison.Ordinal);
        Assert.Empty(Mix(lawn, FieldLog.Of([Spray(Day.AddDays(-90), 7)])).Walls);
        Assert.Empty(Mix(lawn, FieldLog.Of([Spray(Day.AddYears(-1), 8)])).Walls);
    }

    [Fact]
    public void The_whole_plan_counts_the_record_too()
    {
        var log = FieldLog.Of([Spray(Day.AddDays(-90), 12)]);
        var section = SprayPlanning.Plan(Sprayed, Some.Choices, Tables.Shipped, Some.Summaries(Sprayed), Day, log);
        Assert.Null(section.Value);
        Assert.Contains(section.Walls, w => w.Id == "label.yearly-maximum");

        // What went on at seed-down is the plan's own application and is not counted twice.
        Assert.Empty(SprayPlanning.Plan(Sprayed, Some.Choices, Tables.Shipped, Some.Summaries(Sprayed), Day, FieldLog.Of([Spray(Day, 5)])).Walls);
    }

    [Fact]
    public void Never_above_the_label_in_any_tank_and_the_tanks_are_the_total() =>
        Gen.Select(Gen.Double[1, 8], Gen.Double[0.5, 3], Gen.Double[1, 10], Gen.Double[500, 20_000], Gen.Double[0, 8]).Sample((rate, carrier, tank, squareFeet, applied) =>
        {
            var lawn = Sprayed with
            {
                Patches = [Some.Patch("front", squareFeet)],
                PreEmergent = Label with { Rate = Ounces(rate), RepeatAfterEmergenceDays = 28 },
                Sprayer = new SprayerFacts { Tank = Volume.FromGallons(tank), Carrier = VolumePerArea.FromGallonsPerThousandSquareFeet(carrier) },
            };
            var sheet = Mix(lawn, applied < 0.1 ? FieldLog.Empty : FieldLog.Of([Spray(Day.AddDays(-100), applied)]));
            Assert.Equal(rate + (applied < 0.1 ? 0 : applied) > 16.0 * (1 + 1e-6), sheet.Walls.Any(w => w.Id == "label.yearly-maximum"));
            foreach (var trip in sheet.Trips)
            {
                Assert.Equal(trip.Trip.Products[0].Total.Value, trip.Trip.Tanks.Sum(t => t.Products[0].Value), 9);
                Assert.Equal(trip.Trip.CarrierTotal.Value, trip.Trip.Tanks.Sum(t => t.Carrier.Value), 6);
                Assert.All(trip.Trip.Tanks, t => Assert.True(t.Products[0].Value / t.Carrier.Value * carrier <= Ounces(rate).LitersPerSquareMeter / VolumePerArea.FromGallonsPerThousandSquareFeet(1).LitersPerSquareMeter * (1 + 1e-6)));
                Assert.True(trip.Rinse!.Products[0].OnStrip.Value <= trip.Trip.Products[0].Rate.Value);
            }
        });

    [Fact]
    public void A_repeat_waits_for_the_days_after_emergence()
    {
        var log = (IReadOnlyList<LogEntry>)[Spray(Day, 5), Seeded(Day)];
        Assert.Contains("no first green", Repeat(Mix(Sprayed, FieldLog.Of(log), Day.AddDays(20))).Statement, StringComparison.Ordinal);
        log = [.. log, Green(Day.AddDays(10))];
        Assert.Contains("28 days must pass", Repeat(Mix(Sprayed, FieldLog.Of(log), Day.AddDays(37))).Statement, StringComparison.Ordinal);
        var sheet = Mix(Sprayed, FieldLog.Of(log), Day.AddDays(38));
        Assert.Empty(sheet.Walls);
        Assert.True(sheet.IsRepeat);
    }

    [Fact]
    public void A_repeat_waits_for_the_mowings_its_label_counts()
    {
        var lawn = Sprayed with { PreEmergent = Label with { MowingsBeforeSeedlings = 2 } };
        IReadOnlyList<LogEntry> log = [Spray(Day, 5), Seeded(Day), Green(Day.AddDays(10)), Mowed(Day.AddDays(5)), Mowed(Day.AddDays(30))];
        Assert.Contains("2 mowings of the new grass before it goes on seedlings; 1 are in the log", Repeat(Mix(lawn, FieldLog.Of(log), Day.AddDays(40))).Statement, StringComparison.Ordinal);
        Assert.Empty(Mix(lawn, FieldLog.Of([.. log, Mowed(Day.AddDays(38))]), Day.AddDays(40)).Walls);
    }

    [Fact]
    public void A_second_mix_of_the_same_week_is_refused_although_the_year_has_room()
    {
        var log = FieldLog.Of([Spray(Day.AddDays(-1), 5)]);
        Assert.Contains("fewer have passed", Repeat(Mix(Sprayed, log)).Statement, StringComparison.Ordinal);
        Assert.Contains("not entered", Repeat(Mix(Sprayed with { PreEmergent = Label with { RepeatAfterEmergenceDays = null } }, log)).Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_recorded_spray_holds_seed_back_for_its_interval()
    {
        var log = FieldLog.Of([Spray(Day.AddDays(-60), 20, "prodiamine")]);
        var wall = Assert.Single(Mix(Sprayed, log).Walls);
        Assert.StartsWith("label.seeding-interval", wall.Id, StringComparison.Ordinal);
        Assert.Contains("prodiamine", wall.Rule, StringComparison.Ordinal);
        var noted = Sprayed with { Sprayed = [new PastSpray { ActiveIngredient = "Prodiamine 65 WG", Date = Day.AddDays(-60), LabelSeedingIntervalDays = 30 }] };
        Assert.Empty(Mix(noted, log).Walls);
    }

    [Fact]
    public void What_is_sprayed_after_seed_down_does_not_hold_the_seed_that_is_down()
    {
        var log = FieldLog.Of([Seeded(Day), Spray(Day.AddDays(35), 20, "quinclorac"), Spray(Day.AddDays(-5), 5)]);
        var past = Assert.Single(RecordedSprays.Of(Sprayed, log, Day.Year).Sprayed);
        Assert.Equal("mesotrione", past.ActiveIngredient);
        Assert.Equal(0, past.LabelSeedingIntervalDays);
        Assert.Same(Sprayed, RecordedSprays.Of(Sprayed, FieldLog.Empty, Day.Year));
    }

    [Fact]
    public void A_record_without_an_amount_that_can_be_counted_is_refused()
    {
        var dry = Spray(Day.AddDays(-90), 1) with { };
        dry = dry with { What = dry.What with { Actives = [], Product = "mesotrione on a granule", Amount = new ProductAmount(Mass.FromPounds(10), null) } };
        Assert.Equal("label.yearly-maximum.uncounted", Assert.Single(Mix(Sprayed, FieldLog.Of([dry])).Walls).Id);
    }

    [Fact]
    public void A_dry_product_is_not_measured_by_volume() =>
        Assert.Equal("mix.by-weight", Assert.Single(Mix(Sprayed with { PreEmergent = Label with { Formulation = FormulationClass.DryFlowable } }, FieldLog.Empty).Walls).Id);

    [Theory]
    [InlineData("2,4-D", "2,4-DB", false)]
    [InlineData("2,4-D", "2,4-D amine", true)]
    [InlineData("Mesotrione 40 SC", "mesotrione", true)]
    [InlineData("", "mesotrione", false)]
    public void Names_are_the_same_where_one_stands_whole_in_the_other(string a, string b, bool same) => Assert.Equal(same, ActiveName.Same(a, b));

    [Theory]
    [InlineData(3.25, true, "3.25 mL (0.110 fl oz) in a 10 mL syringe")]
    [InlineData(45.5, true, "45.5 mL (1.54 fl oz) in a 100 mL cylinder")]
    [InlineData(1250, true, "1,250 mL (42.3 fl oz) in a marked jug")]
    [InlineData(15, false, "15.0 mL (0.507 fl oz), about 3 tsp")]
    [InlineData(15, true, "15.0 mL (0.507 fl oz) in a 100 mL cylinder")]
    public void A_dose_is_read_off_a_measure(double milliliters, bool pesticide, string words) => Assert.Equal(words, DoseMeasure.Words(Volume.FromMilliliters(milliliters), pesticide));

    [Fact]
    public void Rinsate_over_treated_ground_stays_within_the_label()
    {
        var rinse = Mix(Sprayed, FieldLog.Empty).Trips[0].Rinse!;
        var product = rinse.Products[0];

        // Left in the sprayer over the ground it needs is just the room the label leaves.
        Assert.Equal((Ounces(8) - Ounces(5)).LitersPerSquareMeter, product.Left.Value / product.LeastArea!.Value, 12);
        Assert.Null(Mix(Sprayed with { PreEmergent = Label with { MaximumRate = Ounces(5) } }, FieldLog.Empty).Trips[0].Rinse!.Products[0].LeastArea);
        Assert.Equal(rinse.Strip.Value * Ounces(5).LitersPerSquareMeter, product.Left.Value, 12);
    }

    private static Wall Repeat(TankSheet sheet) => Assert.Single(sheet.Walls, w => w.Id == "label.repeat");

    private static TankSheet Mix(Lawn lawn, FieldLog log, DateOnly? day = null) => TankSheet.Of(lawn, Some.Choices, Tables.Shipped, log, day ?? Day);

    private static LogEntry.SeededDown Seeded(DateOnly day) => new() { Id = Guid.NewGuid(), At = At(day) };

    private static LogEntry.Mowed Mowed(DateOnly day) => new() { Id = Guid.NewGuid(), At = At(day) };

    private static LogEntry.FirstGreen Green(DateOnly day) => new() { Id = Guid.NewGuid(), At = At(day) };

    /// <summary>A spray at so many ounces per acre of a four-pound product over a quarter acre.</summary>
    private static LogEntry.Applied Spray(DateOnly day, double ouncesPerAcre, string active = "mesotrione") => new(new Application
    {
        Kind = ApplicationKind.Pesticide,
        Product = $"{active} 4 lb/gal",
        Amount = new ProductAmount(null, Volume.FromFluidOunces(ouncesPerAcre / 4)),
        Area = Area.FromAcres(0.25),
        Actives = [new AppliedActive(active, Mass.FromKilograms(Volume.FromFluidOunces(ouncesPerAcre / 4).Liters * FourPounds))],
    })
    {
        Id = Guid.NewGuid(),
        At = At(day),
    };

    private static DateTimeOffset At(DateOnly day) => new(day.ToDateTime(new TimeOnly(9, 0)), TimeSpan.FromHours(-5));

    private static VolumePerArea Ounces(double perAcre) => VolumePerArea.FromFluidOuncesPerAcre(perAcre);
}
