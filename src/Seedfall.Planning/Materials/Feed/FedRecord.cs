using Seedfall.Engine.Units;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Materials;

/// <summary>What the field log holds of one feeding.</summary>
/// <param name="Entries">In order of time.</param>
/// <param name="OpenPatches">Patches of the lawn that none of them went on.</param>
internal sealed record FedStep(IReadOnlyList<LogEntry.Applied> Entries, IReadOnlyList<string> OpenPatches)
{
    internal bool IsDone => OpenPatches.Count == 0;
}

/// <summary>
/// The nitrogen of the field log, sorted by the feeding it stands in place of. From the day before seed-down a feeding written down
/// is the plan's own: the one whose planned day lies nearest, within a few days. What was fed before, and what lies near none, counts
/// for the year alone.
/// </summary>
internal sealed class FedRecord
{
    /// <summary>Days a feeding may lie off its planned day (judged).</summary>
    private const int FeedDays = 10;

    /// <summary>Days before seed-down from which a feeding belongs to the seeding and is not an earlier one.</summary>
    internal const int OwnFeedDays = 1;

    private readonly IReadOnlyDictionary<string, FedStep> _steps;

    private FedRecord(IReadOnlyDictionary<string, FedStep> steps, IReadOnlyList<LogEntry.Applied> before, IReadOnlyList<LogEntry.Applied> besides, IReadOnlyList<string> grounds) =>
        (_steps, Before, Besides, Grounds) = (steps, before, besides, grounds);

    /// <summary>Nitrogen of the year before the plan's own feedings.</summary>
    internal IReadOnlyList<LogEntry.Applied> Before { get; }

    /// <summary>Nitrogen of the year since then that stands in place of no feeding.</summary>
    internal IReadOnlyList<LogEntry.Applied> Besides { get; }

    /// <summary>The lawn's patches, and those of the record that are no longer there.</summary>
    internal IReadOnlyList<string> Grounds { get; }

    /// <summary>True where the log holds anything from the day before seed-down.</summary>
    internal bool HasOwn => _steps.Count > 0 || Besides.Count > 0;

    /// <summary>What stands in place of a feeding; null for nothing.</summary>
    internal FedStep? For(string stepId) => _steps.GetValueOrDefault(stepId);

    /// <param name="lawn">The lawn.</param>
    /// <param name="log">Its field log.</param>
    /// <param name="steps">The feedings on the days they are planned for.</param>
    /// <param name="seedDown">Seed-down day.</param>
    internal static FedRecord Of(Lawn lawn, FieldLog log, IReadOnlyList<FeedStep> steps, DateOnly seedDown)
    {
        var own = seedDown.AddDays(-OwnFeedDays);
        var applied = log.Standing.OfType<LogEntry.Applied>().ToList();
        var near = applied
            .Where(entry => entry.Day >= own && IsFeeding(entry.What))
            .Select(entry => (Entry: entry, Step: Nearest(steps, entry.Day)))
            .Where(pair => pair.Step is not null)
            .GroupBy(pair => pair.Step!.Id, pair => pair.Entry)
            .ToDictionary(group => group.Key, group => Step(lawn, [.. group]));
        var taken = near.Values.SelectMany(step => step.Entries).Select(entry => entry.Id).ToHashSet();
        var rest = applied.Where(entry => entry.Day.Year == seedDown.Year && !taken.Contains(entry.Id) && PoundsPerM(entry) is > 0.0).ToList();
        return new(
            near,
            [.. rest.Where(entry => entry.Day < own)],
            [.. rest.Where(entry => entry.Day >= own)],
            [.. lawn.Patches.Select(p => p.Id).Concat(rest.Concat(near.Values.SelectMany(s => s.Entries)).Select(e => e.PatchId).OfType<string>()).Distinct()]);
    }

    /// <summary>Nitrogen of a record on the ground it went on, lb per 1,000 sq ft; null where none is written.</summary>
    internal static double? PoundsPerM(LogEntry.Applied entry) => entry.What.Actives.Any(active => Nutrients.IsNitrogen(active.Name))
        ? new MassPerArea(Nutrients.NitrogenOf(entry.What).Kilograms / YearTotals.Ground(entry).SquareMeters).PoundsPerThousandSquareFeet
        : null;

    /// <summary>Fertilizer with nitrogen, or with no analysis written at all. Potash alone stands in place of no feeding.</summary>
    private static bool IsFeeding(Application what) => what.Kind is ApplicationKind.Fertilizer
        && (what.Actives.Any(active => Nutrients.IsNitrogen(active.Name)) || !what.Actives.Any(active => Nutrients.Is(active.Name)));

    /// <summary>The feeding a day lies nearest to, the earlier of two equally near; null beyond the days allowed.</summary>
    private static FeedStep? Nearest(IReadOnlyList<FeedStep> steps, DateOnly day) => steps
        .Where(step => Off(step, day) <= FeedDays)
        .OrderBy(step => Off(step, day)).ThenBy(step => step.Date)
        .FirstOrDefault();

    private static int Off(FeedStep step, DateOnly day) => Math.Abs(step.Date.DayNumber - day.DayNumber);

    private static FedStep Step(Lawn lawn, IReadOnlyList<LogEntry.Applied> entries) =>
        new(entries, [.. lawn.Patches.Select(p => p.Id).Where(id => entries.All(e => e.PatchId is not null && e.PatchId != id))]);
}
