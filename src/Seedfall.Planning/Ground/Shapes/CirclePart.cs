using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground.Shapes;

/// <summary>Parts of circles.</summary>
public static class CirclePart
{
    /// <summary>m2. <c>A = p pi r^2</c> for a share p of the round.</summary>
    public static Area SliceArea(PatchShape.Slice slice) => Area.FromSquareMeters(slice.Share.Value * Math.PI * slice.Radius.Meters * slice.Radius.Meters);

    /// <summary>m. Arc and the two straight sides: <c>2 pi r p + 2 r</c>; a full round has no straight sides.</summary>
    public static Length SliceEdge(PatchShape.Slice slice) =>
        slice.Radius * (2.0 * Math.PI * slice.Share.Value + (slice.Share.Value < 1.0 ? 2.0 : 0.0));

    /// <summary>
    /// m2. <c>A = r^2 (t - sin t) / 2</c> with <c>r = (c^2/4 + h^2) / (2h)</c> and the arc's angle
    /// <c>t = 4 atan(2h/c)</c>; plane geometry.
    /// </summary>
    public static Area BowArea(PatchShape.Bow bow)
    {
        var (radiusM, angle) = Arc(bow);

        // t - sin t loses its digits for flat bows; its series does not.
        var excess = angle < 0.02 ? angle * angle * angle / 6.0 * (1.0 - angle * angle / 20.0) : angle - Math.Sin(angle);
        return Area.FromSquareMeters(0.5 * radiusM * radiusM * excess);
    }

    /// <summary>m. The straight line and the arc.</summary>
    public static Length BowEdge(PatchShape.Bow bow)
    {
        var (radiusM, angle) = Arc(bow);
        return bow.Chord + Length.FromMeters(radiusM * angle);
    }

    private static (double RadiusM, double Angle) Arc(PatchShape.Bow bow)
    {
        var (chordM, riseM) = (bow.Chord.Meters, bow.Rise.Meters);
        return ((0.25 * chordM * chordM + riseM * riseM) / (2.0 * riseM), 4.0 * Math.Atan2(2.0 * riseM, chordM));
    }
}
