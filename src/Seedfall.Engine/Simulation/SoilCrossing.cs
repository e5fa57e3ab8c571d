namespace Seedfall.Engine.Simulation;

/// <summary>
/// The day soil falls through a threshold: the first day on which the trailing 5-day mean of the daily mean is below it
/// and stays below on that and the next two days. A single cool day in a warm spell is no crossing.
/// </summary>
public static class SoilCrossing
{
    private const int MeanDays = 5;
    private const int HoldDays = 3;

    /// <summary>
    /// Index into <paramref name="dailyMeanC"/> of the crossing at or after <paramref name="firstIndex"/>, or null where
    /// it does not happen by the end. Days before <paramref name="firstIndex"/> serve the trailing mean; near the
    /// start of the series the mean is over the days there are.
    /// </summary>
    public static int? FirstFallBelow(ReadOnlySpan<double> dailyMeanC, double thresholdC, int firstIndex)
    {
        var held = 0;
        for (var i = firstIndex; i < dailyMeanC.Length; i++)
        {
            held = TrailingMean(dailyMeanC, i) < thresholdC ? held + 1 : 0;
            if (held == HoldDays)
            {
                return i - HoldDays + 1;
            }
        }

        return null;
    }

    private static double TrailingMean(ReadOnlySpan<double> values, int last)
    {
        var first = Math.Max(0, last - MeanDays + 1);
        double sum = 0;
        for (var i = first; i <= last; i++)
        {
            sum += values[i];
        }

        return sum / (last - first + 1);
    }
}
