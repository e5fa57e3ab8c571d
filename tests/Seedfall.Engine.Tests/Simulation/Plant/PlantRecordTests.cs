using System.Runtime.Intrinsics;
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
                for (var lane = 0; lane < 4; lane++)
                {
                    var fate = record.Fate(lane, share, start, hours.Length, depth);
                    var (germinated, emerged) = Stepped(hours, lane, start, share, depth);
                    Assert.Equal(germinated, fate.GerminatedHour);
                    Assert.Equal(emerged, fate.EmergedHour);
                }
            },
            iter: 1000);
    }

    [Fact]
    public void AskedInOrderOrAloneTheAnswersAreTheSame()
    {
        Seasons.Sample(
            hours =>
            {
                var record = Filled(hours);
                var search = default(FateSearch);
                for (var start = 13; start < hours.Length; start += 24)
                {
                    Assert.Equal(record.Fate(2, 4, start, hours.Length, 5.0), record.Fate(2, 4, start, hours.Length, 5.0, ref search));
                }
            },
            iter: 100);
    }

    [Fact]
    public void DrySoilHoldsTheSeedWithoutLoss()
    {
        var record = Filled(24 * 40, hour => hour is >= 24 and < 24 * 20 ? (20.0, -3.0, 0.0, 15.0) : (20.0, 0.0, 0.0, 15.0));
        var fate = record.Fate(0, 4, 0, 24 * 40, 5.0);
        Assert.True(fate.Emerged);
        Assert.Equal(1.0, record.Survival(0, fate.GerminatedHour, 24 * 40), 12);
        Assert.True(fate.GerminatedHour > 24 * 20);
    }

    [Fact]
    public void DryingAfterGerminationKillsAndNeverRevives()
    {
        var record = Filled(24 * 60, hour => hour is >= 24 * 5 and < 24 * 12 ? (20.0, -3.0, -2.0, 15.0) : (20.0, 0.0, 0.0, 15.0));
        Assert.True(record.Survival(0, record.Fate(0, 4, 0, 24 * 60, 5.0).GerminatedHour, 24 * 60) < 0.2);
        Assert.Equal(1.0, record.Survival(0, record.Fate(0, 4, 24 * 13, 24 * 60, 5.0).GerminatedHour, 24 * 60), 12);
    }

    /// <summary>The same hours in all four lanes: seed degC, seed MPa, MPa of the layers, air degC.</summary>
    private static PlantRecord Filled(int hours, Func<int, (double SeedC, double SeedMPa, double LayerMPa, double AirC)> hourOf)
    {
        var zone = new SeedZoneRecord(hours);
        var record = new PlantRecord(Ryegrass, zone);
        for (var hour = 0; hour < hours; hour++)
        {
            var (seedC, seedMPa, layerMPa, airC) = hourOf(hour);
            var layer = Vector256.Create(layerMPa);
            zone.Add(Vector256.Create(seedC), layer, layer, layer, Vector256.Create(airC));
            record.Add(Vector256.Create(seedC), Vector256.Create(seedMPa));
        }

        return record;
    }

    /// <summary>Lane l lies l degrees cooler and a tenth of l drier.</summary>
    private static PlantRecord Filled((double SeedC, double Mpa, double Air)[] hours)
    {
        var zone = new SeedZoneRecord(hours.Length);
        var record = new PlantRecord(Ryegrass, zone);
        foreach (var (seedC, mpa, air) in hours)
        {
            var (seed, potential) = (Vector256.Create(seedC, seedC - 1.0, seedC - 2.0, seedC - 3.0), Vector256.Create(mpa, mpa - (0.1 * 1), mpa - (0.1 * 2), mpa - (0.1 * 3)));
            zone.Add(seed, potential, potential, potential, Vector256.Create(air));
            record.Add(seed, potential);
        }

        return record;
    }

    /// <summary>The same by stepping hour by hour from seed-down in whole numbers.</summary>
    private static (int Germinated, int Emerged) Stepped((double SeedC, double Mpa, double Air)[] hours, int lane, int start, int share, double depth)
    {
        var baseMPa = Ryegrass.BasePotentialMPa((share + 0.5) / PlantRecord.Shares);
        var (progress, germinated) = (0L, 0);
        for (var h = start; h < hours.Length && germinated == 0; h++)
        {
            var wet = hours[h].Mpa - (0.1 * lane) - baseMPa;
            var degrees = Ryegrass.EffectiveDegrees(hours[h].SeedC - lane) / 24.0;
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
            lag += Steps(Math.Max(0.0, hours[h].SeedC - lane - Emergence.BaseC) / 24.0);
            if (lag >= Steps(Emergence.LagCd(depth)))
            {
                return (germinated, h + 1);
            }
        }

        return (germinated, -1);
    }

    private static long Steps(double value) => (long)Math.Round(value * (1L << 30), MidpointRounding.ToEven);
}
