using CsCheck;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Regression;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Tests.Simulation;

public sealed class RegressionTests
{
    private static readonly Place Somewhere = new(42.0, -90.0, 250.0);

    [Fact]
    public void Ridge_without_penalty_finds_a_linear_law()
    {
        Gen.Double[-3, 3].Array[4].Array[30].Sample(rows =>
        {
            var fit = new RidgeFit(4);
            foreach (var x in rows)
            {
                fit.Add(x, 2.0 + (3.0 * x[0]) - x[1] + (0.5 * x[3]));
            }

            var model = fit.Solve(1e-9);
            Assert.Equal(2.0, model.Intercept, 1e-6);
            Assert.Equal(3.0, model.Coefficients[0], 1e-6);
            Assert.Equal(-1.0, model.Coefficients[1], 1e-6);
            Assert.Equal(0.0, model.Coefficients[2], 1e-6);
            Assert.Equal(0.5, model.Coefficients[3], 1e-6);
        }, iter: 50);
    }

    [Fact]
    public void Taking_a_station_away_equals_never_adding_it()
    {
        Gen.Double[-3, 3].Array[3].Array[40].Sample(rows =>
        {
            var (all, one, others) = (new RidgeFit(2), new RidgeFit(2), new RidgeFit(2));
            for (var i = 0; i < rows.Length; i++)
            {
                all.Add(rows[i].AsSpan(0, 2), rows[i][2]);
                (i < 10 ? one : others).Add(rows[i].AsSpan(0, 2), rows[i][2]);
            }

            all.Add(one, -1.0);
            Assert.Equal(others.Solve(5.0).Coefficients[1], all.Solve(5.0).Coefficients[1], 1e-9);
        }, iter: 50);
    }

    [Fact]
    public void Usual_year_of_a_pure_annual_wave_is_that_wave()
    {
        var climate = PlaceClimate.FromHistory(Wave(Somewhere, 3 * 365), Somewhere);
        Assert.False(climate.Assumed);
        Assert.Equal(9.0, climate.MeanAirC, 0.05);
        Assert.Equal(12.0, climate.AmplitudeC, 0.05);
    }

    [Fact]
    public void Six_months_of_weather_leave_the_usual_year_near_and_say_so()
    {
        var climate = PlaceClimate.FromHistory([.. Wave(Somewhere, 3 * 365).Take(200)], Somewhere);
        Assert.True(climate.Assumed);
        Assert.Equal(9.0, climate.MeanAirC, 1.0);
    }

    [Fact]
    public void Southern_autumn_is_the_northern_one_half_a_year_on()
    {
        var north = Wave(Somewhere, 1096);
        var southPlace = Somewhere with { LatitudeDeg = -42.0 };
        var south = Wave(southPlace, 1096);
        var a = SoilTemperature.DailyMeanAt5Cm(north, Somewhere, SoilTempSite.Reference);
        var b = SoilTemperature.DailyMeanAt5Cm(south, southPlace, SoilTempSite.Reference);
        var september = Array.FindIndex(north, d => d.Date == new DateOnly(2003, 9, 20));
        var march = Array.FindIndex(south, d => d.Date == new DateOnly(2003, 3, 21));
        Assert.Equal(a.DailyMeanC[september], b.DailyMeanC[march], 0.6);
    }

    [Fact]
    public void Missing_days_are_carried_across()
    {
        var days = Wave(Somewhere, 1000);
        var whole = SoilTemperature.DailyMeanAt5Cm(days, Somewhere, SoilTempSite.Reference);
        var gapped = SoilTemperature.DailyMeanAt5Cm([.. days.Where((_, i) => i is < 600 or > 640)], Somewhere, SoilTempSite.Reference);
        Assert.Equal(whole.DailyMeanC[^1], gapped.DailyMeanC[^1], 0.2);
    }

    [Fact]
    public void Days_out_of_order_are_refused_by_name()
    {
        var days = Wave(Somewhere, 10);
        (days[3], days[4]) = (days[4], days[3]);
        var refusal = Assert.Throws<ArgumentException>(() => SoilTemperature.DailyMeanAt5Cm(days, Somewhere, SoilTempSite.Reference));
        Assert.Contains("must ascend", refusal.Message, StringComparison.Ordinal);
    }

    /// <summary>An invented climate: an exact annual wave of 9 +- 12 degC, warmest on 20 July in the north, rain every fourth day.</summary>
    private static WeatherDay[] Wave(Place place, int count) =>
        [.. Enumerable.Range(0, count).Select(i =>
        {
            var date = new DateOnly(2001, 1, 1).AddDays(i);
            var mean = 9.0 + (12.0 * Math.Cos(2.0 * Math.PI / 365.25 * (date.DayOfYear - 201 + (place.LatitudeDeg < 0 ? 182.625 : 0))));
            return new WeatherDay(date, mean + 5.0, mean - 5.0, i % 4 == 0 ? 10.0 : 0.0);
        })];
}
