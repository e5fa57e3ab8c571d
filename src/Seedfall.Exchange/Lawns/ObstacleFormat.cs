using Seedfall.Engine.Units;
using Seedfall.Exchange.Json;
using Seedfall.Exchange.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Lawns;

/// <summary>What stands between a patch and the sky.</summary>
internal sealed class ObstacleFormat : ObjectFormat<SkyObstacle>
{
    public static readonly ObstacleFormat One = new();

    private readonly Field<SkyObstacle, string> _name;
    private readonly Field<SkyObstacle, ObstacleKind> _kind;
    private readonly Field<SkyObstacle, double> _from, _to;
    private readonly Field<SkyObstacle, double?> _angle;
    private readonly Field<SkyObstacle, Length?> _height, _distance;
    private readonly Field<SkyObstacle, Fraction?> _through, _bare;
    private readonly Field<SkyObstacle, DateOnly?> _bareFrom;

    private ObstacleFormat()
        : base("obstacle")
    {
        _name = Required("name", Scalars.Words, o => o.Name, "What it is.");
        _kind = Required("kind", NamesOf<ObstacleKind>.Format, o => o.Kind, "Whether light comes through, and when.");
        _from = Required("from", Scalars.Decimal(0.0, 360.0), o => o.FromDeg, "Left edge, degrees clockwise from true north, seen from the middle of the patch.");
        _to = Required("to", Scalars.Decimal(0.0, 360.0), o => o.ToDeg, "Right edge, degrees.");
        _angle = Optional("heightAngle", Scalars.Decimal(0.0, 90.0), o => o.HeightAngleDeg, "Upper edge above the horizon, degrees; wins over height and distance.");
        _height = Optional("height", Quantities.Length.Format, o => o.Height, "Height above the lawn.");
        _distance = Optional("distance", Quantities.Length.Format, o => o.Distance, "Distance from the middle of the patch.");
        _through = Optional("through", Quantities.Share.Format, o => o.Through, "Share of direct sun that comes through in leaf.");
        _bare = Optional("throughBare", Quantities.Share.Format, o => o.ThroughBare, "Share that comes through bare branches.");
        _bareFrom = Optional("bareFrom", Scalars.Date, o => o.BareFrom, "Day from which it stands bare; the year does not count.");
    }

    protected override SkyObstacle Build(FieldValues v) => new()
    {
        Name = v.Get(_name),
        Kind = v.Get(_kind),
        FromDeg = v.Get(_from),
        ToDeg = v.Get(_to),
        HeightAngleDeg = v.Get(_angle),
        Height = v.Get(_height),
        Distance = v.Get(_distance),
        Through = v.Get(_through),
        ThroughBare = v.Get(_bare),
        BareFrom = v.Get(_bareFrom),
    };
}
