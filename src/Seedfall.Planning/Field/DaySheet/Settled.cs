using Seedfall.Planning.Plan;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Field;

/// <summary>Which tasks the log already shows done, so that they leave the sheet of later days.</summary>
internal static class Settled
{
    /// <summary>Days before its time in which work counts for a task.</summary>
    private const int Early = 3;

    /// <summary>True where it was done on a day before the sheet's. What was done today stays, to be seen as done.</summary>
    internal static bool Before(DayFacts facts, PlanTask task)
    {
        var (from, to) = (task.Date.AddDays(-Early), facts.Date.AddDays(-1));
        return from <= to && task.Kind switch
        {
            TaskKind.Feed => facts.Log.During<LogEntry.Applied>(from, to).Any(e => e.What.Kind == ApplicationKind.Fertilizer),
            TaskKind.Mow => facts.Log.During<LogEntry.Mowed>(from, to).Any(),
            TaskKind.Look when task.Id == "look.emergence" => facts.Log.During<LogEntry.FirstGreen>(facts.Plan.Timing.SeedDown ?? from, to).Any(),
            TaskKind.Look when task.Id is "look.thin" or "look.again" => facts.Log.During<LogEntry.CoverSeen>(from, to).Any(),
            _ => false,
        };
    }
}
