using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Rules;

/// <summary>What a rule may ask the record of an application to hold.</summary>
public enum RecordField
{
    Product,
    RegistrationNumber,
    ActiveIngredient,
    Amount,
    Area,

    /// <summary>Where, by address, coordinates or description.</summary>
    Location,

    /// <summary>Where, by street address.</summary>
    Address,

    /// <summary>Where, by an address with its five-digit ZIP code.</summary>
    ZipCode,

    /// <summary>Plants or site treated.</summary>
    Site,
    Date,
    StartTime,
    EndTime,

    /// <summary>Name of the customer or owner.</summary>
    Customer,
    Applicator,
    License,

    /// <summary>Carrier or concentration, where the product was diluted.</summary>
    Dilution,
    Target,
    Method,

    /// <summary>Wind with its direction, and air temperature.</summary>
    Weather,
    Reentry,
}

/// <summary>Which applications of pesticide a rule covers.</summary>
public enum RecordScope
{
    /// <summary>Restricted-use products, whoever applies them.</summary>
    RestrictedUse,

    /// <summary>Restricted-use products applied for pay.</summary>
    RestrictedUseForHire,

    /// <summary>Every pesticide applied for pay.</summary>
    ForHire,

    /// <summary>No law: what a record is poorer without.</summary>
    GoodPractice,
}

/// <summary>One rule of record keeping.</summary>
/// <param name="Name">As a page names it.</param>
/// <param name="Scope">Which applications it covers.</param>
/// <param name="Fields">What it asks for.</param>
/// <param name="KeepYears">Years the record must be kept after the application; null where none was read.</param>
/// <param name="WriteWithinDays">Days within which it must be written; null where none was read, 0 for the same day.</param>
/// <param name="Source">Where the rule was read.</param>
/// <param name="Sureness">How sure that is.</param>
public sealed record RecordRule(
    string Name,
    RecordScope Scope,
    IReadOnlyList<RecordField> Fields,
    double? KeepYears,
    int? WriteWithinDays,
    string Source,
    Sureness Sureness);

/// <summary>The rules of record keeping of the whole country, and good practice beyond any law.</summary>
public static class RecordRules
{
    /// <summary>7 CFR 110.3: restricted-use products.</summary>
    public static RecordRule Federal { get; } = new(
        "Federal, restricted-use products",
        RecordScope.RestrictedUse,
        [RecordField.Product, RecordField.RegistrationNumber, RecordField.Amount, RecordField.Location, RecordField.Area, RecordField.Site, RecordField.Date, RecordField.Applicator, RecordField.License],
        2.0,
        14,
        "7 CFR 110.3; 14 days and 2 years as an extension service reports them",
        Sureness.Published);

    /// <summary>40 CFR 171.303(b)(7): restricted-use products applied for pay.</summary>
    public static RecordRule FederalForHire { get; } = new(
        "Federal, restricted-use products for hire",
        RecordScope.RestrictedUseForHire,
        [
            RecordField.Customer, RecordField.Address, RecordField.Location, RecordField.Area, RecordField.Date, RecordField.StartTime,
            RecordField.Product, RecordField.RegistrationNumber, RecordField.Amount, RecordField.Applicator, RecordField.License,
        ],
        2.0,
        null,
        "40 CFR 171.303(b)(7), read at second hand",
        Sureness.Published);

    /// <summary>What no law here asks for and every record is better with.</summary>
    public static RecordRule GoodPractice { get; } = new(
        "Good practice",
        RecordScope.GoodPractice,
        [RecordField.ActiveIngredient, RecordField.StartTime, RecordField.EndTime, RecordField.Dilution, RecordField.Target, RecordField.Method, RecordField.Weather, RecordField.Reentry],
        null,
        null,
        "common practice, no source read",
        Sureness.CommonPractice);

    /// <summary>Every rule that may bear on a lawn: the country's, the state's, good practice.</summary>
    /// <param name="pack">The lawn's rule pack.</param>
    /// <param name="forHire">False where nobody is paid to apply; rules for hire then fall out. Null where it was not said: they stay.</param>
    public static IReadOnlyList<RecordRule> For(RulePack pack, bool? forHire)
    {
        ArgumentNullException.ThrowIfNull(pack);
        IEnumerable<RecordRule> all = [Federal, FederalForHire, .. pack.Records is { } own ? [own] : Array.Empty<RecordRule>(), GoodPractice];
        return [.. all.Where(rule => forHire != false || rule.Scope is not (RecordScope.ForHire or RecordScope.RestrictedUseForHire))];
    }
}
