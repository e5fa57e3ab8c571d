using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water.Supply;

/// <summary>What a sprinkler puts out at the pressure it was rated at.</summary>
/// <param name="Flow">Rated flow.</param>
/// <param name="At">Rated pressure.</param>
public sealed record NozzleRating(FlowRate Flow, Pressure At)
{
    /// <summary>Flow at another pressure: Q = Qr sqrt(P / Pr). Torricelli; so 40 to 60 psi gives 22 % more.</summary>
    public FlowRate FlowAt(Pressure pressure)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(pressure.Kilopascals, nameof(pressure));
        return Flow * Math.Sqrt(pressure / At);
    }
}
