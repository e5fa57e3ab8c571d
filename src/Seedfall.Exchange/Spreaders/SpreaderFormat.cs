using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Calibration.Spreader;
using Seedfall.Planning.Materials;

namespace Seedfall.Exchange.Spreaders;

/// <summary>A scale before it is known to be one.</summary>
internal sealed record ScaleNumbers(double Least, double Greatest, double Step, bool Letters);

/// <summary>A spreader file's content. The scale and the entries of the card are those beside it.</summary>
internal sealed record SpreaderPage(KeptSpreader Card, ScaleNumbers Scale, IReadOnlyList<SpreaderEntry> Entries);

/// <summary>The whole spreader file.</summary>
internal sealed class SpreaderFormat : ObjectFormat<SpreaderPage>
{
    public const string Version = "seedfall-spreader/1";

    public static readonly SpreaderFormat One = new();

    private static readonly SpreaderScale NoScale = new(0.0, 1.0, 1.0);

    private readonly Field<SpreaderPage, string> _id, _name;
    private readonly Field<SpreaderPage, SpreaderKind> _kind;
    private readonly Field<SpreaderPage, ScaleNumbers> _scale;
    private readonly Field<SpreaderPage, Length?> _swath;
    private readonly Field<SpreaderPage, Speed?> _walk;
    private readonly Field<SpreaderPage, IReadOnlyList<SpreaderEntry>> _entries;

    private SpreaderFormat()
        : base("spreader")
    {
        Required("format", Scalars.Constant(Version), _ => Version, "Version of this format.");
        _id = Required("id", Scalars.Id, s => s.Card.Id, "Stable id.");
        _name = Required("name", Scalars.Words, s => s.Card.Name, "What its owner calls it.");
        _kind = Required("kind", NamesOf<SpreaderKind>.Format, s => s.Card.Kind, "");
        _scale = Required("scale", Scale(), s => s.Scale, "The scale its opening is set on.");
        _swath = Optional("swath", Quantities.Length.Format, s => s.Card.Swath, "Usual distance between passes.");
        _walk = Optional("walk", Quantities.Speed.Format, s => s.Card.Walk, "Usual walking speed.");
        _entries = List("entries", SpreaderEntryFormat.One, s => s.Entries, "What it showed, in any order.");
    }

    protected override SpreaderPage Build(FieldValues v) =>
        new(new() { Id = v.Get(_id), Name = v.Get(_name), Kind = v.Get(_kind), Scale = NoScale, Swath = v.Get(_swath), Walk = v.Get(_walk) }, v.Get(_scale), v.Get(_entries));

    private static RecordFormat<ScaleNumbers> Scale()
    {
        var f = new RecordFormat<ScaleNumbers>("spreaderScale");
        var least = f.Required("least", Scalars.Decimal(0.0, 10_000.0), s => s.Least, "Reading with the gate shut or nearly so; on a scale of letters A is 1.");
        var greatest = f.Required("greatest", Scalars.Decimal(0.0, 10_000.0), s => s.Greatest, "Reading with the gate wide open.");
        var step = f.Required("step", Scalars.Decimal(0.0, 10_000.0), s => s.Step, "Smallest step it can be set by.");
        var letters = f.Usual("letters", Scalars.Truth, s => s.Letters, false, "True where the scale has letters.");
        return f.Made(v => new(v.Get(least), v.Get(greatest), v.Get(step), v.Get(letters)));
    }
}

/// <summary>One entry: when, and one kind of what.</summary>
internal sealed class SpreaderEntryFormat : ObjectFormat<SpreaderEntry>
{
    public static readonly SpreaderEntryFormat One = new();

    private readonly Field<SpreaderEntry, Guid> _id;
    private readonly Field<SpreaderEntry, DateTimeOffset> _at;
    private readonly Field<SpreaderEntry, SpreaderEntry> _what;

    private SpreaderEntryFormat()
        : base("spreaderEntry")
    {
        _id = Required("id", Scalars.Guid, e => e.Id, "Made where the entry was written; sending it twice adds nothing.");
        _at = Required("at", Scalars.Instant, e => e.At, "When, by the place's own clock.");
        _what = Required("what", SpreaderWhatFormat.One, e => e, "");
    }

    protected override SpreaderEntry Build(FieldValues v) => v.Get(_what) with { Id = v.Get(_id), At = v.Get(_at) };
}
