using System.Text;
using Ical.Net.DataTypes;
using NodaTime;
using NodaTime.TimeZones;
using Seedfall.Exchange.Calendar;
using Seedfall.Exchange.Tests.Support;
using Seedfall.Planning.Plan;
using ICalendar = Ical.Net.Calendar;

namespace Seedfall.Exchange.Tests.Calendar;

public sealed class SeasonCalendarTests
{
    private static readonly DateTimeOffset Stamp = new(2026, 8, 14, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Every_task_is_one_entry_with_a_stable_id_an_alarm_and_the_given_instant()
    {
        var plan = DemoPlan.Ordinary;
        var calendar = ICalendar.Load(SeasonCalendar.Write(plan, Stamp))!;
        Assert.Equal(plan.Tasks.Select(t => $"mill-lane-corner.2026.{t.Id}@seedfall.invalid"), calendar.Events.Select(e => e.Uid));
        Assert.Equal(calendar.Events.Count, calendar.Events.Select(e => e.Uid).Distinct().Count());
        Assert.All(calendar.Events, e => Assert.Single(e.Alarms));
        Assert.All(calendar.Events, e => Assert.Equal(Stamp.UtcDateTime, e.DtStamp!.AsUtc));
        Assert.Equal("PUBLISH", calendar.Method);
    }

    [Fact]
    public void The_same_plan_and_instant_give_the_same_bytes() =>
        Assert.Equal(SeasonCalendar.Write(DemoPlan.Ordinary, Stamp), SeasonCalendar.Write(DemoPlan.Ordinary, Stamp));

    [Fact]
    public void A_plan_handed_out_again_keeps_its_ids_and_counts_up()
    {
        var (first, again) = (ICalendar.Load(SeasonCalendar.Write(DemoPlan.Ordinary, Stamp))!, ICalendar.Load(SeasonCalendar.Write(DemoPlan.Ordinary, Stamp.AddDays(1), 3))!);
        Assert.Equal(first.Events.Select(e => e.Uid), again.Events.Select(e => e.Uid));
        Assert.All(first.Events, e => Assert.Equal(0, e.Sequence));
        Assert.All(again.Events, e => Assert.Equal(3, e.Sequence));
    }

    [Fact]
    public void The_same_plan_leaves_the_earlier_file_as_it_was()
    {
        var earlier = SeasonCalendar.Write(DemoPlan.Ordinary, Stamp);
        Assert.Equal(earlier, SeasonCalendar.Revise(DemoPlan.Ordinary, Stamp.AddDays(3), earlier));
    }

    [Fact]
    public void A_changed_plan_counts_up_what_changed_and_cancels_what_is_gone()
    {
        var (kept, moved, gone) = (Task("look.kept"), Task("look.moved"), Task("look.gone"));
        var earlier = SeasonCalendar.Write(With(kept, moved, gone), Stamp);
        var later = With(kept, moved with { Date = new DateOnly(2026, 9, 4), LastDate = new DateOnly(2026, 9, 4) });
        var text = SeasonCalendar.Revise(later, Stamp.AddDays(1), earlier);
        var events = ICalendar.Load(text)!.Events.ToDictionary(e => e.Uid!.Split('@')[0][(e.Uid.IndexOf("look.", StringComparison.Ordinal))..]);
        Assert.Equal((0, Stamp.UtcDateTime, "CONFIRMED"), State(events["look.kept"]));
        Assert.Equal((1, Stamp.UtcDateTime.AddDays(1), "CONFIRMED"), State(events["look.moved"]));
        Assert.Equal((1, Stamp.UtcDateTime.AddDays(1), "CANCELLED"), State(events["look.gone"]));
        Assert.Empty(events["look.gone"].Alarms);
        Assert.Equal(new DateOnly(2026, 9, 4), events["look.moved"].Start!.Date);
        Assert.Equal(text, SeasonCalendar.Revise(later, Stamp.AddDays(9), text));
        Assert.All(text.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));

        static (int Sequence, DateTime Stamp, string? Status) State(Ical.Net.CalendarComponents.CalendarEvent e) => (e.Sequence, e.DtStamp!.AsUtc, e.Status);
    }

    [Theory]
    [InlineData("")]
    [InlineData("not a calendar")]
    [InlineData("BEGIN:VEVENT\r\nUID:other@x\r\nSEQUENCE:99999999999\r\nEND:VEVENT\r\n")]
    [InlineData("BEGIN:VEVENT\r\nBEGIN:VEVENT\r\n")]
    public void An_earlier_file_of_somebody_else_changes_nothing(string earlier) =>
        Assert.Equal(SeasonCalendar.Write(DemoPlan.Ordinary, Stamp), SeasonCalendar.Revise(DemoPlan.Ordinary, Stamp, earlier));

    [Fact]
    public void Lines_end_in_crlf_and_are_at_most_75_octets_without_a_torn_character()
    {
        // RFC 5545 section 3.1: lines of at most 75 octets without the line break, broken by CRLF and one space.
        var plan = With(Task("look.long") with
        {
            Title = string.Concat(Enumerable.Repeat("Gräser säen – 芝生を見る 🌱, dünn; ", 12)),
            Steps = [string.Concat(Enumerable.Repeat("äöü🌱芝", 60)), "zweite\\Zeile; mit, allem"],
        });
        var text = SeasonCalendar.Write(plan, Stamp);
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\n", text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        Assert.DoesNotContain('\uFFFD', text);
        var entry = Assert.Single(ICalendar.Load(text)!.Events);
        Assert.StartsWith(plan.Tasks[0].Steps[0] + "\nzweite\\Zeile; mit, allem", entry.Description!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("America/Chicago", 2026, 10, 30, 2026, 11, 2)]
    [InlineData("Europe/Berlin", 2026, 10, 23, 2026, 10, 26)]
    [InlineData("Australia/Melbourne", 2026, 4, 3, 2026, 4, 6)]
    [InlineData("Pacific/Auckland", 2026, 4, 3, 2026, 4, 6)]
    [InlineData("America/Phoenix", 2026, 10, 30, 2026, 11, 2)]
    [InlineData("Etc/GMT+6", 2026, 10, 30, 2026, 11, 2)]
    public void A_timed_entry_starts_at_the_lawns_own_hour_on_both_sides_of_the_clock_change(string zone, int y1, int m1, int d1, int y2, int m2, int d2)
    {
        var (before, after) = (new DateOnly(y1, m1, d1), new DateOnly(y2, m2, d2));
        var plan = With(Task("mow.before", before, new TimeOnly(6, 30)), Task("mow.after", after, new TimeOnly(6, 30))) with { TimeZone = zone };
        var text = SeasonCalendar.Write(plan, Stamp);
        var calendar = ICalendar.Load(text)!;
        Assert.Equal(Expected(zone, before), calendar.Events[0]!.Start!.AsUtc);
        Assert.Equal(Expected(zone, after), calendar.Events[1]!.Start!.AsUtc);
        Assert.Equal(OffsetByRules(text, before), Offset(zone, before));
        Assert.Equal(OffsetByRules(text, after), Offset(zone, after));
    }

    [Fact]
    public void Daily_watering_repeats_in_local_time_across_the_clock_change()
    {
        var from = new DateOnly(2026, 10, 28);
        var plan = With(Task("water.extra", from, new TimeOnly(6, 0)) with { Kind = TaskKind.Water, LastDate = from.AddDays(7) });
        var entry = Assert.Single(ICalendar.Load(SeasonCalendar.Write(plan, Stamp))!.Events);
        var starts = entry.GetOccurrences(new CalDateTime(2026, 10, 1)).Select(o => o.Period.StartTime).ToList();
        Assert.Equal(8, starts.Count);
        Assert.All(starts, s => Assert.Equal(new TimeOnly(6, 0), s.Time));
        Assert.Equal(TimeSpan.FromHours(25), starts[4].AsUtc - starts[3].AsUtc);
    }

    [Fact]
    public void Work_without_an_hour_is_all_day_and_ends_the_day_after_its_last()
    {
        var plan = With(Task("look.all-day") with { Date = new DateOnly(2026, 9, 3), LastDate = new DateOnly(2026, 9, 27) });
        var entry = Assert.Single(ICalendar.Load(SeasonCalendar.Write(plan, Stamp))!.Events);
        Assert.True(entry.IsAllDay);
        Assert.Equal(new DateOnly(2026, 9, 3), entry.Start!.Date);
        Assert.Equal(new DateOnly(2026, 9, 28), entry.End!.Date);
    }

    [Fact]
    public void The_zone_is_short()
    {
        var text = SeasonCalendar.Write(DemoPlan.Ordinary, Stamp);
        var zone = text[text.IndexOf("BEGIN:VTIMEZONE", StringComparison.Ordinal)..text.IndexOf("END:VTIMEZONE", StringComparison.Ordinal)];
        Assert.InRange(zone.Split("\r\n").Length, 5, 30);
    }

    private static RecoveryPlan With(params PlanTask[] tasks) => DemoPlan.Ordinary with { Tasks = tasks };

    private static PlanTask Task(string id, DateOnly? date = null, TimeOnly? start = null) => new()
    {
        Id = id,
        Kind = TaskKind.Look,
        Title = "Look",
        Date = date ?? new DateOnly(2026, 9, 1),
        LastDate = date ?? new DateOnly(2026, 9, 1),
        Start = start,
        Minutes = 20,
    };

    private static DateTime Expected(string zone, DateOnly date) =>
        TzdbDateTimeZoneSource.Default.ForId(zone).AtStrictly(new LocalDateTime(date.Year, date.Month, date.Day, 6, 30)).ToDateTimeUtc();

    private static TimeSpan Offset(string zone, DateOnly date) => new DateTime(date, new TimeOnly(6, 30)) - Expected(zone, date);

    /// <summary>The offset a reader finds that knows nothing but the VTIMEZONE in the file: the latest observance before the hour.</summary>
    private static TimeSpan OffsetByRules(string text, DateOnly date)
    {
        var zone = ICalendar.Load(text)!.TimeZones.Single();
        return zone.TimeZoneInfos
            .Select(info => (Info: info, Latest: Latest(info, date)))
            .Where(o => o.Latest is not null)
            .MaxBy(o => o.Latest).Info.OffsetTo!.Offset;
    }

    private static DateTime? Latest(Ical.Net.VTimeZoneInfo info, DateOnly date)
    {
        var hour = new DateTime(date, new TimeOnly(6, 30));
        if (info.RecurrenceRule is not { } rule)
        {
            return info.Start!.Value <= hour ? info.Start.Value : null;
        }

        var series = new Ical.Net.CalendarComponents.CalendarEvent { Start = new CalDateTime(info.Start!.Value), RecurrenceRule = rule };
        return series.GetOccurrences().Select(o => o.Period.StartTime.Value).TakeWhile(v => v <= hour).Select(v => (DateTime?)v).LastOrDefault();
    }
}
