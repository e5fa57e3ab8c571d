using Seedfall.Engine.Weather;
using static Seedfall.Weather.Tests.Files;
using static Seedfall.Weather.Tests.Samples;

namespace Seedfall.Weather.Tests.Merging;

public sealed class GapTests
{
    private static string Days(int gap, bool withEmptyRows = false)
    {
        var lines = new List<string> { UscrnDay("20260901", 20, 10, 1.5) };
        lines.AddRange(Enumerable.Range(2, gap).Where(_ => withEmptyRows).Select(d => UscrnEmptyDay(FormattableString.Invariant($"202609{d:00}"))));
        lines.Add(UscrnDay(FormattableString.Invariant($"202609{gap + 2:00}"), 28, 14, 2.5));
        return Lines([.. lines]);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Three_days_are_filled_in_a_straight_line_without_rain_and_marked(bool withEmptyRows)
    {
        var result = Good(Days(3, withEmptyRows));
        Assert.Equal([20.0, 22.0, 24.0, 26.0, 28.0], result.History!.Days.Select(d => d.TmaxC));
        Assert.Equal([10.0, 11.0, 12.0, 13.0, 14.0], result.History.Days.Select(d => d.TminC));
        Assert.Equal([1.5, 0, 0, 0, 2.5], result.History.Days.Select(d => d.RainMm));
        Assert.Equal([DayQuality.Measured, DayQuality.Interpolated, DayQuality.Interpolated, DayQuality.Interpolated, DayQuality.Measured], result.History.Days.Select(d => d.Quality));
        Assert.Equal(new WeatherGap(new(2026, 9, 2), new(2026, 9, 4), 3, GapKind.NoRows, true), Assert.Single(result.Report!.Gaps));
        Assert.Equal(3, result.Report.FilledCount);
    }

    [Fact]
    public void Four_days_stay_empty_and_are_listed()
    {
        var result = Good(Days(4));
        Assert.Equal(2, result.History!.Days.Count);
        Assert.Null(result.History.Span(new(2026, 9, 1), new(2026, 9, 6)));
        Assert.Equal(new WeatherGap(new(2026, 9, 2), new(2026, 9, 5), 4, GapKind.NoRows, false), Assert.Single(result.Report!.Gaps));
        Assert.Contains(result.Report.Notes, n => n.Contains("drops out of the ensemble", StringComparison.Ordinal));
        Assert.Equal(new WeatherYear(2026, 2, 0, 363, 243), Assert.Single(result.Report.Years));
    }

    [Fact]
    public void Missing_rain_alone_keeps_the_measured_temperatures()
    {
        var result = Good("date,tmax_c,tmin_c,rain_mm\n2023-09-05,24.6,11.2,3.4\n2023-09-06,29.9,19.1,\n2023-09-07,24.6,11.2,3.4\n");
        Assert.Equal((29.9, 0.0, DayQuality.Interpolated), (result.History!.Days[1].TmaxC, result.History.Days[1].RainMm, result.History.Days[1].Quality));
        Assert.Equal(GapKind.Rain, Assert.Single(result.Report!.Gaps).Kind);
    }

    [Fact]
    public void Nothing_is_filled_before_the_first_and_after_the_last_whole_day()
    {
        var result = Good("date,tmax_c,tmin_c,rain_mm\n2023-09-04,,11.2,1\n2023-09-05,24.6,11.2,3.4\n2023-09-06,24.6,,3.4\n");
        Assert.Equal(new DateOnly(2023, 9, 5), Assert.Single(result.History!.Days).Date);
    }

    [Fact]
    public void A_calendar_without_leap_days_is_noticed()
    {
        var text = Table("date,tmax_c,tmin_c,rain_mm", new(2016, 1, 1), 5 * 365 + 2, (a, b, r) => FormattableString.Invariant($"{a},{b},{r}"));
        var without = string.Join('\n', text.Split('\n').Where(l => !l.Contains("-02-29", StringComparison.Ordinal)));
        Assert.Contains(Good(without).Report!.Notes, n => n.StartsWith("No February 29 in any of 2 leap years", StringComparison.Ordinal));
        Assert.DoesNotContain(Good(text).Report!.Notes, n => n.Contains("February 29", StringComparison.Ordinal));
    }

    [Fact]
    public void A_stuck_sensor_and_a_spike_are_flagged_and_kept()
    {
        var rows = Table("date,tmax_c,tmin_c,rain_mm", new(2023, 1, 1), 365, (a, b, r) => FormattableString.Invariant($"{a},{b},{r}")).Split('\n');
        for (var i = 100; i < 107; i++)
        {
            rows[i] = rows[i][..11] + "21.3,2.0,0";
        }

        rows[200] = rows[200][..11] + "56.5,21.0,0";
        var result = Good(string.Join('\n', rows));
        Assert.Contains(result.Report!.Notes, n => n.StartsWith("The highest temperature is 21.3 on 7 days from 2023-04-10", StringComparison.Ordinal));
        Assert.Contains(result.Report.Notes, n => n.StartsWith("2023-07-19: 21 to 56.5 degC stands", StringComparison.Ordinal));
        Assert.Equal(56.5, result.History!.Days[199].TmaxC);
    }

    [Fact]
    public void A_stuck_soil_probe_is_flagged_with_its_dates()
    {
        var lines = Enumerable.Range(1, 8).Select(d => UscrnDay(FormattableString.Invariant($"202609{d:00}"), 20 + d, 10 + d, d)).ToArray();
        Assert.Contains(Good(Lines(lines)).Report!.Notes, n => n.StartsWith("The soil temperature at 5 cm is 19.3 on 8 days from 2026-09-01: the sensor may have been stuck", StringComparison.Ordinal));
        Assert.DoesNotContain(Good(Lines(lines[..6])).Report!.Notes, n => n.Contains("soil temperature", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_missing_for_a_plan_is_said()
    {
        var assumed = Good(UscrnDailyLine).Report!.Assumptions;
        Assert.Contains(assumed, a => a.StartsWith("Wind is not in the files", StringComparison.Ordinal));
        Assert.DoesNotContain(assumed, a => a.StartsWith("Sun", StringComparison.Ordinal));
        Assert.Contains(Good("date,tmax_c,tmin_c,rain_mm\n2023-09-05,24.6,11.2,3.4\n").Report!.Assumptions, a => a.StartsWith("Sun is not in the files", StringComparison.Ordinal));
    }

    [Fact]
    public void A_far_station_is_said()
    {
        var options = new WeatherReadOptions { Lawn = new Place(40.0, -84.12, 200) };
        Assert.Contains(Good(PowerDaily, options).Report!.Notes, n => n.StartsWith("The station is 257 km from the lawn", StringComparison.Ordinal));
    }
}
