using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;

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
    public static PrecipitationRate Bare(TextureClass texture, double slopePercent) =>
        PrecipitationRate.FromInchesPerHour(InchesPerHour[Row(texture)][Column(slopePercent)].Bare);

    /// <summary>Highest precipitation rate under a standing cover.</summary>
    public static PrecipitationRate Covered(TextureClass texture, double slopePercent) =>
        PrecipitationRate.FromInchesPerHour(InchesPerHour[Row(texture)][Column(slopePercent)].Covered);

    private static int Column(double slopePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(slopePercent);
        return slopePercent switch { <= 5.0 => 0, <= 8.0 => 1, <= 12.0 => 2, _ => 3 };
    }

    private static int Row(TextureClass texture) => texture switch
    {
        TextureClass.Sand or TextureClass.LoamySand => 0,
        TextureClass.SandyLoam => 1,
        TextureClass.Loam or TextureClass.SiltLoam or TextureClass.Silt or TextureClass.SandyClayLoam => 2,
        TextureClass.ClayLoam or TextureClass.SiltyClayLoam or TextureClass.SandyClay or TextureClass.SiltyClay or TextureClass.Clay => 3,
        _ => throw new ArgumentOutOfRangeException(nameof(texture), texture, "is not a texture class"),
    };
}
