namespace Seedfall.Planning.Timing;

/// <summary>Frost nights of a season.</summary>
internal static class Frosts
{
    /// <summary>32 degF.</summary>
    internal const double FrostC = 0.0;

    /// <summary>28 degF: growth of seedlings ends.</summary>
    internal const double HardFrostC = -20.0 / 9.0;

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
