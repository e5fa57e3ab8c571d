using Seedfall.Planning.Plan.Followed;

namespace Seedfall.Planning.Plan.Tasks;

/// <summary>The dated tasks of the whole season, in the order they are done.</summary>
internal static class TaskList
{
    internal static IReadOnlyList<PlanTask> For(TaskFacts facts)
    {
        var tasks = facts.Timing.SeedDown is { } day
            ? BeforeTasks.For(facts, day).Concat(SeedDownTasks.For(facts, day)).Concat(AfterTasks.For(facts, day))
            : WaitingTasks.For(facts, facts.Choices.Today ?? FirstLook(facts));
        PlanTask[] ordered = [.. tasks.OrderBy(t => t.Date).ThenBy(t => t.Start ?? TimeOnly.MinValue).ThenBy(t => t.Id, StringComparer.Ordinal)];
        return DoneMarks.On(ordered, DoneScene.Of(facts.Log, facts.Lawn, facts.Feed, facts.Spray, facts.Timing, facts.Timing.SeedDown ?? ordered[0].Date));
    }

    private static DateOnly FirstLook(TaskFacts facts) =>
        new(facts.Choices.Season, facts.Lawn.Place.LatitudeDeg < 0.0 ? 2 : 8, 15);
}
