namespace Seedfall.Engine.Simulation.Seedbed;

/// <summary>
/// The water potential a seed sees: between that of its layer and that of the air, for a seed on the surface touches both.
/// The weights are judged, not measured.
/// </summary>
public static class SeedPotential
{
    /// <summary>Driest potential reported, as a suction, MPa.</summary>
    public const double DriestMPa = 5.0;

    /// <summary>Weight of the soil for seed lying bare on the surface (assumed).</summary>
    public const double SurfaceWeight = 0.6;

    /// <summary>Weight of the soil for seed raked in or under mulch (assumed).</summary>
    public const double RakedWeight = 0.9;

    /// <summary>R T / V_w at 298 K, MPa (common practice, no source read).</summary>
    public const double AirMPaAt298K = 137.0;

    /// <summary>Potential of the air, MPa: (R T / V_w) ln(RH), 137 MPa at 298 K (common practice, no source read).</summary>
    /// <param name="relativeHumidity">0 to 1.</param>
    /// <param name="airC">degC.</param>
    public static double OfAirMPa(double relativeHumidity, double airC) =>
        Math.Max(-DriestMPa, AirMPaAt298K * Math.Log(Math.Clamp(relativeHumidity, 1.0e-3, 1.0)) * (airC + 273.15) / 298.0);

    /// <summary>Potential a seed sees, MPa, at least -5.</summary>
    public static double SeenMPa(double layerMPa, double airMPa, double soilWeight) =>
        Math.Max(-DriestMPa, (soilWeight * layerMPa) + ((1.0 - soilWeight) * airMPa));
}
