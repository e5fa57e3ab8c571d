using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Water;

namespace Seedfall.Exchange.Lawns;

/// <summary>The whole lawn file.</summary>
internal sealed class LawnFormat : ObjectFormat<Lawn>
{
    public const string Version = "seedfall-lawn/1";

    public static readonly LawnFormat One = new();

    private readonly Field<Lawn, string> _id, _name;
    private readonly Field<Lawn, string?> _timeZone, _rulePack, _address, _owner;
    private readonly Field<Lawn, Place> _place;
    private readonly Field<Lawn, IReadOnlyList<Patch>> _patches;
    private readonly Field<Lawn, GroundSheet> _sheet;
    private readonly Field<Lawn, LawnUse?> _use;
    private readonly Field<Lawn, SeedingWork?> _work;
    private readonly Field<Lawn, bool?> _grazed, _hire;
    private readonly Field<Lawn, SoilFacts> _soil;
    private readonly Field<Lawn, IReadOnlyList<PastSpray>> _sprayed;
    private readonly Field<Lawn, WaterSupply> _water;
    private readonly Field<Lawn, SpreaderFacts> _spreader;
    private readonly Field<Lawn, SprayerFacts> _sprayer;
    private readonly Field<Lawn, IReadOnlyList<SeedLot>> _lots;
    private readonly Field<Lawn, FertilizerProduct> _starter, _lateFeed;
    private readonly Field<Lawn, HerbicideLabel> _preEmergent;
    private readonly Field<Lawn, IReadOnlyList<TankPartner>> _partners;
    private readonly Field<Lawn, CoverMaterial> _cover;
    private readonly Field<Lawn, PriceList> _prices;
    private readonly Field<Lawn, MassPerArea?> _nitrogen;

    private LawnFormat()
        : base("lawn")
    {
        Required("format", Scalars.Constant(Version), _ => Version, "Version of this format.");
        _id = Required("id", Scalars.Id, l => l.Id, "Stable id of the lawn; calendar entries are named after it.");
        _name = Required("name", Scalars.Words, l => l.Name, "What the owner calls it.");
        _place = Required("place", PlaceFormat.One, l => l.Place, "Where the lawn is.");
        _address = Optional("address", Scalars.Words, l => l.Address, "Street address with its ZIP code, for the record of applications.")!;
        _owner = Optional("owner", Scalars.Words, l => l.Owner, "Owner or customer, for the record of applications.")!;
        _timeZone = Optional("timeZone", Scalars.Words, l => l.TimeZone, "IANA zone, for example America/Chicago; assumed from the longitude where absent.")!;
        _patches = Required("patches", new ListFormat<Patch>(PatchFormat.One, 1), l => l.Patches, "Parts of the lawn, each in one condition.");
        _sheet = Optional("sheet", SheetFormat.One, l => l.Sheet, "The lawn drawn on one sheet; patch outlines are then in its meters.");
        _use = Optional("use", NamesOf<LawnUse>.Format, l => l.Use, "What the lawn has to stand.");
        _work = Optional("work", NamesOf<SeedingWork>.Format, l => l.Work, "What the work is in the eyes of a fertilizer law.");
        _grazed = Optional("grazedOrFed", Scalars.Truth, l => l.GrazedOrFed, "True when stock may graze here or clippings are fed.");
        _soil = Optional("soil", SoilFormat.One, l => l.Soil, "What is known of the soil.");
        _sprayed = List("sprayed", PastSprayFormat.One, l => l.Sprayed, "What was sprayed in the last six months.");
        _water = Optional("water", WaterSupplyFormat.One, l => l.Water, "Tap, sprinklers and allowed hours.");
        _spreader = Optional("spreader", SpreaderFormat.One, l => l.Spreader, "The spreader.");
        _sprayer = Optional("sprayer", SprayerFormat.One, l => l.Sprayer, "The sprayer.");
        _lots = List("seedLots", SeedLotFormat.One, l => l.SeedLots, "Seed in hand or to be bought, as the tags read.");
        _starter = Optional("starter", FertilizerFormat.One, l => l.Starter, "Starter fertilizer.");
        _lateFeed = Optional("lateFeed", FertilizerFormat.One, l => l.LateFeed, "Late-fall feed.");
        _preEmergent = Optional("preEmergent", HerbicideFormat.One, l => l.PreEmergent, "Pre-emergent as the label in hand says; none is planned where absent.");
        _partners = List("tankPartners", TankPartnerFormat.One, l => l.TankPartners, "Soil conditioner, wetting agent and the like.");
        _cover = Optional("cover", CoverFormat.One, l => l.Cover, "What the thin places are covered with.");
        _prices = Optional("prices", PriceFormat.One, l => l.Prices, "Prices where an offer carries none of its own.");
        _nitrogen = Optional("nitrogenThisYear", Quantities.DryRate.Format, l => l.NitrogenThisYear, "Nitrogen already applied this calendar year, from the record.");
        _rulePack = Optional("rulePack", Scalars.Id, l => l.RulePack, "Id of the state or province rules; the general ones where absent.")!;
        _hire = Optional("appliedForHire", Scalars.Truth, l => l.AppliedForHire, "True when somebody is paid to apply.");
    }

    protected override Lawn Build(FieldValues v) => new()
    {
        Id = v.Get(_id),
        Name = v.Get(_name),
        Place = v.Get(_place),
        Address = v.Get(_address),
        Owner = v.Get(_owner),
        TimeZone = v.Get(_timeZone),
        Patches = v.Get(_patches),
        Sheet = v.Get(_sheet),
        Use = v.Get(_use),
        Work = v.Get(_work),
        GrazedOrFed = v.Get(_grazed),
        Soil = v.Get(_soil),
        Sprayed = v.Get(_sprayed),
        Water = v.Get(_water),
        Spreader = v.Get(_spreader),
        Sprayer = v.Get(_sprayer),
        SeedLots = v.Get(_lots),
        Starter = v.Get(_starter),
        LateFeed = v.Get(_lateFeed),
        PreEmergent = v.Get(_preEmergent),
        TankPartners = v.Get(_partners),
        Cover = v.Get(_cover),
        Prices = v.Get(_prices),
        NitrogenThisYear = v.Get(_nitrogen),
        RulePack = v.Get(_rulePack),
        AppliedForHire = v.Get(_hire),
    };
}

/// <summary>A point on the ground.</summary>
internal sealed class PlaceFormat : ObjectFormat<Place>
{
    public static readonly PlaceFormat One = new();

    private readonly Field<Place, double> _latitude, _longitude, _elevation;

    private PlaceFormat()
        : base("place")
    {
        _latitude = Required("latitude", Scalars.Decimal(-90.0, 90.0), p => p.LatitudeDeg, "Degrees north; south is negative.");
        _longitude = Required("longitude", Scalars.Decimal(-180.0, 180.0), p => p.LongitudeDeg, "Degrees east; west is negative.");
        _elevation = Required("elevation", Quantities.Elevation.Format, p => p.ElevationM, "Height above sea level.");
    }

    protected override Place Build(FieldValues v) => new(v.Get(_latitude), v.Get(_longitude), v.Get(_elevation));
}
