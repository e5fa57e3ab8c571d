using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Field;

namespace Seedfall.Exchange.Logs;

/// <summary>A log file's content.</summary>
internal sealed record LogPage(string LawnId, IReadOnlyList<LogEntry> Entries);

/// <summary>The whole log file.</summary>
internal sealed class LogFormat : ObjectFormat<LogPage>
{
    public const string Version = "seedfall-log/1";

    public static readonly LogFormat One = new();

    private readonly Field<LogPage, string> _lawn;
    private readonly Field<LogPage, IReadOnlyList<LogEntry>> _entries;

    private LogFormat()
        : base("fieldLog")
    {
        Required("format", Scalars.Constant(Version), _ => Version, "Version of this format.");
        _lawn = Required("lawn", Scalars.Id, l => l.LawnId, "Id of the lawn.");
        _entries = Required("entries", new ListFormat<LogEntry>(LogEntryFormat.One), l => l.Entries, "In any order.");
    }

    protected override LogPage Build(FieldValues v) => new(v.Get(_lawn), v.Get(_entries));
}

/// <summary>One entry: when, where, and one kind of what.</summary>
internal sealed class LogEntryFormat : ObjectFormat<LogEntry>
{
    public static readonly LogEntryFormat One = new();

    private readonly Field<LogEntry, Guid> _id;
    private readonly Field<LogEntry, DateTimeOffset> _at;
    private readonly Field<LogEntry, string?> _patch, _remark;
    private readonly Field<LogEntry, LogEntry> _what;

    private LogEntryFormat()
        : base("logEntry")
    {
        _id = Required("id", Scalars.Guid, e => e.Id, "Made where the entry was written; sending it twice adds nothing.");
        _at = Required("at", Scalars.Instant, e => e.At, "When it happened, by the lawn's own clock.");
        _patch = Optional("patch", Scalars.Id, e => e.PatchId, "Absent for the whole lawn.")!;
        _what = Required("what", WhatFormat.One, e => e, "");
        _remark = Optional("remark", Scalars.Words, e => e.Remark, "")!;
    }

    protected override LogEntry Build(FieldValues v) => v.Get(_what) with { Id = v.Get(_id), At = v.Get(_at), PatchId = v.Get(_patch), Remark = v.Get(_remark) };
}

/// <summary>What was seen or done. Id and instant are put in by the entry around it.</summary>
internal sealed class WhatFormat : ChoiceFormat<LogEntry>
{
    public static readonly WhatFormat One = new();

    private static readonly DateTimeOffset Later = DateTimeOffset.UnixEpoch;

    private WhatFormat()
        : base("what")
    {
        Kind("seededDown", Nothing<LogEntry.SeededDown>("seededDown", () => new() { Id = Guid.Empty, At = Later }), e => e as LogEntry.SeededDown, e => e, "Seed went down.");
        Kind("firstGreen", Nothing<LogEntry.FirstGreen>("firstGreen", () => new() { Id = Guid.Empty, At = Later }), e => e as LogEntry.FirstGreen, e => e, "The first seedlings were seen.");
        Kind("soilReading", Reading(), e => e as LogEntry.SoilReading, e => e, "A thermometer read in the soil.");
        Kind("coverSeen", Cover(), e => e as LogEntry.CoverSeen, e => e, "Living cover judged or measured.");
        Kind("watered", Watered(), e => e as LogEntry.Watered, e => e, "Water was given.");
        Kind("rained", Rained(), e => e as LogEntry.Rained, e => e, "Rain read off a gauge.");
        Kind("fingerTest", Finger(), e => e as LogEntry.FingerTest, e => e, "A finger pushed into the seedbed.");
        Kind("mowed", Mowed(), e => e as LogEntry.Mowed, e => e, "The grass was mowed.");
        Kind("applied", ApplicationFormat.One, e => (e as LogEntry.Applied)?.What, a => new LogEntry.Applied(a) { Id = Guid.Empty, At = Later }, "Something was put on the lawn; the entry's instant is the start.");
        Kind("note", Note(), e => e as LogEntry.Note, e => e, "Something worth keeping in words.");
        Kind("struck", Struck(), e => e as LogEntry.Struck, e => e, "An earlier entry does not hold.");
    }

    private static RecordFormat<T> Nothing<T>(string name, Func<T> make)
        where T : class => new RecordFormat<T>(name).Made(_ => make());

    private static RecordFormat<LogEntry.SoilReading> Reading()
    {
        var f = new RecordFormat<LogEntry.SoilReading>("soilReading");
        var depth = f.Required("depth", Quantities.Depth.Format, r => r.Depth, "Depth of the sensor.");
        var read = f.Required("read", Quantities.Temperature.Format, r => r.Read, "What it showed.");
        var hour = f.Usual("hourKnown", Scalars.Truth, r => r.HourKnown, true, "False where only the day is known.");
        return f.Made(v => new LogEntry.SoilReading(v.Get(depth), v.Get(read)) { Id = Guid.Empty, At = Later, HourKnown = v.Get(hour) });
    }

    private static RecordFormat<LogEntry.CoverSeen> Cover()
    {
        var f = new RecordFormat<LogEntry.CoverSeen>("coverSeen");
        var cover = f.Required("cover", Quantities.Share.Format, c => c.Cover, "Share of the ground under living turf.");
        var judged = f.Required("judged", NamesOf<CoverJudged>.Format, c => c.Judged, "How.");
        var low = f.Optional("low", Quantities.Share.Format, c => c.Low, "Lower end of the range it lies in nine times of ten.");
        var high = f.Optional("high", Quantities.Share.Format, c => c.High, "Upper end of the same range.");
        return f.Made(v => new LogEntry.CoverSeen(v.Get(cover), v.Get(judged)) { Id = Guid.Empty, At = Later, Low = v.Get(low), High = v.Get(high) });
    }

    private static RecordFormat<LogEntry.Watered> Watered()
    {
        var f = new RecordFormat<LogEntry.Watered>("watered");
        var set = f.Optional("set", Scalars.Words, w => w.Set, "Name of the sprinkler set.")!;
        var depth = f.Optional("depth", Quantities.Depth.Format, w => w.Given, "Mean depth put on; absent where minutes are given.");
        var minutes = f.Optional("time", Quantities.Minutes.Format, w => w.Minutes, "Time run in each position; absent where a depth is given.");
        return f.Made(v => new LogEntry.Watered { Id = Guid.Empty, At = Later, Set = v.Get(set), Given = v.Get(depth), Minutes = v.Get(minutes) });
    }

    private static RecordFormat<LogEntry.Rained> Rained()
    {
        var f = new RecordFormat<LogEntry.Rained>("rained");
        var depth = f.Required("depth", Quantities.Depth.Format, r => r.Caught, "Depth in the gauge.");
        return f.Made(v => new LogEntry.Rained(v.Get(depth)) { Id = Guid.Empty, At = Later });
    }

    private static RecordFormat<LogEntry.FingerTest> Finger()
    {
        var f = new RecordFormat<LogEntry.FingerTest>("fingerTest");
        var felt = f.Required("felt", NamesOf<FingerFelt>.Format, t => t.Felt, "What it found.");
        var wet = f.Optional("wetTo", Quantities.Depth.Format, t => t.WetTo, "How deep the moist soil reached.");
        return f.Made(v => new LogEntry.FingerTest(v.Get(felt)) { Id = Guid.Empty, At = Later, WetTo = v.Get(wet) });
    }

    private static RecordFormat<LogEntry.Mowed> Mowed()
    {
        var f = new RecordFormat<LogEntry.Mowed>("mowed");
        var to = f.Optional("to", Quantities.Depth.Format, m => m.To, "Height it was mowed to; absent where not looked at.");
        return f.Made(v => new LogEntry.Mowed { Id = Guid.Empty, At = Later, To = v.Get(to) });
    }

    private static RecordFormat<LogEntry.Note> Note()
    {
        var f = new RecordFormat<LogEntry.Note>("note");
        var text = f.Required("text", Scalars.Words, n => n.Text, "");
        return f.Made(v => new LogEntry.Note(v.Get(text)) { Id = Guid.Empty, At = Later });
    }

    private static RecordFormat<LogEntry.Struck> Struck()
    {
        var f = new RecordFormat<LogEntry.Struck>("struck");
        var entry = f.Required("entry", Scalars.Guid, s => s.EntryId, "Id of the entry struck.");
        var why = f.Required("why", Scalars.Words, s => s.Why, "The reason.");
        return f.Made(v => new LogEntry.Struck(v.Get(entry), v.Get(why)) { Id = Guid.Empty, At = Later });
    }
}
