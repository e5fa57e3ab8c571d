using System.Globalization;
using System.Text;
using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Site;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;

namespace Seedfall.Web.Features.Site;

/// <summary>One path of the sun across the drawing.</summary>
/// <param name="Label">Its day.</param>
/// <param name="Points">Points of the line.</param>
/// <param name="X">Where the label stands.</param>
/// <param name="Y">Where the label stands.</param>
public sealed record SunPath(string Label, string Points, double X, double Y);

/// <summary>One obstacle in the drawing, cut in two where it runs over the edge.</summary>
public sealed record SkyShape(string Name, bool Solid, double X, double Y, double Width, double Height, bool Named);

/// <summary>
/// The sky as one looks around: direction from left to right, height above the horizon upward, the sun's highest direction in the
/// middle (south in the north).
/// </summary>
public sealed record SkyDrawing(IReadOnlyList<SunPath> Paths, IReadOnlyList<SkyShape> Shapes, IReadOnlyList<(double X, string Name)> Directions)
{
    public const double Width = 720;
    public const double Height = 300;
    public const double Bottom = 270;
    private const double TopDeg = 90.0;
    private static readonly string[] Names = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"];

    public static SkyDrawing Of(Place place, Patch patch, int year)
    {
        var middleDeg = place.LatitudeDeg >= 0.0 ? 180.0 : 0.0;
        (int Month, int Day)[] days = place.LatitudeDeg >= 0.0 ? [(8, 15), (9, 21), (10, 31)] : [(2, 15), (3, 21), (4, 30)];
        return new SkyDrawing(
            [.. days.Select(d => Path(place, new DateOnly(year, d.Month, d.Day), middleDeg))],
            [.. patch.Obstacles.Where(o => o.AngleDeg > 0.0).SelectMany(o => ShapesOf(o, middleDeg))],
            [.. Enumerable.Range(0, 8).Select(i => (X(i * 45.0, middleDeg), Names[i]))]);
    }

    public static string N(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Height of an angle on the drawing.</summary>
    public static double Y(double heightDeg) => Bottom - (heightDeg / TopDeg * (Bottom - 10.0));

    private static double X(double azimuthDeg, double middleDeg) => (((azimuthDeg - middleDeg + 540.0) % 360.0) / 360.0) * Width;

    private static SunPath Path(Place place, DateOnly date, double middleDeg)
    {
        var (times, points) = (SunTimes.On(place, date), new StringBuilder());
        var (topX, topY) = (0.5 * Width, Bottom);
        const int steps = 48;
        for (var i = 0; i <= steps; i++)
        {
            var sun = SunPosition.At(place, times.Rise + ((times.Set - times.Rise) / steps * i));
            var (x, y) = (X(sun.AzimuthDeg, middleDeg), Y(Math.Max(0.0, sun.AltitudeDeg)));
            points.Append(CultureInfo.InvariantCulture, $"{x:0.#},{y:0.#} ");
            (topX, topY) = y < topY ? (x, y) : (topX, topY);
        }

        return new SunPath(date.ToString("MMM d", CultureInfo.InvariantCulture), points.ToString().TrimEnd(), topX, topY);
    }

    private static IEnumerable<SkyShape> ShapesOf(SkyObstacle obstacle, double middleDeg)
    {
        var screen = new SkyScreen(obstacle.FromDeg, obstacle.ToDeg, obstacle.AngleDeg!.Value, 0.0);
        var (left, width, top) = (X(obstacle.FromDeg, middleDeg), screen.WidthDeg / 360.0 * Width, Y(screen.HeightDeg));
        var solid = obstacle.Kind == ObstacleKind.Solid;
        var first = Math.Min(width, Width - left);
        yield return new SkyShape(obstacle.Name, solid, left, top, first, Bottom - top, first >= 0.5 * width);
        if (width > first)
        {
            yield return new SkyShape(obstacle.Name, solid, 0.0, top, width - first, Bottom - top, first < 0.5 * width);
        }
    }
}
