namespace Seedfall.Planning.Ground.Shapes;

/// <summary>Corners from two taped distances each.</summary>
public static class TapedRing
{
    /// <summary>
    /// Points in meters, the base line running east from its end A at (0, 0); null for a corner whose two distances cannot
    /// meet. <c>x = (a^2 - b^2 + c^2) / (2c)</c>, <c>y = sqrt(a^2 - x^2)</c> with the distances a, b and the base c.
    /// </summary>
    public static IReadOnlyList<GroundPoint?> Points(PatchShape.Taped shape) => [.. shape.Corners.Select(c => Point(shape.Base.Meters, c))];

    /// <summary>The outline; every corner must be possible (see <see cref="ShortM"/>).</summary>
    public static PatchShape.Outline Outline(PatchShape.Taped shape) => new(
        [.. Points(shape).Select(p => p ?? throw new ArgumentException("a corner's distances do not meet", nameof(shape)))],
        []);

    /// <summary>How much the corner's distances fail to meet over the base line, m; zero where they meet.</summary>
    public static double ShortM(double baseM, TapedCorner corner)
    {
        var (aM, bM) = (corner.FromA.Meters, corner.FromB.Meters);
        return Math.Max(0.0, Math.Max(baseM - aM - bM, Math.Abs(aM - bM) - baseM));
    }

    private static GroundPoint? Point(double baseM, TapedCorner corner)
    {
        if (ShortM(baseM, corner) > RoundingShare * baseM)
        {
            return null;
        }

        var (aM, bM) = (corner.FromA.Meters, corner.FromB.Meters);
        var eastM = 0.5 * ((aM - bM) * (aM + bM) / baseM + baseM);

        // Written as the four factors of Heron's formula: twice the triangle's area over its base.
        var aside = (aM + bM + baseM) * (aM + bM - baseM) * (baseM + aM - bM) * (baseM - aM + bM);
        var northM = 0.5 * Math.Sqrt(Math.Max(0.0, aside)) / baseM;
        return new(eastM, corner.Side == BaseSide.Left ? northM : -northM);
    }

    /// <summary>What unit conversion may lose, so that a corner on the base line itself is taken.</summary>
    private const double RoundingShare = 1e-9;
}
