namespace Seedfall.Engine.Validation;

/// <summary>Mean squared difference between a stated chance and what happened (1 or 0). Source: Brier 1950.</summary>
public static class BrierScore
{
    /// <summary>The score, 0 (perfect) to 1, of chances 0 to 1 against outcomes; throws on empty or unequal series.</summary>
    public static double Of(ReadOnlySpan<double> chances, ReadOnlySpan<bool> happened)
    {
        if (chances.Length != happened.Length || chances.IsEmpty)
        {
            throw new ArgumentException($"two series of one length, at least 1, are needed: got {chances.Length} and {happened.Length}", nameof(chances));
        }

        double sum = 0;
        for (var i = 0; i < chances.Length; i++)
        {
            var error = chances[i] - (happened[i] ? 1 : 0);
            sum += error * error;
        }

        return sum / chances.Length;
    }

    /// <summary>1 - score / reference: 1 is perfect, 0 no better than the reference, below 0 worse; reference must be above 0.</summary>
    public static double Skill(double score, double reference) => reference > 0
        ? 1 - score / reference
        : throw new ArgumentOutOfRangeException(nameof(reference), reference, "a reference score above 0 is needed");
}
