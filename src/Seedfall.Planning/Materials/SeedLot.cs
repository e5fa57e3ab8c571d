using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Materials;

/// <summary>One kind of seed on a lot's tag.</summary>
/// <param name="Species">The grass.</param>
/// <param name="Purity">Pure seed of this kind, share of the bag's weight; coating counts as inert matter.</param>
/// <param name="Germination">Share of that pure seed that germinates.</param>
public sealed record SeedComponent(GrassSpecies Species, Fraction Purity, Fraction Germination)
{
    /// <summary>Seeds per kilogram of pure seed; null means the species' default.</summary>
    public double? SeedsPerKilogram { get; init; }

    public string? Variety { get; init; }
}

/// <summary>A bag size on offer.</summary>
public sealed record BagOffer(Mass Size, decimal? Price);

/// <summary>A seed lot as its tag reads.</summary>
public sealed record SeedLot
{
    /// <summary>Lot number on the tag; unique within the lawn.</summary>
    public required string LotNumber { get; init; }

    /// <summary>At least one; purities sum to at most 1.</summary>
    public required IReadOnlyList<SeedComponent> Components { get; init; }

    public Fraction? OtherCrop { get; init; }

    public Fraction? Inert { get; init; }

    public Fraction? WeedSeed { get; init; }

    public DateOnly? TestDate { get; init; }

    /// <summary>True when the tag says endophyte-enhanced.</summary>
    public bool Endophyte { get; init; }

    public IReadOnlyList<BagOffer> Bags { get; init; } = [];
}

/// <summary>A fertilizer by its grade.</summary>
public sealed record FertilizerProduct
{
    /// <summary>Generic name, for example <c>balanced 12-12-12 starter</c>.</summary>
    public required string Name { get; init; }

    public required Fraction Nitrogen { get; init; }

    /// <summary>Available phosphate, as P2O5.</summary>
    public required Fraction Phosphate { get; init; }

    /// <summary>Soluble potash, as K2O.</summary>
    public required Fraction Potash { get; init; }

    /// <summary>Share of the nitrogen that is slow-release; null means not on the label, counted as none.</summary>
    public Fraction? SlowNitrogen { get; init; }

    /// <summary>Product per area the user wants in one application; null means Seedfall's own rate under the rule pack.</summary>
    public MassPerArea? Rate { get; init; }

    public IReadOnlyList<BagOffer> Bags { get; init; } = [];
}

public enum CoverKind
{
    None,
    Straw,
    Peat,
    Compost,
    PaperPellets,
    Hydromulch,
    StrawBlanket,
}

/// <summary>What the thin places are covered with.</summary>
public sealed record CoverMaterial(CoverKind Kind)
{
    /// <summary>Layer depth for peat and compost; null means the usual depth.</summary>
    public Depth? Layer { get; init; }

    public IReadOnlyList<BagOffer> Bags { get; init; } = [];
}

/// <summary>Prices where an offer carries none of its own; null means not known and left out of the cost.</summary>
public sealed record PriceList
{
    /// <summary>ISO 4217 code, for example <c>USD</c>.</summary>
    public string Currency { get; init; } = "USD";

    public decimal? WaterPerThousandGallons { get; init; }

    public decimal? SeedPerPound { get; init; }

    public decimal? StarterPerPound { get; init; }

    /// <summary>For a liquid pre-emergent.</summary>
    public decimal? PreEmergentPerFluidOunce { get; init; }

    /// <summary>For a dry pre-emergent, by weight.</summary>
    public decimal? PreEmergentPerOunce { get; init; }

    public decimal? CoverPerPound { get; init; }
}
