using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water;

/// <summary>How fast the ground takes water, so that none runs off.</summary>
public static class SoilIntake
{
    /// <summary>Source of the table.</summary>
    public const string Source = "USDA table of maximum precipitation rates, as quoted in irrigation texts; common practice, no source read";

    /// <summary>Inches per hour by soil group and slope class: covered, then bare.</summary>
    private static readonly (double Covered, double Bare)[][] InchesPerHour =
    [
        [(2.00, 2.00), (2.00, 1.50), (1.50, 1.00), (1.00, 0.50)], // coarse sandy
        [(1.75, 1.00), (1.25, 0.80), (1.00, 0.60), (0.75, 0.40)], // light sandy loam
        [(1.00, 0.50), (0.80, 0.40), (0.60, 0.30), (0.40, 0.20)], // silt loam
        [(0.20, 0.15), (0.15, 0.10), (0.12, 0.08), (0.10, 0.06)], // heavy clay, clay loam
    ];

    /// <summary>Highest precipitation rate on bare ground: the seedbed's column.</summary>
    /// <param name="texture">USDA texture class.</param>
    /// <param name="slopePercent">Rise over run times 100; not negative.</param>
    public static PrecipitationRate Bare(SoilTexture texture, double slopePercent) =>
        PrecipitationRate.FromInchesPerHour(InchesPerHour[Row(texture)][Column(slopePercent)].Bare);

    /// <summary>Highest precipitation rate under a standing cover.</summary>
    public static PrecipitationRate Covered(SoilTexture texture, double slopePercent) =>
        PrecipitationRate.FromInchesPerHour(InchesPerHour[Row(texture)][Column(slopePercent)].Covered);

    private static int Column(double slopePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(slopePercent);
        return slopePercent switch { <= 5.0 => 0, <= 8.0 => 1, <= 12.0 => 2, _ => 3 };
    }

    private static int Row(SoilTexture texture) => texture switch
    {
        SoilTexture.Sand or SoilTexture.LoamySand => 0,
        SoilTexture.SandyLoam => 1,
        SoilTexture.Loam or SoilTexture.SiltLoam or SoilTexture.Silt or SoilTexture.SandyClayLoam => 2,
        SoilTexture.ClayLoam or SoilTexture.SiltyClayLoam or SoilTexture.SandyClay or SoilTexture.SiltyClay or SoilTexture.Clay => 3,
        _ => throw new ArgumentOutOfRangeException(nameof(texture), texture, "is not a texture class"),
    };
}
