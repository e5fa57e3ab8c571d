using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Coverage;
using Seedfall.Planning.Water.Supply;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Exchange.Lawns;

/// <summary>Where the water comes from and when it may be used.</summary>
internal sealed class WaterSupplyFormat : ObjectFormat<WaterSupply>
{
    public static readonly WaterSupplyFormat One = new();

    private readonly Field<WaterSupply, BucketTest> _bucket;
    private readonly Field<WaterSupply, FlowRate?> _flow;
    private readonly Field<WaterSupply, PressureTest> _pressure;
    private readonly Field<WaterSupply, IReadOnlyList<FurtherTap>> _otherTaps;
    private readonly Field<WaterSupply, FlowRate?> _together, _reserved;
    private readonly Field<WaterSupply, WellLimit> _well;
    private readonly Field<WaterSupply, IReadOnlyList<HouseholdHours>> _household;
    private readonly Field<WaterSupply, Volume?> _householdPerMonth;
    private readonly Field<WaterSupply, IReadOnlyList<SprinklerSet>> _sets;
    private readonly Field<WaterSupply, IReadOnlyList<WateringWindow>> _allowed;
    private readonly Field<WaterSupply, IReadOnlyList<TimetableTimer>> _timers;
    private readonly Field<WaterSupply, MeterPrice> _meter;
    private readonly Field<WaterSupply, bool> _permit;
    private readonly Field<WaterSupply, bool?> _timer;

    private WaterSupplyFormat()
        : base("water")
    {
        _bucket = Optional("bucket", BucketFormat.One, w => w.Bucket, "The bucket test: how long the tap takes to fill it.");
        _flow = Optional("flow", Quantities.Flow.Format, w => w.Flow, "Tap flow, used where no bucket test was made.");
        _pressure = Optional("pressure", PressureFormat.One, w => w.Pressure, "Pressure at the first tap.");
        _otherTaps = List("otherTaps", FurtherTapFormat.One, w => w.OtherTaps, "Taps beside the first.");
        _together = Optional("together", Quantities.Flow.Format, w => w.Together, "What all taps give together with all open.");
        _well = Optional("well", WellFormat.One, w => w.Well, "The well behind the taps; a main where absent.");
        _reserved = Optional("reserved", Quantities.Flow.Format, w => w.Reserved, "Flow kept for the household at all hours.");
        _household = List("household", HouseholdFormat.One, w => w.Household, "Hours of the household's own use, on top of what is reserved.");
        _householdPerMonth = Optional("householdPerMonth", Quantities.Volume.Format, w => w.HouseholdPerMonth, "The household's own use in a billing period of about a month.");
        _sets = List("sets", SprinklerSetFormat.One, w => w.Sets, "Heads that run together.");
        _allowed = List("allowed", WindowFormat.One, w => w.Allowed, "Hours in which watering is allowed or possible; any hour where absent.");
        _timers = List("timers", TimerFormat.One, w => w.Timers, "Timers with what they can hold.");
        _meter = Optional("meter", new MeterFormat(), w => w.Meter, "Price of water in steps of the bill, in the order of use; only the last is without an end.");
        _permit = Usual("newSeedPermit", Scalars.Truth, w => w.NewSeedPermit, false, "True once the town has granted extra watering for new seed.");
        _timer = Optional("timer", Scalars.Truth, w => w.Timer, "True when a timer can start rounds with nobody at home.");
    }

    protected override WaterSupply Build(FieldValues v) => new()
    {
        Bucket = v.Get(_bucket),
        Flow = v.Get(_flow),
        Pressure = v.Get(_pressure),
        OtherTaps = v.Get(_otherTaps),
        Together = v.Get(_together),
        Well = v.Get(_well),
        Reserved = v.Get(_reserved),
        Household = v.Get(_household),
        HouseholdPerMonth = v.Get(_householdPerMonth),
        Sets = v.Get(_sets),
        Allowed = v.Get(_allowed),
        Timers = v.Get(_timers),
        Meter = v.Get(_meter),
        NewSeedPermit = v.Get(_permit),
        Timer = v.Get(_timer),
    };
}

internal sealed class BucketFormat : ObjectFormat<BucketTest>
{
    public static readonly BucketFormat One = new();

    private readonly Field<BucketTest, Volume> _volume;
    private readonly Field<BucketTest, double> _time;

    private BucketFormat()
        : base("bucket")
    {
        _volume = Required("volume", Quantities.Volume.Format, b => b.Volume, "");
        _time = Required("time", Quantities.Seconds.Format, b => b.Seconds, "");
    }

    protected override BucketTest Build(FieldValues v) => new(v.Get(_volume), v.Get(_time));
}

internal sealed class SprinklerSetFormat : ObjectFormat<SprinklerSet>
{
    public static readonly SprinklerSetFormat One = new();

    private readonly Field<SprinklerSet, string> _name;
    private readonly Field<SprinklerSet, IReadOnlyList<string>> _patches;
    private readonly Field<SprinklerSet, SprinklerKind> _kind;
    private readonly Field<SprinklerSet, PrecipitationRate?> _rate;
    private readonly Field<SprinklerSet, CatchCanTest> _cans;
    private readonly Field<SprinklerSet, FlowRate?> _flow;
    private readonly Field<SprinklerSet, int> _positions;
    private readonly Field<SprinklerSet, HoseRun> _hose;
    private readonly Field<SprinklerSet, NozzleRating> _nozzle;
    private readonly Field<SprinklerSet, string> _tap, _timer;
    private readonly Field<SprinklerSet, IReadOnlyList<CoverageHead>> _heads;

    private SprinklerSetFormat()
        : base("sprinklerSet")
    {
        _name = Required("name", Scalars.Words, s => s.Name, "");
        _patches = Required("patches", new ListFormat<string>(Scalars.Id, 1), s => s.PatchIds, "Ids of the patches it wets.");
        _kind = Usual("kind", NamesOf<SprinklerKind>.Format, s => s.Kind, SprinklerKind.Unknown, "Kind of sprinkler.");
        _rate = Optional("rate", Quantities.PrecipitationRate.Format, s => s.Rate, "Precipitation rate.");
        _cans = Optional("cans", CansFormat.One, s => s.Cans, "Catch-can readings.");
        _flow = Optional("flow", Quantities.Flow.Format, s => s.Flow, "What the set draws while it runs.");
        _positions = Usual("positions", Scalars.Whole(1, 100), s => s.Positions, 1, "Positions a hose-end sprinkler is moved through in one round.");
        _hose = Optional("hose", HoseFormat.One, s => s.Hose, "Hose between the tap and the sprinkler.");
        _nozzle = Optional("nozzle", NozzleFormat.One, s => s.Nozzle, "What the sprinkler is rated for.");
        _tap = Optional("tap", Scalars.Words, s => s.Tap, "Name of the further tap it stands on; the first tap where absent.");
        _timer = Optional("timer", Scalars.Words, s => s.Timer, "Name of the timer that runs it.");
        _heads = List("heads", HeadFormat.One, s => s.Heads, "Where its heads stand on the sheet, or where a moved sprinkler is set down.");
    }

    protected override SprinklerSet Build(FieldValues v) => new()
    {
        Name = v.Get(_name),
        PatchIds = v.Get(_patches),
        Kind = v.Get(_kind),
        Rate = v.Get(_rate),
        Cans = v.Get(_cans),
        Flow = v.Get(_flow),
        Positions = v.Get(_positions),
        Hose = v.Get(_hose),
        Nozzle = v.Get(_nozzle),
        Tap = v.Get(_tap),
        Timer = v.Get(_timer),
        Heads = v.Get(_heads),
    };
}

internal sealed class CansFormat : ObjectFormat<CatchCanTest>
{
    public static readonly CansFormat One = new();

    private readonly Field<CatchCanTest, IReadOnlyList<Depth>> _readings;
    private readonly Field<CatchCanTest, double> _time;

    private CansFormat()
        : base("catchCans")
    {
        _readings = Required("readings", new ListFormat<Depth>(Quantities.Depth.Format, 1), c => c.Readings, "Depth caught in each can.");
        _time = Required("time", Quantities.Minutes.Format, c => c.Minutes, "How long the set ran.");
    }

    protected override CatchCanTest Build(FieldValues v) => new(v.Get(_readings), v.Get(_time));
}
