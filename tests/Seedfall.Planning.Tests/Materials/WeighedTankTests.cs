using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Records;
using Seedfall.Planning.Tests.Ground;
using Seedfall.Planning.Tests.Rules;

namespace Seedfall.Planning.Tests.Materials;

/// <summary>Powders and granules go through the tank by weight, held to the same label.</summary>
public sealed class WeighedTankTests
{
    private static HerbicideLabel Label { get; } = new()
    {
        ActiveIngredient = "siduron",
        Formulation = FormulationClass.WettablePowder,
        Strength = ProductStrength.Percent(Fraction.FromPercent(50)),
        Rate = Pounds(8),
        MaximumRate = Pounds(12),
        MaximumPerYear = Pounds(24),
        LabeledAtSeeding = [GrassSpecies.KentuckyBluegrass, GrassSpecies.TallFescue],
        SeedingIntervalDays = 0,
        RepeatAfterEmergenceDays = 28,
        RegistrationNumber = "0000-000",
    };

    private static Lawn Sprayed { get; } = Some.Lawn() with
    {
        PreEmergent = Label,
        Sprayer = new SprayerFacts { Tank = Volume.FromGallons(4), Carrier = VolumePerArea.FromGallonsPerThousandSquareFeet(1.5) },
    };

    private static DateOnly Day => Some.SeedDown;

    [Fact]
    public void A_powder_is_weighed_tank_by_tank_with_its_own_cautions()
    {
        // Arithmetic, not outside evidence: 8 lb per acre is 83.304 g per 1,000 sq ft; 4 gal at 1.5 gal carry 222.144 g, 3.25 gal 180.492 g.
        var sheet = Mix(Sprayed);
        Assert.Empty(sheet.Walls);
        var trip = Assert.Single(sheet.Trips);
        Assert.Equal(["222 g (7.83 dry oz) on a scale that shows 1 g"], trip.Read[0]);
        Assert.Equal(["180 g (6.34 dry oz) on a scale that shows 1 g"], trip.Read[2]);
        Assert.Equal(0.624, trip.Trip.Products[0].Total.Value, 9);
        Assert.Equal(QuantityKind.DryDose, trip.Trip.Products[0].Total.Kind);
        Assert.Equal("8 lb per acre (8.97 kg/ha)", FigureText.Both(trip.Trip.Products[0].Rate));
        Assert.Equal(83.304 / 1.5, Assert.Single(trip.PerGallon).Value * 1000.0, 2);
        Assert.Equal([Cautions.LabelId, Cautions.MixId, Cautions.WeighId, Cautions.SprayId], sheet.Cautions.Select(c => c.Id));
        Assert.Contains(trip.Notes, n => n.Id == "mix.scale" && n.Statement.Contains("0.1 g below 100 g and 1 g above", StringComparison.Ordinal));
        Assert.DoesNotContain(trip.Notes, n => n.Id == "mix.fine-scale");
        Assert.All(sheet.Year, f => Assert.Equal(QuantityKind.DryLabelRate, f.Kind));
    }

    [Fact]
    public void Never_above_the_label_in_any_tank_and_within_a_mark_of_it_in_all() =>
        Gen.Select(Gen.Double[0.02, 12], Gen.Double[0.5, 3], Gen.Double[1, 10], Gen.Double[500, 20_000], Gen.Double[0, 24]).Sample((pounds, carrier, tank, squareFeet, applied) =>
        {
            var lawn = Sprayed with
            {
                Patches = [Some.Patch("front", squareFeet)],
                PreEmergent = Label with { Rate = Pounds(pounds), AppliedThisYear = Pounds(applied), RepeatAfterEmergenceDays = null },
                Sprayer = new SprayerFacts { Tank = Volume.FromGallons(tank), Carrier = VolumePerArea.FromGallonsPerThousandSquareFeet(carrier) },
            };
            var sheet = Mix(lawn);
            Assert.Equal(pounds + applied > 24.0 * (1 + 1e-6), sheet.Walls.Any(w => w.Id == "label.yearly-maximum"));
            foreach (var mixed in sheet.Trips)
            {
                var (trip, product) = (mixed.Trip, mixed.Trip.Products[0]);
                var wantedKg = Pounds(pounds).KilogramsPerSquareMeter * Area.FromSquareFeet(squareFeet).SquareMeters;
                Assert.Equal(product.Total.Value, trip.Tanks.Sum(t => t.Products[0].Value), 9);
                Assert.True(product.Total.Value <= wantedKg * (1 + 1e-6));
                Assert.True(product.Total.Value >= wantedKg - trip.Tanks.Sum(t => TankMix.ScaleStep(new Mass(wantedKg * t.Carrier.Value / trip.CarrierTotal.Value)).Kilograms) - 1e-9);
                Assert.All(trip.Tanks, t => Assert.True(t.Products[0].Value / t.Carrier.Value * carrier <= Pounds(pounds).KilogramsPerSquareMeter / VolumePerArea.FromGallonsPerThousandSquareFeet(1).LitersPerSquareMeter * (1 + 1e-6)));
                Assert.True(mixed.Rinse!.Products[0].OnStrip.Value <= product.Rate.Value);
                Assert.True(mixed.Rinse.Products[0].LeastArea is not { } least || mixed.Rinse.Products[0].Left.Value / least.Value + product.Rate.Value <= Pounds(12).KilogramsPerSquareMeter * (1 + 1e-9));
            }
        });

    [Fact]
    public void By_weight_and_by_volume_agree_where_a_liter_is_taken_to_weigh_a_kilogram() =>
        Gen.Select(Gen.Double[0.05, 20], Gen.Double[0, 30], Gen.Double[500, 20_000], Gen.Double[1, 10]).Sample((rate, applied, squareFeet, tank) =>
        {
            var (wet, dry) = (Twin(FormulationClass.SuspensionConcentrate, Liters), Twin(FormulationClass.DryFlowable, Kilograms));
            Assert.Equal(wet.Walls.Select(w => w.Id), dry.Walls.Select(w => w.Id));
            Assert.Equal(wet.Year.Select(f => Math.Round(f.Value, 12)), dry.Year.Select(f => Math.Round(f.Value, 12)));
            Assert.Equal(wet.Trips.Count, dry.Trips.Count);
            foreach (var (a, b) in wet.Trips.Zip(dry.Trips))
            {
                Assert.Equal(a.Trip.Products[0].PerPatch[0].Value, b.Trip.Products[0].PerPatch[0].Value, 12);
                Assert.Equal(a.PerGallon[0].Value, b.PerGallon[0].Value, 12);
                Assert.Equal(a.Rinse!.Products[0].Left.Value, b.Rinse!.Products[0].Left.Value, 12);
                Assert.Equal(a.Rinse.Products[0].LeastArea?.Value ?? 0.0, b.Rinse.Products[0].LeastArea?.Value ?? 0.0, 6);
                Assert.Equal(a.Trip.Tanks.Select(t => t.Carrier.Value), b.Trip.Tanks.Select(t => t.Carrier.Value));
            }

            TankSheet Twin(FormulationClass formulation, Func<double, ProductRate> per) => Mix(Sprayed with
            {
                Patches = [Some.Patch("front", squareFeet)],
                Sprayer = new SprayerFacts { Tank = Volume.FromGallons(tank), Carrier = VolumePerArea.FromGallonsPerThousandSquareFeet(1.5) },
                PreEmergent = Label with { Formulation = formulation, Strength = null, Rate = per(rate), MaximumRate = per(15), MaximumPerYear = per(30), AppliedThisYear = per(applied), RepeatAfterEmergenceDays = null },
            });

            static ProductRate Liters(double perHectare) => VolumePerArea.FromLitersPerHectare(perHectare);

            static ProductRate Kilograms(double perHectare) => MassPerArea.FromKilogramsPerHectare(perHectare);
        });

    [Fact]
    public void The_year_is_held_by_weight_and_the_wall_says_so()
    {
        var wall = Assert.Single(Mix(Sprayed with { PreEmergent = Label with { AppliedThisYear = Pounds(6) } }, FieldLog.Of([Spray(12)])).Walls);
        Assert.Equal("label.yearly-maximum", wall.Id);
        Assert.Contains("96 entered in the notes + 192 in the record + 128 now = 416 dry oz (26 lb) per acre of siduron this year is above 384", wall.Statement, StringComparison.Ordinal);
        Assert.Contains("96 dry oz (6 lb) per acre (6.7251 kg/ha) are left", wall.Instead, StringComparison.Ordinal);
        Assert.Contains("siduron at 208 dry oz (13 lb) per acre is above the label's 192", Assert.Single(Mix(Sprayed with { PreEmergent = Label with { Rate = Pounds(13) } }).Walls).Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_liquid_of_the_same_active_counts_by_its_active_ingredient_and_without_it_stops_the_mix()
    {
        var liquid = Spray(12);
        liquid = liquid with { What = liquid.What with { Amount = new ProductAmount(null, Volume.FromLiters(3)) } };
        Assert.Empty(Mix(Sprayed, FieldLog.Of([liquid])).Walls);
        var unknown = liquid with { What = liquid.What with { Actives = [], Product = "siduron" } };
        Assert.Equal("label.yearly-maximum.uncounted", Assert.Single(Mix(Sprayed, FieldLog.Of([unknown])).Walls).Id);
        var noted = Sprayed with { Sprayed = [new PastSpray { ActiveIngredient = "siduron", Date = Day.AddDays(-120), LabelSeedingIntervalDays = 0, Rate = VolumePerArea.FromLitersPerHectare(2) }] };
        Assert.Contains("by volume; it cannot be held against a yearly maximum given by weight", Assert.Single(Mix(noted).Walls).Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void A_liquid_with_its_rate_by_weight_is_refused_in_the_plan_too()
    {
        var lawn = Sprayed with { PreEmergent = Label with { Formulation = FormulationClass.SuspensionConcentrate } };
        Assert.Equal("mix.by-volume", Assert.Single(Mix(lawn).Walls).Id);
        var plan = SprayPlanning.Plan(lawn, Some.Choices, Tables.Shipped, Some.Summaries(lawn), Day);
        Assert.Null(plan.Value);
        Assert.Equal("mix.by-volume", Assert.Single(plan.Walls).Id);
    }

    [Fact]
    public void A_dose_too_small_for_the_scale_asks_for_a_finer_one()
    {
        var small = Mix(Sprayed with { PreEmergent = Label with { Rate = MassPerArea.FromGramsPerSquareMeter(0.005) } }).Trips[0];
        Assert.Equal(["1.2 g (0.042 dry oz) on a scale that shows 0.1 g"], small.Read[0]);
        Assert.Contains(small.Notes, n => n.Id == "mix.fine-scale" && n.Statement.StartsWith("siduron", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0.04, "too little to weigh: less than 0.1 g")]
    [InlineData(12.34, "12.3 g (0.433 dry oz) on a scale that shows 0.1 g")]
    [InlineData(99.99, "99.9 g (3.52 dry oz) on a scale that shows 0.1 g")]
    [InlineData(1234.5, "1,234 g (43.5 dry oz) on a scale that shows 1 g")]
    public void A_dose_is_read_off_a_scale_rounded_down(double grams, string words) => Assert.Equal(words, DoseMeasure.Words(TankMix.Measurable(Mass.FromGrams(grams))));

    [Fact]
    public void A_granule_beside_a_liquid_goes_in_first_and_only_it_is_weighed()
    {
        var lawn = Sprayed with
        {
            PreEmergent = Label with { Formulation = FormulationClass.SolublePowder },
            TankPartners =
            [
                new TankPartner { Name = "soil conditioner", Formulation = FormulationClass.DryFlowable, Rate = MassPerArea.FromPoundsPerThousandSquareFeet(0.25), WithPreEmergent = true },
                new TankPartner { Name = "wetting agent", Formulation = FormulationClass.Surfactant, Rate = VolumePerArea.FromFluidOuncesPerThousandSquareFeet(4), WithPreEmergent = true },
            ],
        };
        var trip = Assert.Single(Mix(lawn).Trips);
        Assert.Equal(["half the water, agitating", "soil conditioner (dry flowable)", "siduron (soluble powder)", "wetting agent (surfactant)", "the rest of the water"], trip.Trip.MixingOrder);
        Assert.Equal([QuantityKind.DryDose, QuantityKind.DryDose, QuantityKind.Dose], trip.Trip.Tanks[0].Products.Select(p => p.Kind));
        Assert.EndsWith("on a scale that shows 1 g", trip.Read[0][0], StringComparison.Ordinal);
        Assert.Contains("mL", trip.Read[0][2], StringComparison.Ordinal);
    }

    private static TankSheet Mix(Lawn lawn, FieldLog? log = null) => TankSheet.Of(lawn, Some.Choices, Tables.Shipped, log ?? FieldLog.Empty, Day);

    /// <summary>So many pounds per acre of the half-strength powder over a quarter acre, ninety days before.</summary>
    private static LogEntry.Applied Spray(double poundsPerAcre) => new(new Application
    {
        Kind = ApplicationKind.Pesticide,
        Product = "siduron 50 % wettable powder",
        Amount = new ProductAmount(Mass.FromPounds(poundsPerAcre / 4), null),
        Area = Area.FromAcres(0.25),
        Actives = [new AppliedActive("siduron", Mass.FromPounds(poundsPerAcre / 4 * 0.5))],
    })
    {
        Id = Guid.NewGuid(),
        At = new(Day.AddDays(-90).ToDateTime(new TimeOnly(9, 0)), TimeSpan.FromHours(-5)),
    };

    private static MassPerArea Pounds(double perAcre) => MassPerArea.FromPoundsPerAcre(perAcre);
}
