using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground;

/// <summary>What is known of the soil. Null means not known.</summary>
public sealed record SoilFacts
{
    public SoilTexture? Texture { get; init; }

    /// <summary>pH in water, 3 to 10.</summary>
    public double? Ph { get; init; }

    /// <summary>Mehlich-3 phosphorus, ppm.</summary>
    public double? PhosphorusPpm { get; init; }

    /// <summary>Mehlich-3 potassium, ppm.</summary>
    public double? PotassiumPpm { get; init; }

    public DateOnly? TestDate { get; init; }

    public Fraction? OrganicMatter { get; init; }
}
