using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water;

/// <summary>What one patch needs of each round of a phase.</summary>
/// <param name="PatchId">The patch.</param>
/// <param name="DepthMm">Net depth of a round, mm.</param>
/// <param name="Figure">The same with its working; null for a rule of thumb, whose working stands with the phase.</param>
internal sealed record PatchNeed(string PatchId, double DepthMm, Figure? Figure);
