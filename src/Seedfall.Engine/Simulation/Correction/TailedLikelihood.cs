namespace Seedfall.Engine.Simulation.Correction;

/// <summary>How far something seen lies from what was expected, judged with heavy tails so that one wild value settles nothing.</summary>
internal static class TailedLikelihood
{
    private const double Freedom = 4.0;

    /// <summary>Log density of Student's t with 4 degrees of freedom, up to a constant: <c>-(v + 1)/2 ln(1 + z^2 / v)</c> (Lange, Little and Taylor 1989).</summary>
    /// <param name="difference">Seen minus expected.</param>
    /// <param name="deviation">Scale, above 0, in the same unit.</param>
    internal static double Log(double difference, double deviation)
    {
        var z = difference / deviation;
        return -0.5 * (Freedom + 1.0) * Math.Log(1.0 + (z * z / Freedom));
    }
}
