namespace Seedfall.Planning.Timing;

/// <summary>When one grass is up and when it stands, by seed-down day, in one season. Linear in the season's length.</summary>
internal sealed class StandDates
{
    private const int HotDays = 5;

    private readonly StandNeed _need;
    private readonly SeasonWeather _season;
    private readonly double[] _emergenceSum;
    private readonly double[] _growthSum;

    internal StandDates(StandNeed need, SeasonWeather season)
    {
        (_need, _season) = (need, season);
        _emergenceSum = RunningSum(season.SoilC, c => Math.Max(0.0, Math.Min(c, FieldEmergence.NoFasterAboveC) - need.BaseC));
        _growthSum = RunningSum(season.SoilC, c => Math.Max(0.0, c));
    }

    /// <summary>Day on which half the seedlings are up; null where not before the season's end.</summary>
    internal int? Emerged(int seedDown) => Reach(_emergenceSum, seedDown, _need.EmergenceDegreeDays);

    /// <summary>Day on which three leaves and two mowings are behind it; null where not before the season's end.</summary>
    internal int? Established(int seedDown) => Emerged(seedDown) is { } up ? Reach(_growthSum, up + 1, _need.GrowthDegreeDays) : null;

    /// <summary>True where the soil over the first days is too hot to seed.</summary>
    internal bool TooHot(int seedDown)
    {
        var end = Math.Min(seedDown + HotDays, _season.SoilC.Length);
        return _season.SoilC.AsSpan(seedDown, end - seedDown).ToArray().Average() > _need.WarmestC;
    }

    private static double[] RunningSum(double[] soilC, Func<double, double> degreeDays)
    {
        var sum = new double[soilC.Length + 1];
        for (var i = 0; i < soilC.Length; i++)
        {
            sum[i + 1] = sum[i] + degreeDays(soilC[i]);
        }

        return sum;
    }

    /// <summary>First day whose sum from <paramref name="from"/> reaches the need.</summary>
    private static int? Reach(double[] sum, int from, double need)
    {
        if (from >= sum.Length)
        {
            return null;
        }

        var found = Array.BinarySearch(sum, from, sum.Length - from, sum[from] + need);
        var index = found >= 0 ? found : ~found;
        return index < sum.Length ? Math.Max(index - 1, from) : null;
    }
}
