using CsCheck;
using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Tests.Atmosphere;

public sealed class DisaggregationTests
{
    private static readonly Gen<Place> Places = Gen.Select(Gen.Double[-66.0, 66.0], Gen.Double[-180.0, 180.0], Gen.Double[0.0, 3000.0])
        .Select((latitude, longitude, elevation) => new Place(latitude, longitude, elevation));

    private static readonly Gen<WeatherDay[]> Spells = Gen.Select(
        Gen.Int[0, 3650],
        Gen.Select(Gen.Double[-25.0, 30.0], Gen.Double[0.1, 25.0], Gen.Double[0.0, 80.0], Gen.Double[0.1, 35.0].Nullable(), Gen.Double[0.2, 9.0].Nullable()).Array[1, 12])
        .Select((offset, rows) => rows.Select((row, i) => new WeatherDay(new DateOnly(2011, 1, 1).AddDays(offset + i), row.Item1 + row.Item2, row.Item1, row.Item3)
        {
            SolarMJ = row.Item4,
            WindMs = row.Item5,
        }).ToArray());

    [Fact]
    public void EveryDayKeepsItsRainSunWindAndExtremes() => Gen.Select(Places, Spells).Sample((place, days) =>
    {
        var hourly = Disaggregation.FromDaily(days, place);
        for (var d = 0; d < days.Length; d++)
        {
            var (air, start) = (hourly.AirC.AsSpan(d * 24, 24).ToArray(), d * 24);
            Assert.Equal(days[d].TmaxC, air.Max());
            Assert.Equal(days[d].TminC, air.Min());
            Assert.Equal(days[d].RainMm, hourly.RainMm.Skip(start).Take(24).Sum(), 1e-9);
            var expectedMJ = EstimatedSolar.ForDayMJ(days[d], d + 1 < days.Length ? days[d + 1].TminC : days[d].TminC, place.LatitudeDeg);
            Assert.Equal(expectedMJ, hourly.SolarWm2.Skip(start).Take(24).Sum() * 0.0036, 1e-9);
            Assert.Equal(days[d].WindMs ?? 2.0, hourly.WindMs.Skip(start).Take(24).Average(), 1e-9);
            Assert.All(hourly.SolarWm2, watts => Assert.True(watts >= 0.0));
            for (var h = 0; h < 24; h++)
            {
                Assert.InRange(hourly.VaporKPa[start + h], 0.0, Humidity.SaturationVaporPressureCore(air[h]));
            }
        }
    });

    [Fact]
    public void NoonSunStandsHigherThanMorningSunInBothHemispheres()
    {
        foreach (var latitude in new[] { 45.0, -45.0 })
        {
            var hourly = Disaggregation.FromDaily([new WeatherDay(new DateOnly(2022, 3, 10), 18, 6, 0) { SolarMJ = 15 }], new Place(latitude, 0, 0));
            Assert.True(hourly.SolarWm2[12] > hourly.SolarWm2[8]);
            Assert.Equal(0.0, hourly.SolarWm2[1]);
        }
    }

    [Fact]
    public void AGapInTheDaysIsRefused()
    {
        WeatherDay[] days = [new(new DateOnly(2022, 9, 1), 20, 10, 0), new(new DateOnly(2022, 9, 3), 20, 10, 0)];
        Assert.Throws<ArgumentException>(() => Disaggregation.FromDaily(days, new Place(45, -75, 0)));
    }

    [Fact]
    public void ATimeZoneFarFromTheSunIsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() =>
        Disaggregation.FromDaily([new(new DateOnly(2022, 9, 1), 20, 10, 0)], new Place(45, -75, 0), new DisaggregationSettings { StandardOffsetHours = 0 }));
}
