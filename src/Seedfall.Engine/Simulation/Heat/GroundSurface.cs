namespace Seedfall.Engine.Simulation.Heat;

/// <summary>What lies on and over the soil for one hour, in plain doubles; built from a patch, its water and its cover.</summary>
public readonly record struct GroundSurface
{
    /// <summary>Ground covered by canopy, 0 to 1.</summary>
    public double CanopyShare { get; init; }

    /// <summary>Sun kept off by trees and buildings, 0 to 1.</summary>
    public double ShadeShare { get; init; }

    /// <summary>How freely the grass takes up water: 1 at will, 0.02 closed.</summary>
    public double WaterSupply { get; init; }

    /// <summary>Resistance of the bare soil's surface to vapor, s m-1.</summary>
    public double SoilResistanceSm { get; init; }

    /// <summary>Share of sun bare soil reflects: about 0.10 wet to 0.20 dry.</summary>
    public double SoilAlbedo { get; init; }

    /// <summary>Thatch, mulch and snow between skin and soil, m2 K W-1.</summary>
    public double CoverResistanceM2KW { get; init; }

    /// <summary>Ground covered by snow, 0 to 1.</summary>
    public double SnowShare { get; init; }
}

/// <summary>Weather of one hour at a surface, means over the hour.</summary>
public readonly record struct SurfaceWeather
{
    /// <summary>degC.</summary>
    public double AirC { get; init; }

    /// <summary>kPa.</summary>
    public double VaporKPa { get; init; }

    /// <summary>W m-2.</summary>
    public double SolarWm2 { get; init; }

    /// <summary>From the sky, W m-2.</summary>
    public double LongwaveWm2 { get; init; }

    /// <summary>At 2 m, m s-1, already scaled.</summary>
    public double WindMs { get; init; }

    /// <summary>kPa.</summary>
    public double PressureKPa { get; init; }
}
