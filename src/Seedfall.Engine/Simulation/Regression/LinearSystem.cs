namespace Seedfall.Engine.Simulation.Regression;

/// <summary>Small dense symmetric positive definite systems, by Cholesky.</summary>
public static class LinearSystem
{
    /// <summary>
    /// x with A x = b for a symmetric positive definite A of the length of b; neither is changed. Throws where A is not
    /// positive definite (columns that depend on each other and no ridge).
    /// </summary>
    public static double[] SolvePositive(double[,] matrix, double[] right)
    {
        var n = right.Length;
        if (matrix.GetLength(0) != n || matrix.GetLength(1) != n)
        {
            throw new ArgumentException($"a {n} by {n} matrix is needed", nameof(matrix));
        }

        var factor = Cholesky(matrix, n);
        var x = (double[])right.Clone();
        for (var i = 0; i < n; i++)
        {
            for (var k = 0; k < i; k++)
            {
                x[i] -= factor[i, k] * x[k];
            }

            x[i] /= factor[i, i];
        }

        for (var i = n - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < n; k++)
            {
                x[i] -= factor[k, i] * x[k];
            }

            x[i] /= factor[i, i];
        }

        return x;
    }

    private static double[,] Cholesky(double[,] matrix, int n)
    {
        var factor = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = matrix[i, j];
                for (var k = 0; k < j; k++)
                {
                    sum -= factor[i, k] * factor[j, k];
                }

                if (i != j)
                {
                    factor[i, j] = sum / factor[j, j];
                }
                else
                {
                    factor[i, i] = sum > 0.0 ? Math.Sqrt(sum) : throw new ArgumentException($"the matrix is not positive definite at row {i}", nameof(matrix));
                }
            }
        }

        return factor;
    }
}
