namespace Seedfall.Engine.Simulation.Plant;

/// <summary>
/// Loss of seedlings by drying: hazard = mu0 (psi_c - psi)/|psi_c| while the rooted layer is drier than psi_c. Both numbers
/// are assumed: no measured seedling desiccation hazard could be read.
/// </summary>
public static class SeedlingHazard
{
    /// <summary>Potential below which a radicle or young root suffers, MPa (assumed).</summary>
    public const double CriticalMPa = -1.0;

    /// <summary>Hazard at twice that dryness, 1/h (assumed, the middle of 0.05 to 0.15).</summary>
    public const double PerHour = 0.1;

    /// <summary>Root depth gained a day, mm (common practice, 3 to 6 mm).</summary>
    public const double RootMmPerDay = 4.5;

    /// <summary>Hazard of one hour.</summary>
    /// <param name="potentialMPa">Potential of the rooted layer, MPa.</param>
    public static double InHour(double potentialMPa) =>
        potentialMPa >= CriticalMPa ? 0.0 : PerHour * (CriticalMPa - potentialMPa) / -CriticalMPa;
}
