using Seedfall.Engine.Workings;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Water;

/// <summary>How often and how deep a phase is watered.</summary>
/// <param name="Phase">The stretch of the season.</param>
/// <param name="DepthMm">Net depth of one round, mm.</param>
/// <param name="RoundsPerDay">Rounds on a watering day.</param>
/// <param name="DaysPerWeek">Watering days a week: 7, 3 or 2.</param>
/// <param name="DepthWorking">The working behind the depth.</param>
internal sealed record PhaseNeed(Phase Phase, double DepthMm, int RoundsPerDay, int DaysPerWeek, Working DepthWorking)
{
    internal bool Evening => Phase.Id == "soak";

    /// <summary>True for the phases the proof rests on; evenings before seeding can be made up for on the day.</summary>
    internal bool Binding => !Evening;

    internal double RoundsPerWeek => (double)RoundsPerDay * DaysPerWeek;
}
