using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Field;

/// <summary>The work of one day on one lawn, in the order it is done, every quantity already this lawn's.</summary>
/// <param name="Date">The day.</param>
/// <param name="Sentence">The day in one sentence.</param>
/// <param name="Steps">One screen each; empty where the day asks for nothing.</param>
/// <param name="Cautions">Those the steps name, in the order a page shows them.</param>
/// <param name="Conflicts">What the field log holds against itself, to be seen before the work goes on.</param>
public sealed record DaySheet(DateOnly Date, string Sentence, IReadOnlyList<DayStep> Steps, IReadOnlyList<Caution> Cautions, IReadOnlyList<LogConflict> Conflicts)
{
    /// <summary>Days a feeding or mowing that was not done stays on the sheet after it was due.</summary>
    private const int LateDays = 7;

    /// <summary>The sheet of a day. Pure: the same inputs give the same sheet.</summary>
    /// <param name="lawn">The lawn as its notes have it.</param>
    /// <param name="plan">Its plan of the season the day lies in, made with <paramref name="log"/>.</param>
    /// <param name="log">What was seen and done.</param>
    /// <param name="date">Any day.</param>
    /// <param name="water">The daily watering, where the day lies in its week; null takes the phases' usual rounds.</param>
    public static DaySheet Of(Lawn lawn, RecoveryPlan plan, FieldLog log, DateOnly date, LawnWatering? water = null)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(log);
        var facts = new DayFacts(lawn, plan, log, date, water);
        var seedDown = plan.Timing.SeedDown == date;
        IReadOnlyList<DayStep> steps = seedDown ? [.. SeedDownDay.Steps(facts)] : [.. OtherDay(facts).OrderBy(s => s.Start ?? Usual(s.Kind))];
        steps = [.. steps.Select(s => s.Records.Count > 0 ? s : s with { Records = [Note(s)] })];
        var named = steps.SelectMany(s => s.CautionIds).ToHashSet();
        return new DaySheet(date, Told(facts, steps, seedDown), steps, [.. plan.Cautions.Where(c => named.Contains(c.Id))], LogConflicts.In(lawn, log));
    }

    private static IEnumerable<DayStep> OtherDay(DayFacts facts)
    {
        foreach (var refused in Refusals.Seeding(facts))
        {
            yield return refused;
        }

        foreach (var task in facts.Plan.Tasks.Where(t => On(facts, t)))
        {
            foreach (var step in OneTask(facts, task))
            {
                yield return step with { DueBy = task.LastDate < facts.Date ? task.LastDate : null };
            }
        }
    }

    private static IEnumerable<DayStep> OneTask(DayFacts facts, PlanTask task) => task.Kind switch
    {
        TaskKind.Water when task.Id == "water.soak" => SoakSteps.Evening(facts, task),
        TaskKind.Water => RoundSteps.Of(facts, task),
        TaskKind.Feed when facts.Plan.Feed?.Feedings.FirstOrDefault(f => $"feed.{f.Id}" == task.Id) is { } feeding => [FeedStepOfDay.Of(facts, feeding, task)],
        _ => [TaskSteps.Of(facts, task)],
    };

    private static bool On(DayFacts facts, PlanTask task)
    {
        var late = task.Kind is TaskKind.Feed or TaskKind.Mow ? LateDays : 0;
        return task.Date <= facts.Date && facts.Date <= task.LastDate.AddDays(late) && !facts.OfSeedDown(task) && !facts.Settled(task);
    }

    /// <summary>When work without an hour is done on a day: looking early, feeding on dry grass, mowing before the evening.</summary>
    private static TimeOnly Usual(TaskKind kind) => kind switch
    {
        TaskKind.Look => new(8, 0),
        TaskKind.Photo => new(8, 30),
        TaskKind.Feed => new(10, 0),
        TaskKind.Mow => new(10, 30),
        _ => new(9, 0),
    };

    private static DayRecord Note(DayStep step) => new($"{step.Id}.note", "Write a note", new LogEntry.Note("") { Id = Guid.Empty, At = DayRecord.Later, Remark = step.Title });

    private static string Told(DayFacts facts, IReadOnlyList<DayStep> steps, bool seedDown)
    {
        if (steps.Count == 0)
        {
            var next = facts.Plan.Tasks.Where(t => t.Date > facts.Date).MinBy(t => t.Date);
            return next is null ? "Nothing is asked of this lawn today, and nothing is still to come this season." : $"Nothing is asked of this lawn today. Next, on {Day(next.Date)}: {next.Title}.";
        }

        var count = steps.Count == 1 ? "one step" : FormattableString.Invariant($"{steps.Count} steps");
        var place = facts.Plan.Timing.SeedDown is not { } down ? "" : (facts.Date.DayNumber - down.DayNumber) switch
        {
            < -1 and var n => FormattableString.Invariant($"{-n} days before seed-down: "),
            -1 => "The day before seed-down: ",
            1 => "The day after seed-down: ",
            var n => FormattableString.Invariant($"Day {n} after seed-down: "),
        };
        return seedDown ? $"Seed-down day: {count}, from the soft soil to the first water." : Words.Sentence($"{place}{count}.");
    }

    private static string Day(DateOnly date) => date.ToString("MMM d", System.Globalization.CultureInfo.InvariantCulture);
}
