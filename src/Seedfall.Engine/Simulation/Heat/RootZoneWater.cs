namespace Seedfall.Engine.Simulation.Heat;

/// <summary>
/// Plant-available water of the root zone as one bucket: rain in, what grass and soil give off out, the rest drains.
/// Enough for the heat balance; the seedbed keeps its own layers.
/// </summary>
public struct RootZoneWater
{
    private const double LeastSupply = 0.02;

    /// <summary>A bucket of a size, at a filling 0 to 1.</summary>
    public RootZoneWater(double capacityMm, double filled) => (CapacityMm, WaterMm) = (capacityMm, capacityMm * filled);

    /// <summary>mm of plant-available water when full.</summary>
    public double CapacityMm { get; }

    /// <summary>mm now.</summary>
    public double WaterMm { get; private set; }

    /// <summary>Share of the plant-available water left, 0 to 1.</summary>
    public readonly double Filled => WaterMm / CapacityMm;

    /// <summary>1 while at least <paramref name="stressRange"/> of the water is left, falling to 0.02 when it is gone.</summary>
    public readonly double Supply(double stressRange) => Math.Clamp(Filled / stressRange, LeastSupply, 1.0);

    /// <summary>Adds water and takes water away, mm; returns what drained.</summary>
    public double Next(double gainMm, double lossMm)
    {
        var water = Math.Max(0.0, WaterMm + gainMm - lossMm);
        WaterMm = Math.Min(water, CapacityMm);
        return water - WaterMm;
    }
}
