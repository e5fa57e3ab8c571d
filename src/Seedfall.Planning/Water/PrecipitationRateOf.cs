using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water;

/// <summary>The rate at which sprinklers wet the ground, by whichever way it was had.</summary>
public static class PrecipitationRateOf
{
    /// <summary>
    /// Flow over area: PR = Q / A, in inches per hour 96.25 gpm / sq ft (exact 231 * 60 / 144). Throws where the area is not positive.
    /// </summary>
    public static PrecipitationRate Flow(FlowRate flow, Area area)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(area.SquareMeters, nameof(area));
        return PrecipitationRate.FromMillimetersPerHour(flow.LitersPerMinute * 60.0 / area.SquareMeters);
    }

    /// <summary>
    /// Heads of full-circle flow on equilateral triangles: each head's share of ground is spacing times row, row = 0.866 spacing
    /// where only the spacing is known.
    /// </summary>
    public static PrecipitationRate Grid(FlowRate perHead, Length spacing, Length row) =>
        Flow(perHead, Area.FromSquareMeters(spacing.Meters * row.Meters));

    /// <summary>Mean depth in straight-sided cans over the minutes the set ran.</summary>
    public static PrecipitationRate Cans(CatchCanTest test)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(test.Minutes, nameof(test));
        return PrecipitationRate.FromMillimetersPerHour(test.Readings.Average(d => d.Millimeters) * 60.0 / test.Minutes);
    }

    /// <summary>
    /// Depth in a can from the volume caught over its throat: 1 mL is 0.06102 cu in. Throws where the throat is not positive.
    /// </summary>
    /// <param name="caught">Water in the can.</param>
    /// <param name="throat">Opening of the can.</param>
    public static Depth CaughtDepth(Volume caught, Area throat)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(throat.SquareMeters, nameof(throat));
        return Depth.FromMillimeters(caught.Liters / throat.SquareMeters);
    }
}
