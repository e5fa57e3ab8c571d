using System.Text;
using Ical.Net.CalendarComponents;
using Seedfall.Exchange.Calendar;
using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Demo;
using Seedfall.Planning.Plan;

namespace Seedfall.Exchange.Tests.Calendar;

/// <summary>Every file is read back by the library; RFC 5545 sections 3.1 (folding), 3.6.1 (events), 3.6.5 (zones), 3.6.6 (alarms).</summary>
public sealed class SeasonCalendarTests
{
    private static readonly DateTimeOffset Stamp = new(2026, 8, 25, 6, 15, 0, TimeSpan.Zero);

    private static readonly RecoveryPlan Plan = RecoveryPlanner.Plan(DemoTown.Lawns[0], new Choices { Season = DemoTown.Season, Today = DemoTown.Today }, DemoTown.Weather, Trade.Tables);

    private static readonly string Text = SeasonCalendar.Write(Plan, Stamp);

    [Fact]
    public void EveryTaskIsAnEntryWithItsOwnLastingIdAndAnAlarm()
    {
        var events = Events(Text);
        Assert.Equal(Plan.Tasks.Count, events.Count);
        Assert.Equal(Plan.Tasks.Select(t => SeasonCalendar.Uid(Plan.LawnId, Plan.Season, t.Id)).Order(), events.Select(e => e.Uid!).Order());
        Assert.All(events, e => Assert.Single(e.Alarms));
        var later = Events(SeasonCalendar.Write(Plan with { Tasks = [.. Plan.Tasks.Select(t => t with { Date = t.Date.AddDays(3), LastDate = t.LastDate.AddDays(3) })] }, Stamp.AddDays(2), sequence: 1));
        Assert.Equal(events.Select(e => e.Uid).Order(), later.Select(e => e.Uid).Order());
        Assert.All(later, e => Assert.Equal(1, e.Sequence));
    }

    [Fact]
    public void LinesEndInCrLfAndHoldAtMost75Octets()
    {
        var exotic = Plan with { LawnName = "Wiese hinterm Haus \u00e4\u00f6\u00fc \u65e5\u672c\u8a9e \ud83c\udf31 " + new string('\u00e9', 80) };
        foreach (var text in new[] { Text, SeasonCalendar.Write(exotic, Stamp) })
        {
            Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
            Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
            Assert.All(text.Split("\r\n"), line => Assert.True(Encoding.UTF8.GetByteCount(line) <= 75, line));
            Assert.Equal(Plan.Tasks.Count, Events(text).Count);
        }

        Assert.Contains(Events(SeasonCalendar.Write(exotic, Stamp)), e => e.Summary!.Contains("\ud83c\udf31", StringComparison.Ordinal));
    }

    [Fact]
    public void TimedWorkStaysAtTheSameWallClockAcrossTheClockChange()
    {
        var task = Plan.Tasks.Single(t => t.Id == "seed.down");
        foreach (var (day, offsetHours) in new[] { (new DateOnly(2026, 10, 31), -5), (new DateOnly(2026, 11, 2), -6) })
        {
            var moved = Plan with { TimeZone = "America/Chicago", Tasks = [task with { Date = day, LastDate = day, Start = new TimeOnly(9, 0) }] };
            var start = Events(SeasonCalendar.Write(moved, Stamp)).Single().Start!;
            Assert.Equal("America/Chicago", start.TzId);
            Assert.Equal(new DateTime(day, new TimeOnly(9, 0)).AddHours(-offsetHours), start.AsUtc);
        }
    }

    [Fact]
    public void TheZoneComponentIsShortAndHoldsBothOffsets()
    {
        foreach (var (zone, standard, daylight) in new[] { ("America/Chicago", "-0600", "-0500"), ("Pacific/Auckland", "+1200", "+1300") })
        {
            var text = SeasonCalendar.Write(Plan with { TimeZone = zone }, Stamp);
            var start = text.IndexOf("BEGIN:VTIMEZONE", StringComparison.Ordinal);
            var component = text[start..text.IndexOf("END:VTIMEZONE", start, StringComparison.Ordinal)];
            Assert.True(component.Split("\r\n").Length < 60, component);
            Assert.Contains($"TZOFFSETTO:{standard}", component, StringComparison.Ordinal);
            Assert.Contains($"TZOFFSETTO:{daylight}", component, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void WorkForAnyTimeOfDayIsAllDayWithAnEndOneDayOn()
    {
        var task = Plan.Tasks.First(t => t.Start is null && t.LastDate > t.Date);
        var entry = Events(Text).Single(e => e.Uid == SeasonCalendar.Uid(Plan.LawnId, Plan.Season, task.Id));
        Assert.True(entry.IsAllDay);
        Assert.Equal(task.Date, entry.Start!.Date);
        Assert.Equal(task.LastDate.AddDays(1), entry.End!.Date);
    }

    [Fact]
    public void TheSeedbedsRoundsRepeatEveryDayOfTheirPhase()
    {
        var task = Plan.Tasks.Single(t => t.Id == "water.seedbed");
        var entry = Events(Text).Single(e => e.Uid == SeasonCalendar.Uid(Plan.LawnId, Plan.Season, task.Id));
        Assert.Equal(task.LastDate.DayNumber - task.Date.DayNumber + 1, entry.RecurrenceRule!.Count);
    }

    [Fact]
    public void TheSameInputsGiveTheSameBytes() => Assert.Equal(Text, SeasonCalendar.Write(Plan, Stamp));

    private static List<CalendarEvent> Events(string text) => [.. Ical.Net.Calendar.Load(text)!.Events];
}
