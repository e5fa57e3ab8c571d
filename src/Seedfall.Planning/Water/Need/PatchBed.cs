using Seedfall.Engine.Simulation;

namespace Seedfall.Planning.Water;

/// <summary>One patch as the need sees it.</summary>
/// <param name="PatchId">The patch.</param>
/// <param name="Name">Its name.</param>
/// <param name="AreaM2">Its ground, m2.</param>
/// <param name="Ground">Soil, shade, slope, turf and covering.</param>
internal sealed record PatchBed(string PatchId, string Name, double AreaM2, PatchConditions Ground);
