using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Rules;

/// <summary>How a law is read below its least slow-release share.</summary>
public enum SlowShareReading
{
    /// <summary>Below the least share nothing may be applied.</summary>
    Strict,

    /// <summary>Below the least share the soluble limit alone binds.</summary>
    Permissive,
}

/// <summary>Nitrogen limits, lb N per 1,000 sq ft. Null means no limit of that kind.</summary>
public sealed record NitrogenRule(
    double? MaxTotalPerApplication,
    double? MaxSolublePerApplication,
    double? LeastSlowShare,
    SlowShareReading Reading,
    double? MaxPerYear,
    string Source,
    Sureness Sureness);

/// <summary>Phosphorus limits.</summary>
/// <param name="RestrictedAbovePhosphate">Share of P2O5 above which the rule bites; null means phosphorus is not restricted.</param>
/// <param name="ExemptNewEstablishment">True when a new lawn in its first season is exempt.</param>
/// <param name="ExemptRepair">True when re-establishing or repairing turf is exempt.</param>
/// <param name="ExemptOverseed">True when seeding into a standing lawn is exempt.</param>
/// <param name="SoilTestYears">Age in years up to which a soil test showing need lifts the rule; null means no such exemption.</param>
public sealed record PhosphorusRule(
    double? RestrictedAbovePhosphate,
    bool ExemptNewEstablishment,
    bool ExemptRepair,
    bool ExemptOverseed,
    double? SoilTestYears,
    string Source,
    Sureness Sureness);

/// <summary>Days of the year on which no fertilizer may go out, inclusive; may wrap the year's end.</summary>
public sealed record Blackout(int FromMonth, int FromDay, int ToMonth, int ToDay, string Source, Sureness Sureness)
{
    /// <summary>True when the date falls inside.</summary>
    public bool Covers(DateOnly date)
    {
        var (day, from, to) = (date.Month * 100 + date.Day, FromMonth * 100 + FromDay, ToMonth * 100 + ToDay);
        return from <= to ? day >= from && day <= to : day >= from || day <= to;
    }
}

/// <summary>One state's or province's rules as data. Read from <c>data/rules/*.json</c>; a person confirms them with the state.</summary>
public sealed record RulePack
{
    /// <summary>For example <c>us-md</c>; <c>general</c> where no law is known.</summary>
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required NitrogenRule Nitrogen { get; init; }

    public required PhosphorusRule Phosphorus { get; init; }

    public Blackout? FertilizerBlackout { get; init; }

    /// <summary>Feet to keep from water; null means none stated.</summary>
    public double? WaterSetbackFeet { get; init; }

    /// <summary>What a lawn sprayed for pay must be posted with, and who is told; null means none was read.</summary>
    public LawnFlagRule? LawnFlag { get; init; }

    /// <summary>What the state asks the record of an application to hold; null means none was read.</summary>
    public RecordRule? Records { get; init; }

    /// <summary>True when paid applicators need a license.</summary>
    public bool LicenseForHire { get; init; } = true;

    /// <summary>Plain warnings for the plan, for example that the statute's wording is ambiguous.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}

/// <summary>All tables of the trade the planner needs, passed in so that the core stays pure.</summary>
public sealed record TradeTables(IReadOnlyList<SpeciesFacts> Species, IReadOnlyList<RulePack> RulePacks)
{
    /// <summary>The facts of one grass; throws when the table lacks it.</summary>
    public SpeciesFacts For(Ground.GrassSpecies species) =>
        Species.FirstOrDefault(s => s.Species == species) ?? throw new ArgumentOutOfRangeException(nameof(species), species, "is not in the species table");

    /// <summary>The rule pack with this id, the general one for null; null when the id is unknown.</summary>
    public RulePack? Pack(string? id) => RulePacks.FirstOrDefault(p => p.Id == (id ?? "general"));
}
