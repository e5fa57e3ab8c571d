using Seedfall.Photos.Cover;
using Seedfall.Photos.Overview;
using Seedfall.Photos.Pixels;

namespace Seedfall.Photos.Tests.Overview;

/// <summary>A pinhole camera over flat ground, by rays and not by a homography: the outside truth of these tests.</summary>
/// <param name="HeightM">Above the ground.</param>
/// <param name="DownDeg">How far it looks down from level; 90 is straight down.</param>
/// <param name="FocalPx">Focal length in pixels.</param>
/// <param name="AcrossM">Where it stands.</param>
/// <param name="AwayM">Where it stands.</param>
/// <param name="TurnDeg">Turned to the right.</param>
internal sealed record Camera(int Width, int Height, double HeightM, double DownDeg, double FocalPx, double AcrossM, double AwayM, double TurnDeg = 0.0)
{
    /// <summary>A phone held at 1.6 m before a lawn, 12 megapixels made small.</summary>
    public static Camera Phone { get; } = new(1000, 750, 1.6, 22.0, 780.0, 4.0, -3.2);

    private (double X, double Y, double Z) Right => (Cos(TurnDeg), -Sin(TurnDeg), 0.0);

    private (double X, double Y, double Z) Ahead => (Sin(TurnDeg) * Cos(DownDeg), Cos(TurnDeg) * Cos(DownDeg), -Sin(DownDeg));

    private (double X, double Y, double Z) Down => (-Sin(TurnDeg) * Sin(DownDeg), -Cos(TurnDeg) * Sin(DownDeg), -Cos(DownDeg));

    public ImagePoint Project(PlanPoint ground)
    {
        var v = (X: ground.AcrossM - AcrossM, Y: ground.AwayM - AwayM, Z: -HeightM);
        var depth = Dot(v, Ahead);
        return new(0.5 * Width + FocalPx * Dot(v, Right) / depth, 0.5 * Height + FocalPx * Dot(v, Down) / depth);
    }

    /// <summary>The ground a ray through the picture meets; null above the horizon.</summary>
    public PlanPoint? Meet(double x, double y)
    {
        var (a, b) = ((x - 0.5 * Width) / FocalPx, (y - 0.5 * Height) / FocalPx);
        var ray = (X: Ahead.X + a * Right.X + b * Down.X, Y: Ahead.Y + a * Right.Y + b * Down.Y, Z: Ahead.Z + a * Right.Z + b * Down.Z);
        return ray.Z < -1e-9 ? new(AcrossM - ray.X * HeightM / ray.Z, AwayM - ray.Y * HeightM / ray.Z) : null;
    }

    /// <summary>A mask of the ground as the camera sees it.</summary>
    /// <param name="leftOut">Ground left out of the count.</param>
    public CoverMask Mask(Func<PlanPoint, bool> green, Func<PlanPoint, bool>? leftOut = null) =>
        new(Width, Height, [.. Points().Select(p => p is not { } ground ? (byte)0 : leftOut?.Invoke(ground) == true ? CoverMask.LeftOut : green(ground) ? CoverMask.Sure : (byte)0)]);

    /// <summary>A picture of the ground as the camera sees it.</summary>
    public PixelImage Picture(Func<PlanPoint, (byte R, byte G, byte B)> color) => new(Width, Height, [.. Points().SelectMany(p =>
    {
        var (r, g, b) = p is { } ground ? color(ground) : ((byte)120, (byte)160, (byte)230);
        return new[] { r, g, b };
    })]);

    public MarkedView View(double acrossM, double awayM)
    {
        var frame = MarkFrame.Rectangle(acrossM, awayM);
        var (view, problem) = MarkedView.Of(Width, Height, [.. frame.Corners.Select(Project)], frame);
        return view ?? throw new InvalidOperationException($"{problem}");
    }

    private IEnumerable<PlanPoint?> Points() => Enumerable.Range(0, Width * Height).Select(i => Meet(i % Width + 0.5, i / Width + 0.5));

    private static double Dot((double X, double Y, double Z) a, (double X, double Y, double Z) b) => a.X * b.X + a.Y * b.Y + a.Z * b.Z;

    private static double Sin(double deg) => Math.Sin(deg * Math.PI / 180.0);

    private static double Cos(double deg) => Math.Cos(deg * Math.PI / 180.0);
}
