using System.Globalization;
using Seedfall.Planning.Ground;

namespace Seedfall.Web.Features.Drawing;

/// <summary>The part of the sheet a still picture shows: everything drawn with a margin, north up.</summary>
/// <param name="West">Left side, m.</param>
/// <param name="North">Upper side, m.</param>
/// <param name="Wide">Width, m.</param>
/// <param name="High">Height, m.</param>
public sealed record SheetFrame(double West, double North, double Wide, double High)
{
    private const double LeastM = 4.0;

    /// <summary>Height of a line of text, m: a fortieth of the longer side.</summary>
    public double TextM => Math.Max(Wide, High) / 34.0;

    public string ViewBox => $"{N(0.0)} {N(0.0)} {N(Wide)} {N(High)}";

    /// <summary>A frame round what is drawn; null where nothing is.</summary>
    public static SheetFrame? Round(Drawn drawn)
    {
        var all = drawn.Shapes.SelectMany(s => s.Ring).ToList();
        if (drawn.Picture is { } p)
        {
            var half = 0.5 * p.MetersPerPixel * double.Hypot(p.Width, p.Height);
            all.AddRange([new(p.East - half, p.North - half), new(p.East + half, p.North + half)]);
        }

        if (all.Count == 0)
        {
            return null;
        }

        var (west, east, south, north) = (all.Min(p => p.EastM), all.Max(p => p.EastM), all.Min(p => p.NorthM), all.Max(p => p.NorthM));
        var margin = Math.Max(LeastM / 4.0, 0.08 * Math.Max(east - west, north - south));
        return new(west - margin, north + margin, Math.Max(LeastM, east - west + 2.0 * margin), Math.Max(LeastM, north - south + 2.0 * margin));
    }

    /// <summary>Right of the left side, as SVG writes it.</summary>
    public string X(double eastM) => N(eastM - West);

    /// <summary>Down from the upper side.</summary>
    public string Y(double northM) => N(North - northM);

    public string Points(IReadOnlyList<GroundPoint> ring) => string.Join(' ', ring.Select(p => $"{X(p.EastM)},{Y(p.NorthM)}"));

    /// <summary>A round length of 1, 2 or 5 times a power of ten units, about a fifth of the width.</summary>
    public double ScaleBar(double unitM)
    {
        var least = 0.18 * Wide / unitM;
        var power = Math.Pow(10.0, Math.Floor(Math.Log10(least)));
        return (least / power) switch { <= 1.0 => 1.0, <= 2.0 => 2.0, <= 5.0 => 5.0, _ => 10.0 } * power;
    }

    public static string N(double value) => (Math.Round(value, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture);
}
