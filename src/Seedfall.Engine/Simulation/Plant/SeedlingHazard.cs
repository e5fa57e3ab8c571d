using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Plant;

/// <summary>
/// Loss of seedlings by drying, hazard = mu0 (psi_c - psi)/|psi_c| while the rooted layer is drier than psi_c, and by rot and
/// heat. The numbers are assumed: no measured hazard could be read.
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
    internal static Lanes InHour(Lanes potentialMPa) =>
        LaneMath.Max(Lanes.Zero, (Vector256.Create(CriticalMPa) - potentialMPa) * (PerHour / -CriticalMPa));

    /// <summary>Soil above which wet seedlings begin to rot, degC (UC IPM: damping-off is commoner above 70 degF; level assumed).</summary>
    public const double DampingOffC = 25.0;

    /// <summary>Soil temperature that scorches, degC (assumed).</summary>
    public const double ScorchC = 40.0;

    /// <summary>
    /// Set so that about half the seedings watered three times a day miss their stand where open soil at 5 cm averages 24.5 degC
    /// (76 degF) over the two weeks after, as practice has it, and hardly any at 21 (70). Assumed.
    /// </summary>
    private const double DampingOffPerHourPerC = 6.0e-3;

    private const double ScorchPerHour = 0.02;
    private const double WetMPa = -0.1;

    /// <summary>Days after germination in which seedlings are open to both (Ohio State: the first three weeks).</summary>
    public const int OpenDays = 21;

    /// <summary>Hazard of rot and heat in one hour.</summary>
    /// <param name="soilC">Soil at the seedling, degC.</param>
    /// <param name="surfaceMPa">Potential of the surface, MPa.</param>
    internal static Lanes HeatInHour(Lanes soilC, Lanes surfaceMPa)
    {
        var scorched = Vector256.GreaterThan(soilC, Vector256.Create(ScorchC)) & Vector256.Create(ScorchPerHour);
        var rot = LaneMath.Max(Lanes.Zero, soilC - Vector256.Create(DampingOffC)) * DampingOffPerHourPerC;
        return scorched + (Vector256.GreaterThan(surfaceMPa, Vector256.Create(WetMPa)) & rot);
    }
}
