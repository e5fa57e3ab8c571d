using System.Runtime.Intrinsics;
using CsCheck;
using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Tests.Simulation.Heat;

/// <summary>Four columns at a time must be the column the fit was made with.</summary>
public sealed class HeatLanesTests
{
    private const double PressureKPa = 98.0;

    private static readonly HeatParameters Parameters = SoilHeatConstants.Shipped.Column;

    private static readonly Place Where = new(41.6, -93.6, 280.0);

    private static readonly PlaceClimate Climate = new(10.0, -12.0, -4.0, -0.2, 11.0, 12);

    [Fact]
    public void EachLaneFollowsTheSingleColumnThroughAnyWeather()
    {
        // Sudden swings of 30 degC, frost and gales included, so that freezing and the second linearization take part.
        var hour = Gen.Select(Gen.Double[-25, 38], Gen.Double[0.05, 1.0], Gen.Double[0, 900], Gen.Double[0, 8], Gen.Double[0.05, 0.44]);
        Gen.Select(hour.Array[120], Gen.Double[0, 1], Gen.Double[0, 0.9], Gen.Double[0, 1.5]).Sample((hours, canopy, shade, cover) =>
        {
            var soil = new SoilThermal(Fraction.Of(0.4), Fraction.Of(0.2), Fraction.Of(0.025));
            double[] angles = [3.0, 3.5, 4.0, 5.5];
            var four = new HeatLanes(Parameters, soil, PressureKPa);
            four.Start(Climate, angles);
            var single = angles.Select(a => HeatColumn.AtUsualYear(Parameters, soil, Climate, a)).ToArray();
            for (var h = 0; h < hours.Length; h++)
            {
                if (h % 6 == 0)
                {
                    var moisture = Enumerable.Range(0, HeatColumn.RootLayers).Select(i => Math.Max(0.05, hours[h].Item5 - (0.01 * i))).ToArray();
                    four.SetMoisture([.. moisture.Select(Vector256.Create)]);
                    Array.ForEach(single, c => c.SetMoisture(moisture));
                }

                Step(four, single, hours, h, canopy, shade, cover);
            }
        }, iter: 60);
    }

    [Fact]
    public void EveryHourStoresTheHeatThatEnteredInEveryLane()
    {
        // Conservation: 1e-9 of what moved, for random soils and weather, freezing and sudden swings included.
        var hour = Gen.Select(Gen.Double[-25, 38], Gen.Double[0.05, 1.0], Gen.Double[0, 900], Gen.Double[0, 8], Gen.Double[0.05, 0.44]);
        var soils = Gen.Select(Gen.Double[0.05, 0.9], Gen.Double[0.05, 0.55], Gen.Double[0.0, 0.06]);
        Gen.Select(soils, hour.Array[60], Gen.Double[0, 1], Gen.Double[0, 0.9], Gen.Double[0, 1.5]).Sample((texture, hours, canopy, shade, cover) =>
        {
            var soil = new SoilThermal(Fraction.Of(Math.Min(texture.Item1, 1.0 - texture.Item2)), Fraction.Of(texture.Item2), Fraction.Of(texture.Item3));
            var four = new HeatLanes(Parameters, soil, PressureKPa);
            four.Start(Climate, [3.0, 3.5, 4.0, 5.5]);
            for (var h = 0; h < hours.Length; h++)
            {
                if (h % 6 == 0)
                {
                    four.SetMoisture([.. Enumerable.Repeat(Vector256.Create(hours[h].Item5), HeatColumn.RootLayers)]);
                }

                var before = Enumerable.Range(0, HeatColumn.LayerCount).Select(four.LayerC).ToArray();
                Step(four, [], hours, h, canopy, shade, cover);
                var (stored, moved) = (Vector256<double>.Zero, Vector256.Abs(four.EnteredWm2));
                for (var i = 0; i < before.Length; i++)
                {
                    var layer = four.InertiaWm2K(i) * (four.LayerC(i) - before[i]);
                    (stored, moved) = (stored + layer, moved + Vector256.Abs(layer));
                }

                var residual = Vector256.Abs(stored - four.EnteredWm2);
                Assert.True(Vector256.LessThanAll(residual, 1e-9 * (moved + Vector256.Create(100.0))), $"{residual} W m-2 of {moved}");
            }
        }, iter: 100);
    }

    [Fact]
    public void ReferenceGroundFollowsTheSingleRun()
    {
        var days = Enumerable.Range(0, 4).Select(lane => Enumerable.Range(0, 230).Select(i =>
        {
            var random = new SplitMix64((ulong)((1000 * lane) + i));
            var mean = 11.0 - (13.0 * Math.Cos(2.0 * Math.PI * (i + 60) / 365.25)) + (3.0 * random.NextNormal());
            return new WeatherDay(new DateOnly(2001 + lane, 4, 20).AddDays(i), mean + 6.0, mean - 6.0, random.NextDouble() < 0.3 ? 9.0 : 0.0);
        }).ToArray()).ToArray();
        var hours = days.Select(d => ColumnForcing.FromDaily(d, Where)).ToArray();
        var season = SeasonLanes.Of(hours, [.. hours.Select(h => new double[h.Weather.Hours])], 20, Where.LatitudeDeg, Parameters);
        var four = ReferenceSoil.DailyMeanC(season, days, Climate, Parameters);
        for (var lane = 0; lane < 4; lane++)
        {
            var single = new double[230];
            ColumnRun.DailyMeanC(hours[lane], days[lane], Where, Climate, SoilTempSite.Reference, Parameters, single);
            for (var d = 0; d < single.Length; d++)
            {
                Assert.Equal(single[d], four[d].GetElement(lane), 1e-8);
            }
        }
    }

    [Fact]
    public void ExponentialsAreGoodToTheLastPlace() => Gen.Double[-650, 650].Sample(x =>
    {
        var exact = Math.Exp(x);
        Assert.InRange(LaneMath.Exp(Vector256.Create(x)).GetElement(3) / exact, 1.0 - 1e-15, 1.0 + 1e-15);
    });

    private static void Step(HeatLanes four, HeatColumn[] single, (double AirC, double Damp, double SolarWm2, double WindMs, double Water)[] hours, int h, double canopy, double shade, double cover)
    {
        var weather = Enumerable.Range(0, 4).Select(lane => Weather(hours[(h + (7 * lane)) % hours.Length])).ToArray();
        Vector256<double> Of(Func<SurfaceWeather, double> value) => LaneMath.Gather(lane => value(weather[lane]), 0, 4);
        var lanes = WeatherLanes.Of(Of(w => w.AirC), Of(w => w.VaporKPa), Of(w => w.SolarWm2), Of(w => w.LongwaveWm2), Of(w => w.WindMs), Parameters);
        four.Step(lanes, new GroundLanes
        {
            CanopyShare = canopy,
            ShadeShare = shade,
            WaterSupply = Vector256.Create(0.7),
            SoilResistanceSM = Vector256.Create(80.0),
            SoilAlbedo = Vector256.Create(0.15),
            CoverResistanceM2KW = Vector256.Create(cover),
            SnowShare = Vector256.Create(0.2),
        });
        var ground = new GroundSurface { CanopyShare = canopy, ShadeShare = shade, WaterSupply = 0.7, SoilResistanceSm = 80.0, SoilAlbedo = 0.15, CoverResistanceM2KW = cover, SnowShare = 0.2 };
        for (var lane = 0; lane < single.Length; lane++)
        {
            single[lane].Step(weather[lane], ground);
            Assert.Equal(single[lane].SkinC, four.SkinC.GetElement(lane), 1e-7);
            for (var i = 0; i < HeatColumn.LayerCount; i++)
            {
                Assert.Equal(single[lane].TemperatureC[i], four.LayerC(i).GetElement(lane), 1e-7);
            }
        }
    }

    private static SurfaceWeather Weather((double AirC, double Damp, double SolarWm2, double WindMs, double Water) hour) => new()
    {
        AirC = hour.AirC,
        VaporKPa = hour.Damp * Humidity.SaturationVaporPressureCore(hour.AirC),
        SolarWm2 = hour.SolarWm2,
        LongwaveWm2 = 0.8 * Longwave.BlackBodyWm2(hour.AirC),
        WindMs = hour.WindMs,
        PressureKPa = PressureKPa,
    };
}
