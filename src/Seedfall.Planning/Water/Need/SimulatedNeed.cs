using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water;

/// <summary>Rounds of one phase on one patch as past seasons ask for them.</summary>
/// <param name="PhaseId">The phase.</param>
/// <param name="RoundsPerDay">Rounds on a watering day.</param>
/// <param name="EveryDays">Days from one watering day to the next.</param>
/// <param name="Depth">Net depth of a round.</param>
public sealed record SimulatedNeed(string PhaseId, int RoundsPerDay, int EveryDays, Figure Depth)
{
    /// <summary>Seasons below which the rule of thumb serves.</summary>
    public const int LeastSeasons = 5;

    /// <summary>
    /// The rounds that take the least water a day among those allowed in the phase, fewer where equal; null with fewer than five seasons or
    /// where no round the soil takes keeps the zone wet: then the rule of thumb serves.
    /// </summary>
    /// <param name="phase">What of it matters.</param>
    /// <param name="ground">The patch: texture, shade, slope, turf, mulch.</param>
    /// <param name="seasons">The sky of past seasons, each from the same day of the year.</param>
    /// <param name="firstDay">Day of the seasons on which the phase begins.</param>
    /// <param name="id">Id of the figure.</param>
    public static SimulatedNeed? Of(NeededPhase phase, PatchConditions ground, PastSkies seasons, int firstDay, string id)
    {
        ArgumentNullException.ThrowIfNull(phase);
        ArgumentNullException.ThrowIfNull(seasons);
        if (seasons.Count < LeastSeasons)
        {
            return null;
        }

        var bed = new SimulatedBed(phase, ground, seasons, firstDay);
        var best = RoundTurn.Of(phase)
            .Select(turn => (Turn: turn, Depth: bed.LeastMm(turn)))
            .Where(option => option.Depth is not null)
            .OrderBy(option => option.Depth * option.Turn.PerDay).ThenBy(option => option.Turn.PerDay)
            .FirstOrDefault();
        return best.Depth is { } depthMm ? new SimulatedNeed(phase.Id, best.Turn.Rounds, best.Turn.EveryDays, bed.Figure(best.Turn, depthMm, id)) : null;
    }
}
