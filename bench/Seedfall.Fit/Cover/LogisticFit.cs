using Seedfall.Photos.Cover;

namespace Seedfall.Fit.Cover;

/// <summary>Logistic regression by Newton's steps, with a ridge of 1 on all but the constant.</summary>
internal static class LogisticFit
{
    private const int Steps = 8;
    private const double Ridge = 1.0;

    /// <summary>Weights, the constant last.</summary>
    internal static double[] Fit(IReadOnlyList<float[]> rows, IReadOnlyList<float> answers)
    {
        var n = rows[0].Length + 1;
        var weights = new double[n];
        for (var step = 0; step < Steps; step++)
        {
            var (curvature, slope) = (new double[n, n], new double[n]);
            for (var r = 0; r < rows.Count; r++)
            {
                Add(rows[r], answers[r], weights, curvature, slope);
            }

            for (var a = 0; a < n - 1; a++)
            {
                curvature[a, a] += Ridge;
                slope[a] -= Ridge * weights[a];
            }

            var move = Solve(curvature, slope);
            for (var a = 0; a < n; a++)
            {
                weights[a] += move[a];
            }
        }

        return weights;
    }

    private static void Add(float[] row, float answer, double[] weights, double[,] curvature, double[] slope)
    {
        var n = weights.Length;
        var z = weights[^1];
        for (var j = 0; j < n - 1; j++)
        {
            z += weights[j] * row[j];
        }

        var p = Logistic.Of(Math.Clamp(z, -30.0, 30.0));
        var weight = Math.Max(p * (1.0 - p), 1e-6);
        for (var a = 0; a < n; a++)
        {
            var xa = a < n - 1 ? row[a] : 1.0;
            slope[a] += (answer - p) * xa;
            for (var b = 0; b < n; b++)
            {
                curvature[a, b] += weight * xa * (b < n - 1 ? row[b] : 1.0);
            }
        }
    }

    /// <summary>Elimination with row exchanges.</summary>
    private static double[] Solve(double[,] matrix, double[] right)
    {
        var n = right.Length;
        for (var c = 0; c < n; c++)
        {
            var pivot = Enumerable.Range(c, n - c).MaxBy(r => Math.Abs(matrix[r, c]));
            (right[c], right[pivot]) = (right[pivot], right[c]);
            for (var j = 0; j < n; j++)
            {
                (matrix[c, j], matrix[pivot, j]) = (matrix[pivot, j], matrix[c, j]);
            }

            for (var r = 0; r < n; r++)
            {
                var factor = r == c ? 0.0 : matrix[r, c] / matrix[c, c];
                for (var j = c; factor != 0.0 && j < n; j++)
                {
                    matrix[r, j] -= factor * matrix[c, j];
                }

                right[r] -= factor * right[c];
            }
        }

        return [.. right.Select((value, i) => value / matrix[i, i])];
    }
}
