using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Calibration;
using Seedfall.Planning.Calibration.Spreader;

namespace Seedfall.Web.Features.Spreader;

/// <summary>Figures of the spreader's own pages.</summary>
internal static class SpreaderFigures
{
    public static Figure Swath(KeptSpreader spreader) => new(
        "spreader.swath", "Distance between passes", QuantityKind.Length, Of(spreader).Meters,
        new Working("as entered, else the usual one of the kind", [], spreader.Swath is null ? "common practice, no source read" : "entered", spreader.Swath is null ? Sureness.CommonPractice : Sureness.Measured));

    public static Figure Course(KeptSpreader spreader, UnitSystem system)
    {
        var ground = system == UnitSystem.UsCustomary ? Area.FromThousandSquareFeet(1.0) : Area.FromSquareMeters(100.0);
        return new(
            "spreader.course", "Length of the course", QuantityKind.Length, WalkingPace.Course(ground, Of(spreader)).Meters,
            new Working("L = A / w", [new("A", "ground", ground.SquareFeet, "sq ft"), new("w", "distance between passes", Of(spreader).Feet, "ft")], "arithmetic on the inputs", Sureness.Computed));
    }

    /// <summary>How far inside its last track the near wheel of a drop spreader runs; negative where outside.</summary>
    public static Figure WheelInside(Length holes, Length track) => new(
        "spreader.wheel", "Near wheel inside its last track", QuantityKind.Depth, DropPasses.WheelInside(holes, track).Centimeters * 10.0,
        new Working("x = t - w; outside where below 0", [new("t", "distance between the wheels", track.Inches, "in"), new("w", "width of the row of holes", holes.Inches, "in")], "arithmetic on the inputs", Sureness.Computed));

    private static Length Of(KeptSpreader spreader) => spreader.Swath ?? FlowPriors.UsualSwath(spreader.Kind);
}
