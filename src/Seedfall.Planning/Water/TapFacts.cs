using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Water;

/// <summary>What the tap gives, and how it is known.</summary>
internal sealed record TapFacts(FlowRate Flow, Figure Figure, Assumption? Assumption)
{
    /// <summary>Flow of a garden tap until it is measured, gpm. Assumed, on the low side.</summary>
    private const double UnknownGpm = 5.0;

    internal static TapFacts Of(WaterSupply? supply)
    {
        if (supply?.Bucket is { } bucket)
        {
            return Known(bucket.Flow, new Working(
                "Q = V / t",
                [new("V", "bucket filled", bucket.Volume.Gallons, "gal"), new("t", "seconds to fill it", bucket.Seconds, "s")],
                "bucket and watch at this tap",
                Sureness.Measured));
        }

        if (supply?.Flow is { } typed)
        {
            return Known(typed, new Working("Q as entered", [new("Q", "tap flow", typed.GallonsPerMinute, "gpm")], "entered for this lawn", Sureness.Measured));
        }

        var flow = FlowRate.FromGallonsPerMinute(UnknownGpm);
        return new TapFacts(flow, TapFigure(flow, new Working("Q assumed", [], "assumed until the bucket test is made", Sureness.Assumed)), new Assumption(
            "assumed.water.tap",
            $"The tap was not measured: {UnknownGpm:0} gpm is assumed.",
            "Minutes, rounds and the whole water proof rest on it.",
            "Time how long the hose takes to fill a 5-gallon bucket."));
    }

    private static TapFacts Known(FlowRate flow, Working working) => new(flow, TapFigure(flow, working), null);

    private static Figure TapFigure(FlowRate flow, Working working) => new("water.tap", "Tap flow", QuantityKind.FlowRate, flow.LitersPerMinute, working);
}
