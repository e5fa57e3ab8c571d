using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>The wait before the same product goes on again.</summary>
internal static class RepeatWait
{
    /// <summary>A second application within so many days is a repeat even where the label's wait was not entered: about 4 weeks (Delaware Cooperative Extension 2008; Rutgers trials).</summary>
    internal const int UsualDays = 28;

    private const string Rule = "Wait before a repeat";
    private const string Entered = "label, as entered";

    /// <summary>The wall that stops a repeat on a day; null where none was recorded before, or the wait is over.</summary>
    internal static Wall? For(HerbicideLabel label, RecordedUse recorded, FieldLog log, DateOnly day)
    {
        if (recorded.Applications.Concat(recorded.Uncounted).Where(e => e.Day <= day).MaxBy(e => e.At) is not { } last)
        {
            return null;
        }

        var seeded = log.Standing.OfType<LogEntry.SeededDown>().LastOrDefault(e => e.Day.Year == day.Year && e.Day <= day);
        var sinceSeeding = seeded is not null && last.Day >= seeded.Day.AddDays(-UsualDays);
        var green = seeded is null ? null : log.Standing.OfType<LogEntry.FirstGreen>().FirstOrDefault(e => e.Day >= seeded.Day && e.Day <= day);
        var went = $"{label.ActiveIngredient} went on {FigureText.DateText(last.Day)} by the record.";
        return (label.RepeatAfterEmergenceDays, sinceSeeding) switch
        {
            (null, _) when sinceSeeding || day < last.Day.AddDays(UsualDays) =>
                Wall($"{went} The label's wait before a repeat is not entered.", "Enter the wait from the label in hand, if it allows a repeat at all.", "what is not entered from the label is not assumed"),
            ({ } days, true) when green is null =>
                Wall(Text($"{went} A repeat may come no sooner than {days} days after emergence, and no first green is in the log."), "Write down the first green when it shows; the wait counts from there.", Entered),
            ({ } days, true) when day < green.Day.AddDays(days) =>
                Wall(Text($"{went} It emerged {FigureText.DateText(green.Day)}; {days} days must pass before a repeat."), $"Wait until {FigureText.DateText(green.Day.AddDays(days))}.", Entered),
            ({ } days, false) when day < last.Day.AddDays(days) =>
                Wall(Text($"{went} A repeat may come no sooner than {days} days after emergence, and fewer have passed since the spraying itself."), $"Wait until {FigureText.DateText(last.Day.AddDays(days))} at the least.", Entered),
            (_, true) when label.MowingsBeforeSeedlings is { } asked && Mowed(log, (LogEntry?)green ?? seeded!, day) is var mowed && mowed < asked =>
                Wall(Text($"{went} The label asks for {asked} mowings of the new grass before it goes on seedlings; {mowed} are in the log."), "Mow as the grass grows and write each mowing down; then mix.", Entered),
            _ => null,
        };
    }

    /// <summary>Mowings of the new grass up to a day, one a day.</summary>
    private static int Mowed(FieldLog log, LogEntry since, DateOnly day) =>
        log.Standing.OfType<LogEntry.Mowed>().Select(e => e.Day).Where(d => d > since.Day && d <= day).Distinct().Count();

    private static Wall Wall(string statement, string instead, string source) => new("label.repeat", Rule, statement, instead, source);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
