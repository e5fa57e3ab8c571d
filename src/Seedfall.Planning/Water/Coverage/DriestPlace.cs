using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>The driest square of about a twentieth of a patch.</summary>
/// <param name="Middle">Middle of the square.</param>
/// <param name="MeanMmh">Mean rate of the patch's cells in it, mm/h.</param>
/// <param name="Side">Cells along its side.</param>
internal sealed record DriestPlace(GroundPoint Middle, double MeanMmh, int Side)
{
    private const double Share = 0.05;

    /// <summary>Part of the square that must lie in the patch for it to count, so that a sliver at the edge does not.</summary>
    private const double LeastInside = 0.6;

    internal static DriestPlace Of(DepthMap map)
    {
        var side = Math.Max(1, (int)Math.Round(Math.Sqrt(Share * map.InPatch.Count(inside => inside))));
        DriestPlace? best = null;
        for (; best is null; side = Math.Max(1, side / 2))
        {
            best = Least(map, side);
        }

        return best;
    }

    private static DriestPlace? Least(DepthMap map, int side)
    {
        var (sum, count) = (Totals(map, cell => map.InPatch[cell] ? map.RateMmh[cell] : 0.0), Totals(map, cell => map.InPatch[cell] ? 1.0 : 0.0));
        DriestPlace? best = null;
        for (var row = 0; row + side <= map.Rows; row++)
        {
            for (var column = 0; column + side <= map.Columns; column++)
            {
                var inside = In(count, row, column);
                if (inside >= Math.Max(1.0, LeastInside * side * side) && In(sum, row, column) / inside is var mean && (best is null || mean < best.MeanMmh - 1e-12))
                {
                    best = new DriestPlace(new GroundPoint(map.SouthWest.EastM + (map.CellM * (column + (side / 2.0))), map.SouthWest.NorthM + (map.CellM * (row + (side / 2.0)))), Math.Max(0.0, mean), side);
                }
            }
        }

        return best;

        double In(double[,] totals, int row, int column) => totals[row + side, column + side] - totals[row, column + side] - totals[row + side, column] + totals[row, column];
    }

    /// <summary>Sums over all cells south and west of a corner.</summary>
    private static double[,] Totals(DepthMap map, Func<int, double> value)
    {
        var totals = new double[map.Rows + 1, map.Columns + 1];
        for (var row = 0; row < map.Rows; row++)
        {
            for (var column = 0; column < map.Columns; column++)
            {
                totals[row + 1, column + 1] = value((row * map.Columns) + column) + totals[row, column + 1] + totals[row + 1, column] - totals[row, column];
            }
        }

        return totals;
    }
}
