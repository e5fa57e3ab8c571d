using System.Text.Json;
using System.Text.Json.Nodes;
using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Lawns;

/// <summary>How a patch's area was taken: exactly one of the known shapes.</summary>
internal sealed class ShapeFormat : ChoiceFormat<PatchShape>
{
    public static readonly ShapeFormat One = new();

    private ShapeFormat()
        : base("shape")
    {
        Kind("area", TypedFormat.One, s => s as PatchShape.Typed, s => s, "An area known from elsewhere.");
        Kind("rectangle", RectangleFormat.One, s => s as PatchShape.Rectangle, s => s, "Length times width.");
        Kind("circle", CircleFormat.One, s => s as PatchShape.Circle, s => s, "A circle by its diameter.");
        Kind("triangle", TriangleFormat.One, s => s as PatchShape.Triangle, s => s, "A triangle by base and height.");
        Kind("offsets", OffsetsFormat.One, s => s as PatchShape.Offsets, s => s, "Widths across a base line at equal steps.");
        Kind("outline", OutlineFormat.One, s => s as PatchShape.Outline, s => s, "A closed outline in meters east and north.");
    }

    private sealed class TypedFormat : JsonFormat<PatchShape.Typed>
    {
        public static readonly TypedFormat One = new();

        public override bool TryRead(JsonSpot at, ProblemList problems, [System.Diagnostics.CodeAnalysis.MaybeNullWhen(false)] out PatchShape.Typed value)
        {
            var read = Quantities.Area.Format.TryRead(at, problems, out var area);
            value = read ? new(area) : null;
            return read;
        }

        public override void Write(Utf8JsonWriter writer, PatchShape.Typed value) => Quantities.Area.Format.Write(writer, value.Area);

        public override JsonObject Schema(SchemaBook book) => Quantities.Area.Format.Schema(book);
    }

    private sealed class RectangleFormat : ObjectFormat<PatchShape.Rectangle>
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

    private sealed class CircleFormat : ObjectFormat<PatchShape.Circle>
    {
        public static readonly CircleFormat One = new();

        private readonly Field<PatchShape.Circle, Length> _diameter;

        private CircleFormat()
            : base("circle") => _diameter = Required("diameter", Quantities.Length.Format, s => s.Diameter, "");

        protected override PatchShape.Circle Build(FieldValues v) => new(v.Get(_diameter));
    }

    private sealed class TriangleFormat : ObjectFormat<PatchShape.Triangle>
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

    private sealed class OffsetsFormat : ObjectFormat<PatchShape.Offsets>
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
}
