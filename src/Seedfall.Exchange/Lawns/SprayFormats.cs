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
    private readonly Field<HerbicideLabel, double?> _strength;
    private readonly Field<HerbicideLabel, VolumePerArea> _rate, _applied;
    private readonly Field<HerbicideLabel, VolumePerArea?> _most, _mostYear, _carrier;
    private readonly Field<HerbicideLabel, IReadOnlyList<GrassSpecies>> _labeled, _barred;
    private readonly Field<HerbicideLabel, int?> _interval, _repeat;
    private readonly Field<HerbicideLabel, Speed?> _wind;
    private readonly Field<HerbicideLabel, bool> _hoseEnd;
    private readonly Field<HerbicideLabel, string?> _registration, _reentry;

    private HerbicideFormat()
        : base("preEmergent")
    {
        _active = Required("activeIngredient", Scalars.Words, h => h.ActiveIngredient, "Active ingredient, never a brand.");
        _formulation = Usual("formulation", NamesOf<FormulationClass>.Format, h => h.Formulation, FormulationClass.SuspensionConcentrate, "Formulation class; decides the mixing order.");
        _strength = Optional("strength", Quantities.Strength.Format, h => h.StrengthKgPerLiter, "Active ingredient per volume of product.");
        _rate = Required("rate", Quantities.LiquidRate.Format, h => h.Rate, "The rate to apply.");
        _most = Optional("maximumRate", Quantities.LiquidRate.Format, h => h.MaximumRate, "The label's highest rate for one application.");
        _mostYear = Optional("maximumPerYear", Quantities.LiquidRate.Format, h => h.MaximumPerYear, "The label's highest amount in one year.");
        _applied = Usual("appliedThisYear", Quantities.LiquidRate.Format, h => h.AppliedThisYear, VolumePerArea.Zero, "Already applied this year.");
        _labeled = List("labeledAtSeeding", NamesOf<GrassSpecies>.Format, h => h.LabeledAtSeeding, "Grasses the label names as safe at seeding.");
        _barred = List("barred", NamesOf<GrassSpecies>.Format, h => h.Barred, "Grasses the label bars.");
        _interval = Optional("seedingIntervalDays", Scalars.Whole(0, 730), h => h.SeedingIntervalDays, "Days to wait after it before seeding; 0 where the label allows it at seeding.");
        _repeat = Optional("repeatAfterEmergenceDays", Scalars.Whole(0, 730), h => h.RepeatAfterEmergenceDays, "Days after emergence before it may be repeated; no repeat is planned where absent.");
        _carrier = Optional("minimumCarrier", Quantities.LiquidRate.Format, h => h.MinimumCarrier, "The label's least carrier.");
        _wind = Optional("maximumWind", Quantities.Speed.Format, h => h.MaximumWind, "The label's highest wind.");
        _hoseEnd = Usual("hoseEndBarred", Scalars.Truth, h => h.HoseEndBarred, false, "True when the label bars hose-end sprayers.");
        _registration = Optional("registrationNumber", Scalars.Words, h => h.RegistrationNumber, "EPA or other registration number.")!;
        _reentry = Optional("reentry", Scalars.Words, h => h.Reentry, "Re-entry statement as the label words it.")!;
    }

    protected override HerbicideLabel Build(FieldValues v) => new()
    {
        ActiveIngredient = v.Get(_active),
        Formulation = v.Get(_formulation),
        StrengthKgPerLiter = v.Get(_strength),
        Rate = v.Get(_rate),
        MaximumRate = v.Get(_most),
        MaximumPerYear = v.Get(_mostYear),
        AppliedThisYear = v.Get(_applied),
        LabeledAtSeeding = v.Get(_labeled),
        Barred = v.Get(_barred),
        SeedingIntervalDays = v.Get(_interval),
        RepeatAfterEmergenceDays = v.Get(_repeat),
        MinimumCarrier = v.Get(_carrier),
        MaximumWind = v.Get(_wind),
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
    private readonly Field<TankPartner, VolumePerArea> _rate;
    private readonly Field<TankPartner, bool> _together;

    private TankPartnerFormat()
        : base("tankPartner")
    {
        _name = Required("name", Scalars.Words, t => t.Name, "Generic class, for example wetting agent.");
        _formulation = Usual("formulation", NamesOf<FormulationClass>.Format, t => t.Formulation, FormulationClass.Solution, "");
        _rate = Required("rate", Quantities.LiquidRate.Format, t => t.Rate, "");
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
    private readonly Field<PastSpray, VolumePerArea?> _rate;

    private PastSprayFormat()
        : base("pastSpray")
    {
        _active = Required("activeIngredient", Scalars.Words, s => s.ActiveIngredient, "");
        _date = Required("date", Scalars.Date, s => s.Date, "");
        _interval = Optional("labelSeedingIntervalDays", Scalars.Whole(0, 730), s => s.LabelSeedingIntervalDays, "The label's wait before seeding.");
        _rate = Optional("rate", Quantities.LiquidRate.Format, s => s.Rate, "");
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
