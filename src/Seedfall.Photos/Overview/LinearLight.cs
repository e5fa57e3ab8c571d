namespace Seedfall.Photos.Overview;

/// <summary>sRGB bytes as amounts of light, in which alone colors may be averaged (IEC 61966-2-1; constants from memory).</summary>
internal static class LinearLight
{
    private const int Steps = 8192;
    private static readonly float[] Lights = [.. Enumerable.Range(0, 256).Select(b => (float)Decode(b / 255.0))];
    private static readonly byte[] Bytes = [.. Enumerable.Range(0, Steps + 1).Select(i => (byte)Math.Round(255.0 * Encode(i / (double)Steps)))];

    /// <summary>Light of an sRGB byte, 0 to 1.</summary>
    internal static float Of(byte srgb) => Lights[srgb];

    /// <summary>The sRGB byte nearest to an amount of light from 0 to 1.</summary>
    internal static byte ToSrgb(double light) => Bytes[(int)(Math.Clamp(light, 0.0, 1.0) * Steps + 0.5)];

    private static double Decode(double v) => v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);

    private static double Encode(double l) => l <= 0.0031308 ? 12.92 * l : 1.055 * Math.Pow(l, 1.0 / 2.4) - 0.055;
}
