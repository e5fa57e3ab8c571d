namespace Seedfall.Photos.Color;

/// <summary>The transfer curve of sRGB (IEC 61966-2-1), both ways, 0 to 1.</summary>
internal static class SRgb
{
    internal static double ToLinear(double value) => value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);

    internal static double FromLinear(double value) => value <= 0.0031308 ? 12.92 * value : (1.055 * Math.Pow(value, 1.0 / 2.4)) - 0.055;
}
