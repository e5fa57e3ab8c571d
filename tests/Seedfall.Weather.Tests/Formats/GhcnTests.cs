using static Seedfall.Weather.Tests.Files;

namespace Seedfall.Weather.Tests.Formats;

public sealed class GhcnTests
{
    [Fact]
    public void Access_layout_is_in_tenths()
    {
        // 246 in the file is 24.6 degC: NOAA, readme of GHCN-Daily, section III.
        var result = Good(Samples.GhcnAccess);
        var day = result.History!.Days[0];
        Assert.Equal((24.6, 11.2, 0.0), (day.TmaxC, day.TminC, day.RainMm));
        Assert.Equal(2.0, result.History.Days[2].RainMm);
        Assert.Equal("EXAMPLEVILLE, MI US", result.History.StationName);
        Assert.Equal(new Engine.Weather.Place(42.31, -84.12, 281.0), result.History.Station);
        Assert.Contains(result.Report!.Columns, c => c.Unit == "tenths of degC");
    }

    [Fact]
    public void Trace_gap_and_hour_of_observation_are_said()
    {
        var result = Good(Samples.GhcnAccess);
        Assert.Contains(result.Report!.Notes, n => n.StartsWith("A trace of rain taken as 0: 1 times", StringComparison.Ordinal));
        Assert.Contains(result.Report.Notes, n => n.Contains("0700", StringComparison.Ordinal) && n.Contains("day before", StringComparison.Ordinal));
        Assert.Equal(new WeatherGap(new(2026, 9, 2), new(2026, 9, 2), 1, GapKind.Temperature, true), Assert.Single(result.Report.Gaps));
        Assert.Equal(25.3, result.History!.Days[1].TmaxC, 12);
        Assert.Equal(5.3, result.History.Days[1].RainMm);
    }

    [Fact]
    public void A_quality_flag_rejects_the_value()
    {
        var text = Samples.GhcnAccess.Replace("\"   53\",\",,7,0700\"", "\"   53\",\",X,7,0700\"", StringComparison.Ordinal);
        var result = Good(text);
        Assert.Equal(0.0, result.History!.Days[1].RainMm);
        Assert.Contains(result.Report!.Notes, n => n.StartsWith("rain rejected by quality flag X: 1 times, first line 3", StringComparison.Ordinal));
    }

    [Fact]
    public void Query_layout_in_metric_units_is_not_divided()
    {
        var text = Lines(
            "\"STATION\",\"DATE\",\"PRCP\",\"PRCP_ATTRIBUTES\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\",\"TMIN_ATTRIBUTES\"",
            "\"USC00990001\",\"2026-09-01\",\"0.0\",\"T,,7,0700\",\"24.6\",\",,7,0700\",\"11.2\",\",,7,0700\"",
            "\"USC00990001\",\"2026-09-02\",\"5.3\",\",,7,0700\",\"25.1\",\",,7,0700\",\"12.0\",\",,7,0700\"");
        var day = Good(text).History!.Days[1];
        Assert.Equal((25.1, 12.0, 5.3), (day.TmaxC, day.TminC, day.RainMm));
    }

    [Fact]
    public void Query_layout_in_standard_units_is_taken_as_Fahrenheit_and_inches()
    {
        var text = Lines(
            "\"STATION\",\"DATE\",\"PRCP\",\"PRCP_ATTRIBUTES\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\",\"TMIN_ATTRIBUTES\"",
            "\"USC00990001\",\"2026-09-01\",\"0.00\",\"T,,7,0700\",\"76\",\",,7,0700\",\"52\",\",,7,0700\"",
            "\"USC00990001\",\"2026-09-02\",\"0.21\",\",,7,0700\",\"77\",\",,7,0700\",\"54\",\",,7,0700\"");
        var result = Good(text);
        var day = result.History!.Days[1];
        Assert.Equal(25.0, day.TmaxC, 12);
        Assert.Equal(5.334, day.RainMm, 12);
        Assert.Contains(result.Report!.Columns, c => c is { Unit: "degF" });
        Assert.Contains(result.Report.Columns, c => c is { Unit: "in" });
    }

    [Fact]
    public void Several_stations_in_a_query_are_refused_and_one_can_be_asked_for()
    {
        var text = Samples.GhcnAccess + "\"USC00990002\",\"2026-09-04\",\"42.9\",\"-84.12\",\"281.0\",\"ELSEWHERE, MI US\",\"0\",\",,7\",\"250\",\",,7\",\"100\",\",,7\"\n";
        var problem = Refused(text);
        Assert.Equal((5, 1), (problem.Line, problem.Column));
        Assert.Contains("USC00990002", problem.Found, StringComparison.Ordinal);

        var other = Good(text, new WeatherReadOptions { Station = "usc00990002" }).History!;
        Assert.Equal("ELSEWHERE, MI US", other.StationName);
        Assert.Single(other.Days);

        var none = Refused(text, new WeatherReadOptions { Station = "USC00990009" });
        Assert.Contains("USC00990001, USC00990002", none.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Fixed_width_line_reads_by_column()
    {
        var text = Lines(
            "USC00990001202609TMAX  246  7  250  7  251  7  260  7" + new string(' ', 216),
            "USC00990001202609TMIN  112  7  120  7  121  7  130  7",
            Samples.GhcnRainLine);
        Assert.Equal(269, Samples.GhcnRainLine.Length);
        var result = Good(text);
        var days = result.History!.Days;
        Assert.Equal([24.6, 25.0, 25.1], days.Select(d => d.TmaxC)); // the fourth ends the record with its rain rejected
        Assert.Equal([0.0, 5.3, 0.0], days.Select(d => d.RainMm));
        Assert.Contains(result.Report!.Notes, n => n.StartsWith("rain rejected by quality flag X", StringComparison.Ordinal));
        Assert.Contains(result.Report.Notes, n => n.StartsWith("A cooperative station whose hour of observation is not in the file", StringComparison.Ordinal));
        Assert.Equal(Engine.Weather.DayQuality.Measured, days[0].Quality);
    }

    [Fact]
    public void Fixed_width_value_on_a_day_that_does_not_exist_is_refused()
    {
        var february = "USC00990001202302PRCP" + string.Concat(Enumerable.Repeat("    0  7", 31));
        var problem = Refused(february + "\n");
        Assert.Equal((1, 22 + 28 * 8), (problem.Line, problem.Column));
    }

    [Fact]
    public void Fixed_width_of_two_stations_is_refused()
    {
        var problem = Refused(Lines(Samples.GhcnRainLine, Samples.GhcnRainLine.Replace("USC00990001", "USC00990002", StringComparison.Ordinal)));
        Assert.Equal(2, problem.Line);
    }

    [Theory]
    [InlineData("")]
    [InlineData("ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME\n")]
    public void One_value_a_line_reads_with_and_without_header(string header)
    {
        var text = header + Lines(
            "USC00990001,20260901,TMAX,246,,,7,0700",
            "USC00990001,20260901,TMIN,112,,,7,0700",
            "USC00990001,20260901,PRCP,53,,,7,0700",
            "USC00990001,20260901,SNWD,0,,,7,0700",
            "USC00990001,20260902,TMAX,246,,I,7,0700");
        var day = Assert.Single(Good(text).History!.Days);
        Assert.Equal((24.6, 11.2, 5.3), (day.TmaxC, day.TminC, day.RainMm));
    }

    [Fact]
    public void Rain_of_several_days_is_spread_and_not_taken_for_dry_days()
    {
        var header = "STATION,DATE,PRCP,PRCP_ATTRIBUTES,TMAX,TMAX_ATTRIBUTES,TMIN,TMIN_ATTRIBUTES,MDPR,MDPR_ATTRIBUTES,DAPR,DAPR_ATTRIBUTES";
        string Row(int day, string rain, string sum, string count) => $"USC00990001,2026-09-0{day},{rain},\",,7\",246,\",,7\",112,\",,7\",{sum},\",,7\",{count},\",,7\"";
        var result = Good(Lines(header, Row(1, "0", "", ""), Row(2, "", "", ""), Row(3, "", "300", "2"), Row(4, "0", "", "")));
        Assert.Equal([0.0, 15.0, 15.0, 0.0], result.History!.Days.Select(d => d.RainMm));
        Assert.Equal(2, result.Report!.FilledCount);
        Assert.Contains(result.Report.Notes, n => n.Contains("sum of several days", StringComparison.Ordinal));
    }
}
