namespace Seedfall.Photos.Overview;

/// <summary>Small systems of linear equations.</summary>
internal static class LinearSolving
{
    /// <summary>A pivot this small beside the largest coefficient of about 1 means the equations do not settle the unknowns.</summary>
    private const double LeastPivot = 1e-10;

    /// <summary>Solves n equations, each a row of n coefficients and the right side, by elimination with row exchange; null where they settle nothing.</summary>
    internal static double[]? Solve(double[,] rows)
    {
        var n = rows.GetLength(0);
        for (var column = 0; column < n; column++)
        {
            var best = column;
            for (var row = column + 1; row < n; row++)
            {
                best = Math.Abs(rows[row, column]) > Math.Abs(rows[best, column]) ? row : best;
            }

            if (!(Math.Abs(rows[best, column]) > LeastPivot))
            {
                return null;
            }

            for (var k = column; k <= n; k++)
            {
                (rows[column, k], rows[best, k]) = (rows[best, k], rows[column, k]);
            }

            for (var row = column + 1; row < n; row++)
            {
                var factor = rows[row, column] / rows[column, column];
                for (var k = column; k <= n; k++)
                {
                    rows[row, k] -= factor * rows[column, k];
                }
            }
        }

        var solved = new double[n];
        for (var row = n - 1; row >= 0; row--)
        {
            var sum = rows[row, n];
            for (var k = row + 1; k < n; k++)
            {
                sum -= rows[row, k] * solved[k];
            }

            solved[row] = sum / rows[row, row];
        }

        return solved;
    }
}
