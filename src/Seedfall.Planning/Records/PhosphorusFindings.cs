using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Records;

/// <summary>Recorded phosphate against the phosphorus rule of a pack.</summary>
internal static class PhosphorusFindings
{
    /// <summary>
    /// One application with phosphate; null without any, or where the pack has no rule. What the law exempts for seeding holds from
    /// the day before seed went down to the end of that year, its first season; before it, and in other years, a soil test alone lifts
    /// the rule. Where no seed-down is written that year, what an exemption would lift is left to a person.
    /// </summary>
    internal static LawFinding? Of(Lawn lawn, FieldLog log, RulePack pack, LogEntry.Applied entry)
    {
        var phosphate = Nutrients.PhosphateOf(entry.What);
        if (pack.Phosphorus.RestrictedAbovePhosphate is not { } limit || phosphate <= Mass.Zero)
        {
            return null;
        }

        var seeded = Seeded(log, entry.Day.Year);
        var work = seeded.Any(day => entry.Day >= day.AddDays(-FedRecord.OwnFeedDays)) ? WorkKind.Of(lawn).Work : (SeedingWork?)null;
        if (entry.What.Amount.Mass is not { } mass && limit > 0.0)
        {
            // The share of a liquid is not known: it is judged as above the limit, and left to a person where that would break the rule.
            var liquid = PhosphorusLimit.Judge(pack.Phosphorus, 1.0, work, lawn.Soil, entry.Day);
            return liquid.Allowed
                ? Found(pack, entry, LawStanding.Holds, liquid.Reason, phosphate)
                : Found(pack, entry, LawStanding.Unsettled, FormattableString.Invariant($"its amount is written by volume, so that its share of phosphate is not known; above {limit * 100.0:0.##} % it breaks the rule"), phosphate);
        }

        var share = entry.What.Amount.Mass is { } weighed ? Math.Min(1.0, phosphate.Kilograms / weighed.Kilograms) : 1.0;
        var judged = PhosphorusLimit.Judge(pack.Phosphorus, share, work, lawn.Soil, entry.Day);
        return judged.Allowed ? Found(pack, entry, LawStanding.Holds, judged.Reason, phosphate)
            : seeded.Count == 0 && MayBeExempt(lawn, pack.Phosphorus) ? Found(pack, entry, LawStanding.Unsettled, $"{judged.Reason}; no seed-down is written for {entry.Day.Year}", phosphate)
            : work is not null && lawn.Work is null && MayBeExempt(lawn, pack.Phosphorus) ? Found(pack, entry, LawStanding.Unsettled, $"{judged.Reason}; whether this is repair or a new lawn is not entered", phosphate)
            : Found(pack, entry, LawStanding.Breaks, judged.Reason, phosphate);
    }

    /// <summary>What the year's phosphate comes to under a pack, in one sentence.</summary>
    /// <param name="pack">The rules.</param>
    /// <param name="found">Findings of the year's records.</param>
    internal static string Sentence(RulePack pack, IReadOnlyList<LawFinding> found)
    {
        if (pack.Phosphorus.RestrictedAbovePhosphate is not { } limit)
        {
            return $"{pack.Name}: no phosphorus rule to hold it against ({pack.Phosphorus.Source}). Ask the state and the town.";
        }

        var (breaks, open) = (found.Count(f => f.Standing is LawStanding.Breaks), found.Count(f => f.Standing is LawStanding.Unsettled));
        var rule = FormattableString.Invariant($"{pack.Name}: none {(limit > 0.0 ? FormattableString.Invariant($"above {limit * 100.0:0.##} % phosphate ") : "")}but for what the rule exempts{(pack.Phosphorus.SoilTestYears is null ? "" : " or a soil test shows need of")}");
        return breaks > 0 ? $"{rule}: {Count(breaks)} against it{(open > 0 ? $", {open} not settled" : "")}. No amount is allowed there, so that all of it is over."
            : open > 0 ? $"{rule}: {Count(open)} not settled."
            : $"{rule}: what is recorded holds.";
    }

    private static string Count(int records) => records == 1 ? "one record is" : $"{records} records are";

    /// <summary>Days of a year on which seed went down by the log.</summary>
    private static IReadOnlyList<DateOnly> Seeded(FieldLog log, int year) =>
        [.. log.Standing.Where(entry => entry is LogEntry.SeededDown or LogEntry.Applied { What.Kind: ApplicationKind.Seed }).Select(entry => entry.Day).Where(day => day.Year == year)];

    /// <summary>True where the work entered is exempt, or, with none entered, any kind is.</summary>
    private static bool MayBeExempt(Lawn lawn, PhosphorusRule rule) =>
        lawn.Work is { } work ? PhosphorusLimit.Exempt(rule, work) : Enum.GetValues<SeedingWork>().Any(kind => PhosphorusLimit.Exempt(rule, kind));

    private static LawFinding Found(RulePack pack, LogEntry.Applied entry, LawStanding standing, string why, Mass phosphate) => new(
        "record.phosphorus", entry.Id, standing, $"{pack.Name}: phosphorus rule",
        $"{RecordText.Rate(phosphate.Kilograms / YearTotals.Ground(entry).SquareMeters)} of phosphate went on: {why}.",
        standing switch
        {
            LawStanding.Breaks => "The record stays as it is. Put on no more phosphate, take a zero-phosphate product for the next feeding, and ask the state\u2019s office what to do.",
            LawStanding.Unsettled => "Write down what is missing: under Notes the kind of work, in the log the day seed went down, in the record the product\u2019s weight. Ask the state where in doubt.",
            _ => "",
        },
        standing is LawStanding.Breaks ? Over(pack, entry, phosphate) : null, pack.Phosphorus.Source, pack.Phosphorus.Sureness);

    /// <summary>Where the rule allows none, all that went on is over.</summary>
    private static Figure Over(RulePack pack, LogEntry.Applied entry, Mass phosphate) => Worked.Sourced(
        $"record.phosphorus.{entry.Id:D}.over", "phosphate against the rule", QuantityKind.MassPerArea, phosphate.Kilograms / YearTotals.Ground(entry).SquareMeters,
        "over = P / A, for none is allowed", pack.Phosphorus.Source, pack.Phosphorus.Sureness, null,
        new WorkingInput("P", "phosphate (P2O5) recorded", phosphate.Pounds, "lb"), new WorkingInput("A", "ground it went on", YearTotals.Ground(entry).ThousandSquareFeet, "1,000 sq ft"));
}
