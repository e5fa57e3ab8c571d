using System.Globalization;
using Seedfall.Engine.Simulation.Ensemble;
using Seedfall.Engine.Timing;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Timing;

/// <summary>How the simulated chances, dates and cover were had, and how far to trust them.</summary>
internal static class SimulatedWorking
{
    private const string Source =
        "hour-by-hour simulation of soil heat, seedbed water, germination (hydrothermal time, Gummerson 1986 and Bradford 2002) and seedling survival: docs/science/simulator.md; grasses from the species table, their hydrothermal numbers assumed";

    internal static IReadOnlyList<Assumption> Assumptions { get; } =
    [
        new(
            "assumed.timing.simulated",
            "Seedlings are lost to drying, heat and rot at assumed rates, and 45 % of live seed is taken to stand where water never runs short.",
            "The height of the chance curve rests on them; its shape, the day it opens and closes, much less.",
            "Count plants in a hoop three weeks after a seeding and compare with the seeds sown."),
    ];

    internal static Working Stand(SeasonScene scene, IReadOnlyList<Seedbed> seedbeds, IReadOnlyList<StandTable> tables, StandRule rule) => new(
        "chance = (k + 1/2) / (n + 1); k sums over the simulated seasons the share of the seedbed with at least P plants of L leaves before the next night at or below 28 degF",
        [
            new("n", "past seasons simulated", scene.Members.Count, ""),
            new("P", "plants per sq ft that make a stand", rule.PlantsPerM2 * 0.09290304, "per sq ft"),
            new("L", "leaves a plant needs", rule.Leaves, ""),
            new("s", "share of live seed that stands where water never runs short", rule.FieldSurvival, ""),
            new("r", "rounds a day", seedbeds.Max(bed => bed.Rounds.HoursOfDay.Count), ""),
            new("d", "depth of a round on the best watered patch", seedbeds.Max(bed => bed.Rounds.DepthMm) / 25.4, "in"),
            new("h", "hours a season in which the seed's layer lay dry, mean of the driest patch", Math.Round(tables.Max(table => table.DryHours.Average())), "h"),
        ],
        Source,
        Sureness.Assumed,
        Note(scene));

    internal static Working Emergence(int seasons) => new(
        "median over the simulated seasons of the day half the seed of the slowest grass is up",
        [new("n", "past seasons simulated", seasons, "")],
        Source,
        Sureness.Assumed,
        "Look at the seedbed, not at the date.");

    internal static Working Cover(IReadOnlyList<Seedbed> seedbeds, int seasons) => new(
        "dC/dt = r(T) C (1 - C / Cx) for turf and seedlings; rhizomes close gaps from their edge; seedlings join as they come up",
        [
            new("n", "past seasons simulated", seasons, ""),
            new("r", "growth of the mix at 15 degC", seedbeds.Max(bed => bed.Stand.Seedlings.RateAt15), "1/d"),
            new("A", "ground one seedling covers at its first leaf", 1.0e4 * seedbeds[0].Stand.Seedlings.SeedlingM2, "cm2"),
        ],
        "docs/science/simulator.md; growth rates derived from tillering (Neuteboom and Lantinga 1989, from memory), the rest assumed: no measured lawn rate could be read",
        Sureness.Assumed,
        "Fed and watered turf without disease. The band holds eight in ten of the seasons, each grown at 0.7, 1 and 1.3 of the usual rate; it has not been checked against lawns.");

    internal static IReadOnlyList<Figure> Choice(double leftOut, double hindsight, int seasons) =>
    [
        Share("timing.left-out", "Stand had on the day chosen without that season", leftOut, "mean over the seasons of the stand on the date the other seasons would have chosen", seasons),
        Share("timing.hindsight", "Stand had on each season's own best day", hindsight, "mean over the seasons of the best stand any date would have given", seasons),
    ];

    private static Figure Share(string id, string label, double share, string formula, int seasons) => new(
        id, label, QuantityKind.Chance, ChanceCurves.WholePercent(share), new Working(
            formula, [new("n", "past seasons simulated", seasons, "")], Source, Sureness.Assumed, "Both are judged by the same simulation, so they compare dates, not the simulation with the field. The same beside thermometer and calendar at measuring stations: docs/validation.md."));

    private static string Note(SeasonScene scene)
    {
        var error = 100.0 * DateChances.FromDays([], scene.Members.Count).StandardError(0.5);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"With {scene.Members.Count} past seasons a chance near one half is good to about {error:0} points either way. {scene.Past.Soil!.Statement} Left out: birds, washouts beyond runoff, weeds, disease other than rot in warm wet ground. Not checked against counted seedlings.");
    }
}
