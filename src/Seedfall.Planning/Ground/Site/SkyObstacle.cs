using Seedfall.Engine.Site;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground;

/// <summary>What stands between a patch and the sky.</summary>
public enum ObstacleKind
{
    /// <summary>House, wall, hill: nothing comes through.</summary>
    Solid,

    /// <summary>Spruce, pine, hedge that keeps its leaves.</summary>
    Evergreen,

    /// <summary>A tree or hedge that drops its leaves.</summary>
    Deciduous,
}

/// <summary>
/// One obstacle as seen from the middle of a patch. Its height is an angle, or a height and a distance; where neither is known
/// it cannot be reckoned with and the door refuses it.
/// </summary>
public sealed record SkyObstacle
{
    public required string Name { get; init; }

    public required ObstacleKind Kind { get; init; }

    /// <summary>Left edge, degrees clockwise from true north, 0 to 360.</summary>
    public required double FromDeg { get; init; }

    /// <summary>Right edge, degrees clockwise from true north, 0 to 360.</summary>
    public required double ToDeg { get; init; }

    /// <summary>Upper edge above the horizon, degrees; wins over height and distance.</summary>
    public double? HeightAngleDeg { get; init; }

    /// <summary>Height above the lawn.</summary>
    public Length? Height { get; init; }

    /// <summary>Distance from the middle of the patch.</summary>
    public Length? Distance { get; init; }

    /// <summary>Share of direct sun that comes through in leaf; null takes the usual of the kind.</summary>
    public Fraction? Through { get; init; }

    /// <summary>Share that comes through bare branches; null takes the usual.</summary>
    public Fraction? ThroughBare { get; init; }

    /// <summary>Day from which a deciduous tree stands bare; the year does not count. Null takes the usual of the latitude.</summary>
    public DateOnly? BareFrom { get; init; }

    /// <summary>Upper edge above the horizon, degrees, 0 to 90; null where it is not known. <c>atan(height / distance)</c>.</summary>
    public double? AngleDeg => HeightAngleDeg ?? (Height is { } height && Distance is { Meters: > 0.0 } distance ? Math.Atan2(height.Meters, distance.Meters) * (180.0 / Math.PI) : null);

    /// <summary>The obstacle as it stands on a day.</summary>
    internal SkyScreen On(DateOnly date, double latitudeDeg) => new(FromDeg, ToDeg, AngleDeg ?? 0.0, SunThrough.On(this, date, latitudeDeg));
}
