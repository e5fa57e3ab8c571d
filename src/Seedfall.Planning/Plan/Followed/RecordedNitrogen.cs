using Seedfall.Engine.Units;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Plan.Followed;

/// <summary>Nitrogen of the year before the plan's own feedings, as the record has it.</summary>
internal static class RecordedNitrogen
{
    /// <summary>
    /// The lawn with the year's nitrogen known: what was typed, or what the record adds up to where that is more. What goes on from the
    /// day before seed-down is the plan's own and counted there.
    /// </summary>
    internal static Lawn Into(Lawn lawn, FieldLog log, DateOnly seedDown)
    {
        var before = log.During<LogEntry.Applied>(new DateOnly(seedDown.Year, 1, 1), seedDown.AddDays(-DoneMarks.OwnFeedDays - 1))
            .SelectMany(entry => entry.What.Actives.Where(active => Nutrients.IsNitrogen(active.Name)).Select(active => (entry.PatchId, Rate: active.Amount.Kilograms / entry.What.Area.SquareMeters)))
            .ToList();
        if (before.Count == 0)
        {
            return lawn;
        }

        var recorded = MassPerArea.FromKilogramsPerSquareMeter(YearTotals.Heaviest(before).Rate);
        return lawn.NitrogenThisYear is { } typed && typed > recorded ? lawn : lawn with { NitrogenThisYear = recorded };
    }
}
