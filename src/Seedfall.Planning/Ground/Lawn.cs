using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Ground;

/// <summary>What the lawn has to stand.</summary>
public enum LawnUse
{
    /// <summary>Looked at, seldom walked on.</summary>
    Ornamental,

    /// <summary>An ordinary family lawn.</summary>
    Family,

    /// <summary>Children, dogs, games.</summary>
    HardWear,
}

/// <summary>What the work is in the eyes of a fertilizer law.</summary>
public enum SeedingWork
{
    /// <summary>Seeding into a standing lawn to thicken it.</summary>
    Overseed,

    /// <summary>Re-establishing damaged turf.</summary>
    Repair,

    /// <summary>A new lawn on bare ground.</summary>
    NewEstablishment,
}

/// <summary>
/// One property's turf as taken on. Only <see cref="Place"/>, one patch and its grass are required; every other gap
/// becomes a named assumption on the plan.
/// </summary>
public sealed record Lawn
{
    /// <summary>Stable id: lower-case letters, digits and hyphens.</summary>
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required Place Place { get; init; }

    /// <summary>Street address with its ZIP code, as the record of an application needs it; null means not entered.</summary>
    public string? Address { get; init; }

    /// <summary>Owner or customer, as the record names them; null means not entered.</summary>
    public string? Owner { get; init; }

    /// <summary>IANA zone, for example <c>America/Chicago</c>; null means assumed from the longitude.</summary>
    public string? TimeZone { get; init; }

    /// <summary>At least one.</summary>
    public required IReadOnlyList<Patch> Patches { get; init; }

    /// <summary>The lawn drawn on one sheet; patch outlines are then in its meters.</summary>
    public GroundSheet? Sheet { get; init; }

    public LawnUse? Use { get; init; }

    public SeedingWork? Work { get; init; }

    /// <summary>True when stock may graze here or clippings are fed.</summary>
    public bool? GrazedOrFed { get; init; }

    public SoilFacts? Soil { get; init; }

    /// <summary>What was sprayed in the last months.</summary>
    public IReadOnlyList<PastSpray> Sprayed { get; init; } = [];

    public WaterSupply? Water { get; init; }

    public SpreaderFacts? Spreader { get; init; }

    public SprayerFacts? Sprayer { get; init; }

    /// <summary>Seed in hand or to be bought; empty means the species' own defaults.</summary>
    public IReadOnlyList<SeedLot> SeedLots { get; init; } = [];

    /// <summary>Starter fertilizer; null means a generic balanced grade.</summary>
    public FertilizerProduct? Starter { get; init; }

    /// <summary>Late-fall feed; null means a generic nitrogen grade.</summary>
    public FertilizerProduct? LateFeed { get; init; }

    /// <summary>Nitrogen already applied this calendar year, from the record; null means not known.</summary>
    public MassPerArea? NitrogenThisYear { get; init; }

    /// <summary>Pre-emergent as its label in hand says; null means none is planned.</summary>
    public HerbicideLabel? PreEmergent { get; init; }

    /// <summary>Soil conditioner, wetting agent and other things sprayed with or after it.</summary>
    public IReadOnlyList<TankPartner> TankPartners { get; init; } = [];

    public CoverMaterial? Cover { get; init; }

    public PriceList? Prices { get; init; }

    /// <summary>Id of the state or province rule pack; null means the general one.</summary>
    public string? RulePack { get; init; }

    /// <summary>True when somebody is paid to apply; licensing is then asked and noted.</summary>
    public bool? AppliedForHire { get; init; }
}
