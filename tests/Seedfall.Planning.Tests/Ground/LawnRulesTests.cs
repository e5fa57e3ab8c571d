using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Tests.Rules;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Tests.Ground;

public sealed class LawnRulesTests
{
    private static readonly GroundPoint[] Square = [new(0, 0), new(10, 0), new(10, 10), new(0, 10)];

    /// <summary>Path at which the changed lawn must be refused, and the change.</summary>
    public static TheoryData<string, Lawn> Wrong { get; } = new()
    {
        { "id", Some.Lawn() with { Id = "Front Lawn" } },
        { "name", Some.Lawn() with { Name = " " } },
        { "place.latitude", Some.Lawn() with { Place = new Place(-86.9, 40.4, 190) } },
        { "place.latitude", Some.Lawn() with { Place = new Place(double.NaN, 40.4, 190) } },
        { "place.longitude", Some.Lawn() with { Place = new Place(40.4, 186.9, 190) } },
        { "place.longitude", Some.Lawn() with { Place = new Place(39.3, 76.6, 190), RulePack = "us-md" } },
        { "place.elevation", Some.Lawn() with { Place = new Place(40.4, -86.9, double.PositiveInfinity) } },
        { "timeZone", Some.Lawn() with { TimeZone = "America/Nowhere" } },
        { "timeZone", Some.Lawn() with { Place = new Place(40.4, 86.9, 190), TimeZone = "America/Chicago" } },
        { "rulePack", Some.Lawn() with { RulePack = "us-zz" } },
        { "patches", Some.Lawn() with { Patches = [] } },
        { "patches[1].id", Some.Lawn(Some.Patch("front", 100), Some.Patch("front", 200)) },
        { "patches[0].grasses", Some.Lawn(Some.Patch("front", 100) with { Grasses = [] }) },
        { "patches[0].livingCover", Some.Lawn(Some.Patch("front", 100) with { LivingCover = new Fraction(1.2) }) },
        { "patches[0].livingCover", Some.Lawn(Some.Patch("front", 100) with { LivingCover = new Fraction(double.NaN) }) },
        { "patches[0].weedCover", Some.Lawn(Some.Patch("front", 100) with { LivingCover = Fraction.Of(0.7), WeedCover = Fraction.Of(0.5) }) },
        { "patches[0].sun", Some.Lawn(Some.Patch("front", 100) with { SunHours = 20 }) },
        { "patches[0].slope", Some.Lawn(Some.Patch("front", 100) with { SlopePercent = -5 }) },
        { "patches[0].thatch", Some.Lawn(Some.Patch("front", 100) with { Thatch = Depth.FromInches(-1) }) },
        { "patches[0].grubs", Some.Lawn(Some.Patch("front", 100) with { GrubsPerSquareFoot = -1 }) },
        { "patches[0].shape.area", Some.Lawn(Some.Patch("front", -100)) },
        { "patches[0].shape", Some.Lawn(Shaped(new PatchShape.Rectangle(Length.FromMeters(4000), Length.FromMeters(4000)))) },
        { "patches[0].shape.rectangle.wide", Some.Lawn(Shaped(new PatchShape.Rectangle(Length.FromMeters(4), Length.FromMeters(-4)))) },
        { "patches[0].shape.circle.diameter", Some.Lawn(Shaped(new PatchShape.Circle(Length.Zero))) },
        { "patches[0].shape.offsets.widths", Some.Lawn(Shaped(new PatchShape.Offsets(Length.FromMeters(1), [Length.FromMeters(1)]))) },
        { "patches[0].shape.offsets.widths[1]", Some.Lawn(Shaped(new PatchShape.Offsets(Length.FromMeters(1), [Length.FromMeters(1), Length.FromMeters(-1)]))) },
        { "patches[0].shape.outline.ring", Some.Lawn(Shaped(new PatchShape.Outline([new(0, 0), new(10, 10), new(10, 0), new(0, 10)], []))) },
        { "patches[0].shape.outline.ring", Some.Lawn(Shaped(new PatchShape.Outline([new(0, 0), new(1, 1)], []))) },
        { "patches[0].shape.outline.ring", Some.Lawn(Shaped(new PatchShape.Outline([new(0, 0), new(1, double.NaN), new(5, 5)], []))) },
        { "patches[0].shape.outline.holes[0]", Some.Lawn(Shaped(new PatchShape.Outline(Square, [[new(8, 8), new(12, 8), new(8, 12)]]))) },
        { "patches[0].shape.outline.holes[0]", Some.Lawn(Shaped(new PatchShape.Outline(Square, [[new(20, 20), new(22, 20), new(20, 22)]]))) },
        { "patches[0].shape.outline.holes[1]", Some.Lawn(Shaped(new PatchShape.Outline(Square, [[new(1, 1), new(8, 1), new(1, 8)], [new(2, 2), new(3, 2), new(2, 3)]]))) },
        { "soil.ph", Some.Lawn() with { Soil = new SoilFacts { Ph = 12 } } },
        { "soil.testDate", Some.Lawn() with { Soil = new SoilFacts { TestDate = new DateOnly(1, 1, 1) } } },
        { "water.flow", Watered(new WaterSupply { Flow = FlowRate.FromLitersPerMinute(5000) }) },
        { "water.bucket", Watered(new WaterSupply { Bucket = new BucketTest(Volume.FromGallons(5), 20_000) }) },
        { "water.bucket.time", Watered(new WaterSupply { Bucket = new BucketTest(Volume.FromGallons(5), 0) }) },
        { "water.allowed[0]", Watered(new WaterSupply { Allowed = [new WateringWindow(WeekDays.All, new TimeOnly(9, 0), new TimeOnly(6, 0))] }) },
        { "water.allowed[0].days", Watered(new WaterSupply { Allowed = [new WateringWindow(WeekDays.None, new TimeOnly(6, 0), new TimeOnly(9, 0))] }) },
        { "water.sets[0].patches[0]", Watered(new WaterSupply { Sets = [new SprinklerSet { Name = "one", PatchIds = ["back"] }] }) },
        { "water.sets[0].patches", Watered(new WaterSupply { Sets = [new SprinklerSet { Name = "one", PatchIds = [] }] }) },
        { "water.sets[1].name", Watered(new WaterSupply { Sets = [new SprinklerSet { Name = "one", PatchIds = ["front"] }, new SprinklerSet { Name = "one", PatchIds = ["front"] }] }) },
        { "water.sets[0].rate", Watered(new WaterSupply { Sets = [new SprinklerSet { Name = "one", PatchIds = ["front"], Rate = PrecipitationRate.FromInchesPerHour(-1) }] }) },
        { "water.sets[0].cans.readings", Watered(new WaterSupply { Sets = [new SprinklerSet { Name = "one", PatchIds = ["front"], Cans = new CatchCanTest([Depth.Zero], 10) }] }) },
        { "seedLots[1].lotNumber", Some.Lawn() with { SeedLots = [Lot("a1"), Lot("A1")] } },
        { "seedLots[0]", Some.Lawn() with { SeedLots = [Lot("a1") with { Components = [Kind(0.6), Kind(0.6)] }] } },
        { "seedLots[0]", Some.Lawn() with { SeedLots = [Lot("a1") with { OtherCrop = Fraction.None, Inert = Fraction.None, WeedSeed = Fraction.None, Components = [Kind(0.6)] }] } },
        { "seedLots[0].components[0].purity", Some.Lawn() with { SeedLots = [Lot("a1") with { Components = [Kind(1.4)] }] } },
        { "seedLots[0].components[0].germination", Some.Lawn() with { SeedLots = [Lot("a1") with { Components = [Kind(0.9, 0)] }] } },
        { "seedLots[0].components", Some.Lawn() with { SeedLots = [Lot("a1") with { Components = [] }] } },
        { "seedLots[0].bags[0].size", Some.Lawn() with { SeedLots = [Lot("a1") with { Bags = [new BagOffer(Mass.FromPounds(-50), 10m)] }] } },
        { "seedLots[0].bags[0].price", Some.Lawn() with { SeedLots = [Lot("a1") with { Bags = [new BagOffer(Mass.FromPounds(50), -10m)] }] } },
        { "starter", Some.Lawn() with { Starter = Grade(0.5, 0.4, 0.2) } },
        { "starter.nitrogen", Some.Lawn() with { Starter = Grade(0, 0.2, 0.2) } },
        { "prices.currency", Some.Lawn() with { Prices = new PriceList { Currency = "dollars" } } },
        { "sprayed[0].date", Some.Lawn() with { Sprayed = [new PastSpray { ActiveIngredient = "prodiamine", Date = new DateOnly(1925, 4, 1) }] } },
        { "preEmergent.rate", Some.Lawn() with { PreEmergent = Label() with { Rate = VolumePerArea.Zero } } },
        { "preEmergent.barred", Some.Lawn() with { PreEmergent = Label() with { LabeledAtSeeding = [GrassSpecies.TallFescue], Barred = [GrassSpecies.TallFescue] } } },
        { "preEmergent.seedingIntervalDays", Some.Lawn() with { PreEmergent = Label() with { SeedingIntervalDays = -3 } } },
        { "preEmergent.rate", Some.Lawn() with { PreEmergent = Label() with { Rate = MassPerArea.FromPoundsPerThousandSquareFeet(60) } } },
        { "preEmergent.maximumRate", Some.Lawn() with { PreEmergent = Label() with { MaximumRate = MassPerArea.FromPoundsPerAcre(1) } } },
        { "preEmergent.maximumPerYear", Some.Lawn() with { PreEmergent = Label() with { Rate = MassPerArea.FromPoundsPerAcre(1), MaximumPerYear = VolumePerArea.FromFluidOuncesPerAcre(16) } } },
        { "preEmergent.appliedThisYear", Some.Lawn() with { PreEmergent = Label() with { AppliedThisYear = MassPerArea.FromPoundsPerAcre(1) } } },
        { "preEmergent.strength", Some.Lawn() with { PreEmergent = Label() with { Strength = ProductStrength.Percent(Fraction.FromPercent(50)) } } },
        { "preEmergent.mowingsBeforeSeedlings", Some.Lawn() with { PreEmergent = Label() with { MowingsBeforeSeedlings = 40 } } },
        { "sprayer.tank", Some.Lawn() with { Sprayer = new SprayerFacts { Tank = Volume.Zero } } },
        { "spreader.swath", Some.Lawn() with { Spreader = new SpreaderFacts { Swath = Length.FromMeters(-2) } } },
    };

    [Theory(DisableDiscoveryEnumeration = true)]
    [MemberData(nameof(Wrong))]
    public void What_cannot_be_right_is_named_with_its_path(string path, Lawn lawn)
    {
        var problems = LawnRules.Problems(lawn, Tables.Shipped);
        var named = Assert.Single(problems, p => p.Path == path);
        Assert.NotEmpty(named.Found);
        Assert.NotEmpty(named.Expected);
        // One fault is not reported under other names.
        Assert.All(problems, p => Assert.StartsWith(path.Split('.', '[')[0], p.Path, StringComparison.Ordinal));
    }

    [Fact]
    public void A_plain_lawn_and_the_smallest_one_have_no_problems()
    {
        Assert.Empty(LawnRules.Problems(Some.Lawn(), Tables.Shipped));
        Assert.Empty(LawnRules.Problems(Some.Lawn() with { TimeZone = "America/Indiana/Indianapolis", RulePack = "us-il", SeedLots = [Lot("a1"), Lot("a2")] }, Tables.Shipped));
        Assert.Empty(LawnRules.Problems(Some.Lawn() with { Place = new Place(-43.5, 172.6, 10), TimeZone = "Pacific/Auckland" }, Tables.Shipped));
    }

    [Fact]
    public void A_crossing_outline_says_where()
    {
        var lawn = Some.Lawn(Shaped(new PatchShape.Outline([new(0, 0), new(10, 10), new(10, 0), new(0, 10)], [])));
        Assert.Contains("side 1 meets side 3 at 5 m east, 5 m north", LawnRules.Problems(lawn)[0].Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Reversed_coordinates_are_called_that() =>
        Assert.Contains("reversed", LawnRules.Problems(Some.Lawn() with { Place = new Place(-86.9, 40.4, 190) })[0].Expected, StringComparison.Ordinal);

    private static Patch Shaped(PatchShape shape) => Some.Patch("front", 100) with { Shape = shape };

    private static Lawn Watered(WaterSupply water) => Some.Lawn() with { Water = water };

    private static SeedComponent Kind(double purity, double germination = 0.85) => new(GrassSpecies.KentuckyBluegrass, new Fraction(purity), new Fraction(germination));

    private static SeedLot Lot(string number) => new() { LotNumber = number, Components = [Kind(0.95)] };

    private static FertilizerProduct Grade(double n, double p, double k) => new() { Name = "grade", Nitrogen = Fraction.Of(n), Phosphate = Fraction.Of(p), Potash = Fraction.Of(k) };

    private static HerbicideLabel Label() => new() { ActiveIngredient = "mesotrione", Rate = VolumePerArea.FromFluidOuncesPerAcre(5) };
}
