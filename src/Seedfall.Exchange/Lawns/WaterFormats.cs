using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Coverage;

namespace Seedfall.Exchange.Lawns;

/// <summary>Where the water comes from and when it may be used.</summary>
internal sealed class WaterSupplyFormat : ObjectFormat<WaterSupply>
{
    public static readonly WaterSupplyFormat One = new();

    private readonly Field<WaterSupply, BucketTest> _bucket;
    private readonly Field<WaterSupply, FlowRate?> _flow;
    private readonly Field<WaterSupply, IReadOnlyList<SprinklerSet>> _sets;
    private readonly Field<WaterSupply, IReadOnlyList<WateringWindow>> _allowed;
    private readonly Field<WaterSupply, bool> _permit;
    private readonly Field<WaterSupply, bool?> _timer;

    private WaterSupplyFormat()
        : base("water")
    {
        _bucket = Optional("bucket", BucketFormat.One, w => w.Bucket, "The bucket test: how long the tap takes to fill it.");
        _flow = Optional("flow", Quantities.Flow.Format, w => w.Flow, "Tap flow, used where no bucket test was made.");
        _sets = List("sets", SprinklerSetFormat.One, w => w.Sets, "Heads that run together.");
        _allowed = List("allowed", WindowFormat.One, w => w.Allowed, "Hours in which watering is allowed or possible; any hour where absent.");
        _permit = Usual("newSeedPermit", Scalars.Truth, w => w.NewSeedPermit, false, "True once the town has granted extra watering for new seed.");
        _timer = Optional("timer", Scalars.Truth, w => w.Timer, "True when a timer can start rounds with nobody at home.");
    }

    protected override WaterSupply Build(FieldValues v) => new()
    {
        Bucket = v.Get(_bucket),
        Flow = v.Get(_flow),
        Sets = v.Get(_sets),
        Allowed = v.Get(_allowed),
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

internal sealed class WindowFormat : ObjectFormat<WateringWindow>
{
    public static readonly WindowFormat One = new();

    private readonly Field<WateringWindow, WeekDays> _days;
    private readonly Field<WateringWindow, TimeOnly> _from, _to;

    private WindowFormat()
        : base("wateringWindow")
    {
        _days = Usual("days", new WeekDaysFormat(), w => w.Days, WeekDays.All, "Days of the week; every day where absent.");
        _from = Required("from", Scalars.Time, w => w.From, "");
        _to = Required("to", Scalars.Time, w => w.To, "");
    }

    protected override WateringWindow Build(FieldValues v) => new(v.Get(_days), v.Get(_from), v.Get(_to));
}

/// <summary>Days of the week as a list of names.</summary>
internal sealed class WeekDaysFormat : JsonFormat<WeekDays>
{
    private static readonly (WeekDays Day, string Name)[] Names =
        [.. Enum.GetValues<WeekDays>().Where(d => d is not (WeekDays.None or WeekDays.All)).Select(d => (d, NamesOf<WeekDays>.Of(d)))];

    public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out WeekDays value)
    {
        value = WeekDays.None;
        if (at.Kind != JsonSpotKind.Array)
        {
            problems.Add(at, "a list of days of the week");
            return false;
        }

        var before = problems.Count;
        foreach (var item in at.Items)
        {
            var (day, _) = item.Kind == JsonSpotKind.Text ? Array.Find(Names, n => n.Name == item.Text) : default;
            if (day == WeekDays.None)
            {
                problems.Add(item, $"one of {string.Join(", ", Names.Select(n => n.Name))}");
            }

            value |= day;
        }

        return problems.Count == before;
    }

    public override void Write(Utf8JsonWriter writer, WeekDays value)
    {
        writer.WriteStartArray();
        foreach (var (day, name) in Names)
        {
            if (value.HasFlag(day))
            {
                writer.WriteStringValue(name);
            }
        }

        writer.WriteEndArray();
    }

    public override JsonObject Schema(SchemaBook book) => new()
    {
        ["type"] = "array",
        ["items"] = new JsonObject { ["type"] = "string", ["enum"] = new JsonArray([.. Names.Select(n => JsonValue.Create(n.Name))]) },
    };
}
