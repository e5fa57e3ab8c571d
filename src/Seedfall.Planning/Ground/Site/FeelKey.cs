using Seedfall.Engine.Soil;

namespace Seedfall.Planning.Ground;

/// <summary>How far a ribbon of wet soil hangs over the finger before it breaks.</summary>
public enum RibbonLength
{
    /// <summary>It makes no ribbon at all.</summary>
    None,

    /// <summary>Under 1 in (2.5 cm).</summary>
    Short,

    /// <summary>1 to 2 in (2.5 to 5 cm).</summary>
    Medium,

    /// <summary>Over 2 in (5 cm).</summary>
    Long,
}

/// <summary>How a pinch of very wet soil feels between the fingers.</summary>
public enum WetFeel
{
    /// <summary>Neither stands out.</summary>
    Neither,

    /// <summary>Mostly gritty.</summary>
    Gritty,

    /// <summary>Mostly smooth, like flour.</summary>
    Smooth,
}

/// <summary>
/// Texture by feel: the key of Thien 1979 (J. Agron. Educ. 8:54-55) as the USDA Natural Resources Conservation Service teaches
/// it, in our own words. The key has no place for silt, which feels like a very smooth silt loam.
/// </summary>
public static class FeelKey
{
    /// <summary>Source of the key.</summary>
    public const string Source = "texture by feel, USDA Natural Resources Conservation Service after Thien 1979, J. Agron. Educ. 8:54-55";

    /// <summary>The class the answers lead to.</summary>
    /// <param name="ball">True where a handful, moist as putty, holds together when squeezed.</param>
    /// <param name="ribbon">Length of the ribbon pressed out between thumb and finger.</param>
    /// <param name="feel">Feel of a pinch made very wet; not asked where there is no ball or no ribbon.</param>
    public static SoilTexture ClassOf(bool ball, RibbonLength ribbon, WetFeel feel) => (ball, ribbon, feel) switch
    {
        (false, _, _) => SoilTexture.Sand,
        (_, RibbonLength.None, _) => SoilTexture.LoamySand,
        (_, RibbonLength.Short, WetFeel.Gritty) => SoilTexture.SandyLoam,
        (_, RibbonLength.Short, WetFeel.Smooth) => SoilTexture.SiltLoam,
        (_, RibbonLength.Short, _) => SoilTexture.Loam,
        (_, RibbonLength.Medium, WetFeel.Gritty) => SoilTexture.SandyClayLoam,
        (_, RibbonLength.Medium, WetFeel.Smooth) => SoilTexture.SiltyClayLoam,
        (_, RibbonLength.Medium, _) => SoilTexture.ClayLoam,
        (_, RibbonLength.Long, WetFeel.Gritty) => SoilTexture.SandyClay,
        (_, RibbonLength.Long, WetFeel.Smooth) => SoilTexture.SiltyClay,
        _ => SoilTexture.Clay,
    };
}
