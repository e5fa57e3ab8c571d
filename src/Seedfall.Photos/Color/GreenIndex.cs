namespace Seedfall.Photos.Color;

/// <summary>Published indices of greenness of one pixel, from 8-bit sRGB. The measure is not made of them; it is compared with them.</summary>
public static class GreenIndex
{
    /// <summary>Excess green 2g - r - b of the channels' shares, -1 to 2 (Woebbecke et al. 1995, Trans. ASAE 38:259); 0 for black.</summary>
    public static double ExcessGreen(byte red, byte green, byte blue)
    {
        double sum = red + green + blue;
        return sum > 0.0 ? ((2.0 * green) - red - blue) / sum : 0.0;
    }

    /// <summary>
    /// Green where R/G is below 0.95, B/G below 0.95 and 2G - R - B above 20 (Patrignani and Ochsner 2015, Agron. J. 107:2312;
    /// thresholds from memory, paper not read).
    /// </summary>
    public static bool IsGreenByRatios(byte red, byte green, byte blue) =>
        red < 0.95 * green && blue < 0.95 * green && (2 * green) - red - blue > 20;

    /// <summary>
    /// Dark green color index [(H - 60)/60 + (1 - S) + (1 - B)]/3, hue in degrees, saturation and brightness 0 to 1 (Karcher and
    /// Richardson 2003, Crop Sci. 43:943).
    /// </summary>
    public static double DarkGreenColor(double hueDeg, double saturation, double brightness) =>
        (((hueDeg - 60.0) / 60.0) + (1.0 - saturation) + (1.0 - brightness)) / 3.0;

    /// <summary>Hue in degrees, saturation and brightness of the hexagonal color model (Smith 1978, SIGGRAPH 12:12); hue 0 for grays.</summary>
    public static (double HueDeg, double Saturation, double Brightness) HueSaturationBrightness(byte red, byte green, byte blue)
    {
        double max = Math.Max(red, Math.Max(green, blue)), min = Math.Min(red, Math.Min(green, blue)), range = max - min;
        if (range <= 0.0)
        {
            return (0.0, 0.0, max / 255.0);
        }

        var sextant = max == red ? (green - blue) / range : max == green ? 2.0 + ((blue - red) / range) : 4.0 + ((red - green) / range);
        return (((sextant * 60.0) + 360.0) % 360.0, range / max, max / 255.0);
    }
}
