using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration;

/// <summary>How a nozzle's flow follows its pressure. For small trims only: pressure changes droplet size.</summary>
public static class NozzlePressure
{
    /// <summary>Flow at another pressure: <c>Q2 = Q1 sqrt(P2 / P1)</c>. Common practice, no source read.</summary>
    public static FlowRate FlowAt(FlowRate flow, Pressure was, Pressure now) => flow * Math.Sqrt(Ratio(was, now));

    /// <summary>Pressure that brings a wanted flow: <c>P2 = P1 (Q2 / Q1)^2</c>.</summary>
    public static Pressure PressureFor(FlowRate wanted, FlowRate flow, Pressure was) =>
        flow > FlowRate.Zero
            ? was * (wanted / flow * (wanted / flow))
            : throw new ArgumentOutOfRangeException(nameof(flow), flow, "a flow above 0 is needed");

    private static double Ratio(Pressure was, Pressure now) =>
        was > Pressure.Zero && now >= Pressure.Zero
            ? now / was
            : throw new ArgumentOutOfRangeException(nameof(was), was, "a pressure above 0 is needed");
}
