using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;

namespace Seedfall.Exchange.Lawns;

/// <summary>A seed lot as its tag reads.</summary>
internal sealed class SeedLotFormat : ObjectFormat<SeedLot>
{
    public static readonly SeedLotFormat One = new();

    private readonly Field<SeedLot, string> _number;
    private readonly Field<SeedLot, IReadOnlyList<SeedComponent>> _components;
    private readonly Field<SeedLot, Fraction?> _otherCrop, _inert, _weed;
    private readonly Field<SeedLot, DateOnly?> _tested;
    private readonly Field<SeedLot, bool> _endophyte;
    private readonly Field<SeedLot, IReadOnlyList<BagOffer>> _bags;

    private SeedLotFormat()
        : base("seedLot")
    {
        _number = Required("lotNumber", Scalars.Words, s => s.LotNumber, "Lot number on the tag; unique within the lawn.");
        _components = Required("components", new ListFormat<SeedComponent>(SeedComponentFormat.One, 1), s => s.Components, "Kinds of seed on the tag.");
        _otherCrop = Optional("otherCrop", Quantities.Share.Format, s => s.OtherCrop, "");
        _inert = Optional("inert", Quantities.Share.Format, s => s.Inert, "Inert matter, coating included.");
        _weed = Optional("weedSeed", Quantities.Share.Format, s => s.WeedSeed, "");
        _tested = Optional("testDate", Scalars.Date, s => s.TestDate, "");
        _endophyte = Usual("endophyte", Scalars.Truth, s => s.Endophyte, false, "True when the tag says endophyte-enhanced.");
        _bags = List("bags", BagFormat.One, s => s.Bags, "Bag sizes on offer.");
    }

    protected override SeedLot Build(FieldValues v) => new()
    {
        LotNumber = v.Get(_number),
        Components = v.Get(_components),
        OtherCrop = v.Get(_otherCrop),
        Inert = v.Get(_inert),
        WeedSeed = v.Get(_weed),
        TestDate = v.Get(_tested),
        Endophyte = v.Get(_endophyte),
        Bags = v.Get(_bags),
    };
}

internal sealed class SeedComponentFormat : ObjectFormat<SeedComponent>
{
    public static readonly SeedComponentFormat One = new();

    private readonly Field<SeedComponent, GrassSpecies> _species;
    private readonly Field<SeedComponent, Fraction> _purity, _germination;
    private readonly Field<SeedComponent, double?> _seeds;
    private readonly Field<SeedComponent, string?> _variety;

    private SeedComponentFormat()
        : base("seedComponent")
    {
        _species = Required("species", NamesOf<GrassSpecies>.Format, c => c.Species, "");
        _purity = Required("purity", Quantities.Share.Format, c => c.Purity, "Pure seed of this kind, share of the bag's weight.");
        _germination = Required("germination", Quantities.Share.Format, c => c.Germination, "Share of that seed that germinates.");
        _seeds = Optional("seeds", Quantities.SeedsPerKilogram.Format, c => c.SeedsPerKilogram, "Seeds in a weight of pure seed; the species' usual count where absent.");
        _variety = Optional("variety", Scalars.Words, c => c.Variety, "")!;
    }

    protected override SeedComponent Build(FieldValues v) => new(v.Get(_species), v.Get(_purity), v.Get(_germination))
    {
        SeedsPerKilogram = v.Get(_seeds),
        Variety = v.Get(_variety),
    };
}

internal sealed class BagFormat : ObjectFormat<BagOffer>
{
    public static readonly BagFormat One = new();

    private readonly Field<BagOffer, Mass> _size;
    private readonly Field<BagOffer, decimal?> _price;

    private BagFormat()
        : base("bag")
    {
        _size = Required("size", Quantities.Mass.Format, b => b.Size, "");
        _price = Optional("price", Scalars.Money, b => b.Price, "In the lawn's currency.");
    }

    protected override BagOffer Build(FieldValues v) => new(v.Get(_size), v.Get(_price));
}

/// <summary>A fertilizer by its grade.</summary>
internal sealed class FertilizerFormat : ObjectFormat<FertilizerProduct>
{
    public static readonly FertilizerFormat One = new();

    private readonly Field<FertilizerProduct, string> _name;
    private readonly Field<FertilizerProduct, Fraction> _nitrogen, _phosphate, _potash;
    private readonly Field<FertilizerProduct, Fraction?> _slow;
    private readonly Field<FertilizerProduct, MassPerArea?> _rate;
    private readonly Field<FertilizerProduct, IReadOnlyList<BagOffer>> _bags;

    private FertilizerFormat()
        : base("fertilizer")
    {
        _name = Required("name", Scalars.Words, f => f.Name, "Generic name.");
        _nitrogen = Required("nitrogen", Quantities.Share.Format, f => f.Nitrogen, "First number of the grade.");
        _phosphate = Required("phosphate", Quantities.Share.Format, f => f.Phosphate, "Second number of the grade, as P2O5.");
        _potash = Required("potash", Quantities.Share.Format, f => f.Potash, "Third number of the grade, as K2O.");
        _slow = Optional("slowNitrogen", Quantities.Share.Format, f => f.SlowNitrogen, "Share of the nitrogen that is slow-release; counted as none where absent.");
        _rate = Optional("rate", Quantities.DryRate.Format, f => f.Rate, "Product per area wanted in one application; Seedfall's own rate under the rules where absent.");
        _bags = List("bags", BagFormat.One, f => f.Bags, "Bag sizes on offer.");
    }

    protected override FertilizerProduct Build(FieldValues v) => new()
    {
        Name = v.Get(_name),
        Nitrogen = v.Get(_nitrogen),
        Phosphate = v.Get(_phosphate),
        Potash = v.Get(_potash),
        SlowNitrogen = v.Get(_slow),
        Rate = v.Get(_rate),
        Bags = v.Get(_bags),
    };
}

internal sealed class CoverFormat : ObjectFormat<CoverMaterial>
{
    public static readonly CoverFormat One = new();

    private readonly Field<CoverMaterial, CoverKind> _kind;
    private readonly Field<CoverMaterial, Depth?> _layer;
    private readonly Field<CoverMaterial, IReadOnlyList<BagOffer>> _bags;

    private CoverFormat()
        : base("cover")
    {
        _kind = Required("kind", NamesOf<CoverKind>.Format, c => c.Kind, "");
        _layer = Optional("layer", Quantities.Depth.Format, c => c.Layer, "Depth of peat or compost; the usual one where absent.");
        _bags = List("bags", BagFormat.One, c => c.Bags, "Bag sizes on offer.");
    }

    protected override CoverMaterial Build(FieldValues v) => new(v.Get(_kind)) { Layer = v.Get(_layer), Bags = v.Get(_bags) };
}

internal sealed class PriceFormat : ObjectFormat<PriceList>
{
    public static readonly PriceFormat One = new();

    private readonly Field<PriceList, string> _currency;
    private readonly Field<PriceList, decimal?> _water, _seed, _starter, _preEmergent, _preEmergentDry, _cover;

    private PriceFormat()
        : base("prices")
    {
        _currency = Usual("currency", Currency, p => p.Currency, "USD", "ISO 4217 code.");
        _water = Optional("waterPerThousandGallons", Scalars.Money, p => p.WaterPerThousandGallons, "");
        _seed = Optional("seedPerPound", Scalars.Money, p => p.SeedPerPound, "");
        _starter = Optional("starterPerPound", Scalars.Money, p => p.StarterPerPound, "");
        _preEmergent = Optional("preEmergentPerFluidOunce", Scalars.Money, p => p.PreEmergentPerFluidOunce, "");
        _preEmergentDry = Optional("preEmergentPerOunce", Scalars.Money, p => p.PreEmergentPerOunce, "For a dry pre-emergent, by weight.");
        _cover = Optional("coverPerPound", Scalars.Money, p => p.CoverPerPound, "");
    }

    private static JsonFormat<string> Currency => new TextFormat<string>(
        t => t.Length == 3 && t.All(char.IsAsciiLetterUpper) ? new(t) : null, t => t, "a currency code like \"USD\"", () => new() { ["pattern"] = "^[A-Z]{3}$" });

    protected override PriceList Build(FieldValues v) => new()
    {
        Currency = v.Get(_currency),
        WaterPerThousandGallons = v.Get(_water),
        SeedPerPound = v.Get(_seed),
        StarterPerPound = v.Get(_starter),
        PreEmergentPerFluidOunce = v.Get(_preEmergent),
        PreEmergentPerOunce = v.Get(_preEmergentDry),
        CoverPerPound = v.Get(_cover),
    };
}
