using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Seedfall.Exchange.Json;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Lawns;

/// <summary>An outline with holes, points in meters east and north of any fixed point.</summary>
internal sealed class OutlineFormat : ObjectFormat<PatchShape.Outline>
{
    public static readonly OutlineFormat One = new();

    private readonly Field<PatchShape.Outline, IReadOnlyList<GroundPoint>> _ring;
    private readonly Field<PatchShape.Outline, IReadOnlyList<IReadOnlyList<GroundPoint>>> _holes;

    private OutlineFormat()
        : base("outline")
    {
        Required("unit", Scalars.Constant("m"), _ => "m", "Unit of the points.");
        _ring = Required("ring", new ListFormat<GroundPoint>(PointFormat.One, 3), s => s.Ring, "Corners in order; the first need not be repeated.");
        _holes = List("holes", new ListFormat<GroundPoint>(PointFormat.One, 3), s => s.Holes, "Beds and buildings inside that are not lawn.");
    }

    protected override PatchShape.Outline Build(FieldValues v) => new(v.Get(_ring), v.Get(_holes));
}

/// <summary>A point on the sheet: meters east, meters north.</summary>
internal sealed class PointFormat : JsonFormat<GroundPoint>
{
    public static readonly PointFormat One = new();

    private static readonly JsonFormat<double> Meters = Scalars.Decimal(-1.0e6, 1.0e6);

    public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out GroundPoint value)
    {
        value = default;
        if (at.Kind != JsonSpotKind.Array || at.Items.Count != 2)
        {
            problems.Add(at, "a point like [12.5, 3.0]: meters east, meters north");
            return false;
        }

        var (east, north) = (0.0, 0.0);
        var read = Meters.TryRead(at.Items[0], problems, out east) & Meters.TryRead(at.Items[1], problems, out north);
        value = new(east, north);
        return read;
    }

    public override void Write(Utf8JsonWriter writer, GroundPoint value)
    {
        writer.WriteStartArray();
        writer.WriteNumberValue(value.EastM);
        writer.WriteNumberValue(value.NorthM);
        writer.WriteEndArray();
    }

    public override JsonObject Schema(SchemaBook book) => new()
    {
        ["type"] = "array",
        ["items"] = new JsonObject { ["type"] = "number" },
        ["minItems"] = 2,
        ["maxItems"] = 2,
    };
}
