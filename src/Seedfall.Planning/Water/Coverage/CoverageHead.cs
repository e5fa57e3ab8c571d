using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>One head standing on the lawn's plan.</summary>
/// <param name="At">Where it stands.</param>
/// <param name="Throw">Radius it reaches in still air.</param>
/// <param name="Flow">What it puts out.</param>
/// <param name="Profile">How its depth falls off.</param>
public sealed record CoverageHead(GroundPoint At, Length Throw, FlowRate Flow, SprayProfile Profile)
{
    /// <summary>Direction its arc begins, degrees clockwise from north.</summary>
    public double ArcFromDeg { get; init; }

    /// <summary>Degrees its arc sweeps clockwise, above 0 up to 360.</summary>
    public double ArcDeg { get; init; } = 360.0;
}

/// <summary>Wind while it runs.</summary>
/// <param name="Speed">At sprinkler height.</param>
/// <param name="FromDeg">Direction it blows from, degrees clockwise from north.</param>
public sealed record SprayWind(Speed Speed, double FromDeg)
{
    public static SprayWind Still { get; } = new(Speed.Zero, 0.0);
}
