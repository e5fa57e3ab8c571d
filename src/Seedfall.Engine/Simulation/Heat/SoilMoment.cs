namespace Seedfall.Engine.Simulation.Heat;

/// <summary>A day, an hour of it and a depth.</summary>
/// <param name="Date">Local standard day.</param>
/// <param name="Hour">Hour of local standard time, 0 to 24.</param>
/// <param name="DepthM">Depth below the soil surface, m.</param>
public readonly record struct SoilMoment(DateOnly Date, double Hour, double DepthM);
