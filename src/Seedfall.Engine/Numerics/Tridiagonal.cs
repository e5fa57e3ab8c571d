namespace Seedfall.Engine.Numerics;

/// <summary>Solution of tridiagonal systems by the Thomas algorithm; allocates nothing.</summary>
public static class Tridiagonal
{
    /// <summary>
    /// Solves lower[i] x[i-1] + diagonal[i] x[i] + upper[i] x[i+1] = right[i]. All spans have one length n of at least 1;
    /// lower[0] and upper[n-1] are not read. <paramref name="solution"/> may be the same memory as <paramref name="right"/>.
    /// No pivoting: meant for diagonally dominant systems such as implicit diffusion. Throws on unequal lengths.
    /// </summary>
    /// <param name="lower">Sub-diagonal.</param>
    /// <param name="diagonal">Main diagonal.</param>
    /// <param name="upper">Super-diagonal.</param>
    /// <param name="right">Right-hand side.</param>
    /// <param name="solution">Receives x.</param>
    /// <param name="scratch">Work space of length n, overwritten.</param>
    public static void Solve(
        ReadOnlySpan<double> lower,
        ReadOnlySpan<double> diagonal,
        ReadOnlySpan<double> upper,
        ReadOnlySpan<double> right,
        Span<double> solution,
        Span<double> scratch)
    {
        var n = diagonal.Length;
        if (n == 0 || lower.Length != n || upper.Length != n || right.Length != n || solution.Length != n || scratch.Length != n)
        {
            throw new ArgumentException("all spans must have one length of at least 1", nameof(diagonal));
        }

        var pivot = 1.0 / diagonal[0];
        scratch[0] = upper[0] * pivot;
        solution[0] = right[0] * pivot;
        for (var i = 1; i < n; i++)
        {
            pivot = 1.0 / (diagonal[i] - (lower[i] * scratch[i - 1]));
            scratch[i] = upper[i] * pivot;
            solution[i] = (right[i] - (lower[i] * solution[i - 1])) * pivot;
        }

        for (var i = n - 2; i >= 0; i--)
        {
            solution[i] -= scratch[i] * solution[i + 1];
        }
    }
}
