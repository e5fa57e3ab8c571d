using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground.Sheets;

/// <summary>How far a point lies from an outline.</summary>
public static class OutlineDistance
{
    /// <summary>Zero within the outer ring, its holes counted as within; else to the nearest point of a side, m.</summary>
    public static Length Of(PatchShape.Outline outline, GroundPoint point)
    {
        ArgumentNullException.ThrowIfNull(outline);
        return RingCrossing.Contains(outline.Ring, point)
            ? Length.Zero
            : new Length(RingSides.Of(outline.Ring).Min(side => Away(side, point)));
    }

    private static double Away(RingSide side, GroundPoint point)
    {
        var (east, north) = (side.To.EastM - side.From.EastM, side.To.NorthM - side.From.NorthM);
        var along = (((point.EastM - side.From.EastM) * east) + ((point.NorthM - side.From.NorthM) * north)) / ((east * east) + (north * north));
        var share = Math.Clamp(along, 0.0, 1.0);
        return RingLength.Apart(point, new(side.From.EastM + (share * east), side.From.NorthM + (share * north)));
    }
}
