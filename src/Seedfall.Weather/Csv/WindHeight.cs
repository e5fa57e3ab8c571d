using Seedfall.Weather.Input;

namespace Seedfall.Weather.Csv;

/// <summary>Wind at one height brought to 2 m.</summary>
internal static class WindHeight
{
    /// <summary>Height of most weather masts, m.</summary>
    internal const double UsualM = 10.0;

    /// <summary>
    /// Factor to the speed at 2 m, dimensionless: 4.87 / ln(67.8 z - 5.42), for short grass.
    /// Source: FAO Irrigation and Drainage Paper 56, equation 47.
    /// </summary>
    /// <param name="heightM">Height of the measurement z, m.</param>
    /// <param name="header">Header of the column, for the message.</param>
    /// <param name="field">Index of the field, for the message.</param>
    internal static double FactorTo2M(double heightM, string header, int field)
    {
        if (heightM is < 0.5 or > 100)
        {
            throw new RefusedException(1, field + 1, $"a height of 0.5 to 100 m in '{header}'", FormattableString.Invariant($"{heightM} m"));
        }

        return heightM == 2.0 ? 1.0 : 4.87 / Math.Log(67.8 * heightM - 5.42);
    }
}
