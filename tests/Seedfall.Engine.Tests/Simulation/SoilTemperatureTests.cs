using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Correction;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Units;
using Seedfall.Engine.Validation;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Tests.Simulation;

/// <summary>The plan's soil temperature on invented weather.</summary>
public sealed class SoilTemperatureTests
{
    private static readonly Place Somewhere = new(41.0, -93.0, 280.0);
    private static readonly WeatherDay[] Days = Weather();
    private static readonly SoilTemperatureSeries Reference = SoilTemperature.DailyMeanAt5Cm(Days, Somewhere, SoilTempSite.Reference);

    [Fact]
    public void ItSaysHowItWasMadeAndHowGoodThatIs()
    {
        Assert.Equal(Days.Length, Reference.DailyMeanC.Length);
        Assert.InRange(Reference.LeftOut.Rmse, 0.5, 1.35);
        Assert.Contains("degF", Reference.Statement, StringComparison.Ordinal);
        Assert.Contains(Reference.Assumptions, a => a.Contains("estimated", StringComparison.Ordinal));
    }

    [Fact]
    public void WhereThePlainRegressionDidBetterItIsUsedAndSaid()
    {
        var shipped = SoilHeatConstants.Shipped;
        var errors = new Dictionary<string, ErrorSummary>(shipped.Extremes.LeftOut) { [SoilScoreMethods.Regression] = new(100, 0.5, 0.4, 0.0) };
        var changed = shipped with { Extremes = shipped.Extremes with { LeftOut = errors } };
        var series = SoilTemperature.DailyMeanAt5Cm(Days, Somewhere, SoilTempSite.Reference, Reference.Climate, InputSet.Extremes, changed);
        Assert.Equal(SoilMethod.Regression, series.Method);
        Assert.Equal(0.5, series.LeftOut.Rmse);
        Assert.Contains("did better alone", series.Statement, StringComparison.Ordinal);
        Assert.Equal(SoilMethod.ColumnAndRegression, Reference.Method);
    }

    [Fact]
    public void SoilIsWarmerThanAirInAutumnAndLagsIt()
    {
        var september = At(new DateOnly(2012, 9, 20));
        Assert.InRange(Reference.DailyMeanC[september] - Days[september].MidC, 0.0, 5.0);
        var peak = Array.IndexOf(Reference.DailyMeanC, Reference.DailyMeanC.Max());
        Assert.InRange(Days[peak].Date.DayOfYear, 195, 235);
    }

    [Fact]
    public void ShadeAndWaterCoolALawnAndBareGroundWarmsIt()
    {
        double Mean(SoilTempSite site) => SoilTemperature.DailyMeanAt5Cm(Days, Somewhere, site).DailyMeanC[At(new DateOnly(2012, 8, 20))];
        var open = Mean(SoilTempSite.Reference);
        Assert.InRange(Mean(new SoilTempSite { Shade = Fraction.Of(0.7) }), open - 6.0, open - 0.3);
        Assert.True(Mean(new SoilTempSite { Irrigated = true }) <= open + 1e-9);
        Assert.InRange(Mean(new SoilTempSite { Bare = Fraction.All }), open + 0.3, open + 10.0);
    }

    [Fact]
    public void ReadingsAtTheirHourAndDepthShiftTheDaysAfterThem()
    {
        var day = new DateOnly(2012, 9, 10);
        var constants = SoilHeatConstants.Shipped;
        // What the model itself says at that hour and depth teaches nothing.
        var empty = CorrectedSoil.From(Reference, Somewhere, SoilTempSite.Reference, [new ProbeReading(day, 16.0, Depth.FromInches(2), Temperature.FromCelsius(15))], constants);
        var model = empty.Bias.Updates[0].ModelC;
        var same = CorrectedSoil.From(Reference, Somewhere, SoilTempSite.Reference, [new ProbeReading(day, 16.0, Depth.FromInches(2), Temperature.FromCelsius(model))], constants);
        Assert.Equal(Reference.DailyMeanC[At(day) + 3], same.DailyMeanC[At(day) + 3], 1e-9);

        var warmer = CorrectedSoil.From(Reference, Somewhere, SoilTempSite.Reference, [new ProbeReading(day, 16.0, Depth.FromInches(2), Temperature.FromCelsius(model + 2.0))], constants);
        Assert.InRange(warmer.DailyMeanC[At(day)] - Reference.DailyMeanC[At(day)], 0.8, 1.5);
        Assert.Equal(Reference.DailyMeanC[At(day) - 1], warmer.DailyMeanC[At(day) - 1]);
        Assert.InRange(warmer.DailyMeanC[At(day) + 60] - Reference.DailyMeanC[At(day) + 60], 0.0, 0.1);
    }

    [Fact]
    public void AnAfternoonReadingIsComparedWithTheAfternoon()
    {
        var day = new DateOnly(2012, 8, 10);
        BiasUpdate Update(double hour) => CorrectedSoil.From(
            Reference, Somewhere, SoilTempSite.Reference, [new ProbeReading(day, hour, Depth.FromInches(1), Temperature.FromCelsius(20))], SoilHeatConstants.Shipped).Bias.Updates[0];
        Assert.True(Update(17.0).ModelC > Update(6.0).ModelC + 1.0);
    }

    [Fact]
    public void RefusedReadingsAreNamed()
    {
        var result = CorrectedSoil.From(
            Reference,
            Somewhere,
            SoilTempSite.Reference,
            [
                new ProbeReading(new DateOnly(2012, 9, 1), 12.0, Depth.FromInches(2), Temperature.FromCelsius(87)),
                new ProbeReading(new DateOnly(2031, 9, 1), 12.0, Depth.FromInches(2), Temperature.FromCelsius(20)),
            ],
            SoilHeatConstants.Shipped);
        Assert.Equal(2, result.Problems.Count);
        Assert.Contains("check the unit", result.Problems[0], StringComparison.Ordinal);
        Assert.Contains("no weather", result.Problems[1], StringComparison.Ordinal);
        Assert.Equal(Reference.DailyMeanC, result.DailyMeanC);
    }

    private static int At(DateOnly date) => Array.FindIndex(Days, d => d.Date == date);

    private static WeatherDay[] Weather() =>
        [.. Enumerable.Range(0, 3 * 365).Select(i =>
        {
            var date = new DateOnly(2010, 1, 1).AddDays(i);
            var mean = 10.0 + (14.0 * Math.Cos(2.0 * Math.PI / 365.25 * (date.DayOfYear - 201))) + (3.0 * Math.Sin(i / 2.3));
            return new WeatherDay(date, mean + 5.5, mean - 5.5, i % 5 == 0 ? 9.0 : 0.0);
        })];
}
