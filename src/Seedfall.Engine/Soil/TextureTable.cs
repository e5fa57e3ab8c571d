using Seedfall.Engine.Units;

namespace Seedfall.Engine.Soil;

/// <summary>A texture class's typical make-up and what follows from it.</summary>
/// <param name="Texture">The class.</param>
/// <param name="Sand">Typical share of sand.</param>
/// <param name="Clay">Typical share of clay.</param>
/// <param name="Quartz">Typical share of quartz in the solids (common practice, no source read).</param>
/// <param name="Hydraulics">Water characteristics at 2.5 percent organic matter.</param>
public sealed record TextureTypical(SoilTexture Texture, Fraction Sand, Fraction Clay, Fraction Quartz, SoilHydraulics Hydraulics);

/// <summary>
/// Typical soil of each class: sand and clay of Saxton and Rawls 2006 table 3 with their 2.5 percent organic matter, water
/// by their equations, quartz after Peters-Lidard et al. 1998 (from memory: common practice).
/// </summary>
public static class TextureTable
{
    private static readonly TextureTypical[] Rows =
    [
        Row(SoilTexture.Sand, 88, 5, 0.92),
        Row(SoilTexture.LoamySand, 80, 5, 0.82),
        Row(SoilTexture.SandyLoam, 65, 10, 0.60),
        Row(SoilTexture.Loam, 40, 20, 0.40),
        Row(SoilTexture.SiltLoam, 20, 15, 0.25),
        Row(SoilTexture.Silt, 10, 5, 0.10),
        Row(SoilTexture.SandyClayLoam, 60, 25, 0.60),
        Row(SoilTexture.ClayLoam, 30, 35, 0.35),
        Row(SoilTexture.SiltyClayLoam, 10, 35, 0.10),
        Row(SoilTexture.SandyClay, 50, 40, 0.52),
        Row(SoilTexture.SiltyClay, 10, 45, 0.10),
        Row(SoilTexture.Clay, 25, 50, 0.25),
    ];

    /// <summary>The typical soil of a class.</summary>
    public static TextureTypical For(SoilTexture texture) => Enum.IsDefined(texture)
        ? Rows[(int)texture]
        : throw new ArgumentOutOfRangeException(nameof(texture), texture, "one of the twelve USDA classes is needed");

    /// <summary>All twelve, in the order of <see cref="SoilTexture"/>.</summary>
    public static IReadOnlyList<TextureTypical> All => Rows;

    private static TextureTypical Row(SoilTexture texture, double sandPct, double clayPct, double quartz)
    {
        var (sand, clay) = (Fraction.FromPercent(sandPct), Fraction.FromPercent(clayPct));
        return new TextureTypical(texture, sand, clay, Fraction.Of(quartz), SaxtonRawls.Of(sand, clay, Fraction.FromPercent(2.5)));
    }
}
