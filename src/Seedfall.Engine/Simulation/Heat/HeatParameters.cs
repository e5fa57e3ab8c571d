namespace Seedfall.Engine.Simulation.Heat;

/// <summary>
/// The numbers of the column that weather stations taught, each held inside bounds that physics allows
/// (see <see cref="HeatParameterBounds"/>).
/// </summary>
public sealed record HeatParameters
{
    /// <summary>Conductance from the canopy's radiating skin to the soil surface under full turf, W m-2 K-1.</summary>
    public required double CanopyConductanceWm2K { get; init; }

    /// <summary>Share of the absorbed sun that passes a full canopy to the soil.</summary>
    public required double SunThrough { get; init; }

    /// <summary>Least resistance of the canopy to water vapor in full sun, s m-1.</summary>
    public required double LeastResistanceSm { get; init; }

    /// <summary>Share of sun reflected by full turf.</summary>
    public required double Albedo { get; init; }

    /// <summary>Factor on the wind by day.</summary>
    public required double DayWind { get; init; }

    /// <summary>Factor on the wind by night.</summary>
    public required double NightWind { get; init; }

    /// <summary>Aerodynamic resistance times wind, s m-1 times m s-1: 208 for grass of 12 cm, 262 for 6 cm.</summary>
    public required double AerodynamicResistance { get; init; }

    /// <summary>Factor on the soil's heat capacity.</summary>
    public required double Inertia { get; init; }

    /// <summary>Share of the plant-available water at which the grass begins to close its leaves.</summary>
    public required double StressRange { get; init; }

    /// <summary>Factor on the cloud share of the sky in the longwave from above.</summary>
    public required double CloudFactor { get; init; }

    /// <summary>Added to the clear-sky emissivity.</summary>
    public required double SkyOffset { get; init; }

    /// <summary>Plant-available water the roots of reference turf reach, mm.</summary>
    public required double RootWaterMm { get; init; }

    /// <summary>Ground left bare by natural grass per unit of the place's moisture deficit (<see cref="Forcing.PlaceClimate.DrynessDeficit"/>).</summary>
    public required double DryBareness { get; init; }

    /// <summary>Where the fit began: textbook values.</summary>
    public static HeatParameters Textbook { get; } = new()
    {
        CanopyConductanceWm2K = 6.0,
        SunThrough = 0.05,
        LeastResistanceSm = 70.0,
        Albedo = 0.22,
        DayWind = 1.0,
        NightWind = 1.0,
        AerodynamicResistance = 208.0,
        Inertia = 1.0,
        StressRange = 0.6,
        CloudFactor = 1.0,
        SkyOffset = 0.0,
        RootWaterMm = 80.0,
        DryBareness = 0.2,
    };
}
