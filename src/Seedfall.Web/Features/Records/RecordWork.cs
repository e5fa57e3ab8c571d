using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Records;
using Seedfall.Planning.Rules;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Records;

/// <summary>A record to be written.</summary>
/// <param name="Stored">Its lawn.</param>
/// <param name="Entries">The form as filled.</param>
/// <param name="EntryId">The record's id, made when the form was shown.</param>
/// <param name="Corrects">The record it stands in place of; null for a first one.</param>
/// <param name="Task">The plan's task it was filled from; null for none.</param>
/// <param name="Others">Further products of that task, each with its number, that need a record of their own.</param>
public sealed record RecordDraft(StoredLawn Stored, Entries Entries, Guid EntryId, LogEntry.Applied? Corrects, string? Task, IReadOnlyList<(int Number, string Product)> Others);

/// <summary>Keeps the record book of a lawn.</summary>
internal sealed class RecordWork(LogBook logs, PlanWork plans, TradeTables trade, TimeProvider clock)
{
    public RulePack Pack(StoredLawn stored) => trade.Pack(stored.Lawn.RulePack) ?? trade.Pack(null)!;

    public async Task<RecordBook> Book(StoredLawn stored, CancellationToken cancellation) =>
        RecordBook.Of(stored.Lawn, await logs.For(stored.Row.Id, cancellation), Pack(stored));

    /// <summary>A blank form, or one filled from a task of the plan; who and with what is taken over from the latest record of the kind.</summary>
    /// <param name="stored">The lawn.</param>
    /// <param name="taskId">Id of the plan's task; null for none.</param>
    /// <param name="number">Which of the task's products, from 1.</param>
    /// <param name="system">Units first shown.</param>
    /// <param name="cancellation">Ends the work.</param>
    public async Task<RecordDraft> New(StoredLawn stored, string? taskId, int number, UnitSystem system, CancellationToken cancellation)
    {
        var planned = taskId is null ? [] : await Planned(stored, taskId, cancellation);
        var what = planned.ElementAtOrDefault(number - 1);
        var last = (await logs.For(stored.Row.Id, cancellation)).Standing.OfType<LogEntry.Applied>().LastOrDefault(e => what is null || e.What.Kind == what.Kind)?.What;
        var now = LawnClock.Now(stored, clock);
        var entries = RecordForm.Filled(
            stored.Lawn, what is null ? null : what with { Applicator = last?.Applicator, License = last?.License, Method = what.Method ?? last?.Method }, now, null, null, system);
        if (what is null)
        {
            RecordFields.Applicator.Fill(entries, last?.Applicator);
            RecordFields.License.Fill(entries, last?.License);
        }


        RecordForm.Round(entries);
        var others = planned.Select((other, i) => (Number: i + 1, other.Product)).Where(other => other.Number != number).ToList();
        return new(stored, entries, Guid.CreateVersion7(clock.GetUtcNow()), null, what is null ? null : taskId, what is null ? [] : others);
    }

    /// <summary>The form of a correction; null where no such record stands.</summary>
    public async Task<RecordDraft?> Correction(StoredLawn stored, Guid entry, UnitSystem system, CancellationToken cancellation) =>
        await Standing(stored, entry, cancellation) is { } before
            ? new(stored, RecordForm.Filled(stored.Lawn, before.What, before.At, before.PatchId, before.Remark, system), Guid.CreateVersion7(clock.GetUtcNow()), before, null, [])
            : null;

    /// <summary>Writes the record down; null where a problem was noted beside a field. One written before adds nothing.</summary>
    public async Task<LogEntry.Applied?> Write(StoredLawn stored, Entries entries, Guid entryId, Guid? corrects, CancellationToken cancellation)
    {
        var log = await logs.For(stored.Row.Id, cancellation);
        if (log.Entries.FirstOrDefault(e => e.Id == entryId) is LogEntry.Applied written)
        {
            return written;
        }

        var before = log.Entries.FirstOrDefault(e => e.Id == corrects) as LogEntry.Applied;
        var entry = RecordForm.Read(entryId, stored.Lawn, entries, local => LawnClock.At(stored, local), before);
        foreach (var problem in entry is null ? [] : LogRules.Problems(stored.Lawn, entry).Concat(LogRules.ProblemsIn(log, entry)))
        {
            entries.Wrong(RecordForm.FieldOf(problem), char.ToUpperInvariant(problem[0]) + problem[1..] + ".");
        }

        if (entry is not null && DateOnly.FromDateTime(LawnClock.Now(stored, clock).DateTime) < entry.Day)
        {
            entries.Wrong(RecordFields.Day.Name, "Day: a record is of what was done; a day that has come is needed.");
        }

        if (before is not null && log.StateOf(before) is not EntryState.Stands)
        {
            entries.Wrong("", "This record was corrected or struck meanwhile. What you typed is kept below: compare it with the book and correct the record that stands now.");
        }

        if (!entries.Sound || entry is null)
        {
            return null;
        }

        await logs.Append(stored.Row.Id, [entry], cancellation);
        return entry;
    }

    public async Task<LogEntry.Applied?> Standing(StoredLawn stored, Guid entry, CancellationToken cancellation) =>
        (await logs.For(stored.Row.Id, cancellation)).Standing.OfType<LogEntry.Applied>().FirstOrDefault(e => e.Id == entry);

    public async Task<LogEntry.Applied?> Find(StoredLawn stored, Guid entry, CancellationToken cancellation) =>
        (await logs.For(stored.Row.Id, cancellation)).Entries.OfType<LogEntry.Applied>().FirstOrDefault(e => e.Id == entry);

    private async Task<IReadOnlyList<Application>> Planned(StoredLawn stored, string taskId, CancellationToken cancellation)
    {
        var planned = await plans.Plan(stored, await plans.Kept(stored, null, cancellation), null, cancellation);
        return planned.Plan is { } plan ? PlannedApplications.For(stored.Lawn, plan, taskId) : [];
    }
}
