using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Soil;

namespace Seedfall.Engine.Tests.Simulation;

public sealed class SteadyRoundsTests
{
    private static readonly int[] Three = [7, 11, 15];

    private static readonly PatchConditions Loam = new() { Texture = SoilTexture.Loam, TurfShare = 0.3, SeedDepthMm = 4.0 };

    [Fact]
    public void OneSeasonInTwentyMayFallShort()
    {
        BedWeather[] skies = [.. Enumerable.Range(0, 20).Select(i => Sky(8, 0, 0.0).Thirstier(i == 0 ? 3.0 : 0.6))];
        var hold = new Hold(-0.1, false);
        double? Least(BedWeather[] seasons, double mostMm) => new SteadyRounds(Loam, null, new PastSkies(seasons), 0).LeastMm(new RoundTimes(Three, 1, 0, 8), hold, mostMm);
        var twenty = Least(skies, 12.0)!.Value;
        Assert.Equal(Least(skies[1..], 12.0)!.Value, twenty, 12);
        Assert.True(Least(skies[..19], 12.0) > twenty);
        Assert.Null(Least(skies, 0.05));
    }

    /// <summary>Four seasons side by side say the same as one bed after another, for any number of seasons and whatever was asked before.</summary>
    [Fact]
    public void SideBySideIsTheSameAsOneAfterAnother()
    {
        foreach (var (count, everyDays, around) in ((int, int, bool)[])[(1, 1, true), (5, 1, false), (7, 2, false), (23, 1, true)])
        {
            BedWeather[] skies = [.. Enumerable.Range(0, count).Select(i => Sky(12, (ulong)i, 6.0))];
            var (hold, times) = (new Hold(everyDays == 1 ? -0.1 : -1.4, around), new RoundTimes([7, 11, 15], everyDays, 2, 9));
            var steady = new SteadyRounds(Loam, null, new PastSkies(skies), 2);
            var held = 0;
            for (var depthMm = 0.25; depthMm < 8.0; depthMm += 0.5)
            {
                var expected = skies.Count(sky => !Holds(sky, times, hold, depthMm)) <= count / SteadyRounds.OneIn;
                Assert.Equal(expected, steady.Enough(times, hold, depthMm));
                held += expected ? 1 : 0;
            }

            Assert.InRange(held, 1, 15);
        }
    }

    [Fact]
    public void SeasonsOfDifferentLengthAreRefused() => Assert.Throws<ArgumentException>(() => new PastSkies([Sky(3, 1, 0.0), Sky(4, 1, 0.0)]));

    private static bool Holds(BedWeather sky, RoundTimes times, Hold hold, double depthMm)
    {
        var bed = new WateredBed(Loam);
        for (var hour = 24 * (times.FirstDay - 1); hour < 24 * (times.FirstDay + times.Days); hour++)
        {
            var (day, since) = (hour / 24, (hour / 24) - times.FirstDay);
            var round = since >= 0 && since % times.EveryDays == 0 && times.HoursOfDay.Contains(hour % 24);
            bed.Step(sky, hour, round ? depthMm : 0.0);
            if (day >= times.FirstDay && hour >= (24 * times.FirstDay) + times.HoursOfDay[0] && !bed.Holds(hold))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A warm day's demand by the hour, varied, and now and then rain.</summary>
    private static BedWeather Sky(int days, ulong seed, double rainMm)
    {
        var random = new SplitMix64(seed + 77);
        var (rain, demand) = (new double[24 * days], new double[24 * days]);
        for (var day = 0; day < days; day++)
        {
            var thirst = 3.0 + (4.0 * random.NextDouble());
            for (var hour = 0; hour < 24; hour++)
            {
                demand[(24 * day) + hour] = thirst * Math.Max(0.0, Math.Sin((hour - 6) * Math.PI / 12.0)) * Math.PI / 24.0;
                rain[(24 * day) + hour] = random.NextDouble() < 0.01 ? rainMm * random.NextDouble() : 0.0;
            }
        }

        return new BedWeather(rain, demand);
    }
}
