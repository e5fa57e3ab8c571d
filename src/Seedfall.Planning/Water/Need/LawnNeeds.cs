using Seedfall.Engine.Workings;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Water;

/// <summary>What every phase needs on every patch: from past seasons where enough are known, else by rules of thumb.</summary>
internal static class LawnNeeds
{
    internal static IReadOnlyList<PhaseNeed> Of(NeedScene scene) => [.. scene.Phases.Select(p => Of(scene, p.Phase, p.Demand))];

    private static PhaseNeed Of(NeedScene scene, Phase phase, Demand demand)
    {
        var ruled = RuledNeeds.Of(phase, demand, scene);
        var needed = NeededPhase.All.FirstOrDefault(n => n.Id == phase.Id);
        var chosenDepth = phase.Id == "seedbed" && scene.Chosen.PerRound is not null;
        return needed is null || !scene.Simulated || chosenDepth ? ruled : Simulated(scene, phase, Within(scene, needed, phase), ruled);
    }

    /// <summary>The phase as long as it lasts, with the rounds that may be chosen.</summary>
    private static NeededPhase Within(NeedScene scene, NeededPhase needed, Phase phase)
    {
        var days = Math.Min(needed.Days, phase.To.DayNumber - phase.From.DayNumber + 1);
        if (phase.Id != "seedbed")
        {
            return needed with { Days = days };
        }

        var most = Math.Min(needed.MostRounds, scene.MostRounds);
        return scene.Chosen.Rounds is { } chosen
            ? needed with { Days = days, LeastRounds = chosen, MostRounds = chosen }
            : needed with { Days = days, MostRounds = most, LeastRounds = Math.Min(needed.LeastRounds, most) };
    }

    /// <summary>
    /// The rounds a day, the same on all patches, that take the least water over the lawn among those that keep every patch wet; where none
    /// does, the rule's rounds, and the rule's depth for each patch they do not keep wet.
    /// </summary>
    private static PhaseNeed Simulated(NeedScene scene, Phase phase, NeededPhase needed, PhaseNeed ruled)
    {
        var firstDay = phase.From.DayNumber - scene.PastFrom.DayNumber;
        SimulatedBed[] beds = [.. scene.Beds.Select(bed => new SimulatedBed(needed, bed.Ground, scene.Past, firstDay))];
        var options = Options(scene, needed, beds);
        var best = options.Where(o => o.Depths.All(d => d is not null)).OrderBy(o => Liters(scene, o)).ThenBy(o => o.Turn.PerDay).FirstOrDefault();
        if (best is null)
        {
            best = options.Find(o => o.Turn.Rounds == ruled.RoundsPerDay) ?? options[^1];
        }

        return new PhaseNeed(
            phase,
            [.. scene.Beds.Select((bed, b) => Need(phase, bed, beds[b], best.Turn, best.Depths[b], ruled.Patches[b].DepthMm))],
            best.Turn.Rounds,
            best.Turn.DaysPerWeek,
            Chosen(scene, options))
        {
            Thirsty = [.. scene.Beds.Where((_, b) => best.Depths[b] is null).Select(bed => bed.PatchId)],
        };
    }

    /// <summary>
    /// Turns that could be best, with each patch's least depth, seldomest first. One is left out as soon as it would take more water
    /// than a seldomer one does even were the patches not yet looked at content with the lightest round.
    /// </summary>
    private static List<Option> Options(NeedScene scene, NeededPhase needed, IReadOnlyList<SimulatedBed> beds)
    {
        var (options, leastLiters) = (new List<Option>(), double.PositiveInfinity);
        foreach (var turn in RoundTurn.Of(needed))
        {
            var (depths, liters) = (new double?[beds.Count], turn.PerDay * needed.LightestMm * scene.Beds.Sum(bed => bed.AreaM2));
            for (var b = 0; b < beds.Count && liters <= leastLiters; b++)
            {
                depths[b] = beds[b].LeastMm(turn);
                liters += turn.PerDay * scene.Beds[b].AreaM2 * ((depths[b] ?? needed.LightestMm) - needed.LightestMm);
            }

            if (liters <= leastLiters)
            {
                options.Add(new Option(turn, depths));
                leastLiters = depths.All(d => d is not null) ? liters : leastLiters;
            }
        }

        return options;
    }

    private static double Liters(NeedScene scene, Option option) => option.Turn.PerDay * option.Depths.Zip(scene.Beds, (depth, bed) => depth!.Value * bed.AreaM2).Sum();

    private sealed record Option(RoundTurn Turn, double?[] Depths);

    private static PatchNeed Need(Phase phase, PatchBed bed, SimulatedBed simulated, RoundTurn turn, double? depthMm, double ruledMm) => depthMm is { } mm
        ? new PatchNeed(bed.PatchId, mm, simulated.Figure(turn, mm, $"water.{phase.Id}.need.{bed.PatchId}", $"{bed.Name}: needed of each round"))
        : new PatchNeed(bed.PatchId, ruledMm, null);

    private static string Often(RoundTurn turn) => turn.EveryDays == 1
        ? FormattableString.Invariant($"{turn.Rounds} a day")
        : FormattableString.Invariant($"{turn.Rounds} every {turn.EveryDays} days");

    private static Working Chosen(NeedScene scene, IReadOnlyList<Option> options) => new(
        "the rounds a day that take least water over the lawn, of those that keep every patch wet in 19 of 20 past seasons",
        [
            new("n", "past seasons", scene.Past.Count, ""),
            .. options.Select(o => new WorkingInput(
                FormattableString.Invariant($"d{o.Turn.Rounds}/{o.Turn.EveryDays}"),
                $"{Often(o.Turn)}: {(o.Depths.Any(d => d is null) ? "patches they keep wet" : "deepest round")}",
                o.Depths.Any(d => d is null) ? o.Depths.Count(d => d is not null) : o.Depths.Max()!.Value / 25.4,
                o.Depths.Any(d => d is null) ? "" : "in")),
        ],
        "hour-by-hour simulation of seedbed water: docs/science/watering.md; potentials held assumed",
        Sureness.Assumed,
        "Check with a finger: the top 1/2 to 3/4 in should be moist before each round.");
}
