using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Field;

/// <summary>What label or law stops, as steps of the day it would have been done: why, what to do instead, and nothing to put on.</summary>
internal static class Refusals
{
    private const string Repeat = "label.yearly-maximum.repeat";

    private const string PastSpray = "label.seeding-interval.";

    /// <summary>Seed, while a past spray's wait still stands on the day and the plan has no day for it.</summary>
    internal static IEnumerable<DayStep> Seeding(DayFacts facts)
    {
        var plan = facts.Plan;
        if (plan.Timing.SeedDown is not null || plan.Tasks.Count == 0 || facts.Date < plan.Tasks[0].Date || facts.Log.During<LogEntry.SeededDown>(plan.Tasks[0].Date, facts.Date).Any())
        {
            return [];
        }

        var lawn = RecordedSprays.Of(facts.Lawn, facts.Log, plan.Season);
        var today = SeedingInterval.EarliestSeeding(lawn, SeedingMethod.Broadcast).StandingOn(facts.Date);
        return Step("seed.refused", TaskKind.Seed, "Do not seed yet", [.. plan.Walls.Where(w => w.Id.StartsWith(PastSpray, StringComparison.Ordinal) && today.Any(t => t.Statement == w.Statement))]);
    }

    /// <summary>The starter on seed-down day.</summary>
    internal static IEnumerable<DayStep> Feeding(DayFacts facts) => facts.Task("feed.starter-1") is not null
        ? []
        : Step("feed.refused", TaskKind.Feed, "Do not feed", [.. facts.Plan.Walls.Where(w => w.Id.StartsWith("rules.", StringComparison.Ordinal))]);

    /// <summary>The pre-emergent on seed-down day.</summary>
    internal static IEnumerable<DayStep> Spraying(DayFacts facts) => facts.Lawn.PreEmergent is { } label
        ? Step($"spray.{SprayPlanning.PreEmergentTrip}.refused", TaskKind.Spray, $"Do not spray {label.ActiveIngredient}", [.. facts.Plan.Walls.Where(OnSpray)])
        : [];

    /// <summary>The walls before spraying the pre-emergent again, which the plan lets follow the mowings.</summary>
    internal static IReadOnlyList<Wall> Repeating(RecoveryPlan plan) => [.. plan.Walls.Where(OnRepeat)];

    private static bool OnRepeat(Wall wall) => wall.Id.StartsWith(Repeat, StringComparison.Ordinal);

    private static bool OnSpray(Wall wall) => wall.Id.StartsWith("mix.", StringComparison.Ordinal) || OnLabel(wall);

    private static bool OnLabel(Wall wall) => wall.Id.StartsWith("label.", StringComparison.Ordinal) && !wall.Id.StartsWith(PastSpray, StringComparison.Ordinal) && !OnRepeat(wall);

    private static IEnumerable<DayStep> Step(string id, TaskKind kind, string title, IReadOnlyList<Wall> walls) => walls.Count == 0
        ? []
        : [new DayStep { Id = id, Kind = kind, Title = title, Refusals = walls, CautionIds = kind == TaskKind.Spray ? [Cautions.LabelId] : [] }];
}
