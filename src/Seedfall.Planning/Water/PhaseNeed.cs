using Seedfall.Engine.Workings;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Water;

/// <summary>How often and how deep a phase is watered.</summary>
/// <param name="Phase">The stretch of the season.</param>
/// <param name="Patches">What each patch needs of a round; at least one.</param>
/// <param name="RoundsPerDay">Rounds on a watering day, the same for all patches.</param>
/// <param name="DaysPerWeek">Watering days a week, 1 to 7.</param>
/// <param name="DepthWorking">The rule of thumb behind the depths, or how the rounds were chosen.</param>
internal sealed record PhaseNeed(Phase Phase, IReadOnlyList<PatchNeed> Patches, int RoundsPerDay, int DaysPerWeek, Working DepthWorking)
{
    /// <summary>Patches no round the soil takes kept wet in enough past seasons: the rule of thumb stands for them.</summary>
    internal IReadOnlyList<string> Thirsty { get; init; } = [];

    internal bool Evening => Phase.Id == "soak";

    /// <summary>True for the phases the proof rests on; evenings before seeding can be made up for on the day.</summary>
    internal bool Binding => !Evening;

    internal double RoundsPerWeek => (double)RoundsPerDay * DaysPerWeek;

    internal double LeastMm => Patches.Min(p => p.DepthMm);

    internal double MostMm => Patches.Max(p => p.DepthMm);

    /// <summary>Depth of a round of a set: what the thirstiest of its patches needs, mm.</summary>
    internal double DepthOf(SetFacts set) => Patches.Where(p => set.PatchIds.Contains(p.PatchId)).Select(p => p.DepthMm).DefaultIfEmpty(MostMm).Max();

    /// <summary>The same with the rounds of every patch given at once.</summary>
    internal static PhaseNeed Even(Phase phase, IReadOnlyList<PatchBed> beds, double depthMm, int roundsPerDay, int daysPerWeek, Working working) =>
        new(phase, [.. beds.Select(bed => new PatchNeed(bed.PatchId, depthMm, null))], roundsPerDay, daysPerWeek, working);
}
