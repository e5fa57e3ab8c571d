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

    private static readonly IReadOnlyList<int[]> Hours = [[7], [7, 13], [7, 11, 15], [7, 10, 13, 16]];

    /// <summary>
    /// The rounds that take the least water a day among those allowed in the phase, fewer where equal; null with fewer than five seasons or
    /// where no round the soil takes keeps the zone wet: then the rule of thumb serves.
    /// </summary>
    /// <param name="phase">What of it matters.</param>
    /// <param name="ground">The patch: texture, shade, slope, turf, mulch.</param>
    /// <param name="seasons">The sky of past seasons, each from the same day of the year.</param>
    /// <param name="firstDay">Day of the seasons on which the phase begins.</param>
    /// <param name="id">Id of the figure.</param>
    public static SimulatedNeed? Of(NeededPhase phase, PatchConditions ground, IReadOnlyList<BedWeather> seasons, int firstDay, string id)
    {
        ArgumentNullException.ThrowIfNull(phase);
        if (seasons.Count < LeastSeasons)
        {
            return null;
        }

        var beds = seasons.Select(sky => Moist(ground, phase.Layer, sky, firstDay)).ToList();
        var still = new BedWeather(new double[24], new double[24]);
        var takes = new WateredBed(ground, phase.Layer).MostTakenMm(still, 0, MostMm);
        var best = Hours.Where(h => h.Length >= phase.LeastRounds && h.Length <= phase.MostRounds)
            .Select(hours => (Hours: hours, Depth: SteadyRounds.LeastMm(beds, seasons, hours, phase.EveryDays, firstDay, phase.Days, phase.Hold, takes)))
            .Where(option => option.Depth is not null)
            .Select(option => (option.Hours, Depth: Math.Max(phase.LightestMm, option.Depth!.Value)))
            .OrderBy(option => option.Depth * option.Hours.Length).ThenBy(option => option.Hours.Length)
            .FirstOrDefault();
        return best.Hours is null ? null : new SimulatedNeed(phase.Id, best.Hours.Length, phase.EveryDays, new Figure(
            id,
            "Net depth of a round",
            QuantityKind.Depth,
            best.Depth,
            new Working(
                "least d that keeps the zone wet in 19 of n / 20 past seasons, at most what the soil takes without runoff",
                [
                    new("n", "past seasons", seasons.Count, ""),
                    new("r", "rounds on a watering day", best.Hours.Length, ""),
                    new("e", "days from one watering day to the next", phase.EveryDays, "d"),
                    new("psi", "potential held in the zone", phase.Hold.SeedMPa, "MPa"),
                    new("m", "most the soil takes in an hour without runoff", takes / 25.4, "in"),
                ],
                "hour-by-hour simulation of seedbed water: docs/science/watering.md; potentials held assumed",
                Sureness.Assumed,
                "Rain of those seasons counted as it fell.")));
    }

    /// <summary>The season's bed at the phase's first midnight, which finds the ground moist: seedbeds are soaked and phases follow watered ones.</summary>
    private static WateredBed Moist(PatchConditions ground, int? layer, BedWeather sky, int firstDay)
    {
        var bed = new WateredBed(ground, layer);
        for (var hour = 24 * Math.Max(0, firstDay - 1); hour < 24 * firstDay; hour++)
        {
            bed.Step(sky, hour, 0.0);
        }

        return bed;
    }
}

/// <summary>What of a phase decides its watering.</summary>
/// <param name="Id">The phase.</param>
/// <param name="Layer">Layer to be kept wet; null for the seed's own.</param>
/// <param name="Hold">What is held.</param>
/// <param name="LeastRounds">Fewest rounds on a watering day.</param>
/// <param name="MostRounds">Most.</param>
/// <param name="EveryDays">Days from one watering day to the next.</param>
/// <param name="Days">Days it lasts.</param>
/// <param name="LightestMm">Lightest round worth giving, mm.</param>
public sealed record NeededPhase(string Id, int? Layer, Hold Hold, int LeastRounds, int MostRounds, int EveryDays, int Days, double LightestMm)
{
    private static double Light => SeedbedNeed.LightestRound.Millimeters;

    /// <summary>
    /// Seedbed to emergence (the seed's layer at -0.1 MPa, those around it at -0.5), seedlings (8 to 20 mm), weaning (20 to 60 mm), deep and
    /// infrequent (60 to 150 mm), the last three at -0.5 MPa. Depths follow roots that grow 4.5 mm a day; potentials assumed.
    /// </summary>
    public static IReadOnlyList<NeededPhase> All { get; } =
    [
        new("seedbed", null, new Hold(WateringScenes.UsualWantedMPa, true), 2, 4, 1, 21, Light),
        new("seedlings", 2, new Hold(PatchConditions.DryMPa, false), 1, 2, 1, 14, Light),
        new("weaning", 3, new Hold(PatchConditions.DryMPa, false), 1, 1, 2, 14, Light),
        new("deep", 4, new Hold(PatchConditions.DryMPa, false), 1, 1, 4, 21, Light),
    ];
}
