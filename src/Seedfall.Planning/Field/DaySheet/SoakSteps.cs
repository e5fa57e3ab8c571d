using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Field;

/// <summary>The evenings before: soft soil by water, and the grass brought down in time.</summary>
internal static class SoakSteps
{
    /// <summary>Common practice, no source read.</summary>
    internal const string Softness = "Push a screwdriver into each patch: it should slide 6 in with one hand. A finger should go in to the second joint.";

    internal static IEnumerable<DayStep> Evening(DayFacts facts, PlanTask task)
    {
        yield return new DayStep
        {
            Id = "soak.check",
            Kind = TaskKind.Look,
            Title = "Is the soil soft?",
            Start = task.Start?.AddHours(-1),
            Lines =
            [
                Softness,
                "If it does on every patch, leave this evening's water out.",
                FormattableString.Invariant($"Measure the grass: if it stands above {MowingHeight.TallestWithinRuleIn:0.#} in, mow it to two thirds of its height now, so that seed-down day takes no more than a third."),
            ],
            Cuts = MowingHeight.Table,
            Records =
            [
                Felt("soak.check.finger", facts),
                new("soak.check.mowed", "Mowed", new LogEntry.Mowed { Id = Guid.Empty, At = DayRecord.Later }),
            ],
        };
        var runs = SetRuns.OfPhase(facts, "soak");
        yield return new DayStep
        {
            Id = task.Id,
            Kind = TaskKind.Water,
            Title = "Water this evening",
            Start = task.Start,
            Big = [.. runs.Select(r => r.Minutes)],
            Lines = ["Long enough that the top inches give under a thumb by morning.", .. runs.Select(r => r.Line)],
            OnlyWhen = task.Conditions,
            Timers = SetRuns.Timers(task.Id, runs),
            Records = SetRuns.Records(task.Id, runs),
            Troubles = Trouble.Watering,
        };
    }

    internal static DayRecord Felt(string id, DayFacts facts) => new(id, "Finger test", new LogEntry.FingerTest(FingerFelt.Right)
    {
        Id = Guid.Empty,
        At = DayRecord.Later,
        PatchId = facts.Lawn.Patches.Count == 1 ? facts.Lawn.Patches[0].Id : null,
    });
}
