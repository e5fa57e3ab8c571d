using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Field.SprayWeather;

namespace Seedfall.Planning.Tests.Field.SprayWeather;

/// <summary>The hours ahead.</summary>
public sealed class SprayOutlookTests
{
    private static readonly Place Town = new(41.6, -89.9, 230.0);

    private static readonly DateTimeOffset Midnight = new(2026, 9, 5, 0, 0, 0, TimeSpan.FromHours(-5));

    private static readonly SprayLabel Label = new() { MaximumWind = Speed.FromMilesPerHour(10.0), RainFreeHours = 4.0 };

    [Fact]
    public void A_fair_day_is_fit_from_an_hour_after_sunrise_until_evening_and_never_in_the_dark()
    {
        var window = Window(Fair(48));
        var day = Assert.Single(window.Stretches, s => s.Start.Day == 5);
        Assert.InRange(day.Start.Hour, 7, 9);
        Assert.InRange(day.End.Hour, 17, 19);
        Assert.DoesNotContain(window.Hours, h => h.Verdict == SprayVerdict.Go && (h.Hour.Start.Hour < 6 || h.Hour.Start.Hour > 19));
    }

    [Fact]
    public void Wind_at_ten_meters_is_brought_down_before_it_is_judged()
    {
        // 7 mph at 10 m is 5.2 at 2 m and 3.6 at 20 in; 12 mph is 9.0 and 6.2: a wait; 14 mph is 10.5 at 2 m: over the label.
        Assert.Equal(SprayVerdict.Go, At(Window(Fair(48, windMph: 7.0)), 11).Verdict);
        Assert.Equal("wind.brisk", At(Window(Fair(48, windMph: 12.0)), 11).Reasons[0].Id);
        var stop = At(Window(Fair(48, windMph: 14.0)), 11);
        Assert.Equal((SprayVerdict.Stop, "wind.label"), (stop.Verdict, stop.Reasons[0].Id));
    }

    [Fact]
    public void Hours_before_rain_are_stopped_by_the_label_and_those_after_it_wait_for_dry_leaves()
    {
        var window = Window([.. Fair(48).Select(h => h.Start.Hour == 13 ? h with { RainMm = 2.0 } : h)]);
        Assert.Equal(SprayVerdict.Go, At(window, 8).Verdict);
        foreach (var hour in (int[])[9, 10, 11, 12])
        {
            Assert.Equal("rain.label", At(window, hour).Reasons[0].Id);
        }

        Assert.Equal("rain.now", At(window, 13).Reasons[0].Id);
        Assert.Equal("leaves.wet", At(window, 14).Reasons[0].Id);
        Assert.Equal("leaves.wet", At(window, 15).Reasons[0].Id);
        Assert.Equal(SprayVerdict.Go, At(window, 16).Verdict);
    }

    [Fact]
    public void A_stretch_must_be_long_enough_for_the_work()
    {
        IReadOnlyList<ForecastHour> hours = [.. Fair(46).Select(h => h.Start.Hour is 9 or 10 or 14 ? h : h with { WindMs = 9.0 })];
        Assert.Equal([9, 14, 9, 14], Window(hours).Stretches.Select(s => s.Start.Hour));
        Assert.Equal([9, 9], Window(hours, work: 2.0).Stretches.Select(s => s.Start.Hour));
        var none = Window(hours, work: 3.0);
        Assert.Empty(none.Stretches);
        Assert.Null(none.Longest);
        Assert.Equal("wind.label", none.Against[0].Id);
    }

    [Fact]
    public void The_end_of_the_forecast_is_not_taken_for_dry_weather()
    {
        var last = Window(Fair(36)).Hours[^1];
        Assert.Contains(last.Reasons, r => r.Id == "rain.unknown");
    }

    [Fact]
    public void A_missing_hour_breaks_a_stretch()
    {
        var window = Window([.. Fair(40).Where(h => h.Start != Midnight.AddHours(12))]);
        Assert.DoesNotContain(window.Stretches, s => s.Start < Midnight.AddHours(12) && s.End > Midnight.AddHours(12));
    }

    [Fact]
    public void It_begins_with_the_present_hour_and_ends_after_five_days()
    {
        var window = SprayOutlook.Of(new HourlyForecast(Fair(24 * 9), 10.0, "test"), Town, Label, Midnight.AddHours(30.5), 1.0);
        Assert.Equal(Midnight.AddHours(30), window.Hours[0].Hour.Start);
        Assert.True(window.Hours[^1].Hour.Start < Midnight.AddHours(30.5).AddDays(5));
        Assert.Equal(121, window.Hours.Count);
    }

    [Fact]
    public void An_hours_figures_carry_their_workings()
    {
        var window = Window(Fair(48, windMph: 7.0));
        var figures = window.FiguresOf(At(window, 11));
        Assert.Equal(["spray.wind.nozzle", "spray.wind.wall", "spray.rainfree", "spray.delta-t"], figures.Select(f => f.Id));
        Assert.Contains("10 m", figures[0].Working.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Days_make_rough_hours_whose_extremes_and_rain_are_the_days()
    {
        WeatherDay[] days = [.. Enumerable.Range(4, 4).Select(d => new WeatherDay(new DateOnly(2026, 9, d), 24.0, 12.0, d == 6 ? 8.0 : 0.0) { WindMs = 2.0 })];
        var history = new WeatherHistory(Town, "test", days, ["a file"], []);
        var forecast = DayHours.From(history, Town, new DateOnly(2026, 9, 5), TimeSpan.FromHours(-6))!;
        Assert.Equal(96, forecast.Hours.Count);
        Assert.Equal(8.0, forecast.Hours.Sum(h => h.RainMm!.Value), 1e-9);
        Assert.Equal((24.0, 12.0), (forecast.Hours.Max(h => h.AirC!.Value), forecast.Hours.Min(h => h.AirC!.Value)));
        var window = SprayOutlook.Of(forecast, Town, Label, Midnight, 1.0);
        Assert.True(window.Rough);
        Assert.Contains(window.Stretches, s => s.Start.Day == 5);
    }

    [Fact]
    public void Days_without_wind_never_make_a_go()
    {
        WeatherDay[] days = [.. Enumerable.Range(5, 4).Select(d => new WeatherDay(new DateOnly(2026, 9, d), 24.0, 12.0, 0.0))];
        var forecast = DayHours.From(new WeatherHistory(Town, "test", days, [], []), Town, new DateOnly(2026, 9, 5), TimeSpan.FromHours(-6))!;
        var window = SprayOutlook.Of(forecast, Town, Label, Midnight, 1.0);
        Assert.All(window.Hours, h => Assert.NotEqual(SprayVerdict.Go, h.Verdict));
        Assert.All(window.Hours, h => Assert.Contains(h.Reasons, r => r.Id == "wind.unknown"));
    }

    [Fact]
    public void Without_a_day_ahead_there_is_nothing_to_draw_hours_from() =>
        Assert.Null(DayHours.From(new WeatherHistory(Town, "test", [new(new DateOnly(2026, 9, 4), 24.0, 12.0, 0.0)], [], []), Town, new DateOnly(2026, 9, 5), TimeSpan.FromHours(-6)));

    private static SprayHour At(SprayOutlook window, int hour) => window.Hours.First(h => h.Hour.Start.Hour == hour);

    private static SprayOutlook Window(IReadOnlyList<ForecastHour> hours, double work = 1.0) => SprayOutlook.Of(new HourlyForecast(hours, 10.0, "test"), Town, Label, Midnight, work);

    /// <summary>Days of 12 to 24 degC with a steady wind and no cloud to speak of.</summary>
    private static IReadOnlyList<ForecastHour> Fair(int count, double windMph = 6.0) => [.. Enumerable.Range(0, count).Select(i => new ForecastHour(Midnight.AddHours(i))
    {
        AirC = 18.0 - (6.0 * Math.Cos(2.0 * Math.PI * ((i % 24) - 4) / 24.0)),
        HumidityPct = 60.0,
        WindMs = Speed.FromMilesPerHour(windMph).MetersPerSecond,
        CloudPct = 20.0,
        RainMm = 0.0,
    })];
}
