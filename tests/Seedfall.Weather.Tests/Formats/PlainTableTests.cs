using System.Text;
using static Seedfall.Weather.Tests.Files;

namespace Seedfall.Weather.Tests.Formats;

public sealed class PlainTableTests
{
    [Theory]
    [InlineData("date,tmax_c,tmin_c,rain_mm")]
    [InlineData("DATE,TMAX (°C),TMIN (°C),PRCP (mm)")]
    [InlineData("day,Max Temp [degC],Min Temp [degC],Precip (mm)")]
    [InlineData("time,temperature_2m_max (C),temperature_2m_min (C),precipitation_sum (mm)")]
    [InlineData("Date,High_c,Low_c,Rainfall mm")]
    public void Usual_headers_are_understood(string header)
    {
        var day = Assert.Single(Good(header + "\n2023-09-05,24.6,11.2,3.4\n").History!.Days);
        Assert.Equal((new DateOnly(2023, 9, 5), 24.6, 11.2, 3.4), (day.Date, day.TmaxC, day.TminC, day.RainMm));
    }

    [Fact]
    public void Header_of_the_Seattle_set_reads_and_says_what_it_takes_for_granted()
    {
        var result = Good(Table("date,temp_max,temp_min,precipitation,wind,weather", new(2012, 1, 1), 366, (a, b, r) => FormattableString.Invariant($"{a},{b},{r},4.7,drizzle")));
        Assert.Equal(366, result.History!.Days.Count);
        Assert.Equal(4.7 * 0.748, result.History.Days[0].WindMs!.Value, 2);
        Assert.Contains(result.Report!.Notes, n => n.Contains("'wind' does not say the height", StringComparison.Ordinal));
        Assert.Contains(result.Report.Notes, n => n == "Columns not used: weather.");
        Assert.Contains(result.Report.Columns, c => c.UnitSource.StartsWith("judged", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2023-09-05")]
    [InlineData("2023/09/05")]
    [InlineData("2023/9/5")]
    [InlineData("20230905")]
    [InlineData("2023-09-05 00:00")]
    [InlineData("2023-09-05T00:00:00")]
    public void Year_first_dates_are_read(string date) =>
        Assert.Equal(new DateOnly(2023, 9, 5), Good($"date,tmax_c,tmin_c,rain_mm\n{date},24.6,11.2,3.4\n").History!.Days[0].Date);

    [Theory]
    [InlineData("9/12/2023", "9/13/2023", "month first")]
    [InlineData("12/9/2023", "13/9/2023", "day first")]
    [InlineData("12.09.2023", "13.09.2023", "day first")]
    public void Year_last_dates_are_settled_by_a_day_above_12(string one, string two, string said)
    {
        var result = Good($"date,tmax_c,tmin_c,rain_mm\n{one},24.6,11.2,3.4\n{two},24.6,11.2,3.4\n");
        Assert.Equal([new DateOnly(2023, 9, 12), new DateOnly(2023, 9, 13)], result.History!.Days.Select(d => d.Date));
        Assert.Contains(result.Report!.Notes, n => n.Contains(said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("9/5/2023")]
    [InlineData("2023-02-29")]
    [InlineData("2023-13-01")]
    [InlineData("yesterday")]
    [InlineData("2023-09-05 14:00")]
    [InlineData("")]
    public void Dates_that_leave_a_doubt_or_do_not_exist_are_refused(string date)
    {
        var problem = Refused($"date,tmax_c,tmin_c,rain_mm\n{date},24.6,11.2,3.4\n");
        Assert.Equal((2, 1), (problem.Line, problem.Column));
    }

    [Fact]
    public void Year_month_and_day_may_stand_apart()
    {
        var day = Assert.Single(Good("year,month,day,tmax_c,tmin_c,rain_mm\n2024,2,29,8.1,-2.0,0\n").History!.Days);
        Assert.Equal(new DateOnly(2024, 2, 29), day.Date);
    }

    [Theory]
    [InlineData("date;tmax_c;tmin_c;rain_mm\n2023-09-05;24,6;11,2;3,4\n")]
    [InlineData("date\ttmax_c\ttmin_c\train_mm\n2023-09-05\t24.6\t11.2\t3.4\n")]
    [InlineData("\uFEFFdate,tmax_c,tmin_c,rain_mm\r\n2023-09-05,24.6,11.2,3.4\r\n")]
    [InlineData("# station: Invented Hill\n\n\"date\",\"tmax_c\",\"tmin_c\",\"rain_mm\"\n\"2023-09-05\",\"24.6\",\"11.2\",\"3.4\"")]
    [InlineData("date,tmax_c,note,tmin_c,rain_mm\n2023-09-05,24.6,\"rain, \"\"hard\"\"\nand long\",11.2,3.4\n")]
    [InlineData("date,tmax_c,tmin_c,rain_mm\n2023-09-05, +24.6 ,11.2,3.4,,\n")]
    public void Spellings_of_separated_values_are_read(string text)
    {
        var day = Assert.Single(Good(text).History!.Days);
        Assert.Equal((24.6, 11.2, 3.4), (day.TmaxC, day.TminC, day.RainMm));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Utf16_of_spreadsheets_is_read(bool bigEndian)
    {
        var encoding = new UnicodeEncoding(bigEndian, byteOrderMark: true);
        byte[] bytes = [.. encoding.GetPreamble(), .. encoding.GetBytes("date\ttmax_c\ttmin_c\train_mm\r\n2023-09-05\t24.6\t11.2\t3.4\r\n")];
        Assert.Equal(24.6, Good(Read(Bytes(bytes))).History!.Days[0].TmaxC);
    }

    [Theory]
    [InlineData("")]
    [InlineData("NA")]
    [InlineData("n/a")]
    [InlineData("NaN")]
    [InlineData("null")]
    [InlineData("M")]
    [InlineData("-999")]
    [InlineData("-999.00")]
    [InlineData("-9999.0")]
    [InlineData("-99.9")]
    [InlineData("-99")]
    public void Signs_for_missing_are_missing(string cell)
    {
        var history = Good($"date,tmax_c,tmin_c,rain_mm\n2023-09-05,24.6,11.2,3.4\n2023-09-06,{cell},11.2,3.4\n2023-09-07,26.6,13.2,3.4\n").History!;
        Assert.Equal(25.6, history.Days[1].TmaxC, 12);
        Assert.Equal(Engine.Weather.DayQuality.Interpolated, history.Days[1].Quality);
    }

    [Theory]
    [InlineData("Infinity")]
    [InlineData("-inf")]
    [InlineData("1e999")]
    [InlineData("=1+1")]
    [InlineData("@SUM(A1)")]
    [InlineData("24.6.1")]
    [InlineData("24,6\"")]
    [InlineData("T")]
    [InlineData("0x18")]
    public void Anything_else_in_a_number_is_refused_at_its_field(string cell)
    {
        var problem = Refused($"date,tmin_c,rain_mm,tmax_c\n2023-09-05,11.2,3.4,{cell}\n");
        Assert.Equal(2, problem.Line);
    }

    [Fact]
    public void T_is_a_trace_of_rain()
    {
        var result = Good("date,tmax_c,tmin_c,rain_mm\n2023-09-05,24.6,11.2,T\n");
        Assert.Equal(0.0, result.History!.Days[0].RainMm);
        Assert.Contains(result.Report!.Notes, n => n.StartsWith("A trace of rain", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("date,tmin_c,rain_mm\n2023-09-05,11.2,3.4\n", "highest temperature")]
    [InlineData("date,tmax_c,tmin_c\n2023-09-05,24.6,11.2\n", "rain")]
    public void Missing_column_is_named(string text, string named) => Assert.Contains(named, Refused(text).Expected, StringComparison.Ordinal);

    [Fact]
    public void Row_cut_short_is_refused()
    {
        var problem = Refused("date,tmax_c,tmin_c,rain_mm\n2023-09-05,24.6,11.2,3.4\n2023-09-06,24.6,11");
        Assert.Equal(3, problem.Line);
        Assert.Contains("cut off", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Lowest_above_highest_is_refused_with_its_line()
    {
        var problem = Refused("date,tmax_c,tmin_c,rain_mm\n2023-09-05,11.2,24.6,3.4\n");
        Assert.Equal((2, 3), (problem.Line, problem.Column));
        Assert.Contains("not above the highest", problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Unclosed_quote_is_refused_where_it_opens()
    {
        var problem = Refused("date,tmax_c,tmin_c,rain_mm\n2023-09-05,\"24.6,11.2,3.4\n2023-09-06,24.6,11.2,3.4\n");
        Assert.Equal((2, 2), (problem.Line, problem.Column));
    }

    [Fact]
    public void Reversed_coordinates_are_refused()
    {
        var problem = Refused("station,latitude,longitude,date,tmax_c,tmin_c,rain_mm\nX,-124.12,42.31,2023-09-05,24.6,11.2,3.4\n");
        Assert.Equal((2, 2), (problem.Line, problem.Column));
    }
}
