using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water;

/// <summary>Water a soil gives to plants between field capacity and wilting.</summary>
public static class AvailableWater
{
    /// <summary>Source of the ranges; the middle of each is used.</summary>
    public const string Source = "Available water by texture, UC Davis / UC Managed Drought; middle of the printed range";

    /// <summary>Available water of a layer: the texture's inches per foot times the layer's depth.</summary>
    /// <param name="texture">USDA texture class.</param>
    /// <param name="layer">Depth of soil; not negative.</param>
    public static Depth In(SoilTexture texture, Depth layer)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(layer.Millimeters, nameof(layer));
        return Depth.FromInches(InchesPerFoot(texture) * layer.Inches / 12.0);
    }

    /// <summary>Inches of available water per foot of soil.</summary>
    public static double InchesPerFoot(SoilTexture texture) => texture switch
    {
        SoilTexture.Sand or SoilTexture.LoamySand => 1.00,
        SoilTexture.SandyLoam => 1.50,
        SoilTexture.Loam or SoilTexture.SiltLoam or SoilTexture.Silt => 1.90,
        SoilTexture.SandyClayLoam or SoilTexture.ClayLoam or SoilTexture.SiltyClayLoam => 2.125,
        SoilTexture.SandyClay or SoilTexture.SiltyClay or SoilTexture.Clay => 2.05,
        _ => throw new ArgumentOutOfRangeException(nameof(texture), texture, "is not a texture class"),
    };
}
