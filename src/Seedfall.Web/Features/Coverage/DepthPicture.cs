using System.Globalization;
using System.Text;
using Seedfall.Planning.Water.Coverage;

namespace Seedfall.Web.Features.Coverage;

/// <summary>A depth map as shaded areas: cells of one shade in a row drawn as one bar, cells put together until the drawing is short.</summary>
/// <param name="BlockM">Side of a drawn block, m.</param>
/// <param name="West">Left side of the blocks, m.</param>
/// <param name="North">Their upper side, m.</param>
/// <param name="Shades">Path of each shade in blocks from the upper left.</param>
internal sealed record DepthPicture(double BlockM, double West, double North, IReadOnlyList<(int Shade, string Path)> Shades)
{
    private const int LongestPath = 40_000;

    /// <summary>Lower bounds of the shades, shares of the mean over the patches; what lies below the first stays blank.</summary>
    private static readonly double[] Bounds = [0.1, 0.5, 0.75, 1.0, 1.25, 1.5, 2.0];

    public static IReadOnlyList<(int Shade, string Words)> Legend { get; } =
        [(0, "under 10 %"), (1, "10 to 50 %"), (2, "50 to 75 %"), (3, "75 to 100 %"), (4, "100 to 125 %"), (5, "125 to 150 %"), (6, "150 to 200 %"), (7, "over 200 %")];

    public static DepthPicture Of(CoverageResult result)
    {
        for (var cells = 1; ; cells++)
        {
            var picture = Of(result.Map, result.MeanRate.MillimetersPerHour, cells);
            if (picture.Shades.Sum(s => s.Path.Length) <= LongestPath)
            {
                return picture;
            }
        }
    }

    /// <summary>0 for blank, then 1 to 7.</summary>
    internal static int Shade(double rateMmh, double meanMmh) => meanMmh > 0.0 ? Bounds.Count(bound => rateMmh >= bound * meanMmh) : rateMmh > 0.0 ? 1 : 0;

    private static DepthPicture Of(DepthMap map, double meanMmh, int cells)
    {
        var (wide, high) = (((map.Columns - 1) / cells) + 1, ((map.Rows - 1) / cells) + 1);
        var paths = Enumerable.Range(0, Bounds.Length + 1).Select(_ => new StringBuilder()).ToArray();
        for (var row = 0; row < high; row++)
        {
            var from = 0;
            for (var column = 1; column <= wide; column++)
            {
                var shade = Shade(Mean(map, row, from, cells), meanMmh);
                if (column < wide && Shade(Mean(map, row, column, cells), meanMmh) == shade)
                {
                    continue;
                }

                if (shade > 0)
                {
                    paths[shade].Append(CultureInfo.InvariantCulture, $"M{from} {high - 1 - row}h{column - from}v1h-{column - from}z");
                }

                from = column;
            }
        }

        var blockM = cells * map.CellM;
        return new(blockM, map.SouthWest.EastM, map.SouthWest.NorthM + (high * blockM), [.. paths.Select((p, shade) => (shade, p.ToString())).Where(p => p.Item2.Length > 0)]);
    }

    /// <summary>Mean of a block's cells, mm/h.</summary>
    private static double Mean(DepthMap map, int row, int column, int cells)
    {
        var (sum, count) = (0.0, 0);
        for (var r = row * cells; r < Math.Min(map.Rows, (row + 1) * cells); r++)
        {
            for (var c = column * cells; c < Math.Min(map.Columns, (column + 1) * cells); c++)
            {
                sum += map.RateMmh[(r * map.Columns) + c];
                count++;
            }
        }

        return sum / count;
    }
}
