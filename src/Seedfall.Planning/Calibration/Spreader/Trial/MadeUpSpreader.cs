using Seedfall.Engine.Numerics;

namespace Seedfall.Planning.Calibration.Spreader.Trial;

/// <summary>Ways flow may grow with opening. None is handed to the fit; only one has its form.</summary>
public enum FlowFamily
{
    /// <summary>In proportion to the opening, from the least on.</summary>
    Proportional,

    /// <summary>A straight line from where the gate begins to flow.</summary>
    Line,

    /// <summary>A power of 1.5 to 3 from where the gate begins to flow: the fit's own form.</summary>
    Power,

    /// <summary>Rises fast, then levels off.</summary>
    Leveling,

    /// <summary>A straight edge uncovers a round hole, and grains bridge over a narrow slit.</summary>
    RoundHole,
}

/// <summary>A spreader made up for a trial.</summary>
/// <param name="DeadPlace">Place on the scale (0 to 1) where it begins to flow.</param>
/// <param name="Shape">Exponent or bend, as the family has it.</param>
/// <param name="FullKgM2">Rate wide open at its usual walk, kg/m2.</param>
/// <param name="Steps">Steps on its scale.</param>
internal sealed record MadeUpSpreader(FlowFamily Family, double DeadPlace, double Shape, double FullKgM2, int Steps)
{
    private const double LeastFullPounds = 10.0;
    private const double MostFullPounds = 80.0;
    private static readonly int[] StepCounts = [40, 50, 60, 80, 100];

    internal static MadeUpSpreader Draw(FlowFamily family, SplitMix64 chance)
    {
        var dead = family == FlowFamily.Proportional ? 0.0 : 0.25 * chance.NextDouble();
        var shape = family switch
        {
            FlowFamily.Power => 1.5 + 1.5 * chance.NextDouble(),
            FlowFamily.Leveling => 1.0 + 2.0 * chance.NextDouble(),
            FlowFamily.RoundHole => 1.25,
            _ => 1.0,
        };
        var fullPounds = LogUniform(LeastFullPounds, MostFullPounds, chance);
        return new(family, dead, shape, Engine.Units.MassPerArea.FromPoundsPerThousandSquareFeet(fullPounds).KilogramsPerSquareMeter, StepCounts[chance.NextInt(StepCounts.Length)]);
    }

    /// <summary>Rate at a place on the scale without noise, kg/m2.</summary>
    internal double RateKgM2(double place)
    {
        var open = Math.Max(0.0, (place - DeadPlace) / (1.0 - DeadPlace));
        return FullKgM2 * Family switch
        {
            FlowFamily.Power => Math.Pow(open, Shape),
            FlowFamily.Leveling => (1.0 - Math.Exp(-Shape * open)) / (1.0 - Math.Exp(-Shape)),
            FlowFamily.RoundHole => Math.Pow(Segment(open), Shape),
            _ => open,
        };
    }

    internal static double LogUniform(double low, double high, SplitMix64 chance) => low * Math.Pow(high / low, chance.NextDouble());

    /// <summary>Share of a circle uncovered by a straight edge that has gone this share of its diameter.</summary>
    private static double Segment(double open)
    {
        var x = 1.0 - 2.0 * Math.Min(1.0, open);
        return (Math.Acos(x) - x * Math.Sqrt(1.0 - x * x)) / Math.PI;
    }
}
