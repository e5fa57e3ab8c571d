using static Seedfall.Weather.Tests.Files;
using static Seedfall.Weather.Tests.Samples;

namespace Seedfall.Weather.Tests.Formats;

public sealed class UscrnHourlyTests
{
    private static readonly DateOnly Day = new(2026, 9, 1);

    [Fact]
    public void A_stamp_closes_its_hour_so_midnight_belongs_to_the_day_before()
    {
        // NOAA, readme of hourly02: the values are for the hour that ends at the stamp.
        var lines = UscrnHoursOf(Day, h => h == 23 ? 30 : 15, h => h == 23 ? 7.5 : 0, _ => 0).ToArray();
        var day = Assert.Single(Good(Lines(lines)).History!.Days);
        Assert.Equal(Day, day.Date);
        Assert.Equal(30.5, day.TmaxC);
        Assert.Equal(7.5, day.RainMm);
    }

    [Fact]
    public void Hours_fold_to_extremes_means_and_sums()
    {
        var day = Good(Lines([.. UscrnHoursOf(Day, h => 10 + h * 0.5, h => h < 4 ? 0.5 : 0, h => h is > 6 and < 18 ? 400 : 0)])).History!.Days[0];
        Assert.Equal((22.0, 9.5), (day.TmaxC, day.TminC));
        Assert.Equal(10 + 0.5 * 11.5, day.MeanC!.Value, 12);
        Assert.Equal(2.0, day.RainMm);
        Assert.Equal(11 * 400 * 0.0036, day.SolarMJ!.Value, 12);
        Assert.Equal((68.0, 68.0, 68.0), (day.HumidityMaxPct, day.HumidityMinPct, day.HumidityMeanPct));
        Assert.Equal(17.9, day.Soil5CmC!.Value, 12);
    }

    [Theory]
    [InlineData(22, true)]
    [InlineData(21, false)]
    public void A_day_needs_22_hours(int hours, bool isThere)
    {
        var whole = UscrnHoursOf(Day, _ => 15, _ => 0, _ => 0);
        var part = UscrnHoursOf(Day.AddDays(5), _ => 15, _ => 0, _ => 0).Take(hours);
        var history = Good(Lines([.. whole, .. part])).History!;
        Assert.Equal(isThere, history.Day(Day.AddDays(5)) is not null);
    }

    [Fact]
    public void A_missing_hour_of_sun_is_the_mean_of_its_neighbors()
    {
        var lines = UscrnHoursOf(Day, _ => 15, _ => 0, h => h is >= 10 and <= 14 ? 100 * h : 0).Where((_, h) => h != 12);
        var day = Good(Lines([.. lines])).History!.Days[0];
        Assert.Equal((1000 + 1100 + 1200 + 1300 + 1400) * 0.0036, day.SolarMJ!.Value, 9);
    }

    [Fact]
    public void An_erroneous_flag_rejects_the_value_and_is_said()
    {
        var lines = UscrnHoursOf(Day, _ => 15, _ => 0, _ => 0).ToList();
        lines[12] = UscrnHour("20260901", "1300", 15, 0, 5000, solarFlag: "3");
        var result = Good(Lines([.. lines]));
        Assert.Equal(0.0, result.History!.Days[0].SolarMJ);
        Assert.Contains(result.Report!.Notes, n => n.Contains("flagged as erroneous", StringComparison.Ordinal) && n.Contains("line 13", StringComparison.Ordinal));
    }

    [Fact]
    public void The_fixture_line_is_recognized_but_one_hour_is_no_day()
    {
        var problem = Refused(UscrnHourlyLine);
        Assert.Contains("at least one day", problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_hour_twice_with_other_values_is_refused_naming_both_lines()
    {
        var lines = UscrnHoursOf(Day, _ => 15, _ => 0, _ => 0).ToList();
        lines.Add(UscrnHour("20260901", "0500", 16, 0, 0));
        var problem = Refused(Lines([.. lines]));
        Assert.Equal(25, problem.Line);
        Assert.Contains("file:5", problem.Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0930")]
    [InlineData("2500")]
    [InlineData("-100")]
    public void A_stamp_that_is_no_full_hour_is_refused(string time)
    {
        var problem = Refused(UscrnHourlyLine.Replace(" 0900 ", $" {time} ", StringComparison.Ordinal));
        Assert.Equal((1, 30), (problem.Line, problem.Column));
    }

    [Fact]
    public void The_table_form_reads_like_the_text()
    {
        var text = Lines([.. UscrnHoursOf(Day, h => 10 + h % 7, h => h == 5 ? 1.2 : 0, h => h * 10)]);
        var rows = Enumerable.Range(0, 24).Select(h =>
        {
            var (date, time) = h == 23 ? ("20260902", "0000") : ("20260901", FormattableString.Invariant($"{h + 1:00}00"));
            return FormattableString.Invariant($"{date},{time},{date},{time},,{10 + h % 7},{10.5 + h % 7},{9.5 + h % 7},{(h == 5 ? 1.2 : 0)},{h * 10},,68,0.216,17.9");
        });
        var table = Lines(["UTC_DATE,UTC_TIME,LST_DATE,LST_TIME,T_CALC,T_HR_AVG,T_MAX,T_MIN,P_CALC,SOLARAD,SUR_TEMP,RH_HR_AVG,SOIL_MOISTURE_5,SOIL_TEMP_5", .. rows]);
        Assert.Equal(Good(text).History!.Days[0], Good(table).History!.Days[0]);
    }
}
