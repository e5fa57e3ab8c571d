using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Water;

/// <summary>Water a soil gives to plants between field capacity and wilting.</summary>
public static class AvailableWater
{
    /// <summary>Source of the ranges; the middle of each is used.</summary>
    public const string Source = "Available water by texture, UC Davis / UC Managed Drought; middle of the printed range";

    /// <summary>Available water of a layer: the texture's inches per foot times the layer's depth.</summary>
    /// <param name="texture">USDA texture class.</param>
    /// <param name="layer">Depth of soil; not negative.</param>
    public static Depth In(TextureClass texture, Depth layer)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(layer.Millimeters, nameof(layer));
        return Depth.FromInches(InchesPerFoot(texture) * layer.Inches / 12.0);
    }

    /// <summary>Inches of available water per foot of soil.</summary>
    public static double InchesPerFoot(TextureClass texture) => texture switch
    {
        TextureClass.Sand or TextureClass.LoamySand => 1.00,
        TextureClass.SandyLoam => 1.50,
        TextureClass.Loam or TextureClass.SiltLoam or TextureClass.Silt => 1.90,
        TextureClass.SandyClayLoam or TextureClass.ClayLoam or TextureClass.SiltyClayLoam => 2.125,
        TextureClass.SandyClay or TextureClass.SiltyClay or TextureClass.Clay => 2.05,
        _ => throw new ArgumentOutOfRangeException(nameof(texture), texture, "is not a texture class"),
    };
}
