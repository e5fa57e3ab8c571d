using Seedfall.Planning.Field;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Plan.Followed;

/// <summary>
/// Tasks of a plan that the log shows done. An entry counts for the task of its kind nearest in time, within a few days; work put
/// on, or cover judged, patch by patch is done when every patch has it.
/// </summary>
internal static class DoneMarks
{
    /// <summary>Days other work may lie off its planned day (judged).</summary>
    private const int NearDays = 3;

    /// <summary>Days after its planned day on which the last mowing still counts as that (judged).</summary>
    private const int LastMowDays = 30;

    /// <summary>The tasks in their order, those done marked so.</summary>
    /// <param name="tasks">Tasks of a season.</param>
    /// <param name="scene">What they are held against.</param>
    internal static IReadOnlyList<PlanTask> On(IReadOnlyList<PlanTask> tasks, DoneScene scene) =>
        [.. tasks.Select(task => Marked(task, Matching(task, scene), scene))];

    private static PlanTask Marked(PlanTask task, IReadOnlyList<LogEntry> entries, DoneScene scene)
    {
        if (entries.Count == 0)
        {
            return task;
        }

        var parts = entries[0] is LogEntry.Applied or LogEntry.CoverSeen;
        var open = parts ? scene.PatchIds.Where(id => entries.All(e => e.PatchId is not null && e.PatchId != id)).ToList() : [];
        var last = entries[^1];
        return open.Count == 0
            ? task with { Done = new TaskDone(last.Id, last.Day, entries.Count > 1 && parts ? "written in parts" : null) }
            : task with { Steps = [.. task.Steps, $"Done so far, by the log: {Words.List(entries.Select(e => scene.Name(e.PatchId)).Distinct())}. Still to do: {Words.List(open.Select(scene.Name))}."] };
    }

    /// <summary>What the log holds for a task, in order of time.</summary>
    private static IReadOnlyList<LogEntry> Matching(PlanTask task, DoneScene scene) => task.Id switch
    {
        "seed.down" => Any<LogEntry.SeededDown>(scene, task.Date, task.Date) is { Count: > 0 } down ? down : Put(scene, task, NearDays, ApplicationKind.Seed),
        "mow.seed-down" => Any<LogEntry.Mowed>(scene, task.Date.AddDays(-2), task.Date),
        "mow.first" => scene.FirstMowed is { } day ? Any<LogEntry.Mowed>(scene, day, day) : [],
        "mow.last" => Any<LogEntry.Mowed>(scene, task.Date, task.Date.AddDays(LastMowDays)),
        "water.first" => Any<LogEntry.Watered>(scene, task.Date, task.Date),
        "look.emergence" => Any<LogEntry.FirstGreen>(scene, scene.SeedDown, scene.SeedDown.AddDays(90)),
        "look.thin" or "look.again" => [.. scene.Log.During<LogEntry.CoverSeen>(task.Date.AddDays(-NearDays), task.LastDate.AddDays(NearDays))],
        _ when task.Kind is TaskKind.Feed => scene.Fed(task.Id),
        _ when task.Kind is TaskKind.Spray => [.. Put(scene, task, NearDays, ApplicationKind.Pesticide, ApplicationKind.Other).Where(entry => scene.Sprays(task.Id, entry.What))],
        _ => [],
    };

    private static IReadOnlyList<LogEntry.Applied> Put(DoneScene scene, PlanTask task, int days, params ApplicationKind[] kinds) =>
        [.. scene.Log.During<LogEntry.Applied>(task.Date.AddDays(-days), task.LastDate.AddDays(days)).Where(entry => kinds.Contains(entry.What.Kind))];

    private static IReadOnlyList<LogEntry> Any<T>(DoneScene scene, DateOnly first, DateOnly last)
        where T : LogEntry => [.. scene.Log.During<T>(first, last).Take(1)];
}
