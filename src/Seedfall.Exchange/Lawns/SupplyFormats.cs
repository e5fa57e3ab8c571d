using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Supply;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Exchange.Lawns;

/// <summary>Pressure at the first tap.</summary>
internal sealed class PressureFormat : ObjectFormat<PressureTest>
{
    public static readonly PressureFormat One = new();

    private readonly Field<PressureTest, Pressure> _still;
    private readonly Field<PressureTest, Pressure?> _running;
    private readonly Field<PressureTest, FlowRate?> _at;

    private PressureFormat()
        : base("pressureTest")
    {
        _still = Required("still", Quantities.Pressure.Format, p => p.Still, "With nothing running.");
        _running = Optional("running", Quantities.Pressure.Format, p => p.Running, "While \"at\" flows.");
        _at = Optional("at", Quantities.Flow.Format, p => p.At, "Flow while the running pressure was read; needed with it.");
    }

    protected override PressureTest Build(FieldValues v) => new(v.Get(_still), v.Get(_running), v.Get(_at));
}

/// <summary>A tap beside the first one.</summary>
internal sealed class FurtherTapFormat : ObjectFormat<FurtherTap>
{
    public static readonly FurtherTapFormat One = new();

    private readonly Field<FurtherTap, string> _name;
    private readonly Field<FurtherTap, FlowRate> _flow;

    private FurtherTapFormat()
        : base("tap")
    {
        _name = Required("name", Scalars.Words, t => t.Name, "");
        _flow = Required("flow", Quantities.Flow.Format, t => t.Flow, "What it gives with the others shut.");
    }

    protected override FurtherTap Build(FieldValues v) => new(v.Get(_name), v.Get(_flow));
}

internal sealed class WellFormat : ObjectFormat<WellLimit>
{
    public static readonly WellFormat One = new();

    private readonly Field<WellLimit, Volume> _stored;
    private readonly Field<WellLimit, FlowRate> _recovery;

    private WellFormat()
        : base("well")
    {
        _stored = Required("stored", Quantities.Volume.Format, w => w.Stored, "What stands ready above the pump, pressure tank included.");
        _recovery = Required("recovery", Quantities.Flow.Format, w => w.Recovery, "How fast it comes back.");
    }

    protected override WellLimit Build(FieldValues v) => new(v.Get(_stored), v.Get(_recovery));
}

internal sealed class HouseholdFormat : ObjectFormat<HouseholdHours>
{
    public static readonly HouseholdFormat One = new();

    private readonly Field<HouseholdHours, TimeOnly> _from, _to;
    private readonly Field<HouseholdHours, FlowRate> _flow;

    private HouseholdFormat()
        : base("householdHours")
    {
        _from = Required("from", Scalars.Time, h => h.From, "");
        _to = Required("to", Scalars.Time, h => h.To, "");
        _flow = Required("flow", Quantities.Flow.Format, h => h.Flow, "What the household draws then.");
    }

    protected override HouseholdHours Build(FieldValues v) => new(v.Get(_from), v.Get(_to), v.Get(_flow));
}

internal sealed class TimerFormat : ObjectFormat<TimetableTimer>
{
    public static readonly TimerFormat One = new();

    private readonly Field<TimetableTimer, string> _name;
    private readonly Field<TimetableTimer, int> _programs, _starts;

    private TimerFormat()
        : base("timer")
    {
        _name = Required("name", Scalars.Words, t => t.Name, "");
        _programs = Required("programs", Scalars.Count, t => t.Programs, "Programs it can hold.");
        _starts = Required("startsPerDay", Scalars.Count, t => t.StartsPerDay, "Starts a day each program can have.");
    }

    protected override TimetableTimer Build(FieldValues v) => new(v.Get(_name), v.Get(_programs), v.Get(_starts));
}

/// <summary>A hose between tap and sprinkler.</summary>
internal sealed class HoseFormat : ObjectFormat<HoseRun>
{
    public static readonly HoseFormat One = new();

    private readonly Field<HoseRun, Length> _length, _bore;

    private HoseFormat()
        : base("hose")
    {
        _length = Required("length", Quantities.Length.Format, h => h.Length, "");
        _bore = Required("bore", Quantities.Length.Format, h => h.Bore, "Inner diameter.");
    }

    protected override HoseRun Build(FieldValues v) => new(v.Get(_length), v.Get(_bore));
}

internal sealed class NozzleFormat : ObjectFormat<NozzleRating>
{
    public static readonly NozzleFormat One = new();

    private readonly Field<NozzleRating, FlowRate> _flow;
    private readonly Field<NozzleRating, Pressure> _at;

    private NozzleFormat()
        : base("nozzle")
    {
        _flow = Required("flow", Quantities.Flow.Format, n => n.Flow, "Rated flow of all its nozzles together.");
        _at = Required("at", Quantities.Pressure.Format, n => n.At, "Pressure it is rated at.");
    }

    protected override NozzleRating Build(FieldValues v) => new(v.Get(_flow), v.Get(_at));
}

internal sealed class MeterStepFormat : ObjectFormat<MeterStep>
{
    public static readonly MeterStepFormat One = new();

    private readonly Field<MeterStep, Volume?> _upTo;
    private readonly Field<MeterStep, decimal> _price;

    private MeterStepFormat()
        : base("meterStep")
    {
        _upTo = Optional("upTo", Quantities.Volume.Format, s => s.UpTo, "Use in the billing period up to which this price holds; absent in the last step.");
        _price = Required("perThousandGallons", Scalars.Money, s => s.PerThousandGallons, "In the lawn's currency, sewer charge included where it is billed on the same meter.");
    }

    protected override MeterStep Build(FieldValues v) => new(v.Get(_upTo), v.Get(_price));
}

/// <summary>A bill in steps, as the list of its steps.</summary>
internal sealed class MeterFormat : JsonFormat<MeterPrice>
{
    private static readonly ListFormat<MeterStep> Steps = new(MeterStepFormat.One);

    public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out MeterPrice value)
    {
        value = Steps.TryRead(at, problems, out var steps) ? new MeterPrice(steps) : null;
        return value is not null;
    }

    public override void Write(Utf8JsonWriter writer, MeterPrice value) => Steps.Write(writer, value.Steps);

    public override JsonObject Schema(SchemaBook book) => Steps.Schema(book);
}
