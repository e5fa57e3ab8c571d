using static Seedfall.Weather.Tests.Files;

namespace Seedfall.Weather.Tests.Formats;

public sealed class PowerTests
{
    private static string Hourly(string standard, double longitude, int hours, Func<int, double> air, string solarUnit = "MJ/hr")
    {
        string Series(Func<int, double> value) => string.Join(", ", Enumerable.Range(0, hours).Select(h =>
            FormattableString.Invariant($"\"{new DateTime(2026, 8, 1).AddHours(h):yyyyMMddHH}\": {value(h)}")));
        return FormattableString.Invariant($$"""
            { "geometry": { "coordinates": [{{longitude}}, 42.31, 281.44] },
              "properties": { "parameter": { "T2M": { {{Series(air)}} }, "PRECTOTCORR": { {{Series(h => h == 30 ? 2.5 : 0)}} },
                "ALLSKY_SFC_SW_DWN": { {{Series(_ => 0.5)}} }, "RH2M": { {{Series(h => 50 + h % 24)}} } } },
              "header": { "fill_value": -999.0, "time_standard": "{{standard}}" },
              "parameters": { "T2M": { "units": "C" }, "PRECTOTCORR": { "units": "mm/hour" }, "ALLSKY_SFC_SW_DWN": { "units": "{{solarUnit}}" }, "RH2M": { "units": "%" } } }
            """);
    }

    [Fact]
    public void Daily_answer_reads_with_its_units_and_drops_the_unpublished_tail()
    {
        var result = Good(Samples.PowerDaily);
        Assert.Equal(2, result.History!.Days.Count);
        var day = result.History.Days[1];
        Assert.Equal((28.42, 16.02, 6.31, 22.17, 18.25), (day.TmaxC, day.TminC, day.RainMm, day.MeanC!.Value, day.SolarMJ!.Value));
        Assert.Null(day.Soil5CmC);
        Assert.Equal(new Engine.Weather.Place(42.31, -84.12, 281.44), result.History.Station);
        Assert.Contains(result.Report!.Notes, n => n.StartsWith("The last 1 days are not published yet", StringComparison.Ordinal));
        Assert.Contains(result.Report.Notes, n => n == "Parameters not used: TSOIL1.");
    }

    [Theory]
    [InlineData("kW-hr/m^2/day", 18.25 * 3.6)]
    [InlineData("W/m^2", 18.25 * 0.0864)]
    public void Sun_follows_the_unit_in_the_file(string unit, double expected) =>
        Assert.Equal(
            expected > 45 ? null : expected,
            Good(Samples.PowerDaily.Replace("MJ/m^2/day", unit, StringComparison.Ordinal)).History!.Days[1].SolarMJ);

    [Fact]
    public void Kilowatt_hours_are_converted()
    {
        var text = Samples.PowerDaily.Replace("MJ/m^2/day", "kW-hr/m^2/day", StringComparison.Ordinal).Replace("24.5", "6.5", StringComparison.Ordinal).Replace("18.25", "5.0", StringComparison.Ordinal);
        Assert.Equal(18.0, Good(text).History!.Days[1].SolarMJ!.Value, 12);
    }

    [Fact]
    public void Unknown_or_absent_unit_is_refused()
    {
        Assert.Equal("'furlongs'", Refused(Samples.PowerDaily.Replace("\"mm/day\"", "\"furlongs\"", StringComparison.Ordinal)).Found);
        Assert.Contains("parameters.PRECTOTCORR.units", Refused(Samples.PowerDaily.Replace("\"PRECTOTCORR\": { \"units\"", "\"PRECTOTCORR\": { \"unit\"", StringComparison.Ordinal)).Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void The_fill_value_is_the_files_own()
    {
        var text = Samples.PowerDaily.Replace("-999.0", "-888.5", StringComparison.Ordinal);
        Assert.Equal(2, Good(text).History!.Days.Count);
    }

    [Fact]
    public void Local_hours_fold_to_days_the_stamp_being_the_start()
    {
        var history = Good(Hourly("LST", -84.12, 48, h => h == 24 ? 30 : 20)).History!;
        Assert.Equal([20.0, 30.0], history.Days.Select(d => d.TmaxC));
        Assert.Equal([0.0, 2.5], history.Days.Select(d => d.RainMm));
        Assert.Equal(12.0, history.Days[0].SolarMJ!.Value, 12);
        Assert.Equal((73.0, 50.0), (history.Days[0].HumidityMaxPct, history.Days[0].HumidityMinPct));
    }

    [Theory]
    [InlineData(-84.12, "-6 h")]
    [InlineData(151.2, "+10 h")]
    public void Utc_hours_move_to_the_places_own_day(double longitude, string shift)
    {
        // Hour 24 UTC of August 1 is hour 18 of August 1 at 84 W and hour 10 of August 2 at 151 E.
        var result = Good(Hourly("UTC", longitude, 72, h => h == 24 ? 30 : 20));
        var hot = result.History!.Days.Single(d => d.TmaxC > 25);
        Assert.Equal(longitude < 0 ? new DateOnly(2026, 8, 1) : new DateOnly(2026, 8, 2), hot.Date);
        Assert.Contains(result.Report!.Notes, n => n.Contains(shift, StringComparison.Ordinal));
    }

    [Fact]
    public void Utc_days_are_said()
    {
        var result = Good(Samples.PowerDaily.Replace("\"LST\"", "\"UTC\"", StringComparison.Ordinal));
        Assert.Contains(result.Report!.Notes, n => n.StartsWith("Days are UTC days, which begin about 18 h local time", StringComparison.Ordinal));
    }

    [Fact]
    public void A_name_given_twice_is_refused_with_line_and_column()
    {
        var problem = Refused(Samples.PowerDaily.Replace("\"20260802\": 28.42", "\"20260801\": 28.42", StringComparison.Ordinal));
        Assert.Equal(5, problem.Line);
        Assert.Equal("each name once in an object", problem.Expected);
        var root = Refused("{\"a\":1,\n \"a\":2}");
        Assert.Equal((2, 2), (root.Line, root.Column));
    }

    [Fact]
    public void Hidden_doubles_in_parts_not_used_are_refused() =>
        Assert.Equal("each name once in an object", Refused(Samples.PowerDaily.Replace("\"data\": 0.61", "\"process\": 0.61", StringComparison.Ordinal)).Expected);

    [Theory]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e999")]
    [InlineData("\"27.9\"")]
    [InlineData("[1]")]
    public void Values_that_are_no_numbers_are_refused(string value) =>
        Assert.Equal(5, Refused(Samples.PowerDaily.Replace("27.9,", value + ",", StringComparison.Ordinal)).Line);

    [Fact]
    public void Deep_nesting_is_refused() => Assert.Equal("JSON", Refused("{\"a\":" + new string('[', 100_000)).Expected);

    [Fact]
    public void Every_cut_is_refused()
    {
        for (var length = 1; length < Samples.PowerDaily.Length; length += 7)
        {
            Assert.NotEmpty(Read(Samples.PowerDaily[..length]).Problems);
        }
    }

    [Fact]
    public void The_services_own_error_is_passed_on()
    {
        var problem = Refused("{ \"messages\": [\"Please provide valid parameters\"] }");
        Assert.Contains("Please provide valid parameters", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_parameters_are_named()
    {
        var problem = Refused(Samples.PowerDaily.Replace("T2M_MIN", "T2MWET", StringComparison.Ordinal));
        Assert.Contains("T2M_MIN", problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Days_beside_hours_are_refused() =>
        Assert.Contains("YYYYMMDD", Refused(Samples.PowerDaily.Replace("\"20260802\": 28.42", "\"2026080200\": 28.42", StringComparison.Ordinal)).Expected, StringComparison.Ordinal);

    [Fact]
    public void The_services_own_table_is_refused_with_advice() =>
        Assert.Contains("format=JSON", Refused("-BEGIN HEADER-\r\nNASA/POWER\r\n-END HEADER-\r\nYEAR,DOY,T2M\r\n").Expected, StringComparison.Ordinal);

    [Fact]
    public void Coordinates_reversed_are_refused() =>
        Assert.Equal(2, Refused(Samples.PowerDaily.Replace("[-84.12, 42.31", "[42.31, -184.12", StringComparison.Ordinal)).Line);

    [Fact]
    public void Names_of_any_length_are_no_trouble()
    {
        var name = new string('x', 3_000);
        var text = Samples.PowerDaily.Replace("\"T2M\": {", $"\"{name}1\": {{}}, \"{name}2\": {{}}, \"T2M\": {{", StringComparison.Ordinal);
        Assert.All(Good(text).Report!.Notes, n => Assert.True(n.Length < 300));
    }

    [Fact]
    public void Size_of_json_is_bounded()
    {
        var options = new WeatherReadOptions { Limits = new WeatherReadLimits { JsonBytes = 1000 } };
        Assert.Contains("1000", Refused(Samples.PowerDaily, options).Expected, StringComparison.Ordinal);
    }
}
