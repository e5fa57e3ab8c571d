using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Water;

namespace Seedfall.Exchange.Tests.Support;

/// <summary>Lawns of every shape, with any field missing, and numbers of any number of digits.</summary>
internal static class LawnGen
{
    private static readonly Gen<double> Size = Gen.OneOf(Gen.Double[0.0, 1.0e4], Gen.Double[0.0, 1.0], Gen.Int[0, 5000].Select(i => i * 0.5));
    private static readonly Gen<Fraction> Share = Gen.OneOf(Gen.Double[0.0, 1.0], Gen.Int[0, 100].Select(i => i / 100.0)).Select(Fraction.Of);
    private static readonly Gen<DateOnly> Date = Gen.Int[700000, 740000].Select(DateOnly.FromDayNumber);
    private static readonly Gen<string> Id = Gen.String[Gen.OneOfConst([.. "abcdefghijklmnopqrstuvwxyz0123456789"]), 1, 12];
    private static readonly Gen<string> Words = Gen.OneOf(Gen.String[Gen.Char[' ', 'ÿ'].Where(c => !char.IsControl(c)), 1, 30], Gen.OneOfConst("Vorgarten – süd", "芝生", "a\"b\\c/<d>&'e'"))
        .Where(s => !string.IsNullOrWhiteSpace(s));

    private static readonly Gen<Length> Length = Size.Select(v => new Length(v));
    private static readonly Gen<VolumePerArea> Liquid = Gen.OneOf(Size.Select(v => new VolumePerArea(v / 1.0e5)), Gen.Int[1, 60].Select(i => VolumePerArea.FromFluidOuncesPerAcre(i * 0.5)));
    private static readonly Gen<BagOffer> Bag = Gen.Select(Size, Money(), (s, p) => new BagOffer(new Mass(s), p));
    private static readonly Gen<GroundPoint> Point = Gen.Select(Gen.Double[-500, 500], Gen.Double[-500, 500], (e, n) => new GroundPoint(e, n));

    private static readonly Gen<PatchShape> Shape = Gen.OneOf<PatchShape>(
        Gen.Select(Length, Length, (a, b) => (PatchShape)new PatchShape.Rectangle(a, b)),
        Length.Select(d => (PatchShape)new PatchShape.Circle(d)),
        Gen.Select(Length, Length, (a, b) => (PatchShape)new PatchShape.Triangle(a, b)),
        Gen.Select(Length, Length.Array[2, 9], (a, b) => (PatchShape)new PatchShape.Offsets(a, b)),
        Gen.Select(Point.Array[3, 8], Point.Array[3, 5].Array[0, 2], (r, h) => (PatchShape)new PatchShape.Outline(r, h)),
        Size.Select(a => (PatchShape)new PatchShape.Typed(new Area(a))));

    private static readonly Gen<Patch> Patch =
        from id in Id
        from name in Words
        from shape in Shape
        from grasses in Gen.Enum<GrassSpecies>().Array[1, 3]
        from cover in Maybe(Share)
        from cause in Gen.Enum<DamageCause>()
        from cured in Gen.Bool
        from sun in Maybe(Gen.Double[0, 14])
        from slope in Maybe(Gen.Double[0, 60])
        from thatch in Maybe(Size.Select(v => new Depth(v)))
        from grubs in Maybe(Size)
        from weeds in Maybe(Share)
        from dormant in Maybe(Gen.Bool)
        select new Patch
        {
            Id = id, Name = name, Shape = shape, Grasses = grasses, LivingCover = cover, Cause = cause, CauseCured = cured,
            SunHours = sun, SlopePercent = slope, Thatch = thatch, GrubsPerSquareFoot = grubs, WeedCover = weeds, Dormant = dormant,
        };

    private static readonly Gen<SoilFacts> Soil =
        from texture in Maybe(Gen.Enum<TextureClass>())
        from ph in Maybe(Gen.Double[3, 10])
        from p in Maybe(Size)
        from k in Maybe(Size)
        from tested in Maybe(Date)
        from organic in Maybe(Share)
        select new SoilFacts { Texture = texture, Ph = ph, PhosphorusPpm = p, PotassiumPpm = k, TestDate = tested, OrganicMatter = organic };

    private static readonly Gen<SprinklerSet> Set =
        from name in Words
        from patches in Id.Array[1, 3]
        from kind in Gen.Enum<SprinklerKind>()
        from rate in Maybe(Size.Select(v => new PrecipitationRate(v)))
        from cans in MaybeRef(Gen.Select(Size.Select(v => new Depth(v)).Array[1, 8], Size, (r, m) => new CatchCanTest(r, m)))
        from flow in Maybe(Size.Select(v => new FlowRate(v)))
        from positions in Gen.Int[1, 100]
        select new SprinklerSet { Name = name, PatchIds = patches, Kind = kind, Rate = rate, Cans = cans, Flow = flow, Positions = positions };

    private static readonly Gen<TimeOnly> Time = Gen.Int[0, 1439].Select(m => new TimeOnly(m / 60, m % 60));

    private static readonly Gen<WaterSupply> Water =
        from bucket in MaybeRef(Gen.Select(Size, Size, (v, s) => new BucketTest(new Volume(v), s + 0.5)))
        from flow in Maybe(Size.Select(v => new FlowRate(v)))
        from sets in Set.Array[0, 3]
        from allowed in Gen.Select(Gen.Int[0, 127], Time, Time, (d, f, t) => new WateringWindow((WeekDays)d, f, t)).Array[0, 3]
        from permit in Gen.Bool
        from timer in Maybe(Gen.Bool)
        select new WaterSupply { Bucket = bucket, Flow = flow, Sets = sets, Allowed = allowed, NewSeedPermit = permit, Timer = timer };

    private static readonly Gen<SeedComponent> Component =
        from species in Gen.Enum<GrassSpecies>()
        from purity in Share
        from germination in Share
        from seeds in Maybe(Size)
        from variety in MaybeRef(Words)
        select new SeedComponent(species, purity, germination) { SeedsPerKilogram = seeds, Variety = variety };

    private static readonly Gen<SeedLot> Lot =
        from number in Words
        from components in Component.Array[1, 4]
        from other in Maybe(Share)
        from inert in Maybe(Share)
        from weed in Maybe(Share)
        from tested in Maybe(Date)
        from endophyte in Gen.Bool
        from bags in Bag.Array[0, 3]
        select new SeedLot { LotNumber = number, Components = components, OtherCrop = other, Inert = inert, WeedSeed = weed, TestDate = tested, Endophyte = endophyte, Bags = bags };

    private static readonly Gen<FertilizerProduct> Fertilizer =
        from name in Words
        from n in Share
        from p in Share
        from k in Share
        from slow in Maybe(Share)
        from bags in Bag.Array[0, 3]
        select new FertilizerProduct { Name = name, Nitrogen = n, Phosphate = p, Potash = k, SlowNitrogen = slow, Bags = bags };

    private static readonly Gen<HerbicideLabel> Label =
        from active in Words
        from formulation in Gen.Enum<FormulationClass>()
        from strength in Maybe(Size)
        from rates in Gen.Select(Liquid, Liquid, Maybe(Liquid), Maybe(Liquid), Maybe(Liquid))
        from grasses in Gen.Select(Gen.Enum<GrassSpecies>().Array[0, 3], Gen.Enum<GrassSpecies>().Array[0, 3])
        from days in Gen.Select(Maybe(Gen.Int[0, 730]), Maybe(Gen.Int[0, 730]))
        from wind in Maybe(Size.Select(v => new Speed(v)))
        from hose in Gen.Bool
        from texts in Gen.Select(MaybeRef(Words), MaybeRef(Words))
        select new HerbicideLabel
        {
            ActiveIngredient = active, Formulation = formulation, StrengthKgPerLiter = strength, Rate = rates.Item1, AppliedThisYear = rates.Item2,
            MaximumRate = rates.Item3, MaximumPerYear = rates.Item4, MinimumCarrier = rates.Item5, LabeledAtSeeding = grasses.Item1, Barred = grasses.Item2,
            SeedingIntervalDays = days.Item1, RepeatAfterEmergenceDays = days.Item2, MaximumWind = wind, HoseEndBarred = hose,
            RegistrationNumber = texts.Item1, Reentry = texts.Item2,
        };

    private static readonly Gen<PriceList> Prices =
        from currency in Gen.OneOfConst("USD", "EUR", "CAD")
        from p in Gen.Select(Money(), Money(), Money(), Money(), Money())
        select new PriceList { Currency = currency, WaterPerThousandGallons = p.Item1, SeedPerPound = p.Item2, StarterPerPound = p.Item3, PreEmergentPerFluidOunce = p.Item4, CoverPerPound = p.Item5 };

    public static readonly Gen<Lawn> Any =
        from head in Gen.Select(Id, Words, Gen.Double[-90, 90], Gen.Double[-180, 180], Gen.Double[-430, 9000])
        from zone in MaybeRef(Gen.OneOfConst("America/Chicago", "Europe/Berlin"))
        from patches in Patch.Array[1, 4]
        from use in Gen.Select(Maybe(Gen.Enum<LawnUse>()), Maybe(Gen.Enum<SeedingWork>()), Maybe(Gen.Bool), Maybe(Gen.Bool))
        from ground in Gen.Select(MaybeRef(Soil), MaybeRef(Water))
        from sprayed in Gen.Select(Words, Date, Maybe(Gen.Int[0, 730]), Maybe(Liquid), (a, d, i, r) => new PastSpray { ActiveIngredient = a, Date = d, LabelSeedingIntervalDays = i, Rate = r }).Array[0, 2]
        from spreader in MaybeRef(Gen.Select(Gen.Enum<SpreaderKind>(), Maybe(Length), Maybe(Size.Select(v => new Speed(v))), (k, s, w) => new SpreaderFacts { Kind = k, Swath = s, WalkingSpeed = w }))
        from sprayer in MaybeRef(Gen.Select(Gen.Enum<SprayerKind>(), Maybe(Size.Select(v => new Volume(v))), Maybe(Liquid), (k, t, c) => new SprayerFacts { Kind = k, Tank = t, Carrier = c }))
        from lots in Lot.Array[0, 2]
        from feeds in Gen.Select(MaybeRef(Fertilizer), MaybeRef(Fertilizer))
        from label in MaybeRef(Label)
        from partners in Gen.Select(Words, Gen.Enum<FormulationClass>(), Liquid, Gen.Bool, (n, f, r, w) => new TankPartner { Name = n, Formulation = f, Rate = r, WithPreEmergent = w }).Array[0, 2]
        from cover in MaybeRef(Gen.Select(Gen.Enum<CoverKind>(), Maybe(Size.Select(v => new Depth(v))), Bag.Array[0, 2], (k, l, b) => new CoverMaterial(k) { Layer = l, Bags = b }))
        from prices in MaybeRef(Prices)
        from rules in MaybeRef(Id)
        select new Lawn
        {
            Id = head.Item1, Name = head.Item2, Place = new Place(head.Item3, head.Item4, head.Item5), TimeZone = zone, Patches = patches,
            Use = use.Item1, Work = use.Item2, GrazedOrFed = use.Item3, AppliedForHire = use.Item4, Soil = ground.Item1, Water = ground.Item2,
            Sprayed = sprayed, Spreader = spreader, Sprayer = sprayer, SeedLots = lots, Starter = feeds.Item1, LateFeed = feeds.Item2,
            PreEmergent = label, TankPartners = partners, Cover = cover, Prices = prices, RulePack = rules,
        };

    public static Gen<T?> Maybe<T>(Gen<T> gen)
        where T : struct => Gen.Select(Gen.Bool, gen, (there, value) => there ? value : (T?)null);

    public static Gen<T?> MaybeRef<T>(Gen<T> gen)
        where T : class => Gen.Select(Gen.Bool, gen, (there, value) => there ? value : null);

    private static Gen<decimal?> Money() => Maybe(Gen.Int[0, 1_000_000].Select(c => c / 100m));
}
