using static Seedfall.Weather.Tests.Files;

namespace Seedfall.Weather.Tests.Formats;

/// <summary>The same invented year written in every unit must read as the same weather, or be refused.</summary>
public sealed class UnitTrapTests
{
    private static readonly DateOnly First = new(2023, 1, 1);

    private static string F(double c) => FormattableString.Invariant($"{c * 1.8 + 32:0.#}");

    private static string N(double v) => FormattableString.Invariant($"{v:0.0##}");

    private static string Year(string header, Func<double, double, double, string> row, int days = 365) => Table(header, First, days, row);

    private static (double Max, double Min, double Rain) MidJuly(string text, WeatherReadOptions? options = null)
    {
        var day = Good(text, options).History!.Day(new DateOnly(2023, 7, 16))!;
        return (Math.Round(day.TmaxC, 1), Math.Round(day.TminC, 1), Math.Round(day.RainMm, 1));
    }

    [Fact]
    public void Every_unit_gives_the_same_July_day()
    {
        var celsius = MidJuly(Year("DATE,TMAX,TMIN,PRCP", (a, b, r) => $"{N(a)},{N(b)},{N(r)}"));
        Assert.Equal(celsius, MidJuly(Year("DATE,TMAX,TMIN,PRCP", (a, b, r) => FormattableString.Invariant($"{a * 10:0},{b * 10:0},{r * 10:0}"))));
        Assert.Equal(celsius, MidJuly(Year("DATE,TMAX,TMIN,PRCP", (a, b, r) => FormattableString.Invariant($"{a * 10:0}.0,{b * 10:0}.0,{r * 10:0}.0"))));
        Assert.Equal(celsius, MidJuly(Year("date,tmax_f,tmin_f,rain_in", (a, b, r) => FormattableString.Invariant($"{a * 1.8 + 32:0.00},{b * 1.8 + 32:0.00},{r / 25.4:0.000}"))));
        Assert.Equal(celsius, MidJuly(Year("DATE,TMAX,TMIN,PRCP", (a, b, r) => FormattableString.Invariant($"{a * 1.8 + 32:0.00},{b * 1.8 + 32:0.00},{r / 25.4:0.000}"))));
        Assert.Equal(celsius, MidJuly(Year("date,tmax_c,tmin_c,rain_cm", (a, b, r) => FormattableString.Invariant($"{a},{b},{r / 10:0.00}"))));
        Assert.Equal(celsius, MidJuly(Year("date,tmax_k,tmin_k,rain_mm", (a, b, r) => FormattableString.Invariant($"{a + 273.15:0.00},{b + 273.15:0.00},{r}"))));
    }

    [Fact]
    public void Fahrenheit_under_a_Celsius_header_is_refused() =>
        Assert.Contains("degF", Refused(Year("date,tmax_c,tmin_c,rain_mm", (a, b, r) => $"{F(a)},{F(b)},{N(r)}")).Found, StringComparison.Ordinal);

    [Fact]
    public void Celsius_under_a_Fahrenheit_header_is_refused() =>
        Assert.Contains("degC", Refused(Year("date,tmax_f,tmin_f,rain_in", (a, b, r) => $"{N(a)},{N(b)},{N(r / 25.4)}")).Found, StringComparison.Ordinal);

    [Fact]
    public void Tenths_under_a_Celsius_header_are_refused() =>
        Assert.Contains("tenths", Refused(Year("date,tmax_c,tmin_c,rain_mm", (a, b, r) => $"{N(a * 10)},{N(b * 10)},{N(r)}")).Found, StringComparison.Ordinal);

    [Fact]
    public void One_value_in_tenths_is_refused_with_line_and_column()
    {
        var problem = Refused("date,tmax_c,tmin_c,rain_mm\n2023-07-01,24.6,11.2,0\n2023-07-02,246,112,0\n2023-07-03,25.0,11.0,0\n");
        Assert.Contains("tenths", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void One_wild_value_in_a_short_table_is_refused_with_line_and_column()
    {
        var rows = Year("date,tmax_c,tmin_c,rain_mm", (a, b, r) => $"{N(a)},{N(b)},{N(r)}", 120).Split('\n');
        rows[50] = rows[50][..11] + "99.9,1.0,0.0";
        var problem = Refused(string.Join('\n', rows));
        Assert.Equal((51, 2), (problem.Line, problem.Column));
        Assert.Equal("99.9 degC", problem.Found);
    }

    [Fact]
    public void One_wild_value_in_many_years_is_left_out_and_said()
    {
        var rows = Year("date,tmax_c,tmin_c,rain_mm", (a, b, r) => $"{N(a)},{N(b)},{N(r)}", 1000).Split('\n');
        rows[50] = rows[50][..11] + "99.9,1.0,0.0";
        var result = Good(string.Join('\n', rows));
        Assert.Equal(Engine.Weather.DayQuality.Interpolated, result.History!.Days[49].Quality);
        Assert.Contains(result.Report!.Notes, n => n.Contains("left out", StringComparison.Ordinal) && n.Contains("line 51", StringComparison.Ordinal));
    }

    [Fact]
    public void Inches_under_a_millimeter_header_are_refused() =>
        Assert.Contains("inches", Refused(Year("date,tmax_c,tmin_c,rain_mm", (a, b, r) => $"{N(a)},{N(b)},{N(r / 25.4)}")).Found, StringComparison.Ordinal);

    [Fact]
    public void A_dry_year_is_read_when_the_unit_is_told()
    {
        var text = Year("date,tmax_c,tmin_c,rain_mm", (a, b, r) => $"{N(a)},{N(b)},{N(r / 25.4)}");
        Assert.Equal(365, Good(text, new WeatherReadOptions { Rain = RainUnit.Millimeters }).History!.Days.Count);
    }

    [Fact]
    public void Whole_degrees_over_a_few_winter_days_are_refused_as_ambiguous_and_read_when_told()
    {
        const string Text = "DATE,TMAX,TMIN,PRCP\n2023-01-01,41,28,0\n2023-01-02,45,30,0\n2023-01-03,39,25,0\n";
        Assert.Contains("degC, degF or tenths", Refused(Text).Found, StringComparison.Ordinal);
        var told = Good(Text, new WeatherReadOptions { Temperature = TemperatureUnit.Fahrenheit });
        Assert.Equal(5.0, told.History!.Days[0].TmaxC, 12);
    }

    [Fact]
    public void Shares_instead_of_percent_are_refused() =>
        Assert.Contains("shares", Refused("date,tmax_c,tmin_c,rain_mm,rh_max_pct\n2023-07-01,24.6,11.2,0,0.9\n").Found, StringComparison.Ordinal);

    [Fact]
    public void Sun_and_wind_are_converted_by_header()
    {
        var day = Good("date,tmax_c,tmin_c,rain_mm,solar_kwh_m2,wind_10m_mph\n2023-07-01,24.6,11.2,0,5,10\n").History!.Days[0];
        Assert.Equal(18.0, day.SolarMJ!.Value, 12);

        // FAO Irrigation and Drainage Paper 56, annex 2, table 2.9: factor 0.748 from 10 m to 2 m.
        Assert.Equal(4.4704 * 0.748, day.WindMs!.Value, 2);
    }

    [Fact]
    public void Sun_without_a_unit_is_not_used_and_said()
    {
        var result = Good("date,tmax_c,tmin_c,rain_mm,srad\n2023-07-01,24.6,11.2,0,20\n");
        Assert.Null(result.History!.Days[0].SolarMJ);
        Assert.Contains(result.Report!.Notes, n => n.Contains("'srad' names no unit", StringComparison.Ordinal));
    }
}
