using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground;

/// <summary>What a laboratory drew the nutrients out of the soil with. The same soil gives other numbers with each.</summary>
public enum SoilExtract
{
    /// <summary>Mehlich-3, for soils of any reaction.</summary>
    Mehlich3,

    /// <summary>Bray P-1, for acid to neutral soils.</summary>
    Bray1,

    /// <summary>Olsen bicarbonate, for limy soils.</summary>
    Olsen,
}

/// <summary>What is known of the soil. Null means not known.</summary>
public sealed record SoilFacts
{
    public SoilTexture? Texture { get; init; }

    /// <summary>pH in water, 3 to 10.</summary>
    public double? Ph { get; init; }

    /// <summary>pH in the laboratory's lime buffer, 4 to 9; only that laboratory's table turns it into lime.</summary>
    public double? BufferPh { get; init; }

    /// <summary>Extract that <see cref="PhosphorusPpm"/> was measured in.</summary>
    public SoilExtract Extract { get; init; }

    /// <summary>Phosphorus as the element, by <see cref="Extract"/>, ppm.</summary>
    public double? PhosphorusPpm { get; init; }

    /// <summary>Potassium as the element, Mehlich-3 or ammonium acetate, ppm.</summary>
    public double? PotassiumPpm { get; init; }

    /// <summary>Calcium, ppm.</summary>
    public double? CalciumPpm { get; init; }

    /// <summary>Magnesium, ppm.</summary>
    public double? MagnesiumPpm { get; init; }

    /// <summary>Cation exchange capacity, meq per 100 g.</summary>
    public double? CationExchange { get; init; }

    /// <summary>Soluble salts of the saturated paste, dS/m.</summary>
    public double? SaltsDsPerM { get; init; }

    /// <summary>Lime the laboratory recommends, ground limestone of 100 % calcium carbonate equivalent; zero where it wants none.</summary>
    public MassPerArea? LabLime { get; init; }

    public DateOnly? TestDate { get; init; }

    public Fraction? OrganicMatter { get; init; }
}
