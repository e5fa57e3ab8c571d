using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Lawns;

/// <summary>The lawn drawn on one sheet.</summary>
internal sealed class SheetFormat : ObjectFormat<GroundSheet>
{
    public static readonly SheetFormat One = new();

    private readonly Field<GroundSheet, GeoPoint?> _origin;
    private readonly Field<GroundSheet, IReadOnlyList<GroundPoint>> _boundary;
    private readonly Field<GroundSheet, IReadOnlyList<SheetFeature>> _features;

    private SheetFormat()
        : base("sheet")
    {
        Required("unit", Scalars.Constant("m"), _ => "m", "Unit of the points, here and in the patches' outlines.");
        _origin = Optional("origin", GeoPointFormat.One, s => s.Origin, "Where the sheet's zero point lies on the earth.");
        _boundary = List("boundary", PointFormat.One, s => s.Boundary, "Outer edge of all turf, corners in order.");
        _features = List("features", FeatureFormat.One, s => s.Features, "Beds, buildings, paving, water.");
    }

    protected override GroundSheet Build(FieldValues v) => new() { Origin = v.Get(_origin), Boundary = v.Get(_boundary), Features = v.Get(_features) };

    private sealed class FeatureFormat : ObjectFormat<SheetFeature>
    {
        public static readonly FeatureFormat One = new();

        private readonly Field<SheetFeature, string> _name;
        private readonly Field<SheetFeature, FeatureKind> _kind;
        private readonly Field<SheetFeature, IReadOnlyList<GroundPoint>> _ring;

        private FeatureFormat()
            : base("feature")
        {
            _name = Required("name", Scalars.Words, f => f.Name, "What the owner calls it.");
            _kind = Required("kind", NamesOf<FeatureKind>.Format, f => f.Kind, "What it is.");
            _ring = Required("ring", new ListFormat<GroundPoint>(PointFormat.One, 3), f => f.Ring, "Corners in order.");
        }

        protected override SheetFeature Build(FieldValues v) => new(v.Get(_name), v.Get(_kind), v.Get(_ring));
    }
}

/// <summary>How a patch's size was taken.</summary>
internal sealed class MeasuringFormat : ObjectFormat<Measuring>
{
    public static readonly MeasuringFormat One = new();

    private readonly Field<Measuring, MeasuredBy> _by;
    private readonly Field<Measuring, Fraction?> _band;

    private MeasuringFormat()
        : base("measured")
    {
        _by = Required("by", NamesOf<MeasuredBy>.Format, m => m.By, "With what.");
        _band = Optional("areaBand", Quantities.Share.Format, m => m.AreaBand, "Half width of the range the area lies in nine times in ten; worked out from the shape where absent.");
    }

    protected override Measuring Build(FieldValues v) => new(v.Get(_by), v.Get(_band));
}

/// <summary>A point in degrees.</summary>
internal sealed class GeoPointFormat : JsonFormat<GeoPoint>
{
    public static readonly GeoPointFormat One = new();

    private readonly Spot _spot = new();

    public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out GeoPoint value)
    {
        var read = _spot.TryRead(at, problems, out var degrees);
        value = read ? new(degrees!.North, degrees.East) : default;
        return read;
    }

    public override void Write(Utf8JsonWriter writer, GeoPoint value) => _spot.Write(writer, new(value.LatitudeDeg, value.LongitudeDeg));

    public override JsonObject Schema(SchemaBook book) => _spot.Schema(book);

    private sealed record Degrees(double North, double East);

    private sealed class Spot : ObjectFormat<Degrees>
    {
        private readonly Field<Degrees, double> _north, _east;

        public Spot()
            : base("geoPoint")
        {
            _north = Required("latitude", Scalars.Decimal(-90.0, 90.0), d => d.North, "Degrees north; south is negative.");
            _east = Required("longitude", Scalars.Decimal(-180.0, 180.0), d => d.East, "Degrees east; west is negative.");
        }

        protected override Degrees Build(FieldValues v) => new(v.Get(_north), v.Get(_east));
    }
}
