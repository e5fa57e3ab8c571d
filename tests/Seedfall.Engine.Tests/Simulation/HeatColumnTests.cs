using CsCheck;
using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Units;

namespace Seedfall.Engine.Tests.Simulation;

/// <summary>Laws the column must keep for any soil, cover and weather.</summary>
public sealed class HeatColumnTests
{
    private static readonly Gen<SoilThermal> AnySoil = Gen.Select(Gen.Double[0.05, 0.9], Gen.Double[0.05, 0.55], Gen.Double[0.0, 0.06])
        .Select(t => new SoilThermal(Fraction.Of(Math.Min(t.Item1, 1.0 - t.Item2)), Fraction.Of(t.Item2), Fraction.Of(t.Item3)));

    private static readonly Gen<SurfaceWeather> AnyHour = Gen.Select(Gen.Double[-25, 42], Gen.Double[0.1, 1.0], Gen.Double[0, 1000], Gen.Double[0.6, 1.0], Gen.Double[0.1, 9])
        .Select(t => new SurfaceWeather
        {
            AirC = t.Item1,
            VaporKPa = t.Item2 * Humidity.SaturationVaporPressureCore(t.Item1),
            SolarWm2 = t.Item3,
            LongwaveWm2 = t.Item4 * Longwave.BlackBodyWm2(t.Item1),
            WindMs = t.Item5,
            PressureKPa = 98.0,
        });

    private static readonly Gen<GroundSurface> AnyGround = Gen.Select(Gen.Double[0, 1], Gen.Double[0, 0.9], Gen.Double[0.02, 1], Gen.Double[10, 3000], Gen.Double[0, 0.5], Gen.Double[0, 1])
        .Select(t => new GroundSurface
        {
            CanopyShare = t.Item1,
            ShadeShare = t.Item2,
            WaterSupply = t.Item3,
            SoilResistanceSm = t.Item4,
            SoilAlbedo = 0.15,
            CoverResistanceM2KW = t.Item5,
            SnowShare = t.Item6,
        });

    [Fact]
    public void EveryHourStoresExactlyTheHeatThatEntered() =>
        Gen.Select(AnySoil, AnyGround, AnyHour.Array[1, 60], Gen.Double[0.05, 0.4]).Sample((soil, ground, hours, water) =>
        {
            var column = Column(soil, 12.0);
            column.SetMoisture(water, soil.FieldCapacity);
            foreach (var hour in hours)
            {
                var before = column.TemperatureC.ToArray();
                var step = column.Step(hour, ground);
                double stored = 0, moved = 0;
                for (var i = 0; i < before.Length; i++)
                {
                    var layer = column.StorageJm2K[i] * (column.TemperatureC[i] - before[i]);
                    stored += layer;
                    moved += Math.Abs(layer);
                }

                var entered = (step.GroundWm2 + step.PenetratingWm2) * HeatColumn.StepS;
                Assert.Equal(entered, stored, 1e-9 * Math.Max(1e5, moved + Math.Abs(entered)));
            }
        });

    [Fact]
    public void TheSkinGivesTheGroundExactlyWhatItGains() =>
        Gen.Select(AnySoil, AnyGround, AnyHour).Sample((soil, ground, hour) =>
        {
            var column = Column(soil, 12.0);
            for (var i = 0; i < 4; i++)
            {
                var soilC = column.At5CmC;
                var step = column.Step(hour, ground);
                var balance = new SurfaceBalance(hour, ground, HeatParameters.Textbook, column.LinearAboutC, soilC);
                var gained = balance.FluxWm2 + (balance.SlopeWm2K * (step.SkinC - balance.AboutC));
                Assert.Equal(gained, step.GroundWm2, 1e-9 * (1.0 + Math.Abs(balance.FluxWm2) + Math.Abs(balance.SlopeWm2K * step.SkinC)));
            }
        });

    [Fact]
    public void TemperaturesStayFiniteAndNearTheWeather() =>
        Gen.Select(AnySoil, AnyGround, AnyHour.Array[200]).Sample((soil, ground, hours) =>
        {
            var column = Column(soil, 12.0);
            foreach (var hour in hours)
            {
                var step = column.Step(hour, ground);
                Assert.InRange(step.SkinC, -60.0, 110.0);
                Assert.InRange(step.At1CmC, -40.0, 90.0);
            }
        }, seed: "3xQo5YY_B1f1", iter: 2000);

    [Fact]
    public void ShadeCoolsThatchDampsAndBareSoilWarmsASunnyNoon()
    {
        var soil = new SoilThermal(Fraction.Of(0.4), Fraction.Of(0.2), Fraction.Of(0.025));
        var turf = new GroundSurface { CanopyShare = 1.0, WaterSupply = 1.0, SoilResistanceSm = 2000.0, SoilAlbedo = 0.15 };
        double AtFive(GroundSurface ground)
        {
            var column = Column(soil, 18.0);
            for (var hour = 0; hour < 6; hour++)
            {
                column.Step(new SurfaceWeather { AirC = 24.0, VaporKPa = 1.5, SolarWm2 = 700.0, LongwaveWm2 = 340.0, WindMs = 2.0, PressureKPa = 99.0 }, ground);
            }

            return column.At5CmC;
        }

        Assert.True(AtFive(turf with { ShadeShare = 0.7 }) < AtFive(turf));
        Assert.True(AtFive(turf with { CoverResistanceM2KW = 0.2 }) < AtFive(turf));
        Assert.True(AtFive(turf with { CanopyShare = 0.0 }) > AtFive(turf) + 2.0);
        Assert.True(AtFive(turf with { WaterSupply = 0.02 }) > AtFive(turf));
    }

    [Fact]
    public void AFreezingSoilHoldsAtZeroWhileItsWaterFreezes()
    {
        var soil = new SoilThermal(Fraction.Of(0.4), Fraction.Of(0.2), Fraction.Of(0.025));
        double HoursToMinusTwo(double water)
        {
            var column = Column(soil, 0.5);
            column.SetMoisture(water, water);
            for (var hour = 1; hour < 2000; hour++)
            {
                column.Step(new SurfaceWeather { AirC = -12.0, VaporKPa = 0.15, LongwaveWm2 = 190.0, WindMs = 3.0, PressureKPa = 99.0 }, new GroundSurface { CanopyShare = 1.0, WaterSupply = 1.0 });
                if (column.At5CmC < -2.0)
                {
                    return hour;
                }
            }

            return double.PositiveInfinity;
        }

        Assert.True(HoursToMinusTwo(0.30) > 1.5 * HoursToMinusTwo(0.10));
    }

    [Fact]
    public void AWrongNumberOfLayersIsRefused() =>
        Assert.Throws<ArgumentException>(() => new HeatColumn(HeatParameters.Textbook, new SoilThermal(Fraction.Of(0.4), Fraction.Of(0.2), Fraction.None), [1, 2, 3], 0));

    [Fact]
    public void SteppingAllocatesNothing()
    {
        var column = Column(new SoilThermal(Fraction.Of(0.4), Fraction.Of(0.2), Fraction.None), 15.0);
        var hour = new SurfaceWeather { AirC = 20.0, VaporKPa = 1.2, SolarWm2 = 300.0, LongwaveWm2 = 330.0, WindMs = 2.0, PressureKPa = 100.0 };
        var ground = new GroundSurface { CanopyShare = 0.7, WaterSupply = 0.8, SoilResistanceSm = 100.0, SoilAlbedo = 0.15 };
        column.Step(hour, ground);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 1000; i++)
        {
            column.Step(hour, ground);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static HeatColumn Column(SoilThermal soil, double startC) =>
        new(HeatParameters.Textbook, soil, [.. Enumerable.Repeat(startC, HeatColumn.LayerCount)], startC);
}
