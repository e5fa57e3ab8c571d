using Seedfall.Engine.Numerics;

namespace Seedfall.Planning.Timing;

/// <summary>When one grass is up and when it stands, by seed-down day, in one season. Linear in the season's length.</summary>
internal sealed class StandDates
{
    private readonly StandNeed _need;
    private readonly double[] _emergenceSum;
    private readonly double[] _growthSum;
    private readonly double[] _soilSum;

    internal StandDates(StandNeed need, SeasonWeather season)
    {
        _need = need;
        _emergenceSum = RunningSum(season.SoilC, c => Math.Max(0.0, Math.Min(c, FieldEmergence.NoFasterAboveC) - need.BaseC));
        _growthSum = RunningSum(season.SoilC, c => Math.Max(0.0, c));
        _soilSum = RunningSum(season.SoilC, c => c);
    }

    /// <summary>Day on which half the seedlings are up; null where not before the season's end.</summary>
    internal int? Emerged(int seedDown) => Reach(_emergenceSum, seedDown, _need.EmergenceDegreeDays);

    /// <summary>Day on which the seedlings have three leaves and the first mowing falls; null where not before the season's end.</summary>
    internal int? ThreeLeaves(int seedDown) => Emerged(seedDown) is { } up ? Reach(_growthSum, up + 1, _need.LeavesDegreeDays) : null;

    /// <summary>Day of the second mowing's worth of growth; null where not before the season's end.</summary>
    internal int? Established(int seedDown) =>
        ThreeLeaves(seedDown) is { } leaves ? Reach(_growthSum, leaves + 1, StandNeed.SecondMowingDegreeDays) : null;

    /// <summary>Day by which so many degree-days above 0 degC have come after a day; null where not before the season's end.</summary>
    internal int? Grown(int after, double degreeDays) => Reach(_growthSum, after + 1, degreeDays);

    /// <summary>Share of seedings that heat does not spoil: normal in the mean soil temperature of the first two weeks.</summary>
    internal double CoolEnough(int seedDown)
    {
        var end = Math.Min(seedDown + StandNeed.HotDays, _soilSum.Length - 1);
        var meanC = (_soilSum[end] - _soilSum[seedDown]) / (end - seedDown);
        return NormalDistribution.Cumulative((_need.HotC - meanC) / StandNeed.HotSpreadC);
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
