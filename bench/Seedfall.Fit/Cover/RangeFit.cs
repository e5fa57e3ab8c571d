namespace Seedfall.Fit.Cover;

/// <summary>
/// The factor of the 90 % range: the error over its scale that nine in ten left-out photographs stay below, with the one more that
/// a finite number asks for (split-conformal quantile, Vovk et al. 2005).
/// </summary>
internal static class RangeFit
{
    private const double Level = 0.9;

    internal static double Factor(IEnumerable<double> errorsOverScale)
    {
        var sorted = errorsOverScale.Order().ToArray();
        return sorted[Math.Min(sorted.Length, (int)Math.Ceiling(Level * (sorted.Length + 1))) - 1];
    }
}
