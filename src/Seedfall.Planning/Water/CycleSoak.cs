using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water;

/// <summary>Splitting a run so that water soaks in instead of running off.</summary>
public static class CycleSoak
{
    /// <summary>Pause between the starts of two cycles, minutes. Texas A&amp;M Water University: starts 30 to 60 minutes apart.</summary>
    public const double SoakMinutes = 30.0;

    /// <summary>
    /// Longest run before water moves off: t = 60 S / (PR - I) minutes, S surface storage, I intake. Allowable surface
    /// accumulation; common practice, no source read. Null where the soil takes the water as fast as it comes.
    /// </summary>
    public static double? LongestRunMinutes(PrecipitationRate rate, PrecipitationRate intake, Depth storage)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(storage.Millimeters, nameof(storage));
        var surplusMmh = rate.MillimetersPerHour - intake.MillimetersPerHour;
        return surplusMmh > 0.0 ? 60.0 * storage.Millimeters / surplusMmh : null;
    }

    /// <summary>Number of cycles: the run over the longest run, rounded up; 1 where nothing runs off.</summary>
    public static int Cycles(double runMinutes, double? longestRunMinutes)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(runMinutes);
        return longestRunMinutes is { } longest ? Math.Max(1, (int)Math.Ceiling(runMinutes / longest - 1e-9)) : 1;
    }

    /// <summary>
    /// Water the surface holds before it runs off: 0.2 in up to 3 % slope, falling evenly to 0.1 in at 12 % and steeper. Common
    /// practice, no source read, low confidence.
    /// </summary>
    /// <param name="slopePercent">Rise over run times 100; not negative.</param>
    public static Depth SurfaceStorage(double slopePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(slopePercent);
        return Depth.FromInches(0.2 - (0.1 * Math.Clamp((slopePercent - 3.0) / 9.0, 0.0, 1.0)));
    }
}
