using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Records;

/// <summary>Recorded nitrogen against the rule of a pack.</summary>
internal static class NitrogenFindings
{
    private const double Equal = 1.0e-6;

    /// <summary>One application; what went on the same ground earlier the same day counts with it. Null where no rule bears on it.</summary>
    internal static LawFinding? OfOne(Lawn lawn, FieldLog log, RulePack pack, LogEntry.Applied entry)
    {
        var rule = pack.Nitrogen;
        if (rule is { MaxTotalPerApplication: null, MaxSolublePerApplication: null, LeastSlowShare: null } || FedRecord.PoundsPerM(entry) is null or 0.0)
        {
            return null;
        }

        var pounds = Together(log, entry).Sum(e => FedRecord.PoundsPerM(e) ?? 0.0);
        return Slow(lawn, entry.What.Product) is { } share ? Known(pack, entry, pounds, share) : Unknown(pack, entry, pounds);
    }

    /// <summary>The year's sum where it is over the most allowed; null where it is not.</summary>
    /// <param name="lawn">The lawn.</param>
    /// <param name="log">Its field log.</param>
    /// <param name="pack">Its rules.</param>
    /// <param name="year">Calendar year.</param>
    /// <param name="leftOut">Feedings that fall out for it, as titles.</param>
    internal static LawFinding? OfYear(Lawn lawn, FieldLog log, RulePack pack, int year, IReadOnlyList<string> leftOut)
    {
        var rates = YearTotals.Counting(log, year).Select(e => (e.PatchId, FedRecord.PoundsPerM(e) ?? 0.0));
        var (pounds, patch) = YearTotals.Heaviest(rates);
        if (pack.Nitrogen.MaxPerYear is not { } most || pounds <= most * (1.0 + Equal))
        {
            return null;
        }

        var over = Over("record.nitrogen.year.over", "nitrogen over the year\u2019s maximum", pounds, most, pack);
        var where = patch is null ? "the whole lawn" : lawn.Patches.FirstOrDefault(p => p.Id == patch)?.Name ?? patch;
        return new(
            "record.nitrogen.year", null, LawStanding.Breaks, $"{pack.Name}: nitrogen in one year",
            $"By the record {Both(pounds)} of nitrogen went on {where} in {year}; {Both(most)} is the most, so that {RecordText.Rate(over.Value)} is too much.",
            $"Put on no more nitrogen {(patch is null ? "this year" : $"on {where} this year")}{(leftOut.Count == 0 ? "" : $": leave out {Words.List(leftOut.Select(title => title.ToLowerInvariant()))}")}. The record stays as it is; ask the state\u2019s office what to do.",
            over, pack.Nitrogen.Source, pack.Nitrogen.Sureness);
    }

    /// <summary>Records of nitrogen of the same day on the same ground, up to and with this one.</summary>
    private static IEnumerable<LogEntry.Applied> Together(FieldLog log, LogEntry.Applied entry) => log.Standing.OfType<LogEntry.Applied>()
        .TakeWhile(e => e.Id != entry.Id)
        .Where(e => e.Day == entry.Day && (e.PatchId is null || entry.PatchId is null || e.PatchId == entry.PatchId))
        .Append(entry);

    private static LawFinding Known(RulePack pack, LogEntry.Applied entry, double pounds, double share)
    {
        var allowed = NitrogenLimit.PerApplication(pack.Nitrogen, share);
        return allowed.Refused ? Found(pack, entry, LawStanding.Breaks, FormattableString.Invariant($"{share * 100.0:0.#} % of its nitrogen is slow-release, at least {pack.Nitrogen.LeastSlowShare * 100.0:0.#} % is required."))
            : allowed.MaxPoundsPerM is { } most && pounds > most * (1.0 + Equal) ? TooMuch(pack, entry, pounds, most)
            : Found(pack, entry, LawStanding.Holds, $"{Both(pounds)} of nitrogen{(allowed.MaxPoundsPerM is { } within ? $" of at most {Both(within)}" : "")}.");
    }

    /// <summary>Where the slow-release share is not written: what surely breaks, and else the share it must have.</summary>
    private static LawFinding Unknown(RulePack pack, LogEntry.Applied entry, double pounds)
    {
        var rule = pack.Nitrogen;
        if (rule.MaxTotalPerApplication is { } total && pounds > total * (1.0 + Equal))
        {
            return TooMuch(pack, entry, pounds, total);
        }

        var forSoluble = rule.MaxSolublePerApplication is { } soluble && pounds > soluble * (1.0 + Equal) ? 1.0 - soluble / pounds : 0.0;
        var needed = rule.LeastSlowShare is { } least && (rule.Reading is SlowShareReading.Strict || forSoluble > 0.0) ? Math.Max(least, forSoluble) : forSoluble;
        return needed > 0.0
            ? Found(pack, entry, LawStanding.Unsettled, FormattableString.Invariant($"{Both(pounds)} of nitrogen is within the rule only where at least {needed * 100.0:0.#} % of it is slow-release; that share is not known here."))
            : Found(pack, entry, LawStanding.Holds, $"{Both(pounds)} of nitrogen.");
    }

    private static LawFinding TooMuch(RulePack pack, LogEntry.Applied entry, double pounds, double most)
    {
        var over = Over($"record.nitrogen.application.{entry.Id:D}.over", "nitrogen over the most in one application", pounds, most, pack);
        return Found(pack, entry, LawStanding.Breaks, $"{Both(pounds)} of nitrogen went on in one application; {Both(most)} is the most, so that {RecordText.Rate(over.Value)} is too much.") with { Over = over };
    }

    private static LawFinding Found(RulePack pack, LogEntry.Applied entry, LawStanding standing, string statement) => new(
        "record.nitrogen.application", entry.Id, standing, $"{pack.Name}: nitrogen in one application", statement,
        standing switch
        {
            LawStanding.Breaks => "The record stays as it is. Put on less next time, and ask the state\u2019s office what to do.",
            LawStanding.Unsettled => "Read the share off the bag, and enter the product with it under Notes, Feed.",
            _ => "",
        },
        null, pack.Nitrogen.Source, pack.Nitrogen.Sureness);

    private static Figure Over(string id, string label, double pounds, double most, RulePack pack) => Worked.Sourced(
        id, label, QuantityKind.MassPerArea, MassPerArea.FromPoundsPerThousandSquareFeet(pounds - most).KilogramsPerSquareMeter, "over = recorded - most", pack.Nitrogen.Source, pack.Nitrogen.Sureness, null,
        new WorkingInput("N", "nitrogen recorded on one piece of ground", pounds, "lb per 1,000 sq ft"), new WorkingInput("M", "most by the rules", most, "lb per 1,000 sq ft"));

    /// <summary>Slow-release share of a product the notes know by this name; null for others.</summary>
    private static double? Slow(Lawn lawn, string product) => new[] { lawn.Starter, lawn.LateFeed }
        .FirstOrDefault(known => known?.SlowNitrogen is not null && known.Name.Trim().Equals(product.Trim(), StringComparison.OrdinalIgnoreCase))?.SlowNitrogen?.Value;

    private static string Both(double poundsPerM) => RecordText.Rate(MassPerArea.FromPoundsPerThousandSquareFeet(poundsPerM).KilogramsPerSquareMeter);
}
