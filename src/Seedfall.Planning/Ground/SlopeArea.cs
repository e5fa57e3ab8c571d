namespace Seedfall.Planning.Ground;

/// <summary>How much more ground a slope has than its plan.</summary>
public static class SlopeArea
{
    /// <summary>Ground area per plan area [-]: <c>1 / cos(theta) = sqrt(1 + (s/100)^2)</c> for a slope of s percent.</summary>
    public static double Factor(double slopePercent) =>
        double.IsFinite(slopePercent)
            ? Math.Sqrt(1.0 + slopePercent / 100.0 * (slopePercent / 100.0))
            : throw new ArgumentOutOfRangeException(nameof(slopePercent), slopePercent, "a finite slope in percent is needed");
}
