using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Records;

/// <summary>Recorded fertilizer against the nitrogen and phosphorus rules of the lawn's state.</summary>
public static class FertilizerLaw
{
    /// <summary>What the rules say of one record; empty where none bears on it, and for one that does not stand.</summary>
    /// <param name="lawn">The lawn; its kind of work, soil test and products bear on it.</param>
    /// <param name="log">Its field log.</param>
    /// <param name="pack">Its rules.</param>
    /// <param name="entry">The record.</param>
    public static IReadOnlyList<LawFinding> Of(Lawn lawn, FieldLog log, RulePack pack, LogEntry.Applied entry)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(entry);
        if (log.StateOf(entry) is not EntryState.Stands)
        {
            return [];
        }

        LawFinding?[] found = [NitrogenFindings.OfOne(lawn, log, pack, entry), PhosphorusFindings.Of(lawn, log, pack, entry), NoAnalysis(pack, entry)];
        return [.. found.OfType<LawFinding>()];
    }

    /// <summary>All of a calendar year that does not hold, the year's sum first.</summary>
    /// <param name="lawn">The lawn.</param>
    /// <param name="log">Its field log.</param>
    /// <param name="pack">Its rules.</param>
    /// <param name="year">Calendar year by the lawn's own clock.</param>
    /// <param name="leftOut">Feedings of the plan that fall out, as titles.</param>
    public static IReadOnlyList<LawFinding> Against(Lawn lawn, FieldLog log, RulePack pack, int year, IReadOnlyList<string> leftOut)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(leftOut);
        return
        [
            .. NitrogenFindings.OfYear(lawn, log, pack, year, leftOut) is { } over ? [over] : Array.Empty<LawFinding>(),
            .. YearTotals.Counting(log, year)
                .SelectMany(entry => Of(lawn, log, pack, entry).Select(found => found with { Statement = $"{entry.What.Product}, {RecordText.When(entry)}: {found.Statement}" }))
                .Where(found => found.Standing is not LawStanding.Holds)
                .OrderByDescending(found => found.Standing),
        ];
    }

    /// <summary>Fertilizer without any nutrient written, where the pack has a rule it could be held to.</summary>
    private static LawFinding? NoAnalysis(RulePack pack, LogEntry.Applied entry)
    {
        var ruled = pack.Nitrogen is not { MaxTotalPerApplication: null, MaxSolublePerApplication: null, LeastSlowShare: null, MaxPerYear: null } || pack.Phosphorus.RestrictedAbovePhosphate is not null;
        return ruled && entry.What.Kind is ApplicationKind.Fertilizer && !entry.What.Actives.Any(active => Nutrients.Is(active.Name))
            ? new(
                "record.no-analysis", entry.Id, LawStanding.Unsettled, $"{pack.Name}: nitrogen and phosphorus",
                "no nutrient is written for this fertilizer, so that it is held against no rule.",
                "Correct the record with the nitrogen and the phosphate off the bag.",
                null, pack.Phosphorus.Source, pack.Phosphorus.Sureness)
            : null;
    }
}
