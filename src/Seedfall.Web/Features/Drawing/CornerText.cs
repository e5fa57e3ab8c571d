using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Drawing;

/// <summary>
/// Corners as lines of text. A line is two numbers, east and north; or a distance and a bearing from the corner before it,
/// <c>42 @ 90</c>, degrees clockwise from north. A minus means west or south.
/// </summary>
internal static class CornerText
{
    private const int MostCharacters = 400_000;

    /// <summary>The corners, or what is wrong with the first line that is none.</summary>
    /// <param name="text">One corner to a line.</param>
    /// <param name="unit">The unit of every number but bearings.</param>
    public static (IReadOnlyList<GroundPoint> Ring, string? Problem) Read(string text, UnitChoice<Length> unit)
    {
        if (text.Length > MostCharacters)
        {
            return ([], "too many corners for one shape.");
        }

        var ring = new List<GroundPoint>();
        var number = 0;
        foreach (var raw in text.Split('\n'))
        {
            number++;
            var line = raw.Trim();
            if (line.Length == 0)
            {
                continue;
            }

            if (Corner(line, ring, unit) is not { } corner)
            {
                return ([], string.Create(CultureInfo.InvariantCulture, $"line {number} should be two numbers, east and north, or a distance @ bearing, not “{(line.Length > 40 ? line[..40] + "…" : line)}”."));
            }

            ring.Add(corner);
        }

        return (ring, null);
    }

    /// <summary>The corners in a unit, to the tenth of a millimeter.</summary>
    public static string Write(IReadOnlyList<GroundPoint> ring, UnitChoice<Length> unit) =>
        string.Join('\n', ring.Select(p => $"{One(p.EastM, unit)} {One(p.NorthM, unit)}"));

    private static GroundPoint? Corner(string line, List<GroundPoint> before, UnitChoice<Length> unit)
    {
        line = line.Replace('−', '-');
        if (line.Split('@', StringSplitOptions.TrimEntries) is [var far, var way])
        {
            return before.Count > 0 && NumberText.Parse(far) is { } distance && distance >= 0.0 && NumberText.Parse(way.TrimEnd('°')) is { } bearing
                ? Reach(before[^1], unit.From(distance).Meters, bearing)
                : null;
        }

        var words = line.Split([' ', '\t', ';'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 1)
        {
            words = line.Split(',');
        }

        return words is [var e, var n] && NumberText.Parse(e.TrimEnd(',')) is { } east && NumberText.Parse(n) is { } north
            ? Sound(unit.From(east).Meters, unit.From(north).Meters)
            : null;
    }

    private static GroundPoint? Reach(GroundPoint from, double meters, double bearingDeg)
    {
        var (sine, cosine) = Math.SinCos(bearingDeg * Math.PI / 180.0);
        return Sound(Millimeters(from.EastM + meters * sine), Millimeters(from.NorthM + meters * cosine));
    }

    private static GroundPoint? Sound(double eastM, double northM) => Math.Abs(eastM) <= 1.0e5 && Math.Abs(northM) <= 1.0e5 ? new(eastM, northM) : null;

    private static double Millimeters(double meters) => Math.Round(meters, 3) + 0.0;

    private static string One(double meters, UnitChoice<Length> unit) => (Math.Round(unit.In(Length.FromMeters(meters)), 4) + 0.0).ToString("0.####", CultureInfo.InvariantCulture);
}
