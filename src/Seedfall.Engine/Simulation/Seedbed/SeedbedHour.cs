using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Seedbed;

/// <summary>What one hour brings and asks, of four seedbeds.</summary>
/// <param name="RainMm">Rain in the hour, mm.</param>
/// <param name="IrrigationMm">Irrigation in the hour, mm.</param>
/// <param name="PotentialEvaporationMm">What the air would take from a wet soil surface under this cover, mm; not negative.</param>
/// <param name="TranspirationMm">What the roots would take from moist soil, mm; not negative.</param>
/// <param name="RootDepthMm">Depth to which roots draw, mm.</param>
public readonly record struct SeedbedHour(Lanes RainMm, Lanes IrrigationMm, Lanes PotentialEvaporationMm, Lanes TranspirationMm, double RootDepthMm);

/// <summary>What lies on the seedbed.</summary>
/// <param name="StoreMm">Water that leaves and mulch hold back, mm (0.2 LAI, and 1 to 2 mm per kg/m2 of mulch).</param>
/// <param name="PondMm">Water the roughness of the ground holds before it runs, mm (2 to 8 flat, less on a slope).</param>
/// <param name="MulchCover">Share of the ground under mulch; 1 - 0.55 of it evaporates while the surface is wet.</param>
public readonly record struct SeedbedSurface(double StoreMm, double PondMm, double MulchCover)
{
    private const double FlatPondMm = 4.0;
    private const double LeastPondMm = 0.5;

    /// <summary>Ground of a slope under grass and mulch.</summary>
    /// <param name="leafArea">Leaf area per ground area.</param>
    /// <param name="mulchKgM2">Mulch, kg/m2.</param>
    /// <param name="mulchCover">Share of the ground under mulch.</param>
    /// <param name="slopePercent">Slope, percent.</param>
    public static SeedbedSurface Of(double leafArea, double mulchKgM2, double mulchCover, double slopePercent) => new(
        (0.2 * leafArea) + (1.5 * mulchKgM2),
        Math.Max(LeastPondMm, FlatPondMm * (1.0 - (slopePercent / 20.0))),
        mulchCover);
}

/// <summary>Where the water of one hour went, mm. Water in equals these plus the change in <see cref="SeedbedState.TotalMm"/>.</summary>
/// <param name="EvaporationMm">From soil, leaves, mulch and pond.</param>
/// <param name="TranspirationMm">Through roots.</param>
/// <param name="RunoffMm">Over the edge.</param>
/// <param name="DrainageMm">Below 30 cm.</param>
public readonly record struct SeedbedFluxes(Lanes EvaporationMm, Lanes TranspirationMm, Lanes RunoffMm, Lanes DrainageMm);
