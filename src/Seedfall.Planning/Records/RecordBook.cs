using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Records;

/// <summary>An earlier version of a record, kept beside the one that stands in its place.</summary>
/// <param name="Entry">As it was written.</param>
/// <param name="Why">Why the next version stands in its place.</param>
public sealed record EarlierVersion(LogEntry.Applied Entry, string Why);

/// <summary>One application in the book.</summary>
/// <param name="Entry">The version shown.</param>
/// <param name="Place">Where on the lawn, in words.</param>
/// <param name="State">Whether it stands or is struck.</param>
/// <param name="StruckWhy">Why it was struck; null where it stands.</param>
/// <param name="Earlier">Versions it stands in place of, the latest first.</param>
/// <param name="Rivals">Ids of other records that stand in place of the same one; a person must strike all but one.</param>
/// <param name="Missing">Fields that rules ask for and that were not written down; empty for a struck record.</param>
public sealed record BookRecord(
    LogEntry.Applied Entry,
    string Place,
    EntryState State,
    string? StruckWhy,
    IReadOnlyList<EarlierVersion> Earlier,
    IReadOnlyList<Guid> Rivals,
    IReadOnlyList<MissingField> Missing)
{
    /// <summary>True where a pesticide law bears on it.</summary>
    public bool IsPesticide => MissingFields.IsPesticide(Entry.What);

    /// <summary>What the state's nitrogen and phosphorus rules say of it; empty where none bears on it and for a struck record.</summary>
    public IReadOnlyList<LawFinding> Law { get; init; } = [];
}

/// <summary>One calendar year of the book, by the lawn's own clock.</summary>
/// <param name="Records">In order of when they happened; a struck one stands among them.</param>
/// <param name="Totals">What stands, added up by active ingredient and nutrient.</param>
public sealed record BookYear(int Year, IReadOnlyList<BookRecord> Records, IReadOnlyList<ActiveTotal> Totals);

/// <summary>
/// The record book of one lawn: every application ever written down, with what was corrected and what was struck, the totals of each
/// year and what the rules still miss. A function of lawn, log and rules.
/// </summary>
/// <param name="Lawn">The lawn.</param>
/// <param name="RulePackName">The rules it was held against.</param>
/// <param name="Rules">Rules of record keeping that may bear on it.</param>
/// <param name="Years">The latest first; a year without an application is left out.</param>
/// <param name="Retention">Years its records must be kept; <see cref="BookRetention"/>.</param>
public sealed record RecordBook(Lawn Lawn, string RulePackName, IReadOnlyList<RecordRule> Rules, IReadOnlyList<BookYear> Years, BookRetention Retention)
{
    /// <summary>The book over a span of years, both inclusive.</summary>
    /// <param name="lawn">The lawn.</param>
    /// <param name="log">Its field log.</param>
    /// <param name="pack">Its rule pack.</param>
    /// <param name="first">First year of the span.</param>
    /// <param name="last">Last year of the span; not before the first.</param>
    public static RecordBook Of(Lawn lawn, FieldLog log, RulePack pack, int first = 1, int last = 9999)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentOutOfRangeException.ThrowIfLessThan(last, first);
        var rules = RecordRules.For(pack, lawn.AppliedForHire);
        var years = BookRecords.Of(lawn, log, pack, rules)
            .Where(record => record.Entry.Day.Year >= first && record.Entry.Day.Year <= last)
            .GroupBy(record => record.Entry.Day.Year)
            .OrderByDescending(year => year.Key)
            .Select(year => new BookYear(year.Key, [.. year], ActiveTotals.Of(lawn, log, pack, year.Key)));
        return new RecordBook(lawn, pack.Name, rules, [.. years], BookRetention.Of(rules));
    }

    /// <summary>One application of the book by the id of its record, or of any version it stands in place of; null where there is none.</summary>
    public BookRecord? Find(Guid entry) => Years.SelectMany(year => year.Records).FirstOrDefault(r => r.Entry.Id == entry)
        ?? Years.SelectMany(year => year.Records).FirstOrDefault(r => r.Earlier.Any(e => e.Entry.Id == entry));
}

/// <summary>How long the records must be kept.</summary>
/// <param name="Years">The longest of the rules that bear on the lawn.</param>
/// <param name="Sentence">The same in words, with the rule.</param>
public sealed record BookRetention(Figure Years, string Sentence)
{
    internal static BookRetention Of(IReadOnlyList<RecordRule> rules)
    {
        var longest = rules.Where(rule => rule.KeepYears is not null).MaxBy(rule => rule.KeepYears)!;
        var years = longest.KeepYears!.Value;
        return new(
            new Figure("record.keep", "Years to keep each record", QuantityKind.Count, years, new Working(
                "longest of the rules that bear on this lawn",
                [.. rules.Where(rule => rule.KeepYears is not null).Select((rule, i) => new WorkingInput($"K{i + 1}", rule.Name, rule.KeepYears!.Value, "years"))],
                longest.Source,
                longest.Sureness,
                "Nothing written here is ever deleted by Seedfall; keep copies of your own.")),
            FormattableString.Invariant($"Keep each record at least {years:0.##} years after the application ({longest.Name}). Nothing here is deleted."));
    }
}
