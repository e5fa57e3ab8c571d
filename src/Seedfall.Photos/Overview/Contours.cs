namespace Seedfall.Photos.Overview;

/// <summary>Outlines of low ground in a grid by marching squares (Lorensen and Cline 1987 in two dimensions; from memory).</summary>
internal static class Contours
{
    /// <summary>
    /// Closed rings round all cells of the map that are measured, at least half inside, and below the threshold: outer rings counterclockwise, holes
    /// clockwise. Between two measured cells the line runs where the cover reads the threshold, toward anything else along the
    /// edge of the cell.
    /// </summary>
    internal static IReadOnlyList<IReadOnlyList<PlanPoint>> Below(CoverMap map, double threshold)
    {
        var grid = new Grid(map, threshold);
        var next = new Dictionary<int, int>();
        for (var row = -1; row < map.Rows; row++)
        {
            for (var column = -1; column < map.Columns; column++)
            {
                AddLines(grid, column, row, next);
            }
        }

        var rings = new List<IReadOnlyList<PlanPoint>>();
        while (next.Count > 0)
        {
            var ring = new List<PlanPoint>();
            for (var edge = next.First().Key; next.Remove(edge, out var following); edge = following)
            {
                ring.Add(grid.Crossing(edge));
            }

            rings.Add(ring);
        }

        return rings;
    }

    /// <summary>The lines through one square of four cell middles, low ground on their left.</summary>
    private static void AddLines(Grid grid, int column, int row, Dictionary<int, int> next)
    {
        var (bottom, top) = (grid.EdgeRight(column, row), grid.EdgeRight(column, row + 1));
        var (left, right) = (grid.EdgeUp(column, row), grid.EdgeUp(column + 1, row));
        var corners = (grid.IsLow(column, row) ? 1 : 0) | (grid.IsLow(column + 1, row) ? 2 : 0) | (grid.IsLow(column + 1, row + 1) ? 4 : 0) | (grid.IsLow(column, row + 1) ? 8 : 0);
        var joined = corners is 5 or 10 && grid.IsLowAmong(column, row);
        (int From, int To)[] lines = corners switch
        {
            1 => [(bottom, left)],
            2 => [(right, bottom)],
            3 => [(right, left)],
            4 => [(top, right)],
            5 => joined ? [(bottom, right), (top, left)] : [(bottom, left), (top, right)],
            6 => [(top, bottom)],
            7 => [(top, left)],
            8 => [(left, top)],
            9 => [(bottom, top)],
            10 => joined ? [(left, bottom), (right, top)] : [(right, bottom), (left, top)],
            11 => [(right, top)],
            12 => [(left, right)],
            13 => [(bottom, right)],
            14 => [(left, bottom)],
            _ => [],
        };
        foreach (var (from, to) in lines)
        {
            next.Add(from, to);
        }
    }

    /// <summary>Cell middles with one row and column of unknown ground all round.</summary>
    private sealed class Grid(CoverMap map, double threshold)
    {
        private readonly int _stride = map.Columns + 2;

        internal bool IsLow(int column, int row) => Value(column, row) < threshold;

        /// <summary>Whether the middle of four cells lies low, where two of them on a diagonal do.</summary>
        internal bool IsLowAmong(int column, int row)
        {
            double?[] values = [Value(column, row), Value(column + 1, row), Value(column, row + 1), Value(column + 1, row + 1)];
            return values.All(v => v is not null) && values.Average() < threshold;
        }

        internal int EdgeRight(int column, int row) => 2 * ((row + 1) * _stride + column + 1);

        internal int EdgeUp(int column, int row) => EdgeRight(column, row) + 1;

        internal PlanPoint Crossing(int edge)
        {
            var (column, row) = (edge / 2 % _stride - 1, edge / 2 / _stride - 1);
            var (toColumn, toRow) = edge % 2 == 0 ? (column + 1, row) : (column, row + 1);
            var share = Value(column, row) is { } from && Value(toColumn, toRow) is { } to ? (threshold - from) / (to - from) : 0.5;
            var (a, b) = (map.Middle(column, row), map.Middle(toColumn, toRow));
            return new(a.AcrossM + share * (b.AcrossM - a.AcrossM), a.AwayM + share * (b.AwayM - a.AwayM));
        }

        private double? Value(int column, int row) =>
            column >= 0 && row >= 0 && column < map.Columns && row < map.Rows && map[column, row] is { State: CellState.Measured, Inside: >= 0.5 } cell ? cell.Cover : null;
    }
}
