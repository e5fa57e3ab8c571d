using System.Globalization;
using System.Text;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Seedfall.Planning.Plan;
using ICalendar = Ical.Net.Calendar;

namespace Seedfall.Exchange.Calendar;

/// <summary>
/// A plan's tasks as an iCalendar file (RFC 5545): all-day entries for work that may be done any time that day, timed entries
/// in the lawn's zone for the rest, every entry with an alarm and an id that stays the same when the plan is made again.
/// </summary>
public static class SeasonCalendar
{
    private const int SummaryLength = 120;

    /// <summary>The calendar as text: CRLF line ends, lines folded at 75 octets.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="stamp">The instant the file is made; passed in so that the same inputs give the same bytes.</param>
    /// <param name="sequence">How often the plan was handed out before, 0 for the first time.</param>
    public static string Write(RecoveryPlan plan, DateTimeOffset stamp, int sequence = 0)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfNegative(sequence);
        var calendar = new ICalendar { Method = "PUBLISH", ProductId = "-//Seedfall//Season 1//EN" };
        calendar.AddProperty("X-WR-CALNAME", Plain($"{plan.LawnName} {plan.Season}"));
        var zone = ZoneComponent.Of(plan.TimeZone, plan.Tasks.Count == 0 ? plan.Season : plan.Tasks[0].Date.Year);
        calendar.AddTimeZone(zone);
        foreach (var task in plan.Tasks)
        {
            calendar.Events.Add(Entry(plan, task, stamp, sequence));
        }

        return Folding.Fold(new CalendarSerializer().SerializeToString(calendar) ?? "");
    }

    /// <summary>
    /// The calendar written again: unchanged entries stay as the earlier file has them, changed ones count their number up, work
    /// no longer planned is cancelled. The same plan gives the earlier file back.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="stamp">The instant the file is made.</param>
    /// <param name="earlier">The file handed out before, whatever it holds.</param>
    public static string Revise(RecoveryPlan plan, DateTimeOffset stamp, string earlier)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(earlier);
        var stampText = stamp.UtcDateTime.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture);
        return CalendarRevision.Of(Write(plan, stamp), earlier, Prefix(plan.LawnId, plan.Season), stampText);
    }

    /// <summary>The id of a task's entry: the same whenever the plan is made again.</summary>
    public static string Uid(string lawnId, int season, string taskId) => $"{Prefix(lawnId, season)}{taskId}@seedfall.invalid";

    private static string Prefix(string lawnId, int season) => FormattableString.Invariant($"{lawnId}.{season}.");

    private static CalendarEvent Entry(RecoveryPlan plan, PlanTask task, DateTimeOffset stamp, int sequence)
    {
        var entry = new CalendarEvent
        {
            Uid = Uid(plan.LawnId, plan.Season, task.Id),
            DtStamp = new CalDateTime(stamp.UtcDateTime, "UTC"),
            Sequence = sequence,
            Summary = Plain($"{plan.LawnName}: {task.Title}"),
            Description = Description(plan, task),
            Status = "CONFIRMED",
            Transparency = "TRANSPARENT",
        };
        var days = task.LastDate.DayNumber - task.Date.DayNumber + 1;
        if (task.Start is { } start && (days == 1 || EveryDay(plan, task)))
        {
            entry.Start = new CalDateTime(task.Date, start, plan.TimeZone);
            entry.Duration = Duration.FromMinutes(task.Minutes ?? 15);
            entry.RecurrenceRule = days > 1 ? new RecurrenceRule(FrequencyType.Daily, 1) { Count = days } : null;
            entry.Alarms.Add(Alarm(task, Duration.FromMinutes(-30)));
        }
        else
        {
            entry.Start = new CalDateTime(task.Date);
            entry.End = new CalDateTime(task.LastDate.AddDays(1));
            entry.Alarms.Add(Alarm(task, Duration.FromHours(8)));
        }

        return entry;
    }

    /// <summary>Watering that comes at least once a day repeats in the calendar; rarer watering stands there as a stretch of days.</summary>
    private static bool EveryDay(RecoveryPlan plan, PlanTask task) =>
        task.Kind == TaskKind.Water && plan.Water.Phases.All(p => $"water.{p.PhaseId}" != task.Id || p.RoundsPerDay >= 1.0);

    private static Alarm Alarm(PlanTask task, Duration fromStart) => new()
    {
        Action = AlarmAction.Display,
        Description = Plain(task.Title),
        Trigger = new Trigger(fromStart),
    };

    private static string Description(RecoveryPlan plan, PlanTask task)
    {
        var cautions = plan.Cautions.Where(c => task.CautionIds.Contains(c.Id)).SelectMany(c => c.Sentences);
        var lines = task.Steps.Concat(task.Conditions.Select(c => $"Only if: {c}")).Concat(cautions.Select(c => $"Caution: {c}"));
        return string.Join('\n', lines.Select(line => WithoutControls(line)));
    }

    private static string Plain(string text)
    {
        var clean = WithoutControls(text);
        var length = clean.Length > SummaryLength && char.IsHighSurrogate(clean[SummaryLength - 1]) ? SummaryLength - 1 : SummaryLength;
        return clean.Length <= SummaryLength ? clean : clean[..length];
    }

    private static string WithoutControls(string text)
    {
        var builder = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            builder.Append(char.IsControl(c) ? ' ' : c);
        }

        return builder.ToString();
    }
}
