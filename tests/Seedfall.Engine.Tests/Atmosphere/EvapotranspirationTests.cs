using CsCheck;
using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;

namespace Seedfall.Engine.Tests.Atmosphere;

public sealed class EvapotranspirationTests
{
    private static readonly Place Place = new(42, -76, 300);
    private static readonly WeatherDay Bare = new(new DateOnly(2023, 8, 15), 28, 15, 0);

    [Fact]
    public void TheBestMethodTheInputsAllowIsUsed()
    {
        Assert.Equal(EvapotranspirationMethod.Hargreaves, DailyEvapotranspiration.For(Bare, Place).Method);
        Assert.Equal(EvapotranspirationMethod.FaoMissingData, DailyEvapotranspiration.For(Bare with { WindMs = 2 }, Place).Method);
        Assert.Equal(EvapotranspirationMethod.FaoMissingData, DailyEvapotranspiration.For(Bare with { SolarMJ = 20, HumidityMeanPct = 60 }, Place).Method);
        Assert.Equal(EvapotranspirationMethod.AsceDaily, DailyEvapotranspiration.For(Bare with { SolarMJ = 20, HumidityMeanPct = 60, WindMs = 2 }, Place).Method);
    }

    [Fact]
    public void EveryMethodHasAWorkingWithItsSource()
    {
        foreach (var day in new[] { Bare, Bare with { WindMs = 3 }, Bare with { SolarMJ = 20, HumidityMaxPct = 90, HumidityMinPct = 40, WindMs = 2 } })
        {
            var working = DailyEvapotranspiration.WorkingFor(day, Place);
            Assert.NotEmpty(working.Source);
            Assert.Equal(Sureness.Published, working.Sureness);
            Assert.All(working.Inputs, input => Assert.True(double.IsFinite(input.Value), input.Symbol));
        }
    }

    [Fact]
    public void MethodsAgreeWithinReasonOnAnOrdinarySummerDay()
    {
        var full = DailyEvapotranspiration.For(Bare with { SolarMJ = 21, HumidityMaxPct = 95, HumidityMinPct = 45, WindMs = 2 }, Place).Eto;
        Assert.InRange(DailyEvapotranspiration.For(Bare, Place).Eto / full, 0.7, 1.4);
        Assert.InRange(DailyEvapotranspiration.For(Bare with { WindMs = 2 }, Place).Eto / full, 0.7, 1.4);
    }

    [Fact]
    public void NeverNegativeAndAlwaysFinite() =>
        Gen.Select(Gen.Double[-66, 66], Gen.Double[-40, 40], Gen.Double[0, 25], Gen.Int[0, 364], Gen.Double[0, 35].Nullable(), Gen.Double[0, 12].Nullable())
            .Sample((latitude, tminC, rangeC, day, solarMJ, windMs) =>
            {
                var weather = new WeatherDay(new DateOnly(2023, 1, 1).AddDays(day), tminC + rangeC, tminC, 0) { SolarMJ = solarMJ, WindMs = windMs };
                Assert.InRange(DailyEvapotranspiration.For(weather, new Place(latitude, 0, 100)).Eto.Millimeters, 0.0, 40.0);
            });

    [Fact]
    public void HourlyExtraterrestrialRadiationAddsUpToTheDay() => Gen.Select(Gen.Double[-65, 65], Gen.Int[1, 365], Gen.Double[-180, 180]).Sample((latitude, day, longitude) =>
    {
        var noon = SolarGeometry.SolarNoonHour(longitude, SolarGeometry.NominalOffsetHours(longitude), day);
        var sum = Enumerable.Range(0, 24).Sum(h => SolarGeometry.ExtraterrestrialHourlyMJ(latitude, day, h + 0.5, noon));
        Assert.Equal(SolarGeometry.ExtraterrestrialDailyMJ(latitude, day), sum, 1e-9);
    });

    [Fact]
    public void DewPointUndoesSaturation() => Gen.Double[-30, 45].Sample(celsius =>
        Assert.Equal(celsius, Humidity.DewPoint(Humidity.SaturationVaporPressure(Temperature.FromCelsius(celsius))).Celsius, 1e-9));

    [Fact]
    public void DryAirHasNoDewPoint() => Assert.Throws<ArgumentOutOfRangeException>(() => Humidity.DewPoint(Pressure.Zero));

    [Fact]
    public void SlopeIsTheDerivativeOfSaturation() => Gen.Double[-20, 45].Sample(celsius =>
        Assert.Equal(
            (Humidity.SaturationVaporPressureCore(celsius + 1e-4) - Humidity.SaturationVaporPressureCore(celsius - 1e-4)) / 2e-4,
            Humidity.SlopeKPaPerC(celsius), 1e-4));

    [Fact]
    public void WindConversionComesBack() => Gen.Select(Gen.Double[0.1, 20], Gen.Double[0.2, 20]).Sample((ms, heightM) =>
        Assert.Equal(ms, Wind.AtHeight(Wind.AtTwoMeters(Speed.FromMetersPerSecond(ms), Length.FromMeters(heightM)), Length.FromMeters(heightM)).MetersPerSecond, 1e-9));

    [Fact]
    public void WindBelowTheGrassIsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => Wind.AtTwoMeters(Speed.Zero, Length.FromCentimeters(5)));
}
