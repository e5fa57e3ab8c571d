namespace Seedfall.Photos.Overview;

/// <summary>Where the four marks lie on the ground: near left, near right, far right, far left, as one stands with the camera.</summary>
public sealed record MarkFrame
{
    private MarkFrame(IReadOnlyList<PlanPoint> corners, bool isRectangle) => (Corners, IsRectangle) = (corners, isRectangle);

    public IReadOnlyList<PlanPoint> Corners { get; }

    /// <summary>True where the corners are right angles along the axes of the plan.</summary>
    public bool IsRectangle { get; }

    /// <summary>Ground inside the marks, m2.</summary>
    public double AreaM2 => Rings.Area(Corners);

    /// <summary>Marks at the corners of a rectangle; throws where a side is not between 0.1 and 1,000 m.</summary>
    /// <param name="acrossM">Length of the near and the far side.</param>
    /// <param name="awayM">Length of the two sides that run away from the camera.</param>
    public static MarkFrame Rectangle(double acrossM, double awayM)
    {
        Require(acrossM, nameof(acrossM));
        Require(awayM, nameof(awayM));
        return new([new(0.0, 0.0), new(acrossM, 0.0), new(acrossM, awayM), new(0.0, awayM)], isRectangle: true);
    }

    /// <summary>Marks anywhere, as plan points; null where they are no convex quadrilateral going round counterclockwise.</summary>
    public static MarkFrame? Of(PlanPoint nearLeft, PlanPoint nearRight, PlanPoint farRight, PlanPoint farLeft)
    {
        PlanPoint[] corners = [nearLeft, nearRight, farRight, farLeft];
        return MarkChecking.Problem([.. corners.Select(c => (c.AcrossM, c.AwayM))], counterclockwise: true, nearest: 0.05) is null ? new(corners, isRectangle: false) : null;
    }

    /// <summary>
    /// Marks by tape: the four sides in turn and the diagonal from near left to far right. Two triangles over the diagonal
    /// fix the four points. Null where the tapes cannot meet.
    /// </summary>
    public static MarkFrame? Taped(double nearM, double rightM, double farM, double leftM, double diagonalM)
    {
        if (Third(nearM, rightM, diagonalM) is not var (alongNear, awayNear) || Third(leftM, farM, diagonalM) is not var (alongFar, awayFar))
        {
            return null;
        }

        // The diagonal lies along the first axis of a turned plan: near right below it, far left above; then the near side is turned level.
        var (cos, sin) = (alongNear / nearM, -awayNear / nearM);
        PlanPoint Turned(double along, double off) => new(cos * along + sin * off, -sin * along + cos * off);
        return Of(new(0.0, 0.0), Turned(alongNear, -awayNear), Turned(diagonalM, 0.0), Turned(alongFar, awayFar));
    }

    /// <summary>The third corner of a triangle over a base: how far along it, how far off it; null where there is no such triangle.</summary>
    private static (double Along, double Off)? Third(double fromStart, double fromEnd, double baseline)
    {
        var along = (fromStart * fromStart - fromEnd * fromEnd + baseline * baseline) / (2.0 * baseline);
        var square = fromStart * fromStart - along * along;
        return square > 0.0 && double.IsFinite(square) ? (along, Math.Sqrt(square)) : null;
    }

    private static void Require(double meters, string name)
    {
        if (!(meters is >= 0.1 and <= 1000.0))
        {
            throw new ArgumentOutOfRangeException(name, meters, "a length from 0.1 to 1,000 m is needed");
        }
    }
}
