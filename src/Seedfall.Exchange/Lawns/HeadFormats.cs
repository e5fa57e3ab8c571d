using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Water.Coverage;

namespace Seedfall.Exchange.Lawns;

/// <summary>A head standing on the lawn's sheet.</summary>
internal sealed class HeadFormat : ObjectFormat<CoverageHead>
{
    public static readonly HeadFormat One = new();

    private readonly Field<CoverageHead, GroundPoint> _at;
    private readonly Field<CoverageHead, Length> _radius;
    private readonly Field<CoverageHead, FlowRate> _flow;
    private readonly Field<CoverageHead, SprayProfile> _profile;
    private readonly Field<CoverageHead, double> _from, _sweep;

    private HeadFormat()
        : base("head")
    {
        _at = Required("at", PointFormat.One, h => h.At, "Where it stands, in the sheet's meters.");
        _radius = Required("radius", Quantities.Length.Format, h => h.Throw, "How far it throws in still air.");
        _flow = Required("flow", Quantities.Flow.Format, h => h.Flow, "What it puts out: the nozzle's rate at the pressure it gets.");
        _profile = Required("profile", new ProfileFormat(), h => h.Profile, "How its depth falls off from the head outward.");
        _from = Usual("arcFrom", Scalars.Decimal(0.0, 360.0), h => h.ArcFromDeg, 0.0, "Direction its arc begins, degrees clockwise from north.");
        _sweep = Usual("arc", Scalars.Decimal(0.0, 360.0), h => h.ArcDeg, 360.0, "Degrees its arc sweeps clockwise; the whole round where absent.");
    }

    protected override CoverageHead Build(FieldValues v) =>
        new(v.Get(_at), v.Get(_radius), v.Get(_flow), v.Get(_profile)) { ArcFromDeg = v.Get(_from), ArcDeg = v.Get(_sweep) };
}

/// <summary>A profile by its name, or a leg of cans as a list of depths.</summary>
internal sealed class ProfileFormat : JsonFormat<SprayProfile>
{
    private static readonly (SprayProfile Profile, string Name)[] Named =
        [(new SprayProfile.Triangular(), "triangular"), (new SprayProfile.Parabolic(), "parabolic"), (new SprayProfile.Elliptic(), "elliptic"), (new SprayProfile.Uniform(), "uniform")];

    private static readonly ListFormat<double> Leg = new(Scalars.Number);

    public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out SprayProfile value)
    {
        value = null;
        if (at.Kind == JsonSpotKind.Array)
        {
            value = Leg.TryRead(at, problems, out var depths) ? new SprayProfile.Leg(depths) : null;
            return value is not null;
        }

        value = at.Kind == JsonSpotKind.Text ? Array.Find(Named, n => n.Name == at.Text).Profile : null;
        if (value is null)
        {
            problems.Add(at, $"one of {string.Join(", ", Named.Select(n => n.Name))}, or a list of depths from the head to the end of its throw");
        }

        return value is not null;
    }

    public override void Write(Utf8JsonWriter writer, SprayProfile value)
    {
        if (value is SprayProfile.Leg leg)
        {
            Leg.Write(writer, leg.Depths);
            return;
        }

        writer.WriteStringValue(Array.Find(Named, n => n.Profile == value).Name);
    }

    public override JsonObject Schema(SchemaBook book) => new()
    {
        ["oneOf"] = new JsonArray(
            new JsonObject { ["enum"] = new JsonArray([.. Named.Select(n => JsonValue.Create(n.Name))]) },
            Leg.Schema(book)),
    };
}
