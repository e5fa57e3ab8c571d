namespace Seedfall.Engine.Soil;

/// <summary>The twelve texture classes of the U.S. Department of Agriculture.</summary>
public enum SoilTexture
{
    Sand,
    LoamySand,
    SandyLoam,
    Loam,
    SiltLoam,
    Silt,
    SandyClayLoam,
    ClayLoam,
    SiltyClayLoam,
    SandyClay,
    SiltyClay,
    Clay,
}
