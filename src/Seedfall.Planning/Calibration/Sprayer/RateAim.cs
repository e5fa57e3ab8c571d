using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Sprayer;

/// <summary>What the sprayer does now and what it should put out.</summary>
/// <param name="Now">Carrier put out now, above 0.</param>
/// <param name="Wanted">Carrier to put out, above 0.</param>
public sealed record RateAim(VolumePerArea Now, VolumePerArea Wanted)
{
    /// <summary>A rate this near the wanted one is held (Pesticide Environmental Stewardship, +-5 %).</summary>
    public const double Tolerance = 0.05;

    /// <summary>Speed walked now; null where not measured.</summary>
    public Speed? Walk { get; init; }

    /// <summary>Width one nozzle covers; null where not measured.</summary>
    public Length? Width { get; init; }

    /// <summary>Pressure now; null where there is no gauge.</summary>
    public Pressure? Pressure { get; init; }

    /// <summary>Lowest pressure the nozzle's maker allows; null where not known.</summary>
    public Pressure? LeastPressure { get; init; }

    /// <summary>Highest pressure the nozzle's maker allows; null where not known.</summary>
    public Pressure? MostPressure { get; init; }

    /// <summary>The label's least carrier; null where not entered.</summary>
    public VolumePerArea? LabelLeast { get; init; }

    /// <summary>Flow by which the nozzle must change at the present walk: <c>wanted / now</c>.</summary>
    public double Change => Wanted / Now;

    /// <summary>True within 5 % of the wanted rate and not below the label's least carrier.</summary>
    public bool IsHeld =>
        Math.Abs(Change - 1.0) <= Tolerance * (1.0 + 1.0e-9) && !(LabelLeast is { } least && Now.LitersPerSquareMeter * (1.0 + 1.0e-6) < least.LitersPerSquareMeter);
}
