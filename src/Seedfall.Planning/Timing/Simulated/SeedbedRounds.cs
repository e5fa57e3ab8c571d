using Seedfall.Engine.Simulation;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Timing;

/// <summary>The seedbed's rounds as the water proof says the tap can give them.</summary>
internal static class SeedbedRounds
{
    /// <summary>
    /// Rounds that found an allowed time, each of the depth the patch's own set puts down; rain only where none did. A proof
    /// that fails thus simulates what can be given, not what was wanted.
    /// </summary>
    internal static WateringRounds Of(WaterProof proof, string patchId, WaterSupply? supply)
    {
        var seedbed = proof.Phases.FirstOrDefault(phase => phase.PhaseId == "seedbed");
        if (seedbed is null || seedbed.Starts.Count == 0 || seedbed.Runs.Count == 0)
        {
            return WateringRounds.RainOnly;
        }

        var set = supply?.Sets.FirstOrDefault(s => s.PatchIds.Contains(patchId));
        var run = seedbed.Runs.FirstOrDefault(r => r.SetName == set?.Name) ?? seedbed.Runs[0];
        return new WateringRounds([.. seedbed.Starts.Select(start => start.Hour).Distinct().Order()], run.Depth.Value);
    }
}
