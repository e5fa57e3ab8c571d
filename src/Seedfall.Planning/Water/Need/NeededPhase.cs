using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water;

/// <summary>What of a phase decides its watering.</summary>
/// <param name="Id">The phase.</param>
/// <param name="Layer">Layer to be kept wet; null for the seed's own.</param>
/// <param name="Hold">What is held.</param>
/// <param name="LeastRounds">Fewest rounds on a watering day.</param>
/// <param name="MostRounds">Most.</param>
/// <param name="EveryDays">Days from one watering day to the next that may be chosen; at least one.</param>
/// <param name="Days">Days it lasts.</param>
/// <param name="LightestMm">Lightest round worth giving, mm.</param>
public sealed record NeededPhase(string Id, int? Layer, Hold Hold, int LeastRounds, int MostRounds, IReadOnlyList<int> EveryDays, int Days, double LightestMm)
{
    /// <summary>Hours of one, two, three and four rounds a day.</summary>
    internal static IReadOnlyList<int[]> Hours { get; } = [[7], [7, 13], [7, 11, 15], [7, 10, 13, 16]];

    /// <summary>
    /// Seedbed to emergence (the seed's layer at -0.1 MPa, those around it at -0.5), seedlings (8 to 20 mm), weaning (20 to 60 mm), deep and
    /// infrequent (60 to 150 mm), the last three at -0.5 MPa. Depths follow roots that grow 4.5 mm a day; potentials assumed. The lightest
    /// rounds are the trade's, 0.05, 0.10, 0.25 and 0.5 in, so that water reaches the roots it is meant for: phased watering of new seed,
    /// common practice, no source read.
    /// </summary>
    public static IReadOnlyList<NeededPhase> All { get; } =
    [
        new("seedbed", null, new Hold(WateringScenes.UsualWantedMPa, true), 2, 4, [1], 21, SeedbedNeed.LightestRound.Millimeters),
        new("seedlings", 2, new Hold(PatchConditions.DryMPa, false), 1, 2, [1], 14, Depth.FromInches(0.10).Millimeters),
        new("weaning", 3, new Hold(PatchConditions.DryMPa, false), 1, 1, [3, 2], 14, Depth.FromInches(0.25).Millimeters),
        new("deep", 4, new Hold(PatchConditions.DryMPa, false), 1, 1, [7, 4, 3], 21, Depth.FromInches(0.5).Millimeters),
    ];
}
