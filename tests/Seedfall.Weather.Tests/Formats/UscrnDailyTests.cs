using static Seedfall.Weather.Tests.Files;
using static Seedfall.Weather.Tests.Samples;

namespace Seedfall.Weather.Tests.Formats;

public sealed class UscrnDailyTests
{
    [Fact]
    public void Reads_every_quantity_of_a_line()
    {
        // Columns: NOAA, readme of the daily01 product.
        var result = Good(UscrnDailyLine + "\n");
        var day = Assert.Single(result.History!.Days);
        Assert.Equal(new DateOnly(2026, 9, 1), day.Date);
        Assert.Equal((24.6, 11.2, 3.2), (day.TmaxC, day.TminC, day.RainMm));
        Assert.Equal(17.4, day.MeanC);
        Assert.Equal(18.45, day.SolarMJ);
        Assert.Equal((97.4, 41.0, 74.2), (day.HumidityMaxPct, day.HumidityMinPct, day.HumidityMeanPct));
        Assert.Equal((19.3, 0.214), (day.Soil5CmC, day.SoilMoisture5Cm));
        Assert.Null(day.WindMs);
        Assert.Equal("USCRN 99001", result.History.StationName);
    }

    [Fact]
    public void Gives_place_without_elevation_and_takes_the_lawns()
    {
        var alone = Good(UscrnDailyLine);
        Assert.Null(alone.History!.Station);
        Assert.Equal(new StationPosition(42.31, -84.12, null, null), alone.Report!.Position);

        var withLawn = Good(UscrnDailyLine, new WeatherReadOptions { Lawn = new(42.31, -84.0, 300) });
        Assert.Equal(300, withLawn.History!.Station!.ElevationM);
        Assert.Contains(withLawn.Report!.Notes, n => n.Contains("lawn's stands in", StringComparison.Ordinal));
        Assert.InRange(withLawn.Report.Position!.LawnDistanceKm!.Value, 9.8, 9.95);
    }

    [Fact]
    public void Missing_codes_are_missing_not_values()
    {
        var text = Lines(
            UscrnDay("20260901", 24.6, 11.2, 0), UscrnDay("20260902", 25, 12, 0).Replace("18.45", "-9999.00", StringComparison.Ordinal)
                .Replace("0.214", "-99.000", StringComparison.Ordinal).Replace("    19.3", " -9999.0", StringComparison.Ordinal));
        var day = Good(text).History!.Days[1];
        Assert.Null(day.SolarMJ);
        Assert.Null(day.SoilMoisture5Cm);
        Assert.Null(day.Soil5CmC);
    }

    [Fact]
    public void Header_line_of_the_header_file_is_passed_over()
    {
        var text = Lines(UscrnDailyLine, "WBANNO LST_DATE CRX_VN LONGITUDE LATITUDE", UscrnDay("20260902", 20, 10, 0));
        Assert.Equal(2, Good(text).History!.Days.Count);
    }

    [Fact]
    public void Line_cut_short_is_refused_with_its_number()
    {
        var problem = Refused(Lines(UscrnDailyLine, UscrnDay("20260902", 20, 10, 0)[..120]));
        Assert.Equal(2, problem.Line);
        Assert.Equal("28 fields", problem.Expected);
    }

    [Fact]
    public void Text_in_a_number_is_refused_with_its_column()
    {
        var problem = Refused(UscrnDailyLine + "\n" + UscrnDay("20260902", 20, 10, 0).Replace("    10.0", "    1O.0", StringComparison.Ordinal));
        Assert.Equal((2, 50), (problem.Line, problem.Column));
        Assert.Equal("'1O.0'", problem.Found);
    }

    [Fact]
    public void Second_station_in_one_file_is_refused_by_name()
    {
        var problem = Refused(Lines(UscrnDailyLine, "99002" + UscrnDay("20260902", 20, 10, 0)[5..]));
        Assert.Contains("99001", problem.Expected, StringComparison.Ordinal);
        Assert.Contains("99002", problem.Found, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("20260231")]
    [InlineData("20230229")]
    [InlineData("00000000")]
    public void Date_that_does_not_exist_is_refused(string date)
    {
        var problem = Refused(Lines(UscrnDailyLine, UscrnDay(date, 20, 10, 0)));
        Assert.Equal((2, 7), (problem.Line, problem.Column));
    }
}
