using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;

namespace Seedfall.Exchange.Lawns;

/// <summary>A pre-emergent as the label in hand says.</summary>
internal sealed class HerbicideFormat : ObjectFormat<HerbicideLabel>
{
    public static readonly HerbicideFormat One = new();

    private readonly Field<HerbicideLabel, string> _active;
    private readonly Field<HerbicideLabel, FormulationClass> _formulation;
    private readonly Field<HerbicideLabel, ProductStrength?> _strength;
    private readonly Field<HerbicideLabel, double?> _rainFree;
    private readonly Field<HerbicideLabel, ProductRate> _rate;
    private readonly Field<HerbicideLabel, ProductRate?> _most, _mostYear, _applied;
    private readonly Field<HerbicideLabel, VolumePerArea?> _carrier;
    private readonly Field<HerbicideLabel, IReadOnlyList<GrassSpecies>> _labeled, _barred;
    private readonly Field<HerbicideLabel, int?> _interval, _repeat, _mowings;
    private readonly Field<HerbicideLabel, Speed?> _wind, _leastWind;
    private readonly Field<HerbicideLabel, Temperature?> _lowestAir, _highestAir;
    private readonly Field<HerbicideLabel, bool> _hoseEnd;
    private readonly Field<HerbicideLabel, string?> _registration, _reentry;

    private HerbicideFormat()
        : base("preEmergent")
    {
        _active = Required("activeIngredient", Scalars.Words, h => h.ActiveIngredient, "Active ingredient, never a brand.");
        _formulation = Usual("formulation", NamesOf<FormulationClass>.Format, h => h.Formulation, FormulationClass.SuspensionConcentrate, "Formulation class; decides the mixing order, and that a dry product is weighed.");
        _strength = Optional("strength", ProductTexts.Strength.Format, h => h.Strength, "Active ingredient in the product: per volume of a liquid, percent by weight of a dry one.");
        _rate = Required("rate", ProductTexts.Rate.Format, h => h.Rate, "The rate to apply: a volume, or a weight of a dry product. All other rates of the label are of the same measure.");
        _most = Optional("maximumRate", ProductTexts.Rate.Format, h => h.MaximumRate, "The label's highest rate for one application.");
        _mostYear = Optional("maximumPerYear", ProductTexts.Rate.Format, h => h.MaximumPerYear, "The label's highest amount of product in one year.");
        _applied = Optional("appliedThisYear", ProductTexts.Rate.Format, h => h.AppliedThisYear, "Already applied this year; nothing where absent.");
        _labeled = List("labeledAtSeeding", NamesOf<GrassSpecies>.Format, h => h.LabeledAtSeeding, "Grasses the label names as safe at seeding.");
        _barred = List("barred", NamesOf<GrassSpecies>.Format, h => h.Barred, "Grasses the label bars.");
        _interval = Optional("seedingIntervalDays", Scalars.Whole(0, 730), h => h.SeedingIntervalDays, "Days to wait after it before seeding; 0 where the label allows it at seeding.");
        _repeat = Optional("repeatAfterEmergenceDays", Scalars.Whole(0, 730), h => h.RepeatAfterEmergenceDays, "Days after emergence before it may be repeated; no repeat is planned where absent.");
        _mowings = Optional("mowingsBeforeSeedlings", Scalars.Whole(0, 10), h => h.MowingsBeforeSeedlings, "Mowings of the new grass before it may go on seedlings; two are counted where absent.");
        _carrier = Optional("minimumCarrier", Quantities.LiquidRate.Format, h => h.MinimumCarrier, "The label's least carrier.");
        _wind = Optional("maximumWind", Quantities.Speed.Format, h => h.MaximumWind, "The label's highest wind.");
        _leastWind = Optional("minimumWind", Quantities.Speed.Format, h => h.MinimumWind, "The label's least wind.");
        _rainFree = Optional("rainFreeHours", Scalars.Decimal(0.0, 168.0), h => h.RainFreeHours, "Hours without rain the label asks for afterward.");
        _lowestAir = Optional("lowestAir", Quantities.Temperature.Format, h => h.LowestAir, "The label's lowest air temperature.");
        _highestAir = Optional("highestAir", Quantities.Temperature.Format, h => h.HighestAir, "The label's highest air temperature.");
        _hoseEnd = Usual("hoseEndBarred", Scalars.Truth, h => h.HoseEndBarred, false, "True when the label bars hose-end sprayers.");
        _registration = Optional("registrationNumber", Scalars.Words, h => h.RegistrationNumber, "EPA or other registration number.")!;
        _reentry = Optional("reentry", Scalars.Words, h => h.Reentry, "Re-entry statement as the label words it.")!;
    }

    protected override HerbicideLabel Build(FieldValues v) => new()
    {
        ActiveIngredient = v.Get(_active),
        Formulation = v.Get(_formulation),
        Strength = v.Get(_strength),
        Rate = v.Get(_rate),
        MaximumRate = v.Get(_most),
        MaximumPerYear = v.Get(_mostYear),
        AppliedThisYear = v.Get(_applied),
        LabeledAtSeeding = v.Get(_labeled),
        Barred = v.Get(_barred),
        SeedingIntervalDays = v.Get(_interval),
        RepeatAfterEmergenceDays = v.Get(_repeat),
        MowingsBeforeSeedlings = v.Get(_mowings),
        MinimumCarrier = v.Get(_carrier),
        MaximumWind = v.Get(_wind),
        MinimumWind = v.Get(_leastWind),
        RainFreeHours = v.Get(_rainFree),
        LowestAir = v.Get(_lowestAir),
        HighestAir = v.Get(_highestAir),
        HoseEndBarred = v.Get(_hoseEnd),
        RegistrationNumber = v.Get(_registration),
        Reentry = v.Get(_reentry),
    };
}

internal sealed class TankPartnerFormat : ObjectFormat<TankPartner>
{
    public static readonly TankPartnerFormat One = new();

    private readonly Field<TankPartner, string> _name;
    private readonly Field<TankPartner, FormulationClass> _formulation;
    private readonly Field<TankPartner, ProductRate> _rate;
    private readonly Field<TankPartner, bool> _together;

    private TankPartnerFormat()
        : base("tankPartner")
    {
        _name = Required("name", Scalars.Words, t => t.Name, "Generic class, for example wetting agent.");
        _formulation = Usual("formulation", NamesOf<FormulationClass>.Format, t => t.Formulation, FormulationClass.Solution, "");
        _rate = Required("rate", ProductTexts.Rate.Format, t => t.Rate, "A volume, or a weight of a dry product.");
        _together = Usual("withPreEmergent", Scalars.Truth, t => t.WithPreEmergent, false, "True when it shares the tank with the pre-emergent.");
    }

    protected override TankPartner Build(FieldValues v) => new()
    {
        Name = v.Get(_name),
        Formulation = v.Get(_formulation),
        Rate = v.Get(_rate),
        WithPreEmergent = v.Get(_together),
    };
}

internal sealed class PastSprayFormat : ObjectFormat<PastSpray>
{
    public static readonly PastSprayFormat One = new();

    private readonly Field<PastSpray, string> _active;
    private readonly Field<PastSpray, DateOnly> _date;
    private readonly Field<PastSpray, int?> _interval;
    private readonly Field<PastSpray, ProductRate?> _rate;

    private PastSprayFormat()
        : base("pastSpray")
    {
        _active = Required("activeIngredient", Scalars.Words, s => s.ActiveIngredient, "");
        _date = Required("date", Scalars.Date, s => s.Date, "");
        _interval = Optional("labelSeedingIntervalDays", Scalars.Whole(0, 730), s => s.LabelSeedingIntervalDays, "The label's wait before seeding.");
        _rate = Optional("rate", ProductTexts.Rate.Format, s => s.Rate, "A volume, or a weight of a dry product.");
    }

    protected override PastSpray Build(FieldValues v) => new()
    {
        ActiveIngredient = v.Get(_active),
        Date = v.Get(_date),
        LabelSeedingIntervalDays = v.Get(_interval),
        Rate = v.Get(_rate),
    };
}

internal sealed class SpreaderFormat : ObjectFormat<SpreaderFacts>
{
    public static readonly SpreaderFormat One = new();

    private readonly Field<SpreaderFacts, SpreaderKind> _kind;
    private readonly Field<SpreaderFacts, Length?> _swath;
    private readonly Field<SpreaderFacts, Speed?> _walk;

    private SpreaderFormat()
        : base("spreader")
    {
        _kind = Usual("kind", NamesOf<SpreaderKind>.Format, s => s.Kind, SpreaderKind.Rotary, "");
        _swath = Optional("swath", Quantities.Length.Format, s => s.Swath, "Effective swath from a pan or pattern test.");
        _walk = Optional("walkingSpeed", Quantities.Speed.Format, s => s.WalkingSpeed, "");
    }

    protected override SpreaderFacts Build(FieldValues v) => new() { Kind = v.Get(_kind), Swath = v.Get(_swath), WalkingSpeed = v.Get(_walk) };
}

internal sealed class SprayerFormat : ObjectFormat<SprayerFacts>
{
    public static readonly SprayerFormat One = new();

    private readonly Field<SprayerFacts, SprayerKind> _kind;
    private readonly Field<SprayerFacts, Volume?> _tank;
    private readonly Field<SprayerFacts, VolumePerArea?> _carrier;
    private readonly Field<SprayerFacts, DateOnly?> _calibrated;

    private SprayerFormat()
        : base("sprayer")
    {
        _kind = Usual("kind", NamesOf<SprayerKind>.Format, s => s.Kind, SprayerKind.Backpack, "");
        _tank = Optional("tank", Quantities.Volume.Format, s => s.Tank, "");
        _carrier = Optional("carrier", Quantities.LiquidRate.Format, s => s.Carrier, "Carrier put out per area at the calibrated walk.");
        _calibrated = Optional("calibrated", Scalars.Date, s => s.Calibrated, "Day the carrier was calibrated.");
    }

    protected override SprayerFacts Build(FieldValues v) => new() { Kind = v.Get(_kind), Tank = v.Get(_tank), Carrier = v.Get(_carrier), Calibrated = v.Get(_calibrated) };
}
