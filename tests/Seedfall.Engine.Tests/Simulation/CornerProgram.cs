namespace Seedfall.Engine.Tests.Simulation;

/// <summary>A linear program of three unknowns, solved by trying all its corners.</summary>
internal static class CornerProgram
{
    /// <summary>Least x + y + z over the corners of a x at most b.</summary>
    internal static double Least(List<(double[] A, double B)> rows)
    {
        var least = 0.0;
        for (var i = 0; i < rows.Count; i++)
        {
            for (var j = i + 1; j < rows.Count; j++)
            {
                for (var k = j + 1; k < rows.Count; k++)
                {
                    if (Meet(rows[i], rows[j], rows[k]) is { } x && x.Sum() < least && rows.TrueForAll(r => (r.A[0] * x[0]) + (r.A[1] * x[1]) + (r.A[2] * x[2]) <= r.B + 1e-9))
                    {
                        least = x.Sum();
                    }
                }
            }
        }

        return least;
    }

    /// <summary>Where three planes meet, by Cramer's rule; null where they do not.</summary>
    private static double[]? Meet((double[] A, double B) p, (double[] A, double B) q, (double[] A, double B) r)
    {
        static double Det(double[] a, double[] b, double[] c) => (a[0] * ((b[1] * c[2]) - (b[2] * c[1]))) - (a[1] * ((b[0] * c[2]) - (b[2] * c[0]))) + (a[2] * ((b[0] * c[1]) - (b[1] * c[0])));
        var det = Det(p.A, q.A, r.A);
        if (Math.Abs(det) < 1e-12)
        {
            return null;
        }

        double[] With(double[] a, double b, int at) => [.. a.Select((v, i) => i == at ? b : v)];
        return [.. Enumerable.Range(0, 3).Select(i => Det(With(p.A, p.B, i), With(q.A, q.B, i), With(r.A, r.B, i)) / det)];
    }
}
