using Seedfall.Engine.Units;

namespace Seedfall.Engine.Soil;

/// <summary>Texture class from the shares of sand and clay.</summary>
public static class TextureTriangle
{
    /// <summary>
    /// The class of a soil. Limits of the USDA texture triangle (Soil Science Division Staff 2017, Soil Survey Manual, USDA
    /// Handbook 18, chapter 3). Throws when sand and clay together exceed the whole.
    /// </summary>
    /// <param name="sand">Share of the mineral mass from 0.05 to 2 mm.</param>
    /// <param name="clay">Share below 0.002 mm.</param>
    public static SoilTexture ClassOf(Fraction sand, Fraction clay)
    {
        if (sand.Value + clay.Value > 1.0 + 1e-9)
        {
            throw new ArgumentOutOfRangeException(nameof(clay), clay, $"sand and clay together exceed 100 % (sand {sand})");
        }

        return ClassOfPercent(sand.Percent, clay.Percent, Math.Max(0.0, 100.0 - sand.Percent - clay.Percent));
    }

    private static SoilTexture ClassOfPercent(double sand, double clay, double silt)
    {
        if (clay >= 40.0)
        {
            return silt >= 40.0 ? SoilTexture.SiltyClay : sand <= 45.0 ? SoilTexture.Clay : SoilTexture.SandyClay;
        }

        if (clay >= 35.0 && sand > 45.0)
        {
            return SoilTexture.SandyClay;
        }

        if (clay >= 27.0)
        {
            return sand <= 20.0 ? SoilTexture.SiltyClayLoam : sand <= 45.0 ? SoilTexture.ClayLoam : SoilTexture.SandyClayLoam;
        }

        return clay >= 20.0 && silt < 28.0 && sand > 45.0 ? SoilTexture.SandyClayLoam : LightClassOf(sand, clay, silt);
    }

    private static SoilTexture LightClassOf(double sand, double clay, double silt)
    {
        if (silt + (1.5 * clay) < 15.0)
        {
            return SoilTexture.Sand;
        }

        if (silt + (2.0 * clay) < 30.0)
        {
            return SoilTexture.LoamySand;
        }

        if (silt >= 80.0 && clay < 12.0)
        {
            return SoilTexture.Silt;
        }

        if (silt >= 50.0)
        {
            return SoilTexture.SiltLoam;
        }

        return (clay < 20.0 && sand > 52.0) || (clay < 7.0 && silt < 50.0) ? SoilTexture.SandyLoam : SoilTexture.Loam;
    }
}
