namespace Seedfall.Photos.Overview;

/// <summary>What one spot of ground is to the camera.</summary>
/// <param name="PixelsPerSquareMeter">Photo pixels that cover a square meter there.</param>
/// <param name="LongestM">Ground covered by one pixel in its longest direction, m.</param>
/// <param name="ElevationDeg">How steeply it is looked at: 90 straight down, 0 along the ground. From the stretch of a pixel's footprint; within a few degrees toward the picture's corners.</param>
public readonly record struct Footprint(double PixelsPerSquareMeter, double LongestM, double ElevationDeg);

/// <summary>A picture of flat ground with four known points marked in it.</summary>
public sealed class MarkedView
{
    /// <summary>Marks nearer than this share of the picture's diagonal are one mark.</summary>
    private const double NearestShare = 0.005;

    private readonly Homography _toPhoto;
    private readonly Homography _toPlan;
    private readonly double _sign;

    private MarkedView(int width, int height, IReadOnlyList<ImagePoint> marks, MarkFrame frame, Homography toPhoto, Homography toPlan)
    {
        (PhotoWidth, PhotoHeight, Marks, Frame, _toPhoto, _toPlan) = (width, height, marks, frame, toPhoto, toPlan);
        _sign = Math.Sign(toPhoto.Weight(frame.Corners[0].AcrossM, frame.Corners[0].AwayM));
    }

    public int PhotoWidth { get; }

    public int PhotoHeight { get; }

    /// <summary>In the order of the frame's corners.</summary>
    public IReadOnlyList<ImagePoint> Marks { get; }

    public MarkFrame Frame { get; }

    /// <summary>The view, or what is wrong with the marks.</summary>
    /// <param name="marks">Near left, near right, far right, far left.</param>
    public static (MarkedView? View, MarkProblem? Problem) Of(int photoWidth, int photoHeight, IReadOnlyList<ImagePoint> marks, MarkFrame frame)
    {
        ArgumentNullException.ThrowIfNull(marks);
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentOutOfRangeException.ThrowIfLessThan(photoWidth, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(photoHeight, 1);
        (double X, double Y)[] photo = [.. marks.Select(m => (m.X, m.Y))];

        // Pictures count downward, so what goes round counterclockwise on the ground goes clockwise in these numbers.
        if (MarkChecking.Problem(photo, counterclockwise: false, NearestShare * double.Hypot(photoWidth, photoHeight)) is { } problem)
        {
            return (null, problem);
        }

        (double X, double Y)[] plan = [.. frame.Corners.Select(c => (c.AcrossM, c.AwayM))];
        if (Homography.Through(plan, photo) is not { } toPhoto || toPhoto.Inverse() is not { } toPlan)
        {
            return (null, MarkProblem.InLine);
        }

        var weights = plan.Select(p => Math.Sign(toPhoto.Weight(p.X, p.Y))).ToList();
        return weights[0] == 0 || weights.Any(w => w != weights[0])
            ? (null, MarkProblem.BeyondHorizon)
            : (new(photoWidth, photoHeight, [.. marks], frame, toPhoto, toPlan), null);
    }

    /// <summary>Where ground lies in the picture; null beyond the horizon.</summary>
    public ImagePoint? ToPhoto(PlanPoint ground)
    {
        if (_toPhoto.Weight(ground.AcrossM, ground.AwayM) * _sign <= 0.0)
        {
            return null;
        }

        var (x, y) = _toPhoto.Map(ground.AcrossM, ground.AwayM);
        return new(x, y);
    }

    /// <summary>What ground a point of the picture shows; null above the horizon.</summary>
    public PlanPoint? ToPlan(ImagePoint point)
    {
        var (across, away) = _toPlan.Map(point.X, point.Y);
        return double.IsFinite(across) && double.IsFinite(away) && _toPhoto.Weight(across, away) * _sign > 0.0 ? new(across, away) : null;
    }

    /// <summary>How finely and how steeply the camera sees a place of the ground.</summary>
    public Footprint At(PlanPoint ground)
    {
        var (xx, xy, yx, yy) = _toPhoto.Slopes(ground.AcrossM, ground.AwayM);
        var determinant = Math.Abs(xx * yy - xy * yx);
        var sum = xx * xx + xy * xy + yx * yx + yy * yy;

        // Singular values of the slopes, pixels per meter in the finest and the coarsest direction.
        var spread = Math.Sqrt(Math.Max(0.0, sum * sum - 4.0 * determinant * determinant));
        var (fine, coarse) = (Math.Sqrt((sum + spread) / 2.0), Math.Sqrt(Math.Max(0.0, (sum - spread) / 2.0)));
        return new(determinant, coarse > 0.0 ? 1.0 / coarse : double.PositiveInfinity, Math.Asin(Math.Clamp(coarse / fine, 0.0, 1.0)) * 180.0 / Math.PI);
    }

    /// <summary>The same view with one mark a little elsewhere; null where that cannot be.</summary>
    internal MarkedView? Nudged(int mark, double x, double y) =>
        Of(PhotoWidth, PhotoHeight, [.. Marks.Select((m, i) => i == mark ? new ImagePoint(m.X + x, m.Y + y) : m)], Frame).View;

    /// <summary>Pixels the picture moves for one meter of ground, along the plan's two axes.</summary>
    internal (double Across, double Away) PixelsPerMeter(PlanPoint ground)
    {
        var (xx, xy, yx, yy) = _toPhoto.Slopes(ground.AcrossM, ground.AwayM);
        return (double.Hypot(xx, yx), double.Hypot(xy, yy));
    }

    /// <summary>As <see cref="ToPhoto"/>, for ground known to lie before the horizon.</summary>
    internal (double X, double Y) Map(double acrossM, double awayM) => _toPhoto.Map(acrossM, awayM);
}
