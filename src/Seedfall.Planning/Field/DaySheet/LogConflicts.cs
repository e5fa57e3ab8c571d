using System.Globalization;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Field;

/// <summary>Entries that cannot all hold, or that look like one thing written twice.</summary>
/// <param name="Sentence">What is at odds, what the plan goes by, and what to do.</param>
/// <param name="Entries">The entries, in order of time.</param>
public sealed record LogConflict(string Sentence, IReadOnlyList<LogEntry> Entries);

/// <summary>What a log holds against itself, as when two phones wrote about one lawn. Nothing is decided here; everything stays.</summary>
public static class LogConflicts
{
    /// <summary>Days within which two dates mean one seed-down. Later ones are a seeding anew.</summary>
    private const int OneSeason = 30;

    private static readonly TimeSpan SameRun = TimeSpan.FromMinutes(10);

    private static readonly TimeSpan SameJob = TimeSpan.FromMinutes(60);

    /// <summary>All of them, the gravest first.</summary>
    public static IReadOnlyList<LogConflict> In(Lawn lawn, FieldLog log)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(log);
        return
        [
            .. log.Clashes.Select(clash => new LogConflict(Clashing(lawn, clash), clash.Rivals)),
            .. Dates<LogEntry.SeededDown>(lawn, log, "Seed down", "The plan goes by the later one."),
            .. Dates<LogEntry.FirstGreen>(lawn, log, "First green", "The plan goes by the earlier one."),
            .. Twice<LogEntry.SeededDown>(lawn, log, "seed down", TimeSpan.FromDays(1), (a, b) => a.Day == b.Day),
            .. Twice<LogEntry.FirstGreen>(lawn, log, "first green", TimeSpan.FromDays(1), (a, b) => a.Day == b.Day),
            .. Twice<LogEntry.Watered>(lawn, log, "watering", SameRun, (a, b) => a.Set == b.Set && a.Given == b.Given && a.Minutes == b.Minutes),
            .. Twice<LogEntry.Mowed>(lawn, log, "mowing", SameJob, (_, _) => true),
            .. Twice<LogEntry.Applied>(lawn, log, "application", SameJob, (a, b) => a.What.Kind == b.What.Kind && string.Equals(a.What.Product, b.What.Product, StringComparison.OrdinalIgnoreCase) && a.What.Replaces is null && b.What.Replaces is null),
        ];
    }

    private static string Clashing(Lawn lawn, CorrectionClash clash) => FormattableString.Invariant(
        $"{clash.Rivals.Count} records correct one and the same application, each in its own way: {Materials.Words.List(clash.Rivals.Select(r => r.What.Product).Distinct(StringComparer.OrdinalIgnoreCase))}{On(lawn, clash.Rivals[0].PatchId)}. All of them count until all but one are struck.");

    private static IEnumerable<LogConflict> Dates<T>(Lawn lawn, FieldLog log, string what, string goesBy)
        where T : LogEntry
    {
        foreach (var ground in log.Standing.OfType<T>().GroupBy(e => e.PatchId))
        {
            foreach (var season in Runs(ground))
            {
                var days = season.Select(e => e.Day).Distinct().ToList();
                if (days.Count > 1)
                {
                    yield return new($"{what} is written for {Materials.Words.List(days.Select(Day))}{On(lawn, ground.Key)}. {goesBy} Strike what does not hold.", season);
                }
            }
        }
    }

    private static IEnumerable<LogConflict> Twice<T>(Lawn lawn, FieldLog log, string what, TimeSpan within, Func<T, T, bool> alike)
        where T : LogEntry
    {
        var all = log.Standing.OfType<T>().ToList();
        for (var i = 1; i < all.Count; i++)
        {
            var second = all[i];
            if (all.Take(i).LastOrDefault(e => second.At - e.At <= within && e.PatchId == second.PatchId && alike(e, second)) is { } first)
            {
                yield return new($"One {what} looks written twice, at {Time(first)} and {Time(second)} on {Day(second.Day)}{On(lawn, second.PatchId)}. If it was done once, strike one.", [first, second]);
            }
        }
    }

    private static IEnumerable<IReadOnlyList<LogEntry>> Runs(IEnumerable<LogEntry> inOrder)
    {
        var run = new List<LogEntry>();
        foreach (var entry in inOrder)
        {
            if (run.Count > 0 && entry.Day.DayNumber - run[^1].Day.DayNumber > OneSeason)
            {
                yield return run;
                run = [];
            }

            run.Add(entry);
        }

        yield return run;
    }

    private static string On(Lawn lawn, string? patchId) => patchId is null ? "" : $" on {lawn.Patches.FirstOrDefault(p => p.Id == patchId)?.Name ?? patchId}";

    private static string Day(DateOnly day) => day.ToString("MMM d", CultureInfo.InvariantCulture);

    private static string Time(LogEntry entry) => entry.At.ToString("H:mm", CultureInfo.InvariantCulture);
}
