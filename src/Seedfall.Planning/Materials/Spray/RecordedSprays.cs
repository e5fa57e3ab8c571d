using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Materials;

/// <summary>Recorded applications as past sprays, so that their waits hold seed back too.</summary>
public static class RecordedSprays
{
    /// <summary>
    /// The lawn with every recorded pesticide up to seed-down among its past sprays. One the notes already name on the same day is
    /// not added again. No amount is carried over: the year's sum takes it from the record itself.
    /// </summary>
    /// <param name="lawn">The lawn as noted.</param>
    /// <param name="log">Its field log.</param>
    /// <param name="season">Year of the season.</param>
    public static Lawn Of(Lawn lawn, FieldLog log, int season)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(log);
        var seeded = log.Standing.OfType<LogEntry.SeededDown>().LastOrDefault(entry => entry.Day.Year == season)?.Day;
        List<PastSpray> added =
        [
            .. new[] { season - 1, season }
                .SelectMany(year => YearTotals.Counting(log, year))
                .Where(entry => entry.What.Kind == ApplicationKind.Pesticide && !(entry.Day >= seeded))
                .SelectMany(entry => Names(entry).Select(name => Past(lawn, entry, name)))
                .Where(past => !lawn.Sprayed.Any(known => known.Date == past.Date && ActiveName.Same(known.ActiveIngredient, past.ActiveIngredient))),
        ];
        return added.Count == 0 ? lawn : lawn with { Sprayed = [.. lawn.Sprayed, .. added] };
    }

    private static IEnumerable<string> Names(LogEntry.Applied entry) =>
        entry.What.Actives.Count > 0 ? entry.What.Actives.Select(a => a.Name) : [entry.What.Product];

    private static PastSpray Past(Lawn lawn, LogEntry.Applied entry, string name) => new()
    {
        ActiveIngredient = name,
        Date = entry.Day,
        LabelSeedingIntervalDays = lawn.PreEmergent is { } label && ActiveName.Same(label.ActiveIngredient, name)
            ? label.SeedingIntervalDays ?? (label.LabeledAtSeeding.Count > 0 ? 0 : null)
            : null,
    };
}
