using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration;

/// <summary>What a spreader put on against what was wanted.</summary>
public static class SpreaderOutput
{
    /// <summary>A calibration is held when it is within this share of the target (UMass Extension, Rotary Spreader Calibration).</summary>
    public const double Tolerance = 0.05;

    /// <summary>Rate put on over a test strip: <c>rate = used / (swath x length)</c>.</summary>
    public static MassPerArea Rate(Mass used, Length swath, Length run) =>
        swath > Length.Zero && run > Length.Zero
            ? MassPerArea.FromKilogramsPerSquareMeter(used.Kilograms / (swath.Meters * run.Meters))
            : throw new ArgumentOutOfRangeException(nameof(run), run, $"a swath and a run above 0 are needed, the swath was {swath}");

    /// <summary>True when the rate is within 5 % of the target.</summary>
    public static bool Holds(MassPerArea rate, MassPerArea target) =>
        Math.Abs(rate.KilogramsPerSquareMeter - target.KilogramsPerSquareMeter) <= Tolerance * target.KilogramsPerSquareMeter * (1.0 + 1.0e-9);

    /// <summary>
    /// Rate the second of two half passes must have so that both together come to the target: <c>target - first</c>, never below 0.
    /// </summary>
    public static MassPerArea SecondPass(MassPerArea target, MassPerArea first) =>
        MassPerArea.FromKilogramsPerSquareMeter(Math.Max(0.0, target.KilogramsPerSquareMeter - first.KilogramsPerSquareMeter));
}
