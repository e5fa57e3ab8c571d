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

    /// <summary>Heaviest round looked at, mm.</summary>
    private const double MostMm = 25.0;

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
        var best = Enumerable.Range(phase.LeastRounds, phase.MostRounds - phase.LeastRounds + 1)
            .Select(rounds => (Rounds: rounds, Depth: bed.LeastMm(rounds)))
            .Where(option => option.Depth is not null)
            .OrderBy(option => option.Depth * option.Rounds).ThenBy(option => option.Rounds)
            .FirstOrDefault();
        return best.Depth is { } depthMm ? new SimulatedNeed(phase.Id, best.Rounds, phase.EveryDays, bed.Figure(best.Rounds, depthMm, id)) : null;
    }

    /// <summary>One patch's ground through one phase of past seasons.</summary>
    internal sealed class SimulatedBed(NeededPhase phase, PatchConditions ground, PastSkies seasons, int firstDay)
    {
        private readonly SteadyRounds _steady = new(ground, phase.Layer, seasons, firstDay);

        private readonly double _takesMm = new WateredBed(ground, phase.Layer).MostTakenMm(new BedWeather(new double[24], new double[24]), 0, MostMm);

        /// <summary>Least depth of so many rounds on a watering day, never lighter than is worth giving, mm; null where none the soil takes is enough.</summary>
        internal double? LeastMm(int rounds) =>
            _steady.LeastMm(new RoundTimes(NeededPhase.Hours[rounds - 1], phase.EveryDays, firstDay, phase.Days), phase.Hold, _takesMm) is { } depthMm
                ? Math.Max(phase.LightestMm, depthMm)
                : null;

        internal Figure Figure(int rounds, double depthMm, string id, string label = "Net depth of a round") => new(id, label, QuantityKind.Depth, depthMm, new Working(
            "least d that keeps the zone wet in 19 of n / 20 past seasons, at most what the soil takes without runoff",
            [
                new("n", "past seasons", seasons.Count, ""),
                new("r", "rounds on a watering day", rounds, ""),
                new("e", "days from one watering day to the next", phase.EveryDays, "d"),
                new("psi", "potential held in the zone", phase.Hold.SeedMPa, "MPa"),
                new("m", "most the soil takes in an hour without runoff", _takesMm / 25.4, "in"),
                new("s", "sun kept off", ground.ShadeShare, ""),
                new("t", "ground under living turf", ground.TurfShare, ""),
                new("c", "ground under a covering", ground.MulchCover, ""),
            ],
            "hour-by-hour simulation of seedbed water: docs/science/watering.md; potentials held assumed",
            Sureness.Assumed,
            "Rain of those seasons counted as it fell."));
    }
}
