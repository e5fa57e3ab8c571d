using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Lawns;

/// <summary>A choice that knows the simple shapes.</summary>
internal abstract class SimpleKinds<T>(string name) : ChoiceFormat<T>(name)
    where T : PatchShape
{
    /// <summary>Adds every simple shape.</summary>
    protected void Simple()
    {
        Add("rectangle", RectangleFormat.One, "Length times width.");
        Add("circle", CircleFormat.One, "A circle by its diameter.");
        Add("triangle", TriangleFormat.One, "A triangle by base and height.");
        Add("sides", SidesFormat.One, "A triangle by its three sides.");
        Add("slice", SliceFormat.One, "A slice of a circle with its point at the center.");
        Add("bow", BowFormat.One, "The bow between a straight line and an arc.");
        Add("strip", StripFormat.One, "A strip of even width, straight or curved.");
        Add("offsets", OffsetsFormat.One, "Widths across a base line at equal steps.");
    }

    private void Add<TPart>(string key, JsonFormat<TPart> format, string about)
        where TPart : PatchShape.Simple =>
        Kind(key, format, s => s as TPart, s => (T)(PatchShape)s, about);
}

internal sealed class RectangleFormat : ObjectFormat<PatchShape.Rectangle>
{
    public static readonly RectangleFormat One = new();

    private readonly Field<PatchShape.Rectangle, Length> _long, _wide;

    private RectangleFormat()
        : base("rectangle")
    {
        _long = Required("long", Quantities.Length.Format, s => s.Long, "");
        _wide = Required("wide", Quantities.Length.Format, s => s.Wide, "");
    }

    protected override PatchShape.Rectangle Build(FieldValues v) => new(v.Get(_long), v.Get(_wide));
}

internal sealed class CircleFormat : ObjectFormat<PatchShape.Circle>
{
    public static readonly CircleFormat One = new();

    private readonly Field<PatchShape.Circle, Length> _diameter;

    private CircleFormat()
        : base("circle") => _diameter = Required("diameter", Quantities.Length.Format, s => s.Diameter, "");

    protected override PatchShape.Circle Build(FieldValues v) => new(v.Get(_diameter));
}

internal sealed class TriangleFormat : ObjectFormat<PatchShape.Triangle>
{
    public static readonly TriangleFormat One = new();

    private readonly Field<PatchShape.Triangle, Length> _base, _height;

    private TriangleFormat()
        : base("triangle")
    {
        _base = Required("base", Quantities.Length.Format, s => s.Base, "");
        _height = Required("height", Quantities.Length.Format, s => s.Height, "");
    }

    protected override PatchShape.Triangle Build(FieldValues v) => new(v.Get(_base), v.Get(_height));
}

internal sealed class OffsetsFormat : ObjectFormat<PatchShape.Offsets>
{
    public static readonly OffsetsFormat One = new();

    private readonly Field<PatchShape.Offsets, Length> _step;
    private readonly Field<PatchShape.Offsets, IReadOnlyList<Length>> _widths;

    private OffsetsFormat()
        : base("offsets")
    {
        _step = Required("step", Quantities.Length.Format, s => s.Step, "Distance between two widths.");
        _widths = Required("widths", new ListFormat<Length>(Quantities.Length.Format, 2), s => s.Widths, "Widths, the first and last included.");
    }

    protected override PatchShape.Offsets Build(FieldValues v) => new(v.Get(_step), v.Get(_widths));
}

internal sealed class SidesFormat : ObjectFormat<PatchShape.Sides>
{
    public static readonly SidesFormat One = new();

    private readonly Field<PatchShape.Sides, Length> _first;
    private readonly Field<PatchShape.Sides, Length> _second;
    private readonly Field<PatchShape.Sides, Length> _third;

    private SidesFormat()
        : base("sides")
    {
        _first = Required("a", Quantities.Length.Format, s => s.First, "");
        _second = Required("b", Quantities.Length.Format, s => s.Second, "");
        _third = Required("c", Quantities.Length.Format, s => s.Third, "");
    }

    protected override PatchShape.Sides Build(FieldValues v) => new(v.Get(_first), v.Get(_second), v.Get(_third));
}

internal sealed class SliceFormat : ObjectFormat<PatchShape.Slice>
{
    public static readonly SliceFormat One = new();

    private readonly Field<PatchShape.Slice, Length> _radius;
    private readonly Field<PatchShape.Slice, Fraction> _share;

    private SliceFormat()
        : base("slice")
    {
        _radius = Required("radius", Quantities.Length.Format, s => s.Radius, "");
        _share = Required("share", Quantities.Share.Format, s => s.Share, "Share of the full round: 50 % is a half circle.");
    }

    protected override PatchShape.Slice Build(FieldValues v) => new(v.Get(_radius), v.Get(_share));
}

internal sealed class BowFormat : ObjectFormat<PatchShape.Bow>
{
    public static readonly BowFormat One = new();

    private readonly Field<PatchShape.Bow, Length> _chord;
    private readonly Field<PatchShape.Bow, Length> _rise;

    private BowFormat()
        : base("bow")
    {
        _chord = Required("chord", Quantities.Length.Format, s => s.Chord, "Length of the straight line.");
        _rise = Required("rise", Quantities.Length.Format, s => s.Rise, "How far the arc stands out from its middle.");
    }

    protected override PatchShape.Bow Build(FieldValues v) => new(v.Get(_chord), v.Get(_rise));
}

internal sealed class StripFormat : ObjectFormat<PatchShape.Strip>
{
    public static readonly StripFormat One = new();

    private readonly Field<PatchShape.Strip, Length> _along;
    private readonly Field<PatchShape.Strip, Length> _wide;

    private StripFormat()
        : base("strip")
    {
        _along = Required("along", Quantities.Length.Format, s => s.Along, "Length along the middle.");
        _wide = Required("wide", Quantities.Length.Format, s => s.Wide, "");
    }

    protected override PatchShape.Strip Build(FieldValues v) => new(v.Get(_along), v.Get(_wide));
}
