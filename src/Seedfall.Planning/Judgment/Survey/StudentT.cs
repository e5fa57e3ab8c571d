namespace Seedfall.Planning.Judgment.Survey;

/// <summary>Student's t for two-sided 90 % ranges.</summary>
internal static class StudentT
{
    private const double Normal95 = 1.645;

    // Upper 5 % points, any printed table of Student's distribution; 1 to 30 degrees of freedom.
    private static readonly double[] Upper5 =
    [
        6.314, 2.920, 2.353, 2.132, 2.015, 1.943, 1.895, 1.860, 1.833, 1.812, 1.796, 1.782, 1.771, 1.761, 1.753,
        1.746, 1.740, 1.734, 1.729, 1.725, 1.721, 1.717, 1.714, 1.711, 1.708, 1.706, 1.703, 1.701, 1.699, 1.697,
    ];

    /// <summary>The value exceeded with chance 5 %, dimensionless; beyond 30 degrees of freedom the normal one with the first correction (z + (z^3 + z) / 4f).</summary>
    /// <param name="degreesOfFreedom">At least 1.</param>
    internal static double Upper(int degreesOfFreedom)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(degreesOfFreedom, 1);
        return degreesOfFreedom <= Upper5.Length
            ? Upper5[degreesOfFreedom - 1]
            : Normal95 + (((Normal95 * Normal95 * Normal95) + Normal95) / (4.0 * degreesOfFreedom));
    }
}
