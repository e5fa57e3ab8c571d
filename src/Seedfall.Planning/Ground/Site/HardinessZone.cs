using System.Globalization;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground;

/// <summary>A half zone of the U.S. Department of Agriculture's plant hardiness map: 5 degF of mean annual extreme minimum.</summary>
/// <param name="Index">0 for 1a (-60 to -55 degF) up to 25 for 13b (65 to 70 degF).</param>
public readonly record struct HardinessZone(int Index)
{
    private const double LowestF = -60.0;
    private const double StepF = 5.0;
    private const int Last = 25;

    /// <summary>Zone of a mean annual extreme minimum; what lies beyond the scale takes its end.</summary>
    public static HardinessZone Of(Temperature meanExtreme) => new(Math.Clamp((int)Math.Floor((meanExtreme.Fahrenheit - LowestF) / StepF + 1e-9), 0, Last));

    /// <summary>As written on the map, for example <c>6b</c>.</summary>
    public string Name => string.Create(CultureInfo.InvariantCulture, $"{(Index / 2) + 1}{(Index % 2 == 0 ? 'a' : 'b')}");

    /// <summary>Coldest mean annual extreme minimum of the half zone.</summary>
    public Temperature From => Temperature.FromFahrenheit(LowestF + (StepF * Index));

    /// <summary>Where the next half zone begins.</summary>
    public Temperature To => Temperature.FromFahrenheit(LowestF + (StepF * (Index + 1)));

    /// <summary>Chance that the long mean lies in this half zone, given the mean of some winters and its standard error.</summary>
    /// <param name="meanF">Mean of the winters known, degF.</param>
    /// <param name="errorF">Its standard error, degF.</param>
    public double Chance(double meanF, double errorF) => errorF > 0.0
        ? NormalDistribution.Cumulative((To.Fahrenheit - meanF) / errorF) - NormalDistribution.Cumulative((From.Fahrenheit - meanF) / errorF)
        : this == Of(Temperature.FromFahrenheit(meanF)) ? 1.0 : 0.0;

    public override string ToString() => Name;
}
