using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water.Supply;

/// <summary>A tap's pressure shut and running.</summary>
/// <param name="Static">Pressure with nothing running.</param>
/// <param name="Running">Pressure while <paramref name="RunningFlow"/> flows; zero for a bucket test at the open tap.</param>
/// <param name="RunningFlow">Flow of that test.</param>
public sealed record TapPressure(Pressure Static, Pressure Running, FlowRate RunningFlow)
{
    /// <summary>From a pressure gauge and a bucket filled at the wide open tap, where no pressure is left.</summary>
    public static TapPressure FromBucket(Pressure still, FlowRate open) => new(still, Pressure.Zero, open);

    /// <summary>
    /// Pressure left at the tap at a flow: P0 - (P0 - P1) (Q / Q1)^1.852, for the loss between the street and the tap grows as Hazen and
    /// Williams have it. Negative where the pipe cannot carry the flow.
    /// </summary>
    public Pressure At(FlowRate flow) => Static - ((Static - Running) * Math.Pow(flow / RunningFlow, HazenWilliams.FlowExponent));
}
