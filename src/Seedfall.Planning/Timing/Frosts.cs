using Seedfall.Engine.Timing;

namespace Seedfall.Planning.Timing;

/// <summary>Frost nights of a season.</summary>
internal static class Frosts
{
    /// <summary>32 degF, with half a tenth of a degree for files that carry tenths, as <see cref="Frost.FirstOfSeason"/> allows.</summary>
    internal static readonly double FrostC = Frost.Light.Celsius + RoundingC;

    /// <summary>28 degF, likewise: growth of seedlings ends.</summary>
    internal static readonly double HardFrostC = Frost.Hard.Celsius + RoundingC;

    private const double RoundingC = 0.05;

    /// <summary>First night at or below the threshold on or after a day; null where none comes by the season's end.</summary>
    internal static int? First(double[] tminC, double thresholdC, int from)
    {
        var index = Array.FindIndex(tminC, from, c => c <= thresholdC);
        return index < 0 ? null : index;
    }

    /// <summary>For every day the first hard frost on or after it; the length of the season where none comes.</summary>
    internal static int[] NextHard(double[] tminC)
    {
        var next = new int[tminC.Length];
        var upcoming = tminC.Length;
        for (var i = tminC.Length - 1; i >= 0; i--)
        {
            upcoming = tminC[i] <= HardFrostC ? i : upcoming;
            next[i] = upcoming;
        }

        return next;
    }
}
