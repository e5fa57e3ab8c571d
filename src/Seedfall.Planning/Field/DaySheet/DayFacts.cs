using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Records;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Field;

/// <summary>What a day's steps are made from.</summary>
internal sealed record DayFacts(Lawn Lawn, RecoveryPlan Plan, FieldLog Log, DateOnly Date, LawnWatering? Water)
{
    internal Area Whole => Area.FromSquareMeters(Plan.TotalArea.Value);

    internal bool Hired => Lawn.AppliedForHire == true;

    internal string Name(string patchId) => Lawn.Patches.FirstOrDefault(p => p.Id == patchId)?.Name ?? patchId;

    internal PlanTask? Task(string id) => Plan.Tasks.FirstOrDefault(t => t.Id == id);

    /// <summary>A task that still stands on the day: of the plan, and not done on a day before.</summary>
    internal PlanTask? Open(string id) => Task(id) is { } task && !Settled(task) ? task : null;

    /// <summary>True where the plan has it done on a day before the sheet's. What was done today stays, to be seen as done.</summary>
    internal bool Settled(PlanTask task) => task.Done is { } done && done.Day < Date;

    /// <summary>The plan's records of a task, as they are written down.</summary>
    internal IReadOnlyList<DayRecord> Applied(string taskId) =>
        [.. PlannedApplications.For(Lawn, Plan, taskId).Select((what, i) => new DayRecord(FormattableString.Invariant($"{taskId}.applied-{i + 1}"), what.Product, new LogEntry.Applied(what) { Id = Guid.Empty, At = DayRecord.Later }))];

    internal IReadOnlyList<string> AllPatches => [.. Lawn.Patches.Select(p => p.Id)];

    /// <summary>True for work of seed-down day itself, which that day's own order holds.</summary>
    internal bool OfSeedDown(PlanTask task) => Plan.Timing.SeedDown is { } down && task.Date == down && task.LastDate == down && task.Kind is not (TaskKind.Look or TaskKind.Photo);

    /// <summary>A value from memory or the plan as minutes on a clock.</summary>
    internal static Figure Minutes(string id, string label, double minutes, string formula, string source, Sureness sureness, string? note = null) =>
        new(id, label, QuantityKind.Minutes, minutes, new Working(formula, [], source, sureness, note));
}
