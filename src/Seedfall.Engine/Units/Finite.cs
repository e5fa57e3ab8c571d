using System.Runtime.CompilerServices;

namespace Seedfall.Engine.Units;

/// <summary>The check at every unit's door: no NaN and no infinity comes in.</summary>
internal static class Finite
{
    internal static double Require(double value, string unit, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, $"a finite number of {unit} is needed");
}
