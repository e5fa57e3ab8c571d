using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water;

/// <summary>One patch's ground through one phase of past seasons.</summary>
internal sealed class SimulatedBed(NeededPhase phase, PatchConditions ground, PastSkies seasons, int firstDay)
{
    private readonly SteadyRounds _steady = new(ground, phase.Layer, seasons, firstDay);

    /// <summary>Heaviest round looked at, mm.</summary>
    private const double MostMm = 25.0;

    private readonly double _takesMm = new WateredBed(ground, phase.Layer).MostTakenMm(new BedWeather(new double[24], new double[24]), 0, MostMm);

    /// <summary>Least depth of a round, never lighter than is worth giving, mm; null where none the soil takes is enough.</summary>
    internal double? LeastMm(RoundTurn turn) =>
        _steady.LeastMm(new RoundTimes(NeededPhase.Hours[turn.Rounds - 1], turn.EveryDays, firstDay, phase.Days), phase.Hold, _takesMm) is { } depthMm
            ? Math.Max(phase.LightestMm, depthMm)
            : null;

    internal Figure Figure(RoundTurn turn, double depthMm, string id, string label = "Net depth of a round") => new(id, label, QuantityKind.Depth, depthMm, new Working(
        "least d that keeps the zone wet in 19 of n / 20 past seasons, at most what the soil takes without runoff",
        [
            new("n", "past seasons", seasons.Count, ""),
            new("r", "rounds on a watering day", turn.Rounds, ""),
            new("e", "days from one watering day to the next", turn.EveryDays, "d"),
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
