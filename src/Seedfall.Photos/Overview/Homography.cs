namespace Seedfall.Photos.Overview;

/// <summary>
/// The mapping of one plane onto another by a pinhole camera: <c>(x', y') = ((h1 x + h2 y + h3) / w, (h4 x + h5 y + h6) / w)</c>,
/// <c>w = h7 x + h8 y + h9</c>. Lens distortion is not in it.
/// </summary>
internal sealed class Homography
{
    private readonly double[] _h;

    private Homography(double[] h) => _h = h;

    /// <summary>
    /// The one mapping that takes four points onto four others: the direct linear transformation on coordinates moved to
    /// their middle and scaled (Hartley and Zisserman, Multiple View Geometry, 2nd ed., sections 4.1 and 4.4; from memory).
    /// Null where the points do not settle it: three of them in one line.
    /// </summary>
    internal static Homography? Through(ReadOnlySpan<(double X, double Y)> from, ReadOnlySpan<(double X, double Y)> to)
    {
        if (from.Length != 4 || to.Length != 4)
        {
            throw new ArgumentException($"four points on each side are needed, found {from.Length} and {to.Length}", nameof(from));
        }

        var (a, b) = (Normalizing(from), Normalizing(to));
        if (a is null || b is null)
        {
            return null;
        }

        var rows = new double[8, 9];
        for (var i = 0; i < 4; i++)
        {
            var ((x, y), (u, v)) = (a.Map(from[i].X, from[i].Y), b.Map(to[i].X, to[i].Y));
            Fill(rows, 2 * i, [x, y, 1, 0, 0, 0, -u * x, -u * y, u]);
            Fill(rows, 2 * i + 1, [0, 0, 0, x, y, 1, -v * x, -v * y, v]);
        }

        // With the points about their middle the last element is never 0 for marks in front of the camera.
        return LinearSolving.Solve(rows) is { } h ? b.Inverse()!.After(new Homography([.. h, 1.0])).After(a) : null;
    }

    /// <summary>The image of a point.</summary>
    internal (double X, double Y) Map(double x, double y)
    {
        var w = Weight(x, y);
        return ((_h[0] * x + _h[1] * y + _h[2]) / w, (_h[3] * x + _h[4] * y + _h[5]) / w);
    }

    /// <summary>The denominator; it changes sign at the horizon.</summary>
    internal double Weight(double x, double y) => _h[6] * x + _h[7] * y + _h[8];

    /// <summary>How far the image moves where the point moves by one: d(x', y') / d(x, y).</summary>
    internal (double Xx, double Xy, double Yx, double Yy) Slopes(double x, double y)
    {
        var (w, (u, v)) = (Weight(x, y), Map(x, y));
        return ((_h[0] - _h[6] * u) / w, (_h[1] - _h[7] * u) / w, (_h[3] - _h[6] * v) / w, (_h[4] - _h[7] * v) / w);
    }

    /// <summary>The way back; null where the mapping flattens the plane to a line.</summary>
    internal Homography? Inverse()
    {
        double[] h = _h;
        double[] adjugate =
        [
            h[4] * h[8] - h[5] * h[7], h[2] * h[7] - h[1] * h[8], h[1] * h[5] - h[2] * h[4],
            h[5] * h[6] - h[3] * h[8], h[0] * h[8] - h[2] * h[6], h[2] * h[3] - h[0] * h[5],
            h[3] * h[7] - h[4] * h[6], h[1] * h[6] - h[0] * h[7], h[0] * h[4] - h[1] * h[3],
        ];
        var determinant = h[0] * adjugate[0] + h[1] * adjugate[3] + h[2] * adjugate[6];
        return double.IsNormal(determinant) ? new Homography([.. adjugate.Select(v => v / determinant)]) : null;
    }

    /// <summary>First the other, then this.</summary>
    internal Homography After(Homography first)
    {
        var product = new double[9];
        for (var i = 0; i < 9; i++)
        {
            var (row, column) = (i / 3 * 3, i % 3);
            product[i] = _h[row] * first._h[column] + _h[row + 1] * first._h[column + 3] + _h[row + 2] * first._h[column + 6];
        }

        return new(product);
    }

    /// <summary>Moves the middle of the points to 0 and their mean distance from it to the square root of 2.</summary>
    private static Homography? Normalizing(ReadOnlySpan<(double X, double Y)> points)
    {
        var (x, y, far) = (0.0, 0.0, 0.0);
        foreach (var p in points)
        {
            (x, y) = (x + p.X / points.Length, y + p.Y / points.Length);
        }

        foreach (var p in points)
        {
            far += double.Hypot(p.X - x, p.Y - y) / points.Length;
        }

        var scale = Math.Sqrt(2.0) / far;
        return double.IsNormal(scale) ? new Homography([scale, 0, -scale * x, 0, scale, -scale * y, 0, 0, 1]) : null;
    }

    private static void Fill(double[,] rows, int row, ReadOnlySpan<double> values)
    {
        for (var i = 0; i < values.Length; i++)
        {
            rows[row, i] = values[i];
        }
    }
}
