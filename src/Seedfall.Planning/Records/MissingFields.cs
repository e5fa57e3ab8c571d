using System.Text.RegularExpressions;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Records;

/// <summary>A field that was not written down.</summary>
/// <param name="Field">Which.</param>
/// <param name="Name">In words.</param>
/// <param name="AskedBy">The rules that ask for it, laws first.</param>
public sealed record MissingField(RecordField Field, string Name, IReadOnlyList<RecordRule> AskedBy)
{
    /// <summary>True where a law asks for it, if the application falls under that law.</summary>
    public bool ByLaw => AskedBy.Any(rule => rule.Scope is not RecordScope.GoodPractice);
}

/// <summary>What the record of one application lacks.</summary>
public static partial class MissingFields
{
    /// <summary>True where a pesticide law bears on it: a pesticide, or anything with a registration number.</summary>
    public static bool IsPesticide(Application what)
    {
        ArgumentNullException.ThrowIfNull(what);
        return what.Kind is ApplicationKind.Pesticide || what.RegistrationNumber is not null;
    }

    /// <summary>Fields that the rules ask for and that are not there; empty for what no pesticide law bears on.</summary>
    internal static IReadOnlyList<MissingField> Of(Lawn lawn, LogEntry.Applied entry, IReadOnlyList<RecordRule> rules) => IsPesticide(entry.What)
        ? [.. Enum.GetValues<RecordField>()
            .Select(field => new MissingField(field, Name(field), [.. rules.Where(rule => rule.Fields.Contains(field))]))
            .Where(missing => missing.AskedBy.Count > 0 && !IsThere(lawn, entry.What, missing.Field))]
        : [];

    /// <summary>Where a lawn's own place, area and instant fill a field, it is always there.</summary>
    private static bool IsThere(Lawn lawn, Application what, RecordField field) => field switch
    {
        RecordField.RegistrationNumber => what.RegistrationNumber is not null,
        RecordField.ActiveIngredient => what.Actives.Count > 0,
        RecordField.Address => lawn.Address is not null,
        RecordField.ZipCode => lawn.Address is { } address && FiveDigits().IsMatch(address),
        RecordField.EndTime => what.Ended is not null,
        RecordField.Customer => lawn.Owner is not null,
        RecordField.Applicator => what.Applicator is not null,
        RecordField.License => what.License is not null,
        RecordField.Dilution => what.Carrier is not null || what.Amount.Volume is null,
        RecordField.Target => what.Target is not null,
        RecordField.Method => what.Method is not null,
        RecordField.Weather => what.AtStart is { Wind: not null, From: not null, Air: not null },
        RecordField.Reentry => what.Reentry is not null,
        _ => true,
    };

    internal static string Name(RecordField field) => field switch
    {
        RecordField.Product => "product",
        RecordField.RegistrationNumber => "registration number",
        RecordField.ActiveIngredient => "active ingredient with its amount",
        RecordField.Amount => "amount of product",
        RecordField.Area => "area",
        RecordField.Location => "place",
        RecordField.Address => "address of the lawn",
        RecordField.ZipCode => "address with a five-digit ZIP code",
        RecordField.Site => "site",
        RecordField.Date => "date",
        RecordField.StartTime => "start",
        RecordField.EndTime => "end",
        RecordField.Customer => "owner or customer",
        RecordField.Applicator => "applicator",
        RecordField.License => "license number",
        RecordField.Dilution => "water or other carrier",
        RecordField.Target => "target",
        RecordField.Method => "method",
        RecordField.Weather => "wind, where from, and air temperature at the start",
        RecordField.Reentry => "re-entry",
        _ => throw new ArgumentOutOfRangeException(nameof(field), field, "is not a field of a record"),
    };

    [GeneratedRegex(@"(?<!\d)\d{5}(-\d{4})?(?!\d)")]
    private static partial Regex FiveDigits();
}
