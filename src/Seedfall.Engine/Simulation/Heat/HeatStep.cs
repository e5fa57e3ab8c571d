namespace Seedfall.Engine.Simulation.Heat;

/// <summary>What one hour of the column gave.</summary>
/// <param name="SkinC">Radiating skin at the end of the hour, degC.</param>
/// <param name="GroundWm2">Heat conducted into the soil, mean of the hour, W m-2.</param>
/// <param name="PenetratingWm2">Sun that reached the soil through the canopy, W m-2.</param>
/// <param name="TranspirationMm">Water the grass gave off, mm; below 0 where dew formed.</param>
/// <param name="SoilEvaporationMm">Water bare soil gave off, mm; below 0 where dew formed.</param>
/// <param name="At1CmC">Soil at 1 cm at the end of the hour, degC.</param>
/// <param name="At5CmC">Soil at 5 cm at the end of the hour, degC.</param>
public readonly record struct HeatStep(
    double SkinC,
    double GroundWm2,
    double PenetratingWm2,
    double TranspirationMm,
    double SoilEvaporationMm,
    double At1CmC,
    double At5CmC);
