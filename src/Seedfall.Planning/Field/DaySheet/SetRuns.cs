using Seedfall.Engine.Workings;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Field;

/// <summary>One set's run in a round, ready for the clock.</summary>
/// <param name="SetName">The set; null where the lawn's notes name none.</param>
/// <param name="Minutes">Minutes in each position, all cycles together.</param>
/// <param name="Cycles">Equal parts with a pause between.</param>
/// <param name="Soak">From the start of one cycle to the next; null with one.</param>
/// <param name="Positions">Places it is moved through.</param>
internal sealed record DayRun(string? SetName, Figure Minutes, int Cycles, Figure? Soak, int Positions)
{
    internal string Shown => SetName ?? "Water";

    internal string Line
    {
        get
        {
            var cycles = Cycles <= 1 ? "" : FormattableString.Invariant($", in {Cycles} parts{(Soak is { } soak ? $" begun {FigureText.Show(soak, UnitSystem.UsCustomary)} apart" : "")}");
            var places = Positions > 1 ? FormattableString.Invariant($" in each of {Positions} places") : "";
            return $"{Shown}: {FigureText.Show(Minutes, UnitSystem.UsCustomary)}{places}{cycles}.";
        }
    }
}

/// <summary>Runs of a round as lines, timers and records.</summary>
internal static class SetRuns
{
    /// <summary>Runs of one round of a phase; empty where the water proof has none.</summary>
    internal static IReadOnlyList<DayRun> OfPhase(DayFacts facts, string phaseId) =>
        facts.Plan.Water.Phases.FirstOrDefault(p => p.PhaseId == phaseId)?.Runs.Select(run =>
        {
            var known = WateredSets.Of(facts.Lawn).Any(s => s.Name == run.SetName) ? run.SetName : null;
            return new DayRun(known, run.MinutesPerRound, run.Cycles, run.SoakMinutes, facts.Lawn.Water?.Sets.FirstOrDefault(s => s.Name == known)?.Positions ?? 1);
        }).ToList() ?? [];

    /// <summary>Runs of one round as the daily watering has it.</summary>
    internal static IReadOnlyList<DayRun> OfRound(string id, TapRound round) =>
    [
        .. round.Runs.Select((run, i) => new DayRun(
            run.SetName,
            new Figure(FormattableString.Invariant($"day.{id}.{i + 1}"), $"{run.SetName}: minutes", QuantityKind.Minutes, run.Minutes, new Working(
                "most of what its patches need",
                [new("t", "minutes in each position", run.Minutes, "min"), new("n", "positions", run.Positions, "")],
                "the day's watering from weather, gauge and log: docs/science/watering.md",
                Sureness.Computed)),
            1,
            null,
            run.Positions)),
    ];

    internal static IReadOnlyList<DayTimer> Timers(string id, IReadOnlyList<DayRun> runs) =>
    [
        .. runs.SelectMany((run, i) => Clocks(FormattableString.Invariant($"{id}.run-{i + 1}"), run)),
    ];

    internal static IReadOnlyList<DayRecord> Records(string id, IReadOnlyList<DayRun> runs) =>
    [
        .. runs.Select((run, i) => new DayRecord(
            FormattableString.Invariant($"{id}.watered-{i + 1}"),
            run.SetName is { } name ? $"Watered: {name}" : "Watered",
            new LogEntry.Watered { Id = Guid.Empty, At = DayRecord.Later, Set = run.SetName, Minutes = Math.Round(run.Minutes.Value, 1) })),
    ];

    private static IEnumerable<DayTimer> Clocks(string id, DayRun run)
    {
        if (run.Cycles <= 1)
        {
            yield return new(id, run.Shown, run.Minutes);
            yield break;
        }

        yield return new(id, $"{run.Shown}: one part", run.Minutes with
        {
            Id = $"{run.Minutes.Id}.part",
            Value = run.Minutes.Value / run.Cycles,
            Working = new Working("part = t / c", [new("t", "minutes a round", run.Minutes.Value, "min"), new("c", "parts", run.Cycles, "")], "arithmetic on the inputs", Sureness.Computed),
        });
        if (run.Soak is { } soak)
        {
            yield return new($"{id}.soak", $"{run.Shown}: to the start of the next part", soak);
        }
    }
}
