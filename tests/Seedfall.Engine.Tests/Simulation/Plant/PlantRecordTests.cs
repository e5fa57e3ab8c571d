using CsCheck;
using Seedfall.Engine.Simulation.Plant;

namespace Seedfall.Engine.Tests.Simulation.Plant;

public sealed class PlantRecordTests
{
    private static readonly GerminationTraits Ryegrass = new(3.6, 20.0, 27.0, 40.0, 77.0, -1.2, 0.35, 100.0);

    private static readonly Gen<(double SeedC, double Mpa, double Air)[]> Seasons =
        Gen.Select(Gen.Double[-5, 40], Gen.Double[-3, 0], Gen.Double[-10, 35]).Array[24 * 30, 24 * 60];

    [Fact]
    public void RunningSumsAnswerExactlyAsSteppingDoes()
    {
        Seasons.SelectMany(hours => Gen.Select(Gen.Const(hours), Gen.Int[0, hours.Length - 24], Gen.Int[0, PlantRecord.Shares - 1], Gen.Double[0, 15])).Sample(
            (hours, start, share, depth) =>
            {
                var record = Filled(hours);
                var fate = record.Fate(share, start, hours.Length, depth);
                var (germinated, emerged) = Stepped(hours, start, share, depth);
                Assert.Equal(germinated, fate.GerminatedHour);
                Assert.Equal(emerged, fate.EmergedHour);
            },
            iter: 1000);
    }

    [Fact]
    public void DrySoilHoldsTheSeedWithoutLoss()
    {
        var record = new PlantRecord(Ryegrass, 24 * 40);
        for (var hour = 0; hour < 24 * 40; hour++)
        {
            var dry = hour is >= 24 and < 24 * 20;
            record.Add(20.0, dry ? -3.0 : 0.0, 0.0, 0.0, 0.0, 15.0);
        }

        var fate = record.Fate(4, 0, 24 * 40, 5.0);
        Assert.True(fate.Emerged);
        Assert.Equal(1.0, fate.Survival, 12);
        Assert.True(fate.GerminatedHour > 24 * 20);
    }

    [Fact]
    public void DryingAfterGerminationKillsAndNeverRevives()
    {
        var record = new PlantRecord(Ryegrass, 24 * 60);
        for (var hour = 0; hour < 24 * 60; hour++)
        {
            var dry = hour is >= 24 * 5 and < 24 * 12;
            record.Add(20.0, dry ? -3.0 : 0.0, dry ? -2.0 : 0.0, dry ? -2.0 : 0.0, 0.0, 15.0);
        }

        Assert.True(record.Fate(4, 0, 24 * 60, 5.0).Survival < 0.2);
        Assert.Equal(1.0, record.Fate(4, 24 * 13, 24 * 60, 5.0).Survival, 12);
    }

    private static PlantRecord Filled((double SeedC, double Mpa, double Air)[] hours)
    {
        var record = new PlantRecord(Ryegrass, hours.Length);
        foreach (var (seedC, mpa, air) in hours)
        {
            record.Add(seedC, mpa, mpa, mpa, mpa, air);
        }

        return record;
    }

    /// <summary>The same by stepping hour by hour from seed-down, counting in the same whole steps.</summary>
    private static (int Germinated, int Emerged) Stepped((double SeedC, double Mpa, double Air)[] hours, int start, int share, double depth)
    {
        var baseMPa = Ryegrass.BasePotentialMPa((share + 0.5) / PlantRecord.Shares);
        var (progress, germinated) = (0L, 0);
        for (var h = start; h < hours.Length && germinated == 0; h++)
        {
            var wet = hours[h].Mpa - baseMPa;
            var degrees = Ryegrass.EffectiveDegrees(hours[h].SeedC) / 24.0;
            progress += wet > 0.0 && degrees > 0.0 ? Steps(wet * degrees) : 0L;
            germinated = progress >= Steps(Ryegrass.HydrothermalTimeMPaCd) ? h + 1 : 0;
        }

        if (germinated == 0)
        {
            return (0, 0);
        }

        var lag = 0L;
        for (var h = germinated; h < hours.Length; h++)
        {
            lag += Steps(Math.Max(0.0, hours[h].SeedC - Emergence.BaseC) / 24.0);
            if (lag >= Steps(Emergence.LagCd(depth)))
            {
                return (germinated, h + 1);
            }
        }

        return (germinated, -1);
    }

    private static long Steps(double value) => (long)((value * (1L << 30)) + 0.5);
}
