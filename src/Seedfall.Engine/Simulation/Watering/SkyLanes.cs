using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Watering;

/// <summary>The skies of up to four seasons side by side; where fewer are left, the last stands in the lanes over.</summary>
/// <param name="Seasons">Seasons in it, 1 to 4.</param>
/// <param name="RainMm">By the hour, mm.</param>
/// <param name="DemandMm">Reference evapotranspiration by the hour, mm.</param>
internal sealed record SkyLanes(int Seasons, Lanes[] RainMm, Lanes[] DemandMm)
{
    internal int Hours => RainMm.Length;

    /// <summary>Seasons in fours, in their order.</summary>
    /// <param name="seasons">At least one, all equally long.</param>
    internal static IReadOnlyList<SkyLanes> Of(IReadOnlyList<BedWeather> seasons)
    {
        ArgumentOutOfRangeException.ThrowIfZero(seasons.Count, nameof(seasons));
        if (seasons.Any(s => s.Hours != seasons[0].Hours))
        {
            throw new ArgumentException("seasons of one length are needed", nameof(seasons));
        }

        return [.. seasons.Chunk(LaneMath.Width).Select(four => new SkyLanes(four.Length, Packed(four, s => s.RainMm), Packed(four, s => s.DemandMm)))];
    }

    private static Lanes[] Packed(BedWeather[] four, Func<BedWeather, double[]> hours)
    {
        var (a, b, c, d) = (hours(four[0]), hours(four[Math.Min(1, four.Length - 1)]), hours(four[Math.Min(2, four.Length - 1)]), hours(four[^1]));
        var packed = new Lanes[a.Length];
        for (var h = 0; h < packed.Length; h++)
        {
            packed[h] = Vector256.Create(a[h], b[h], c[h], d[h]);
        }

        return packed;
    }
}
